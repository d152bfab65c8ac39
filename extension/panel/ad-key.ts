import type { PageListing } from '../../src/listing/page-listing.ts';

/** Words that are looked at: the rest of a very long text tells no ads apart. */
const LOOKED_AT = 20_000;

/**
 * Name of an ad by its words, whatever page or paste they came from: what the buyer said about it is found again when it is met later.
 * 53 bits of two FNV-1a hashes (offset basis and prime of 32 bits; the second starts from the length).
 */
export function adKey({ title, text }: PageListing): string {
  const words = `${title}\n${text}`.slice(0, LOOKED_AT).replace(/\s+/g, ' ').trim().toLowerCase();
  let first = 0x811c9dc5;
  let second = (0x811c9dc5 ^ words.length) >>> 0;
  for (let i = 0; i < words.length; i += 1) {
    first = Math.imul(first ^ words.charCodeAt(i), 0x01000193) >>> 0;
    second = Math.imul(second ^ words.charCodeAt(words.length - 1 - i), 0x01000193) >>> 0;
  }
  return `${first.toString(36)}-${second.toString(36)}`;
}

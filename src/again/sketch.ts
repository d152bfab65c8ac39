/**
 * Short sketches of a set of words by which two sets are compared: A. Broder, "On the resemblance and containment of documents" (1997), from memory.
 * The hash is FNV-1a with the finisher of MurmurHash3 (both public domain, from memory); always the same, so that marks can be stored.
 */

/** Words in a shingle. */
const LENGTH = 3;
/** Smallest hashes that are kept: all of them in an ad of ordinary length, so that its likeness is exact. */
const KEPT = 192;
/** Bands and rows: two ads of likeness s share a band with chance 1 - (1 - s^3)^20: 0.93 at 0.5, 0.99 at 0.6, 0.15 at 0.2. */
const BANDS = 20;
const ROWS = 3;

function mixed(value: number): number {
  let hash = value;
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/** 32 bits of a text. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return mixed(hash);
}

/** Hashes of all runs of three words within a clause, and of whole clauses that are shorter; each once, smallest first. */
export function shingles(clauses: readonly (readonly string[])[]): readonly number[] {
  const found = new Set<number>();
  for (const clause of clauses) {
    for (let at = 0; at === 0 || at + LENGTH <= clause.length; at += 1)
      found.add(hashOf(clause.slice(at, at + LENGTH).join(' ')));
  }
  return [...found].sort((a, b) => a - b);
}

export const smallest = (hashes: readonly number[]): readonly number[] => hashes.slice(0, KEPT);

/** Likeness (Jaccard) of two sets by their smallest hashes: shared over all, among the smallest of both together. 0 when either is empty. */
export function likeness(one: readonly number[], other: readonly number[]): number {
  let [i, j, seen, shared] = [0, 0, 0, 0];
  // Beyond the end of a cut-off sketch nothing is known.
  const most = one.length < KEPT && other.length < KEPT ? one.length + other.length : KEPT;
  while (seen < most && (i < one.length || j < other.length)) {
    const [a, b] = [one[i] ?? Number.POSITIVE_INFINITY, other[j] ?? Number.POSITIVE_INFINITY];
    if (a === b) shared += 1;
    if (a <= b) i += 1;
    if (b <= a) j += 1;
    seen += 1;
  }
  return seen === 0 || one.length === 0 || other.length === 0 ? 0 : shared / seen;
}

/** One number per band; two sets that are much alike share at least one of them. None for an empty set. */
export function bandsOf(hashes: readonly number[]): readonly number[] {
  if (hashes.length === 0) return [];
  return Array.from({ length: BANDS }, (_, band) => {
    let key = mixed(band + 1);
    for (let row = 0; row < ROWS; row += 1) {
      const seed = mixed(Math.imul(band * ROWS + row + 1, 0x9e3779b9));
      let least = 0xffffffff;
      for (const hash of hashes) least = Math.min(least, mixed(hash ^ seed));
      key = mixed(Math.imul(key, 31) ^ least);
    }
    return key;
  });
}

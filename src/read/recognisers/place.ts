import type { Fact } from '../../listing/reading.ts';

const PLACE =
  /\b(?:located (?:in|near|at)|pick[- ]?up (?:in|at|near|from)|collection (?:from|in)|collect (?:from|in)|local pick[- ]?up in|i'm in|we are in|abholung in|abzuholen in|standort:?|location:)[ ]{1,3}((?:\p{Lu}[\p{L}'.-]{1,30})(?:,?[ ](?:\p{Lu}[\p{L}'.-]{1,30}|\d{4,5})){0,3})/iu;

/** Place for pickup, as written: capitalised words behind "located in", "pickup in" and the like. */
export function readPlace(text: string): Fact<string> | null {
  const found = PLACE.exec(text);
  const name = found?.[1]?.replace(/[.,]+$/, '');
  if (!found || !name || !/^\p{Lu}/u.test(name)) return null;
  const start = found.index + found[0].indexOf(name, found[0].length - (found[1]?.length ?? 0));
  return { value: name, basis: 'stated', rule: 'place', evidence: [{ start, end: start + name.length }] };
}

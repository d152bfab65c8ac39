/** Goods that are told once more: named by their article, singled out for what the ad has to say of them, or counted again. */
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { type Draft, firstToken } from './draft.ts';

/** "All three bars", "both benches", "the two racks" speak of goods that were told. */
export const isDefinite = (scan: Scan, item: Draft): boolean =>
  scan.tokens.slice(Math.max(0, firstToken(item) - 1), firstToken(item) + 1).some(({ term }) => term?.sense === 'definite');

/** "Eine 5er hat einen Riss", "a 45 has a chip": the verb within the condition. */
const isSaidToHave = (scan: Scan, at: number): boolean => scan.plain[at] === 'C' && says(scan, at, 'has');

/** "Four 15 kg … one 15 kg disc with a hairline crack": one of those that were told, of which the ad has something to say. */
export function isSingledOut(scan: Scan, into: Draft, other: Draft): boolean {
  const [told, whole] = [other.count?.value ?? 0, into.count?.value ?? 0];
  // "2x45, 2x25, one pair of 45s has a tear".
  const last = Math.max(...other.places.map(({ to }) => to));
  const pair = /^[nd]?p/.test(scan.plain.slice(firstToken(other), firstToken(other) + 2));
  if (pair && told <= whole && !other.ownPrice && /^[%cz][am]{0,2}C/.test(scan.plain.slice(last + 1, last + 6))) return true;
  if (told < 1 || told >= whole || into.count?.implied || other.ownPrice) return false;
  const at = firstToken(other);
  const end = Math.max(...other.places.map(({ to }) => to));
  if (!'dna'.includes(scan.plain[at] ?? '_') || scan.clause[at] === scan.clause[firstToken(into)]) return false;
  if (isSaidToHave(scan, end) || isSaidToHave(scan, end + 1)) return true;
  const behind = scan.plain.slice(end + 1, end + 10);
  // "One bench like new, the other has a cracked leg."
  for (let i = end + 1; told === 1 && i < end + 16 && scan.clause[i] === scan.clause[at]; i += 1)
    if (scan.tokens[i]?.term?.sense === 'ordinal') return true;
  // Of several it must be said by a verb: "two of 10 are cracked", but "two 10s, bent" may be two more.
  if (told > 1) return /^\)?z[^l.;,]{0,4}C/.test(behind) && scan.tokens[end + (behind[0] === ')' ? 2 : 1)]?.term?.sense === 'is';
  return /^[,(-]?(?:c|%|z)[^l.;]{0,6}C/.test(behind) || scan.tokens[end + 1]?.term?.sense === 'which';
}

/** "Pair of squat stands. $50. 2 stands, wide base": as many again in a sentence of their own are the same. */
export const isToldAgain = (scan: Scan, into: Draft, other: Draft): boolean =>
  (into.count?.value ?? 0) > 1 &&
  into.weight === null &&
  other.weight === null &&
  scan.clause[firstToken(into)] !== scan.clause[firstToken(other)];

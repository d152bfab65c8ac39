/** A line that heads a list of plates by their metal alone. */
import type { Scan } from '../text/scan.ts';

/** Most tokens of a line that heads a list by its metal. */
const HEADING = 7;

/** "IRON, all 2 inch", "Small iron", "Steel:": a line of a few words with the metal and no goods, over a list of plates. */
export function isIronHead(scan: Scan, at: number): boolean {
  const metal = scan.tokens[at]?.term?.material;
  if (metal !== 'iron' && metal !== 'steel') return false;
  let first = at;
  let last = at;
  while (at - first < HEADING && scan.tokens[first - 1]?.line === scan.tokens[at]?.line) first -= 1;
  while (last - at < HEADING && scan.tokens[last + 1]?.line === scan.tokens[at]?.line) last += 1;
  if (scan.plain[last] === 'l') last -= 1;
  const words = scan.plain.slice(first, last + 1);
  return words.length <= HEADING && at - first <= 1 && /^[mC]{0,2}[,:(-]?[^k]*$/.test(words) && !/[kPX.]/.test(words);
}

/** Goods and bare numbers in turn in one clause, with no sign of money in the ad. */
import { lettersOf, type Scan, valueAt } from '../text/scan.ts';

const BARS = ['bar', 'curl-bar', 'hex-bar'];
const WEIGHED = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'];

/** "Flat bench 40, squat rack 120, 2x45 plates 80": goods and bare numbers in turn, parted by commas, with no sign of money in the ad. */
const IN_TURN = /(k)[-=]?(n)(?=[,.;l]|$|c|[mC]{0,2}k)/g;
/** Bars weigh as much. */
const BAR_WEIGHTS = [25, 33, 35, 44, 45];

export function inlinePrices(scan: Scan): number[] {
  const letters = lettersOf(scan);
  if (scan.plain.includes('$') || letters.replace(/[^M]/g, '').length > 1) return [];
  const found: { at: number; value: number; sure: boolean; clause: number }[] = [];
  for (const match of letters.matchAll(IN_TURN)) {
    const at = match.index + match[0].length - 1;
    const value = valueAt(scan, at) ?? 0;
    const kind = scan.tokens[match.index]?.term?.kind ?? 'other';
    // "Plates 45" is a weight, "2x45 plates 80" a price.
    const counted = /[nd]x?n[uh]?[mC]{0,2}$/.test(letters.slice(Math.max(0, match.index - 7), match.index));
    const sure = ![...WEIGHED, ...BARS].includes(kind) && value >= 20;
    const bar = BARS.includes(kind) && value >= 25 && !BAR_WEIGHTS.includes(value);
    if (sure || bar || (counted && value >= 20)) found.push({ at, value, sure, clause: scan.clause[at] ?? 0 });
  }
  return found
    .filter(({ clause }) => {
      const same = found.filter((other) => other.clause === clause);
      return same.length >= 2 && same.some(({ sure }) => sure) && same.reduce((sum, { value }) => sum + value, 0) >= 60;
    })
    .map(({ at }) => at);
}

/** A price list without signs of money: at least three lines that name goods and end in a bare number ("Rack - 300", "Flat bench: 60"). */
import { lettersOf, type Scan, valueAt } from '../text/scan.ts';
import { isCount, isPlateSize } from './notation.ts';

const LEAST_LINES = 3;
const LINE_END = /[-:=](n)[.,]?(?=l|$)/g;
/** Goods whose line ends in a count or a weight just as well: below this a number is no price. */
const BARS = ['bar', 'curl-bar', 'hex-bar'];
const WEIGHED = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'];

/** The kind of goods that a line names first, or null. */
function kindOf(scan: Scan, line: number, end: number): string | null {
  let kind: string | null = null;
  for (let i = end; i >= Math.max(0, end - 40) && scan.tokens[i]?.line === line; i -= 1) {
    if (scan.plain[i] === 'k') kind = scan.tokens[i]?.term?.kind ?? null;
    if (scan.letters[i] === 'M') return null;
  }
  return kind;
}

/** Number tokens that are prices by their place in such a list. */
export function linePrices(scan: Scan): number[] {
  const letters = lettersOf(scan);
  const ends: { at: number; value: number; sure: boolean }[] = [];
  LINE_END.lastIndex = 0;
  for (const match of letters.matchAll(LINE_END)) {
    const at = match.index + 1;
    const value = valueAt(scan, at) ?? 0;
    const kind = kindOf(scan, scan.tokens[at]?.line ?? 0, at);
    if (kind === null || value < 10) continue;
    const weighed = WEIGHED.includes(kind) && (isCount(value) || isPlateSize(value));
    const bar = BARS.includes(kind) && (isPlateSize(value) || value === 33 || value === 44);
    ends.push({ at, value, sure: !weighed && !bar });
  }
  const sure = ends.filter((end) => end.sure && end.value >= 15);
  return sure.length >= LEAST_LINES && sure.some(({ value }) => value >= 60) ? sure.map(({ at }) => at) : [];
}

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

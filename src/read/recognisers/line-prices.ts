/** A price list without signs of money: at least three lines that name goods and end in a bare number ("Rack - 300", "Flat bench: 60"). */
import { type Scan, valueAt } from '../text/scan.ts';
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
  const letters = scan.letters.join('');
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

/** Shafts told without a plain measure: "an inch and an eighth", "1 and 1/8 inch", and a bare "28.5" beside a bar's length. */
import { INCH_IN_MILLIMETRES } from '../../units/length.ts';
import type { Fact } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';

const INCH_AND = /(?:[an]?fca?(z)|n(?:-?f)?c(n)f)/dg;
const FRACTIONS: Readonly<Record<string, number>> = { eighth: 1 / 8, quarter: 1 / 4, half: 1 / 2, sixteenth: 1 / 16 };
const BARE = /(?<=[_f"'],)(n)(?=[),.;l]|$)/dg;
/** Shafts that bars are made with and no plate weighs: 28.5 mm stands alone in ads, 28 and 29 too. */
const SHAFTS = [28, 28.5, 29];
const BARS = ['bar', 'curl-bar', 'hex-bar'];

/** Whether the last noun before a place is a bar. */
function ofBar(scan: Scan, at: number): boolean {
  for (let i = at - 1; i >= Math.max(0, at - 24); i -= 1) {
    if (scan.clause[i] !== scan.clause[at]) return false;
    if (scan.plain[i] === 'k') return BARS.includes(scan.tokens[i]?.term?.kind ?? 'other');
  }
  return false;
}

export function readBarSizes(scan: Scan): Fact[] {
  const found: Fact[] = [];
  findAll(scan, INCH_AND, ({ from, to, group }) => {
    const word = scan.tokens[group(1)?.[0] ?? -1]?.text ?? '';
    const number = group(2) ? valueAt(scan, group(2)?.[0] ?? to) : null;
    const fraction = FRACTIONS[word] ?? (number !== null && number < 1 ? number : null);
    const whole = scan.plain[from] === 'n' ? valueAt(scan, from) : 1;
    if (fraction === null || whole !== 1 || !ofBar(scan, from)) return false;
    found.push({
      measure: 'shaftMm',
      value: Math.round(INCH_IN_MILLIMETRES * (1 + fraction) * 1000) / 1000,
      rule: 'inch-and',
      from,
      to,
    });
    return true;
  });
  findAll(scan, BARE, ({ from, to }) => {
    const value = valueAt(scan, from) ?? 0;
    if (!SHAFTS.includes(value) || !ofBar(scan, from)) return false;
    found.push({ measure: 'shaftMm', value, rule: 'bare-shaft', from, to });
    return true;
  });
  return found;
}

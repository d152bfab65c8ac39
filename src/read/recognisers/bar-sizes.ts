/** Shafts told without a plain measure: "an inch and an eighth", "1 and 1/8 inch", and a bare "28.5" beside a bar's length. */
import { INCH_IN_MILLIMETRES } from '../../units/length.ts';
import type { Fact } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';

const INCH_AND = /(?:[an]?fca?(z)|n(?:-?f)?c(n)f)/dg;
const FRACTIONS: Readonly<Record<string, number>> = { eighth: 1 / 8, quarter: 1 / 4, half: 1 / 2, sixteenth: 1 / 16 };
const BARE = /(?<=[_f"'],)(n)(?=[),.;l]|$)/dg;
/** "1 1/4 thick": no unit beside a word of thickness. */
const BARE_THICK = /(?<![n$])(n)[mz]?S(?![azU:=]{0,3}n)/dg;
/** Shafts that bars are made with and no plate weighs: 28.5 mm stands alone in ads, 28 and 29 too. */
const SHAFTS = [28, 28.5, 29];
const BARS = ['bar', 'curl-bar', 'hex-bar'];

/** Whether the last noun before a place is a bar. */
function ofBar(scan: Scan, at: number, near = true, reach = 24): boolean {
  for (let i = at - 1; i >= Math.max(0, at - reach); i -= 1) {
    if (near && scan.clause[i] !== scan.clause[at]) return false;
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
    if (fraction === null || whole !== 1 || !ofBar(scan, from, fraction > 1 / 4)) return false;
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
  findAll(scan, BARE_THICK, ({ from, to, group }) => {
    const value = valueAt(scan, group(1)?.[0] ?? from) ?? 0;
    const inches = value > 1 && value < 1.6;
    if ((!inches && !(value >= 25 && value <= 35)) || !ofBar(scan, from)) return false;
    found.push({
      measure: 'shaftMm',
      value: inches ? Math.round(value * INCH_IN_MILLIMETRES * 100) / 100 : value,
      rule: 'bare-thick',
      from,
      to,
    });
    return true;
  });
  return found;
}

/** A range with its step: "dumbbells 5-50 lb in 5 lb increments", "5 through 30 in fives, pairs", "10s to 50s by 5s". Without a step a range tells no pieces. */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, unitBetween, valueAt } from '../text/scan.ts';
import { findLetter, isCount, isSize, UNIT } from './notation.ts';

const SERIES = new RegExp(
  `(n)${UNIT}?([-zK])(n)${UNIT}?m{0,2}(k?)t?(?:[zf]p|,?[da]?p[eE])?[,(]?c?(?:z{1,2}(?=[zxf]n))?([zxf,])((?:n(?:-?[uh])?s?|v)-?)(z?)\\)?(?:[,(]?(?:[da]?t?o?p[eE]?|([nd])E)\\)?)?(?:\\(n[pk]{1,2}\\))?`,
  'dg',
);
/** "Dumbbells 1 kg to 10 kg (ten pairs)": so many pieces whose weights are told by their range alone. */
const RANGE_PIECES = new RegExp(
  `(?:(k)t?[:,(]?)?(n)${UNIT}?([-z])(n)${UNIT}?m{0,2}(k?)t?(?:[-:,(]{0,2}(?:([nd])x?|a)?(p)(?![oEuhqs]))?`,
  'dg',
);
/** "A full run in fives, pair of each, 5 thru 50". */
const STEP_FIRST = new RegExp(`(n${UNIT}|v)z?,?(?:[da]?(p)[eE],?)?z?(n)${UNIT}?([-z])(n)${UNIT}?(?:,?[da]?(p)[eE])?`, 'dg');
const MOST_MEMBERS = 30;

/** Whether the token between two numbers makes a range of them. */
const isTo = (scan: Scan, at: number): boolean =>
  scan.plain[at] === '-' || scan.tokens[at]?.term?.sense === 'to' || scan.tokens[at]?.text === 'up to';

export function readSeries(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, SERIES, ({ from, to, group }) => {
    const high = valueAt(scan, group(3)?.[0] ?? to);
    const low = valueAt(scan, from);
    // "30 in fives" is no length.
    if (scan.plain[group(5)?.[0] ?? to] === 'f' && scan.tokens[group(5)?.[0] ?? to]?.term?.length !== 'in') return false;
    const [stepAt, stepEnd] = group(6) ?? [to, to];
    const step = valueAt(scan, stepAt);
    const named = scan.tokens[group(7)?.[0] ?? to]?.term?.sense === 'steps';
    const every = scan.tokens[group(5)?.[0] ?? to]?.term?.sense === 'every';
    const told = named || every || scan.plain[stepAt] === 'v' || scan.plain[stepEnd] === 's';
    if (!told || low === null || high === null || step === null || !isTo(scan, group(2)?.[0] ?? from)) return false;
    const members = Math.round((high - low) / step) + 1;
    if (step <= 0 || members < 2 || members > MOST_MEMBERS || Math.abs(low + (members - 1) * step - high) > 0.01) return false;
    const unit = unitBetween(scan, from, to);
    if (!isSize(high, unit)) return false;
    // "Pairs from 10 to 30 lb in 5s", "…, one pair each".
    const pairs = scan.plain.slice(from, to + 1).includes('p') || /p[,:z]?$/.test(scan.plain.slice(Math.max(0, from - 2), from));
    const count = group(8) ? valueAt(scan, group(8)?.[0] ?? to) : pairs ? 2 : null;
    for (let i = 0; i < members; i += 1) {
      const weight = Math.round((low + i * step) * 100) / 100;
      const noun = group(4) ? findLetter(scan, from, to, 'k') : null;
      found.push({ rule: 'series', from, to, count, weight, unit, noun, list: from });
    }
    return true;
  });
  if (/z[nv]s?z?,/.test(scan.plain))
    findAll(scan, STEP_FIRST, ({ from, to, group }) => {
      const step = valueAt(scan, from);
      const low = valueAt(scan, group(3)?.[0] ?? from);
      const high = valueAt(scan, group(5)?.[0] ?? to);
      const link = group(4)?.[0] ?? from;
      const range = isTo(scan, link) || /^(?:to|thru|through)$/.test(scan.tokens[link]?.text ?? '');
      if (step === null || low === null || high === null || step <= 0 || !range || scan.plain[from - 1] !== 'z') return false;
      const members = Math.round((high - low) / step) + 1;
      if (members < 3 || members > MOST_MEMBERS || Math.abs(low + (members - 1) * step - high) > 0.01) return false;
      const unit = unitBetween(scan, from, to);
      if (!isSize(high, unit)) return false;
      const count = group(2) || group(6) ? 2 : null;
      for (let i = 0; i < members; i += 1)
        found.push({ rule: 'series', from, to, count, weight: low + i * step, unit, noun: null, list: from });
      return true;
    });
  findAll(scan, RANGE_PIECES, ({ from, to, group }) => {
    const noun = (group(1) ?? group(5))?.[0] ?? null;
    const kind = noun === null ? undefined : scan.tokens[noun]?.term?.kind;
    const low = valueAt(scan, group(2)?.[0] ?? from);
    const high = valueAt(scan, group(4)?.[0] ?? from);
    const pieces = group(6) ? valueAt(scan, group(6)?.[0] ?? to) : 1;
    const pair = group(7)?.[0] ?? null;
    if (low === null || high === null || low >= high || !isCount(pieces) || !isTo(scan, group(3)?.[0] ?? from)) return false;
    if ((kind !== 'dumbbell' && kind !== 'kettlebell') || !isSize(high, unitBetween(scan, from, to))) return false;
    // "Dumbbells 2-25 lb" may be two of 25; "5 lb - 50 lb" is a range, and "in pairs" is one.
    const sure = 'uhqs'.includes(scan.plain[(group(2)?.[1] ?? from) + 1] ?? '_') || scan.plain[group(3)?.[0] ?? from] === 'z';
    if (pair === null && !(group(1) && sure)) return false;
    const several = pair !== null && group(6) === null && scan.tokens[pair]?.term?.plural === true;
    const count = pair === null || several ? null : pieces * 2;
    found.push({ rule: count === null ? 'weight-range' : 'range-pairs', from, to, count, weight: null, unit: null, noun });
    return true;
  });
  return found;
}

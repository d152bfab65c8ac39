/** Weight of the lot in other words: "270 in plates", "bar + 270 lb of plates = 315", "had it all on the scale, it said 345". */
import type { Total } from '../mention.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { weightAt } from './notation.ts';

const IN_PLATES = /(n[uh]?)[fz][mC]{0,2}(k)/dg;
const SUM = /(?<=[km)_])=U?(n[uh]?)(?=[l.;!)]|$)/dg;
const SCALED = /(?<![$xM])(n[uh]?)(?![xndfJ$%k:/-])/dg;

/** Lightest lot that such words are said of, in the unit they name. */
const LEAST = 60;

export function readWeighedLots(scan: Scan): Total[] {
  const found: Total[] = [];
  const take = (rule: string, from: number, to: number): boolean => {
    const weight = weightAt(scan, from, to);
    if (!weight || weight.value < LEAST || weight.value > 20_000) return false;
    found.push({ rule, from, to, weight: weight.value, unit: weight.unit, set: false });
    for (let i = from; i <= to; i += 1) blank(scan, i);
    return true;
  };
  findAll(scan, IN_PLATES, ({ group }) => {
    const [from, to] = group(1) ?? [0, 0];
    const noun = scan.tokens[group(2)?.[0] ?? 0]?.term;
    if (scan.tokens[to + 1]?.text !== 'in' || !noun?.plural || noun.kind !== 'plate') return false;
    return take('weight-in-goods', from, to) ? 'claimed' : false;
  });
  // The sum of a bar and plates; "4 x 45 = 180" is the subtotal of its line (see totals.ts).
  findAll(scan, SUM, ({ from, group }) => {
    const [start, end] = group(1) ?? [from, from];
    let goods = false;
    let joined = false;
    for (let i = from - 1; i >= 0 && scan.clause[i] === scan.clause[from] && from - i < 30; i -= 1) {
      if (scan.plain[i] === 'k') goods = true;
      if (scan.plain[i] === 'c') joined = true;
    }
    return goods && joined && take('total-sum', start, end) ? 'claimed' : false;
  });
  const scales = scan.tokens.flatMap(({ term }, at) => (term?.sense === 'scale' ? [at] : []));
  if (scales.length === 0) return found;
  const clauses = new Set(scales.map((at) => scan.clause[at]));
  const whole = new Set(
    [...scan.plain].flatMap((letter, at) => (letter === 'L' && clauses.has(scan.clause[at]) ? [scan.clause[at]] : [])),
  );
  findAll(scan, SCALED, ({ from, to }) => {
    if (!whole.has(scan.clause[from]) || (valueAt(scan, from) ?? 0) < LEAST) return false;
    return take('total-on-scale', from, to) ? 'claimed' : false;
  });
  return found;
}

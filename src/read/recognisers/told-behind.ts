/**
 * The weight, then its pieces in a sentence: "45s there are 8, 25s there are 4", "35s - two - $30 each", "10s there is 6 of those and 5s 2",
 * "45er sind es vier"; and the pieces of a size that is named with its article: "4 of the 45, 2 of the 35".
 */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { isCount, isPlateSize, isSize, MODIFIERS, UNIT, weightAt } from './notation.ts';

const TOLD = new RegExp(
  `(n${UNIT}|v)${MODIFIERS}(k?)(?:[-,:]?[cz]?%U?(?:([nd])(p?)|a?(p))(?:&|o?(?=[,.;:!()lcM-]|$))|-([nd])(p?)(?=-_{0,3}M|-[$]))(?![uhqsxfJ$])`,
  'dg',
);
const OF_THE = /(?<![xuhsf\d])([nd])o(n)(?=[,.;!)lc]|z|$)(?!,?n?[uhqsxf])/dg;
/** In a list of such: "and 5s 2". */
const BARE = new RegExp(`(?:^|(?<=[,c;.l]))(n${UNIT}|v)([nd])(p?)(?=[,.;!)lc]|$)`, 'dg');

export function readToldBehind(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  const clauses = new Set<number | undefined>();
  const take = (
    rule: string,
    place: readonly [number, number],
    weight: readonly [number, number] | null,
    pieces: readonly [number, number] | null,
    pairs: boolean,
    noun: number | null,
  ): boolean => {
    const told = weight && weightAt(scan, weight[0], weight[1]);
    const count = pieces === null && pairs ? 1 : pieces && valueAt(scan, pieces[0]);
    if (!told || !isCount(count) || count > 24 || !isSize(told.value, told.unit)) return false;
    const number = pairs ? 2 * count : count;
    found.push({ rule, from: place[0], to: place[1], count: number, weight: told.value, unit: told.unit, noun });
    clauses.add(scan.clause[place[0]]);
    return true;
  };
  if (/%U?(?:[nd]|a?p)|-[nd]p?-/.test(scan.plain))
    findAll(scan, TOLD, ({ from, to, group }) =>
      take(
        'weight-then-count',
        [from, to],
        group(1),
        group(3) ?? group(6),
        (group(4) ?? group(5) ?? group(7)) !== null,
        group(2)?.[0] ?? null,
      ),
    );
  if (scan.plain.includes('on'))
    findAll(scan, OF_THE, ({ from, to, group }) => {
      const weight = valueAt(scan, to) ?? 0;
      const named =
        / (?:the|my|those|these)$/.test(scan.tokens[from + 1]?.text ?? '') || scan.tokens[from + 1]?.term?.sense === 'of-the';
      return named && isPlateSize(weight) && take('count-of-weight', [from, to], group(2), group(1), false, null);
    });
  if (clauses.size > 0)
    findAll(
      scan,
      BARE,
      ({ from, to, group }) =>
        clauses.has(scan.clause[from]) && take('weight-then-count', [from, to], group(1), group(2), group(3) !== null, null),
    );
  return found;
}

/** The weight, then its pieces: "10 kg 4 Stück", "45 lb 4 pcs", "20er 2 Stück". Where pieces stand first ("4 Stück 10 kg, 2 Stück 5 kg") it holds off. */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { COUNT, isSize, isStock, MODIFIERS, UNIT, weightAt } from './notation.ts';

const PIECES_BEHIND = new RegExp(
  `(?<!je|[xep])(n${UNIT}|v)${MODIFIERS}(k?)[-:=,]?(${COUNT})j(?![\\d:=]|[aeo]?${MODIFIERS}[nvk])`,
  'dg',
);
/** "2 Stück mit 15 kg", "4 pieces at 10 kg". */
const PIECES_WITH = new RegExp(`(${COUNT})j([cz@])(n${UNIT})(?!${MODIFIERS}[xnd])`, 'dg');
/** Behind "pcs." goods that the pieces could belong to as well. */
const GOODS_BEHIND = new RegExp(`^\\.[aeo]?${MODIFIERS}[nvk]`);

export function readPieces(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  if (scan.plain.includes('j'))
    findAll(scan, PIECES_WITH, ({ from, to, group }) => {
      const [start, end] = group(3) ?? [to, to];
      const weight = weightAt(scan, start, end);
      const count = valueAt(scan, from);
      const link = scan.tokens[start - 1];
      const linked = link?.term?.sense === 'with' || scan.plain[start - 1] === '@';
      if (!linked || !weight || !isStock(count) || !isSize(weight.value, weight.unit)) return false;
      found.push({ rule: 'pieces-with-weight', from, to, count, weight: weight.value, unit: weight.unit, noun: null });
      return true;
    });
  let last = -1;
  findAll(scan, PIECES_BEHIND, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [from, from];
    const weight = weightAt(scan, start, end);
    const count = valueAt(scan, group(3)?.[0] ?? to);
    if (!weight || !isStock(count) || !isSize(weight.value, weight.unit)) return false;
    // "4 pcs. 25 lb": the pieces stand before; "45 lb plates, 120 pcs. 25 lb plates, 80 pcs.": behind.
    const pieces = scan.plain[from - 1] === '.' ? from - 2 : from - 1;
    if (scan.plain[pieces] === 'j' && pieces !== last) return false;
    const opens = from === 0 || scan.clause[from - 1] !== scan.clause[from];
    if (group(2) === null && !opens && GOODS_BEHIND.test(scan.plain.slice(to + 1, to + 9))) return false;
    last = to;
    found.push({ rule: 'weight-pieces', from, to, count, weight: weight.value, unit: weight.unit, noun: group(2)?.[0] ?? null });
    return true;
  });
  return found;
}

/** The weight, then its pieces: "10 kg 4 Stück", "45 lb 4 pcs", "20er 2 Stück". Where pieces stand first ("4 Stück 10 kg, 2 Stück 5 kg") it holds off. */
import type { Quantity } from '../mention.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { COUNT, isSize, isStock, MODIFIERS, UNIT, weightAt } from './notation.ts';

const PIECES_BEHIND = new RegExp(
  `(?<!j\\.?|je|[xep])(n${UNIT}|v)${MODIFIERS}(k?)[-:=,]?(${COUNT})j(?![\\d:=]|\\.?[aeo]?${MODIFIERS}[nvk])`,
  'dg',
);

export function readPieces(scan: Scan): Quantity[] {
  const found: Quantity[] = [];
  findAll(scan, PIECES_BEHIND, ({ from, to, group }) => {
    const [start, end] = group(1) ?? [from, from];
    const weight = weightAt(scan, start, end);
    const count = valueAt(scan, group(3)?.[0] ?? to);
    if (!weight || !isStock(count) || !isSize(weight.value, weight.unit)) return false;
    found.push({ rule: 'weight-pieces', from, to, count, weight: weight.value, unit: weight.unit, noun: group(2)?.[0] ?? null });
    return true;
  });
  return found;
}

/** What a sound one costs, where what is on offer is good for nothing: so that a buyer knows what to look for instead. */
import type { MoneyRange, Sound } from '../listing/evaluation.ts';
import type { Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { type Range, scale } from '../units/range.ts';
import { isByWeight } from './categories.ts';
import type { Good } from './goods.ts';

/** Of goods of one kind and category; a price for a mixed lot of junk would tell nothing. Null too where the buyer has no rate for it. */
export function soundOf(goods: readonly Good[], { unit, currency }: Settings): Sound | null {
  const [first] = goods;
  if (first === undefined || first.category === null || first.prices === null) return null;
  if (goods.some(({ item, category }) => category !== first.category || item.kind.value !== first.item.kind.value)) return null;
  const per = isByWeight(first.category) ? unit : 'piece';
  const size = per === 'piece' ? 1 : inPounds({ value: 1, unit: per });
  const money = (range: Range): MoneyRange => ({ ...scale(range, size), currency });
  return { kind: first.item.kind.value, per, used: money(first.prices.used), fresh: money(first.prices.delivered) };
}

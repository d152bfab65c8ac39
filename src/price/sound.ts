/** What a sound one costs, where what is on offer is good for nothing: so that a buyer knows what to look for instead. */
import type { MoneyRange, Sound } from '../listing/evaluation.ts';
import type { RateCategory, Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { type Range, scale } from '../units/range.ts';
import { isByWeight } from './categories.ts';
import { isWideSleeve, sleevesOf } from './fit.ts';
import type { Good } from './goods.ts';

/** Of no use on a wide sleeve, however sound they are. */
const ONE_INCH: ReadonlySet<RateCategory> = new Set(['one-inch-plate', 'one-inch-bar']);

/**
 * Of goods of one kind and category; a price for a mixed lot of junk would tell nothing. Null too where the buyer has no rate for it, and
 * for a kind that no sleeve of the buyer's takes.
 */
export function soundOf(goods: readonly Good[], settings: Settings): Sound | null {
  const { unit, currency } = settings;
  const [first] = goods;
  if (first === undefined || first.category === null || first.prices === null) return null;
  if (ONE_INCH.has(first.category) && sleevesOf(settings).every(isWideSleeve)) return null;
  if (goods.some(({ item, category }) => category !== first.category || item.kind.value !== first.item.kind.value)) return null;
  const per = isByWeight(first.category) ? unit : 'piece';
  const size = per === 'piece' ? 1 : inPounds({ value: 1, unit: per });
  const money = (range: Range): MoneyRange => ({ ...scale(range, size), currency });
  return { kind: first.item.kind.value, per, used: money(first.prices.used), fresh: money(first.prices.delivered) };
}

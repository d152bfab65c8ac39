/** What the same goods cost used and new: per usable pound for plates, as a lot for everything else. */
import { inPounds, type MassUnit } from '../units/mass.ts';
import { type Range, scale, sumIndependent, sumShared } from '../units/range.ts';
import type { Good } from './goods.ts';

/** Errors of one category's rate go together; those of different categories are independent. */
function byCategory(goods: readonly Good[], of: (good: Good) => Range): Range {
  const groups = new Map<string, Range[]>();
  for (const good of goods) {
    const key = good.category ?? '';
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [of(good)]);
    else group.push(of(good));
  }
  const sum = sumIndependent([...groups.values()].map(sumShared));
  return { ...sum, low: Math.max(0, sum.low) };
}

/** Worth of all goods, used as they are or new, in minor units. */
export const sumWorth = (goods: readonly Good[], which: 'worth' | 'fresh'): Range => byCategory(goods, (good) => good[which]);

export interface Baseline extends Range {
  readonly per: 'lot' | MassUnit;
}

/** Rates for sound goods of the kinds on offer. `plates` are the goods with usable plate weight; without any, the lot counts as a whole. */
export function baselines(plates: readonly Good[], goods: readonly Good[], unit: MassUnit): { used: Baseline; fresh: Baseline } {
  const weight = plates.reduce((sum, good) => sum + good.quantity.likely, 0);
  if (weight > 0) {
    const perUnit = inPounds({ value: 1, unit }) / weight;
    const rate = (which: 'used' | 'delivered'): Baseline => ({
      ...scale(
        byCategory(plates, (good) => scale(good.prices?.[which] ?? { low: 0, likely: 0, high: 0 }, good.quantity.likely)),
        perUnit,
      ),
      per: unit,
    });
    return { used: rate('used'), fresh: rate('delivered') };
  }
  const lot = (which: 'used' | 'delivered'): Baseline => ({
    ...byCategory(goods, (good) => scale(good.prices?.[which] ?? { low: 0, likely: 0, high: 0 }, good.quantity.likely)),
    per: 'lot',
  });
  return { used: lot('used'), fresh: lot('delivered') };
}

/** What the same goods cost used and new: per usable pound for plates, as a lot for everything else. */
import { inPounds, type MassUnit } from '../units/mass.ts';
import { exactly, type Range, scale, sumIndependent, sumShared, times } from '../units/range.ts';
import type { Good } from './goods.ts';
import { rangeOf, valued } from './pounds.ts';

/** Goods of one category, whose rate is off for all of them alike; those of different categories are independent. */
function byCategory<T>(goods: readonly Good[], of: (goods: readonly Good[]) => T): T[] {
  const groups = new Map<string, Good[]>();
  for (const good of goods) {
    const key = good.category ?? '';
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [good]);
    else group.push(good);
  }
  return [...groups.values()].map(of);
}

const total = (ranges: readonly Range[]): Range => {
  const sum = sumIndependent(ranges);
  return { ...sum, low: Math.max(0, sum.low) };
};

/** What one pound or piece of a category costs new and delivered on average: the fee for a long or heavy parcel is not that of every piece. */
function deliveredOf(group: readonly Good[]): Range {
  const parts = group.map(({ kept, prices }) => (prices === null ? exactly(0) : scale(prices.delivered, kept.weight.likely)));
  const quantity = group.reduce((sum, { kept }) => sum + kept.weight.likely, 0);
  return quantity > 0 ? scale(sumShared(parts), 1 / quantity) : (group[0]?.prices?.delivered ?? exactly(0));
}

/** Worth of all goods in minor units: as they are, with what is sold on at what it brings; or what is kept, new. */
export function sumWorth(goods: readonly Good[], which: 'worth' | 'fresh'): Range {
  const kept = byCategory(goods, (group) => {
    const prices = group[0]?.prices;
    if (!prices) return exactly(0);
    if (which === 'fresh') return times(rangeOf(group.map((good) => good.kept)), deliveredOf(group));
    return times(rangeOf(group.map((good) => valued(good.kept, good.factor))), prices.used);
  });
  return total(which === 'fresh' ? kept : [...kept, sumShared(goods.map((good) => good.resale))]);
}

export interface Baseline extends Range {
  readonly per: 'lot' | MassUnit;
}

const atRates = (goods: readonly Good[], which: 'used' | 'delivered'): Range =>
  total(
    byCategory(goods, (group) =>
      sumShared(group.map(({ prices, quantity }) => (prices === null ? exactly(0) : scale(prices[which], quantity.likely)))),
    ),
  );

/** Rates for sound goods of the kinds on offer. `plates` are the goods with usable plate weight; without any, the lot counts as a whole. */
export function baselines(plates: readonly Good[], goods: readonly Good[], unit: MassUnit): { used: Baseline; fresh: Baseline } {
  const weight = plates.reduce((sum, good) => sum + good.quantity.likely, 0);
  if (weight > 0) {
    const perUnit = inPounds({ value: 1, unit }) / weight;
    const rate = (which: 'used' | 'delivered'): Baseline => ({
      ...scale(atRates(plates, which), perUnit),
      per: unit,
    });
    return { used: rate('used'), fresh: rate('delivered') };
  }
  const lot = (which: 'used' | 'delivered'): Baseline => ({
    ...atRates(goods, which),
    per: 'lot',
  });
  return { used: lot('used'), fresh: lot('delivered') };
}

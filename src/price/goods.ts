/** What each item on offer is worth to the buyer, in minor units of the buyer's currency. */
import type { Flag } from '../listing/evaluation.ts';
import type { Item, Reading } from '../listing/reading.ts';
import type { RateCategory, Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { exactly, type Range, scale, times } from '../units/range.ts';
import { categoryOf, isByWeight } from './categories.ts';
import { conditionFactor } from './condition.ts';
import { sloppyFrom } from './fit.ts';
import { type Prices, pricesOf } from './rates.ts';
import type { PlateWeight } from './usable.ts';

export interface Good {
  readonly item: Item;
  readonly category: RateCategory | null;
  readonly prices: Prices | null;
  /** Pounds, or pieces, that count. */
  readonly quantity: Range;
  /** At the going rate, in the condition stated. Nothing with a deal-breaker on it. */
  readonly worth: Range;
  /** The same quantity new, delivered. */
  readonly fresh: Range;
  /** The most that the item is worth paying for: see walk-away.ts. */
  readonly ceiling: number;
  readonly plate: PlateWeight | null;
  /** There is something here, but the ad doesn't say enough to value it. */
  readonly unknown: boolean;
}

const NOTHING = exactly(0);

/** Loose plates are worth less: an assumption, by clearance over the limit. */
const looseFactor = (plate: PlateWeight | null, sleeveMm: number): number => {
  const over = (plate?.fit.clearanceMm ?? Number.NEGATIVE_INFINITY) - sloppyFrom(sleeveMm);
  if (over < 0) return 1;
  return over <= 1 ? 0.95 : 0.8;
};

/** A bar too short for a rack is worth a part of a full one; an assumption. */
const SHORT_BAR_FACTOR = 0.4;

function quantityOf(item: Item, category: RateCategory | null, plate: PlateWeight | null): Range | null {
  if (plate !== null) return plate.unknown ? null : plate.usable;
  if (category !== null && isByWeight(category)) {
    if (item.totalWeight !== null) return exactly(inPounds(item.totalWeight.value));
    return item.unitWeight === null ? null : exactly(inPounds(item.unitWeight.value) * (item.count?.value ?? 1));
  }
  return exactly(item.count?.value ?? 1);
}

/** A bar that the ad shows to be a good one: a useful shaft, and said to be straight. Common practice, no source. */
const isProvenBar = (item: Item): boolean => {
  const shaft = item.shaftMm?.value ?? 0;
  const straight = item.conditions.some(({ value }) => value === 'straight' || value === 'new' || value === 'like-new');
  return straight && shaft >= 27.5 && shaft < 30.5;
};

/**
 * The most that a sound piece fetches used. Iron is iron; but bars, racks and benches differ in quality, and the top of their range is
 * for the best: without proof the buyer goes half the way from the likely price to the top.
 */
const topOf = (item: Item, category: RateCategory, used: Range): number =>
  isByWeight(category) || (category === 'bar' && isProvenBar(item)) ? used.high : (used.likely + used.high) / 2;

/**
 * Values every item. The ceiling of an item is the lower of the top of the going rate and of new delivered less the buyer's margin,
 * both in the condition stated.
 */
export function goodsOf(reading: Reading, weights: readonly PlateWeight[], flags: readonly Flag[], settings: Settings): Good[] {
  const plates = new Map(weights.map((plate) => [plate.item.id, plate]));
  const broken = new Set(flags.filter((flag) => flag.weight === 'deal-breaker').map((flag) => flag.item));
  const shortBars = new Set(flags.filter((flag) => flag.id === 'short-bar').map((flag) => flag.item));
  const table = new Map<RateCategory, Prices | null>();
  const pricesFor = (category: RateCategory): Prices | null => {
    const known = table.get(category);
    if (known !== undefined) return known;
    const prices = pricesOf(category, settings);
    table.set(category, prices);
    return prices;
  };
  return reading.items.map((item) => {
    const plate = plates.get(item.id) ?? null;
    const category = categoryOf(item);
    const prices = category === null ? null : pricesFor(category);
    const known = quantityOf(item, category, plate);
    const quantity = broken.has(item.id) ? NOTHING : (known ?? NOTHING);
    const base = { item, category, prices, quantity, plate, unknown: known === null && !broken.has(item.id) };
    if (category === null || prices === null) return { ...base, worth: NOTHING, fresh: NOTHING, ceiling: 0 };
    const factor =
      conditionFactor(item) * looseFactor(plate, settings.sleeveMm) * (shortBars.has(item.id) ? SHORT_BAR_FACTOR : 1);
    const most = Math.min(topOf(item, category, prices.used), prices.delivered.likely * (1 - settings.margin));
    return {
      ...base,
      worth: scale(times(quantity, prices.used), factor),
      fresh: times(quantity, prices.delivered),
      ceiling: quantity.likely * most * factor,
    };
  });
}

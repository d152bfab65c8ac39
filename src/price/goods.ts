/** What each item on offer is worth to the buyer, in minor units of the buyer's currency. */
import type { Flag } from '../listing/evaluation.ts';
import { doubtfulBow, type Item, isKept, OF_ONE_PIECE, type Reading } from '../listing/reading.ts';
import type { RateCategory, Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { exactly, type Range, scale, sumShared, times } from '../units/range.ts';
import { categoryOf, isByWeight } from './categories.ts';
import { conditionFactor } from './condition.ts';
import { FAULTLESS, faultsOf, makeFactor } from './faults.ts';
import { sloppyFrom } from './fit.ts';
import { guessed, NO_POUNDS, type Pounds, rangeOf, someOf } from './pounds.ts';
import { type Prices, pricesForItem, pricesOf } from './rates.ts';
import { resaleOf } from './resale.ts';
import { type Kept, surplusOf } from './surplus.ts';
import type { PlateWeight } from './usable.ts';

export interface Good {
  readonly item: Item;
  readonly category: RateCategory | null;
  readonly prices: Prices | null;
  /** Pounds, or pieces, that count for the buyer: nothing of what is sold on. */
  readonly quantity: Range;
  /** The part of the quantity that is kept at its full worth, as pounds that add up over lines; pieces likewise. */
  readonly kept: Pounds;
  /** What condition, play and shortness leave of the worth of a sound piece. */
  readonly factor: number;
  /** Usable pounds beyond what the kit lacks. */
  readonly surplus: number;
  /** What is sold on brings: all of it, or the surplus. */
  readonly resale: Range;
  /** At the going rate, in the condition stated, and at resale what is sold on. Nothing with a deal-breaker on it. */
  readonly worth: Range;
  /** What is kept, new, delivered. */
  readonly fresh: Range;
  /** The most that the item is worth paying for: see walk-away.ts. */
  readonly ceiling: number;
  readonly plate: PlateWeight | null;
  /** There is something here, but the ad doesn't say enough to value it. */
  readonly unknown: boolean;
}

/** Plates that the buyer means to load. */
export const isKeptPlate = (good: Good | undefined): boolean => good !== undefined && good.plate !== null && isKept(good.item);

const NOTHING = exactly(0);

/** Loose plates are worth less: an assumption, by clearance over the limit. */
const looseFactor = (plate: PlateWeight | null, settings: Settings): number => {
  if (plate === null || plate.fit.clearanceMm === null) return 1;
  const over = plate.fit.clearanceMm - sloppyFrom(plate.fit.sleeveMm, settings).value;
  if (over < 0) return 1;
  return over <= 1 ? 0.95 : 0.8;
};

/** What is left of several where the ad says that one of them is cracked or bent. Plates are counted by usable.ts. */
function soundShare({ count, conditions }: Item): number {
  const pieces = count?.value ?? 1;
  const ofOne = conditions.some(({ rule }) => rule === OF_ONE_PIECE);
  return ofOne && pieces > 1 ? (pieces - 1) / pieces : 1;
}

/** What is on offer of an item, in pounds or pieces; null where the ad doesn't say enough. Of plates, what is usable. */
function quantityOf(item: Item, category: RateCategory | null, plate: PlateWeight | null): Pounds | null {
  if (plate !== null) return plate.unknown ? null : plate.pounds.usable;
  const sound = soundShare(item);
  if (category !== null && isByWeight(category)) {
    if (item.totalWeight !== null) return guessed(exactly(inPounds(item.totalWeight.value) * sound));
    return item.unitWeight === null ? null : guessed(exactly(inPounds(item.unitWeight.value) * (item.count?.value ?? 1) * sound));
  }
  return guessed(exactly((item.count?.value ?? 1) * sound));
}

/** A bar that the ad shows to be a good one: a useful shaft, and said to be straight. Common practice, no source. */
const isProvenBar = (item: Item): boolean => {
  const shaft = item.shaftMm?.value ?? 0;
  const straight = item.conditions.some(({ value }) => value === 'straight' || value === 'new' || value === 'like-new');
  return straight && doubtfulBow(item) === null && shaft >= 27.5 && shaft < 30.5;
};

/**
 * The most that a sound piece fetches used. Iron is iron; but bars, racks and benches differ in quality, and the top of their range is
 * for the best: without proof the buyer goes half the way from the likely price to the top.
 */
const topOf = (item: Item, category: RateCategory, used: Range): number =>
  isByWeight(category) || (category === 'bar' && isProvenBar(item)) ? used.high : (used.likely + used.high) / 2;

/** An item before the kit's need is known. */
interface Valued extends Pick<Good, 'item' | 'category' | 'prices' | 'plate' | 'factor' | 'unknown'> {
  readonly pounds: Pounds;
  /** What a pound or piece is worth paying for at most, in minor units. */
  readonly most: number;
  readonly unsaleable: boolean;
}

/** The kept, the surplus and the sold part of an item. */
function goodOf(valued: Valued, surplus: number, settings: Settings): Good {
  const { item, category, prices, plate, factor, unknown, pounds, most, unsaleable } = valued;
  const base = { item, category, prices, plate, factor, unknown };
  const nothing = { quantity: NOTHING, kept: NO_POUNDS, surplus: 0, resale: NOTHING, worth: NOTHING, fresh: NOTHING, ceiling: 0 };
  if (item.plan?.value === 'nothing') return { ...base, ...nothing };
  if (item.plan?.value === 'sell') {
    const all = plate === null ? pounds : plate.pounds.sold;
    const resale = unsaleable && item.resale === null ? NOTHING : resaleOf(item, rangeOf([all]), prices, factor, settings);
    return { ...base, ...nothing, resale, worth: resale, ceiling: resale.likely };
  }
  const quantity = rangeOf([pounds]);
  if (prices === null) return { ...base, ...nothing, quantity };
  const kept = someOf(pounds, 1 - surplus);
  const rest = surplus === 0 ? NOTHING : scale(quantity, surplus);
  const resale = surplus === 0 ? NOTHING : scale(rest, prices.used.low * factor);
  const keptQuantity = surplus === 0 ? quantity : rangeOf([kept]);
  const worth = scale(times(keptQuantity, prices.used), factor);
  return {
    ...base,
    quantity,
    kept,
    surplus: rest.likely,
    resale,
    worth: surplus === 0 ? worth : sumShared([worth, resale]),
    fresh: times(keptQuantity, prices.delivered),
    ceiling: (keptQuantity.likely * most + rest.likely * Math.min(most, prices.used.low)) * factor,
  };
}

/**
 * Values every item. The ceiling of an item is the lower of the top of the going rate and of new delivered less the buyer's margin,
 * both in the condition stated; of what is sold on, and of plates beyond the kit's need, what it resells for.
 */
export function goodsOf(reading: Reading, weights: readonly PlateWeight[], flags: readonly Flag[], settings: Settings): Good[] {
  const plates = new Map(weights.map((plate) => [plate.item.id, plate]));
  const faults = faultsOf(flags);
  const table = new Map<RateCategory, Prices | null>();
  const pricesFor = (category: RateCategory): Prices | null => {
    const known = table.get(category);
    if (known !== undefined) return known;
    const prices = pricesOf(category, settings);
    table.set(category, prices);
    return prices;
  };
  const valued = reading.items.map((item): Valued => {
    const plate = plates.get(item.id) ?? null;
    const category = categoryOf(item);
    const listed = category === null ? null : pricesFor(category);
    const prices = category === null || listed === null ? null : pricesForItem(item, category, listed, settings);
    const offered = quantityOf(item, category, plate);
    const faulty = faults.get(item.id) ?? FAULTLESS;
    const { broken, unsaleable } = faulty;
    return {
      item,
      category,
      prices,
      plate,
      pounds: (broken && isKept(item)) || offered === null ? NO_POUNDS : offered,
      factor: conditionFactor(item) * looseFactor(plate, settings) * makeFactor(item, faulty),
      unknown: offered === null && !broken && isKept(item),
      most:
        category === null || prices === null
          ? 0
          : Math.min(topOf(item, category, prices.used), prices.delivered.likely * (1 - settings.margin)),
      unsaleable,
    };
  });
  const surplus = surplusOf(valued.flatMap(needed), settings.need);
  return valued.map((one) => goodOf(one, surplus.get(one.item.id) ?? 0, settings));
}

/** A line as the kit's need sees it. */
function needed({ item, plate, prices, pounds, most, factor }: Valued): Kept[] {
  if (plate === null || plate.unit === null || prices === null || !isKept(item)) return [];
  return [{ item, unit: plate.unit, pounds: pounds.weight.likely, gain: (most - Math.min(most, prices.used.low)) * factor }];
}

/** What a category costs used and new. */
import type { Item } from '../listing/reading.ts';
import type { CategoryRate, RateCategory, RateCell, Settings } from '../listing/settings.ts';
import { inPounds } from '../units/mass.ts';
import { exponentOf } from '../units/money.ts';
import { type Range, scale, sumIndependent } from '../units/range.ts';
import { isByWeight } from './categories.ts';
import { DEFAULT_CURRENCY, DEFAULT_RATES } from './default-rates.ts';
import { type ParcelClass, parcelClassOf, parcelOf, SURCHARGES } from './shipping.ts';

/** Prices of one category in minor units, per pound or per piece. */
export interface Prices {
  readonly used: Range;
  /** New, with tax, with shipping to the door. */
  readonly delivered: Range;
}

/** The buyer's own cell, or the default where the buyer's currency is the defaults' own; nothing is converted. */
export function cellBeforeLearning(category: RateCategory, which: keyof CategoryRate, settings: Settings): RateCell | null {
  const own = settings.rates[category]?.[which];
  return own ?? (settings.currency === DEFAULT_CURRENCY ? DEFAULT_RATES[category][which] : null);
}

/** The buyer's own cell; else what the finds taught, of used prices in the same currency; else the default. */
export function cellOf(category: RateCategory, which: keyof CategoryRate, settings: Settings): RateCell | null {
  const learned = settings.learned[category];
  const taught = which === 'used' && learned?.currency === settings.currency ? learned : null;
  return settings.rates[category]?.[which] ?? taught ?? cellBeforeLearning(category, which, settings);
}

/** A cell as an ordered range, however the buyer filled it in. */
export const ordered = (cell: RateCell): Range => ({
  low: Math.min(cell.low, cell.likely),
  likely: cell.likely,
  high: Math.max(cell.high, cell.likely),
});

/** Prices of a category; null when the buyer's currency has none. A missing shipping cell counts as no shipping. */
export function pricesOf(category: RateCategory, settings: Settings): Prices | null {
  const used = cellOf(category, 'used', settings);
  const fresh = cellOf(category, 'new', settings);
  if (used === null || fresh === null) return null;
  const shipping = cellOf(category, 'shipping', settings);
  const minor = 10 ** exponentOf(settings.currency);
  const delivered = sumIndependent([
    scale(ordered(fresh), 1 + settings.salesTax),
    shipping === null ? { low: 0, likely: 0, high: 0 } : ordered(shipping),
  ]);
  return { used: scale(ordered(used), minor), delivered: scale(delivered, minor) };
}

/** What a shop adds for sending one piece that is long or heavy, in minor units. */
export interface ParcelFee {
  readonly parcel: Exclude<ParcelClass, 'ordinary'>;
  readonly fee: Range;
}

/**
 * The fee for a piece past the parcel limits. Null where it goes at the plain rate, where it is not a single parcel, and where the buyer
 * has a shipping cell of their own (which then says it all) or another currency than the surcharges'.
 */
export function parcelFeeOf(item: Item, category: RateCategory, settings: Settings): ParcelFee | null {
  if (settings.currency !== DEFAULT_CURRENCY || settings.rates[category]?.shipping !== undefined) return null;
  const box = parcelOf(item, category);
  const parcel = box === null ? 'ordinary' : parcelClassOf(box);
  return parcel === 'ordinary' ? null : { parcel, fee: scale(SURCHARGES[parcel], 10 ** exponentOf(DEFAULT_CURRENCY)) };
}

/** The prices of a category for one item, with the fee for the parcel that a piece of it makes; by the pound where the category is. */
export function pricesForItem(item: Item, category: RateCategory, prices: Prices, settings: Settings): Prices {
  const charged = parcelFeeOf(item, category, settings);
  if (charged === null) return prices;
  const pounds = isByWeight(category) && item.unitWeight !== null ? inPounds(item.unitWeight.value) : 1;
  return { ...prices, delivered: sumIndependent([prices.delivered, scale(charged.fee, 1 / pounds)]) };
}

import type { CategoryRate, RateCategory, RateCell, Settings } from '../listing/settings.ts';
import { exponentOf } from '../units/money.ts';
import { type Range, scale, sumIndependent } from '../units/range.ts';
import { DEFAULT_CURRENCY, DEFAULT_RATES } from './default-rates.ts';

/** Prices of one category in minor units, per pound or per piece. */
export interface Prices {
  readonly used: Range;
  /** New, with tax, with shipping to the door. */
  readonly delivered: Range;
}

/** The buyer's own cell, or the default where the buyer's currency is the defaults' own; nothing is converted. */
export function cellOf(category: RateCategory, which: keyof CategoryRate, settings: Settings): RateCell | null {
  const own = settings.rates[category]?.[which];
  return own ?? (settings.currency === DEFAULT_CURRENCY ? DEFAULT_RATES[category][which] : null);
}

/** A cell as an ordered range, however the buyer filled it in. */
const ordered = (cell: RateCell): Range => ({
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

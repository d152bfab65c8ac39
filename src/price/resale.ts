/** What goods bring that the buyer would sell on, in minor units of the buyer's currency. */
import type { Flag } from '../listing/evaluation.ts';
import type { Item } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { exactly, type Range, scale, times } from '../units/range.ts';
import type { Prices } from './rates.ts';

/** Flags about the buyer's own bar: they don't bother the next buyer, who has another. */
const OWN_TROUBLE: ReadonlySet<string> = new Set([
  'one-inch-plates',
  'two-inch-plates',
  'bore-undersized',
  'one-inch-bar',
  'short-bar',
]);

/** Whether a flag keeps the item from being sold on too. */
export const spoilsResale = (flag: Flag): boolean => flag.weight === 'deal-breaker' && !OWN_TROUBLE.has(flag.id);

/**
 * What an item resells for: the buyer's own figure, in the buyer's currency; else the low end of the going rate, for selling takes an
 * evening, a photo and strangers at the door. Never the going rate itself, so that nobody pays for what they would only sell again.
 */
export function resaleOf(item: Item, quantity: Range, prices: Prices | null, factor: number, settings: Settings): Range {
  const own = item.resale?.value ?? null;
  if (own !== null && own.currency === settings.currency) return exactly(own.minor);
  return prices === null ? exactly(0) : scale(times(quantity, exactly(prices.used.low)), factor);
}

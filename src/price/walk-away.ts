import { exponentOf, type Money } from '../units/money.ts';
import type { Good } from './goods.ts';

/** What all goods are worth paying for at the door before the drive, in minor units. */
export const ceilingOf = (goods: readonly Good[]): number => goods.reduce((sum, good) => sum + good.ceiling, 0);

/** What the goods would cost new and delivered in the condition that they are in, and what is sold on brings; in minor units. */
const newValueOf = (goods: readonly Good[]): number =>
  goods.reduce((sum, { fresh, factor, resale }) => sum + fresh.likely * factor + resale.likely, 0);

/**
 * Expected saving against new, in minor units, of paying `price` and driving for `trip`; below zero when new is cheaper. At the walk-away price
 * (before it is rounded) it is the least that the buyer wants: of each thing the margin on new delivered, or what another used one at the top
 * of the going rate would save, whichever is more.
 */
export const savingAt = (goods: readonly Good[], price: number, trip: number): number => newValueOf(goods) - price - trip;

/**
 * The most to pay the seller: Σ min(top of the going rate, (1 − margin) × new delivered) × usable quantity × condition, less the drive.
 * Below the first, another used lot will come along; below the second, a used purchase saves enough on a new one to be worth the trouble.
 * `ceiling` and `trip` in minor units; never negative; rounded down to a whole major unit.
 */
export function walkAwayPrice(ceiling: number, trip: number, currency: string): Money {
  const unit = 10 ** exponentOf(currency);
  return { minor: Math.max(0, Math.floor((ceiling - trip) / unit + 1e-9) * unit), currency };
}

/** No offer under this share of the asking price: it ends the talk. An assumption. */
const LEAST_SHARE = 0.7;

/** What to offer first: the low end of the going worth, but not an insulting part of the price, and never above what is asked or worth it. */
export function openingOffer(lowWorth: number, asking: number | null, walkAway: Money): Money {
  const unit = 10 ** exponentOf(walkAway.currency);
  const wish = asking === null ? lowWorth : Math.min(asking, Math.max(lowWorth, LEAST_SHARE * asking));
  const step = wish >= 50 * unit ? 5 * unit : unit;
  const offer = wish === asking ? wish : Math.floor(wish / step) * step;
  return { minor: Math.max(0, Math.min(offer, walkAway.minor)), currency: walkAway.currency };
}

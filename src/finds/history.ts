/** How an ad's price moved, and how long it has been known. Times are milliseconds since 1970 and always passed in. */
import type { Reading } from '../listing/reading.ts';
import type { Money } from '../units/money.ts';
import { type Message, message } from '../words/message.ts';
import type { PricePoint } from './record.ts';

/** The history with a price seen at a time; as it was when that is the price already, or none is stated. A clock set back adds behind the last. */
export function withPrice(prices: readonly PricePoint[], price: Money | null, at: number): readonly PricePoint[] {
  const last = prices.at(-1);
  if (price === null || (last?.minor === price.minor && last.currency === price.currency)) return prices;
  return [...prices, { at: Math.max(at, last?.at ?? at), minor: price.minor, currency: price.currency }];
}

/** So long after a price was noted, in ms, another one by the buyer's own hand corrects it: typing "35" is no fall to 3 and rise again. */
const SITTING = 600_000;

/** The history with a price as the buyer edits it: within a sitting the last one is put right, later it is a new one. */
export function withEditedPrice(prices: readonly PricePoint[], price: Money | null, at: number): readonly PricePoint[] {
  const last = prices.at(-1);
  if (price === null || last === undefined || Math.abs(at - last.at) >= SITTING) return withPrice(prices, price, at);
  return last.minor === price.minor && last.currency === price.currency ? prices : withPrice(prices.slice(0, -1), price, last.at);
}

/** The price that goes into the history: that of the lot, never a stand-in such as $1. */
export const askingOf = ({ asking }: Reading): Money | null =>
  asking.placeholder || asking.amount === null ? null : asking.amount.value;

export interface PriceChange {
  readonly from: Money;
  readonly to: Money;
  /** In minor units, below zero when it got cheaper; null between two currencies, which are never converted. */
  readonly by: number | null;
  /** `by` as a fraction of the price before; null likewise, and from a price of nothing. */
  readonly fraction: number | null;
}

/** From the last price of the history to the one stated now; null when either is missing or nothing changed. */
export function priceChange(prices: readonly PricePoint[], now: Money | null): PriceChange | null {
  const last = prices.at(-1);
  if (!last || now === null || (last.minor === now.minor && last.currency === now.currency)) return null;
  const by = last.currency === now.currency ? now.minor - last.minor : null;
  return {
    from: { minor: last.minor, currency: last.currency },
    to: { minor: now.minor, currency: now.currency },
    by,
    fraction: by === null || last.minor === 0 ? null : by / last.minor,
  };
}

const DAY = 86_400_000;

/** Whole days that the ad has been known to be on the market: at least so long has it been for sale. Never below zero. */
export const daysKnown = (keptAt: number, now: number): number => Math.max(0, Math.floor((now - keptAt) / DAY));

/** The same in words. */
export function knownFor(keptAt: number, now: number): Message {
  const n = daysKnown(keptAt, now);
  return n === 0 ? message('keep_under_a_day') : message('keep_days', { n });
}

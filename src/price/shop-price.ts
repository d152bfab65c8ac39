/** A shop's price of new goods, read off its page, and what several of them make of the table's cells. */
import type { Evaluation } from '../listing/evaluation.ts';
import type { PageListing } from '../listing/page-listing.ts';
import type { CategoryRate, RateCategory, RateCell, Settings } from '../listing/settings.ts';
import { inMajor, type Money } from '../units/money.ts';
import { askingPrice } from './asking-price.ts';
import { isByWeight } from './categories.ts';
import { inOwn, rateFrom } from './exchange.ts';
import { lineOf } from './observed.ts';

export interface ShopPrice {
  readonly category: RateCategory;
  readonly price: Money;
  /** What is sold for it; null where it is sold by the piece, and then the price is that of one. */
  readonly pounds: number | null;
  /** To the door, where the page says. */
  readonly shipping: Money | null;
}

const hasPrice = ({ offers }: PageListing): boolean =>
  offers.some(({ price, condition }) => /\d/.test(price ?? '') && !/used|refurbished|damaged/i.test(condition ?? ''));

const share = ({ minor, currency }: Money, pieces: number): Money => ({ minor: Math.round(minor / pieces), currency });

/**
 * The price of a product's page: only where the page itself marks up an offer with a price that is not for used goods, where all of it is
 * one category, and where the page says how much there is of it. Null otherwise.
 */
export function shopPriceOf(listing: PageListing, { reading, worth }: Evaluation): ShopPrice | null {
  if (!hasPrice(listing)) return null;
  const lines = reading.items.flatMap((item) => lineOf(item) ?? []);
  const [first] = lines;
  const price = askingPrice(reading, worth.offered, worth.currency);
  const known = lines.length === reading.items.length && lines.every(({ quantity }) => quantity !== null && quantity > 0);
  if (!first || !known || price === null || price.range.likely <= 0) return null;
  if (lines.some(({ category }) => category !== first.category)) return null;
  const quantity = lines.reduce((sum, line) => sum + (line.quantity ?? 0), 0);
  const weighed = isByWeight(first.category);
  const pieces = weighed ? 1 : quantity;
  const shipping = reading.asking.delivery?.value ?? null;
  return {
    category: first.category,
    price: share({ minor: price.range.likely, currency: price.currency }, pieces),
    pounds: weighed ? quantity : null,
    shipping: shipping && share(shipping, pieces),
  };
}

export interface PerUnit {
  /** Major units of the buyer's currency per pound or piece. */
  readonly fresh: number;
  readonly shipping: number | null;
}

/** Null where it is in another currency without a rate of exchange, or where goods sold by weight come without one. */
export function perUnitOf({ category, price, pounds, shipping }: ShopPrice, settings: Settings): PerUnit | null {
  const units = isByWeight(category) ? (pounds ?? 0) : 1;
  const per = (one: Money): number | null =>
    one.currency === settings.currency || rateFrom(one.currency, settings) !== null
      ? inMajor(inOwn(one, settings)) / units
      : null;
  const fresh = units > 0 ? per(price) : null;
  return fresh === null ? null : { fresh, shipping: shipping && per(shipping) };
}

/** The lowest, the middle and the highest of some prices. */
function cellOfPrices(prices: readonly number[], source: string, date: string): RateCell {
  const sorted = [...prices].sort((a, b) => a - b);
  const at = (index: number): number => sorted[index] ?? 0;
  const middle = (at(Math.floor((sorted.length - 1) / 2)) + at(Math.ceil((sorted.length - 1) / 2))) / 2;
  return { low: at(0), likely: middle, high: at(sorted.length - 1), source, date };
}

/**
 * The cells that shops' prices of one category make: new, and shipping where any of them says it. Prices that can't be brought into the
 * buyer's currency are left out; null when none is left. `source` and `date` go into the cells.
 */
export function cellsFrom(
  prices: readonly ShopPrice[],
  settings: Settings,
  source: string,
  date: string,
): Partial<Pick<CategoryRate, 'new' | 'shipping'>> | null {
  const known = prices.flatMap((one) => perUnitOf(one, settings) ?? []);
  const shipping = known.flatMap((one) => one.shipping ?? []);
  if (known.length === 0) return null;
  return {
    new: cellOfPrices(
      known.map(({ fresh }) => fresh),
      source,
      date,
    ),
    ...(shipping.length > 0 && { shipping: cellOfPrices(shipping, source, date) }),
  };
}

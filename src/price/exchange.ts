/** Prices of an ad in another currency, by the buyer's own rate of exchange: never by one that anybody else made up. */

import type { Step } from '../listing/evaluation.ts';
import type { Asking, Fact, Item, Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { type Currency, exponentOf, type Money } from '../units/money.ts';
import { message } from '../words/message.ts';
import type { Price } from './asking-price.ts';

/** The currency that an ad asks in; null where it names no price. */
export const currencyOf = ({ currency, amount, unitAmount }: Asking): Currency | null =>
  currency?.value ?? amount?.value.currency ?? unitAmount?.value.currency ?? null;

/** What one unit of `from` is worth in the buyer's currency; null where the buyer gave no rate, and for that currency itself. */
export const rateFrom = (from: Currency, settings: Settings): number | null =>
  from === settings.currency ? null : (settings.exchange[from] ?? null);

/** A price in the buyer's currency, not rounded; as it was where there is no rate for it. */
export function inOwn(value: Money, settings: Settings): Money {
  const rate = rateFrom(value.currency, settings);
  if (rate === null) return value;
  const digits = exponentOf(settings.currency) - exponentOf(value.currency);
  return { minor: value.minor * rate * 10 ** digits, currency: settings.currency };
}

const rounded = ({ minor, currency }: Money): Money => ({ minor: Math.round(minor), currency });

/**
 * The reading as it is priced: every price that the buyer has a rate for is in the buyer's currency. What is shown of the ad is not this
 * one. The same object where nothing is to be converted.
 */
export function pricedInOwn(reading: Reading, settings: Settings): Reading {
  if (Object.keys(settings.exchange).length === 0) return reading;
  const own = (fact: Fact<Money> | null) => fact && { ...fact, value: rounded(inOwn(fact.value, settings)) };
  const item = (one: Item): Item => ({ ...one, ownPrice: own(one.ownPrice), resale: own(one.resale) });
  const { asking } = reading;
  const { currency } = asking;
  const told = currency !== null && rateFrom(currency.value, settings) !== null;
  return {
    ...reading,
    asking: {
      ...asking,
      amount: own(asking.amount),
      high: own(asking.high),
      // Price of one pound: a rounded one would be off by as much again for every pound.
      unitAmount: asking.unitAmount && { ...asking.unitAmount, value: inOwn(asking.unitAmount.value, settings) },
      currency: told ? { ...currency, value: settings.currency } : currency,
    },
    items: reading.items.map(item),
  };
}

/** The conversion as a line of the working: the asking price in the buyer's currency, the rate, and that it is the buyer's own. */
export function exchangeSteps({ asking }: Reading, price: Price | null, settings: Settings): Step[] {
  const from = currencyOf(asking);
  const rate = from === null ? null : rateFrom(from, settings);
  if (from === null || rate === null || price === null) return [];
  const params = { from, rate: { number: rate, digits: 6 }, own: settings.currency };
  return [
    {
      id: 'exchange',
      group: 'price',
      label: message('step_exchange', params),
      result: price.range,
      unit: 'money',
      basis: 'worked-out',
      source: message('step_rate_undated', { source: { message: message('source_own') } }),
    },
  ];
}

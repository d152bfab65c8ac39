/** A part of an ad: goods that have a price of their own, and the ad as if it offered nothing but some of them. */
import type { Correction, Item, Reading } from '../listing/reading.ts';
import { type Currency, inMajor } from '../units/money.ts';

/** The goods that can be had by themselves, by their own prices in that currency; none where the ad offers but one thing. */
export const partsOf = ({ items }: Pick<Reading, 'items'>, currency: Currency): Item[] =>
  items.length < 2 ? [] : items.filter(({ ownPrice }) => ownPrice?.value.currency === currency);

/**
 * The corrections under which the ad offers only these goods, for their own prices together: to be made after all others. None where no id is
 * one of a part, which leaves the ad whole.
 */
export function onlyPart(reading: Reading, ids: readonly string[], currency: Currency): Correction[] {
  const taken = partsOf(reading, currency).filter(({ id }) => ids.includes(id));
  if (taken.length === 0) return [];
  const minor = taken.reduce((sum, { ownPrice }) => sum + (ownPrice?.value.minor ?? 0), 0);
  const left = reading.items.filter((item) => !taken.includes(item));
  return [
    { path: 'asking.basis', value: 'lot' },
    { path: 'asking.amount', value: inMajor({ minor, currency }), unit: currency },
    // A weight in all is that of the whole.
    ...(left.length > 0 && reading.statedTotal !== null ? [{ path: 'statedTotal', value: null }] : []),
    ...left.map(({ id }) => ({ path: id, value: null })),
  ];
}

import type { Asking, Reading } from '../listing/reading.ts';
import { inPounds } from '../units/mass.ts';
import type { Currency } from '../units/money.ts';
import { exactly, type Range, scale } from '../units/range.ts';

/** The price of everything on offer, in minor units; null when the ad gives none, or only a stand-in. */
export interface Price {
  readonly range: Range;
  readonly currency: Currency;
}

const currencyOf = (asking: Asking, fallback: Currency): Currency =>
  asking.currency?.value ?? asking.amount?.value.currency ?? asking.unitAmount?.value.currency ?? fallback;

/** Pounds that a price by weight is charged on: all plates, good or not. */
const perWeight = (asking: Asking, offered: Range): Range | null => {
  if (asking.unitAmount === null || offered.likely <= 0) return null;
  const perPound = asking.basis === 'per-kilogram' ? inPounds({ value: 1, unit: 'kg' }) : 1;
  return scale(offered, asking.unitAmount.value.minor / perPound);
};

function perPiece(reading: Reading): Range | null {
  const { unitAmount, basis } = reading.asking;
  if (unitAmount === null || reading.items.some((item) => item.count === null)) return null;
  const pieces = reading.items.reduce((sum, item) => sum + (item.count?.value ?? 0), 0);
  return exactly(unitAmount.value.minor * (basis === 'pair' ? pieces / 2 : pieces));
}

/** Asking price: as stated, or from a unit price and what is on offer, or the sum of the items' own prices. `offered` is plate weight in pounds. */
export function askingPrice(reading: Reading, offered: Range, fallback: Currency): Price | null {
  const { asking } = reading;
  const currency = currencyOf(asking, fallback);
  if (asking.placeholder) return null;
  if (asking.amount !== null) {
    const low = asking.amount.value.minor;
    const high = Math.max(low, asking.high?.value.minor ?? low);
    return { range: { low, likely: Math.round((low + high) / 2), high }, currency };
  }
  if (asking.basis === 'per-pound' || asking.basis === 'per-kilogram') {
    const range = perWeight(asking, offered);
    if (range !== null) return { range, currency };
  }
  if (asking.basis === 'each' || asking.basis === 'pair') {
    const range = perPiece(reading);
    if (range !== null) return { range, currency };
  }
  if (reading.items.length > 0 && reading.items.every((item) => item.ownPrice !== null)) {
    const sum = reading.items.reduce((total, item) => total + (item.ownPrice?.value.minor ?? 0), 0);
    return { range: exactly(sum), currency: reading.items[0]?.ownPrice?.value.currency ?? currency };
  }
  return null;
}

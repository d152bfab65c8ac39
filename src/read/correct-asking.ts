import type { Asking, Basis, Correction, Fact, PriceBasis, Reading } from '../listing/reading.ts';
import { isPlate } from '../listing/reading.ts';
import { inKilograms, inPounds } from '../units/mass.ts';
import type { Currency, Money } from '../units/money.ts';
import { parseMoney } from './correction-values.ts';

const BASES: readonly PriceBasis[] = ['lot', 'per-pound', 'per-kilogram', 'each', 'pair', 'range', 'none'];
const isBasis = (value: unknown): value is PriceBasis => BASES.includes(value as PriceBasis);

/** Prices by the pound, kilogram, piece or pair. */
const isUnitBasis = (basis: PriceBasis): boolean => basis !== 'lot' && basis !== 'range' && basis !== 'none';

const fact = <T>(value: T, basis: Basis): Fact<T> => ({ value, basis, rule: 'buyer', evidence: [] });

/** The ad's currency, as far as it says; US dollars otherwise. */
export const currencyOf = (asking: Asking): Currency =>
  asking.currency?.value ?? asking.amount?.value.currency ?? asking.unitAmount?.value.currency ?? 'USD';

function correctMoney(
  asking: Asking,
  field: 'amount' | 'unitAmount' | 'high' | 'delivery',
  correction: Correction,
): Asking | null {
  if (correction.value === null) return { ...asking, [field]: null };
  const value = parseMoney(correction, currencyOf(asking));
  if (value === null) return null;
  const next = { ...asking, [field]: fact(value, correction.basis ?? 'stated') };
  if (field !== 'amount') return next;
  // A price typed in is a price, whatever stood there before.
  return {
    ...next,
    placeholder: false,
    high: null,
    basis: asking.basis === 'none' || asking.basis === 'range' ? 'lot' : asking.basis,
  };
}

/** Going over to a unit price makes the price so far the unit's; going back makes it the lot's. */
function correctBasis(asking: Asking, basis: PriceBasis): Asking {
  if (isUnitBasis(basis) && !isUnitBasis(asking.basis))
    return { ...asking, basis, unitAmount: asking.unitAmount ?? asking.amount, amount: null };
  if (basis === 'lot' && isUnitBasis(asking.basis)) {
    const stated = asking.amount !== null && asking.amount.basis === 'stated' ? asking.amount : asking.unitAmount;
    return { ...asking, basis, amount: stated, unitAmount: null };
  }
  return { ...asking, basis };
}

const inNewCurrency = (value: Fact<Money> | null, currency: Currency): Fact<Money> | null =>
  value === null ? null : { ...value, value: { ...value.value, currency } };

/** The asking price with one value set; null when the path or value means nothing. */
export function correctAsking(asking: Asking, correction: Correction): Asking | null {
  const { value } = correction;
  const field = correction.path.slice('asking.'.length);
  switch (field) {
    case 'amount':
    case 'unitAmount':
    case 'high':
    case 'delivery':
      return correctMoney(asking, field, correction);
    case 'basis':
      return isBasis(value) ? correctBasis(asking, value) : null;
    case 'currency':
      if (typeof value !== 'string' || !/^[A-Z]{3}$/.test(value)) return null;
      return {
        ...asking,
        currency: fact(value, correction.basis ?? 'stated'),
        amount: inNewCurrency(asking.amount, value),
        unitAmount: inNewCurrency(asking.unitAmount, value),
        high: inNewCurrency(asking.high, value),
        delivery: inNewCurrency(asking.delivery, value),
      };
    case 'firm':
    case 'openToOffers':
      if (value === null) return { ...asking, [field]: null };
      return typeof value === 'boolean' ? { ...asking, [field]: fact(value, correction.basis ?? 'stated') } : null;
    case 'placeholder':
      return typeof value === 'boolean' ? { ...asking, placeholder: value } : null;
    default:
      return null;
  }
}

/** How many units of its price the offer is made of: pounds, kilograms, pieces or pairs; null when the ad doesn't say. */
function unitsOnOffer({ asking, items, statedTotal }: Reading): number | null {
  if (asking.basis === 'each' || asking.basis === 'pair') {
    let pieces = 0;
    for (const item of items) {
      if (item.count === null) return null;
      pieces += item.count.value;
    }
    return asking.basis === 'pair' ? pieces / 2 : pieces;
  }
  const measure = asking.basis === 'per-kilogram' ? inKilograms : inPounds;
  if (statedTotal !== null) return measure(statedTotal.value);
  const plates = items.filter((one) => isPlate(one.kind.value));
  let total = 0;
  // "Dumbbells, $1 a pound": without plates the price is for whatever has a weight.
  for (const item of plates.length > 0 ? plates : items) {
    if (item.totalWeight === null) return null;
    total += measure(item.totalWeight.value);
  }
  return total;
}

/** What a price by the unit hangs on: the price itself, and what there is. What the buyer thinks of the goods moves no price. */
const MOVES_PRICE = /^asking\.|^statedTotal$|^[a-z-]+-\d+(?:\.(?:kind|count|unitWeight|totalWeight|weighed))?$/;

/** After corrections, works a price out anew that follows from a unit price, unless the buyer typed the price itself. */
export function settleUnitPrice(reading: Reading, paths: ReadonlySet<string>): Reading {
  const { asking } = reading;
  const typed = paths.has('asking.amount') || (asking.amount !== null && asking.amount.basis === 'stated');
  if (!isUnitBasis(asking.basis) || asking.unitAmount === null || typed) return reading;
  if (![...paths].some((path) => MOVES_PRICE.test(path))) return reading;
  const units = unitsOnOffer(reading);
  const { value } = asking.unitAmount;
  const amount =
    units === null || units <= 0
      ? null
      : { ...asking.unitAmount, value: { ...value, minor: Math.round(value.minor * units) }, basis: 'implied' as const };
  return { ...reading, asking: { ...asking, amount } };
}

/** Money in integer minor units (cents), each currency apart: nothing here converts one into another. */

export type Currency = string; // ISO 4217, three capital letters

export interface Money {
  /** Integer number of minor units (cents). */
  readonly minor: number;
  readonly currency: Currency;
}

const EXPONENTS: Readonly<Record<string, number>> = { JPY: 0, KRW: 0, HUF: 2 };

/** Digits after the decimal sign in a currency (ISO 4217 exponent). */
export const exponentOf = (currency: Currency): number => EXPONENTS[currency] ?? 2;

/** Money from an amount in major units, rounded half away from zero to the minor unit. Throws on a non-finite amount. */
export function money(amount: number, currency: Currency): Money {
  if (!Number.isFinite(amount)) throw new RangeError('money: amount is not finite');
  const scaled = Math.abs(amount) * 10 ** exponentOf(currency);
  return { minor: Math.sign(amount) * Math.round(scaled + 1e-9 * Math.max(1, scaled)) + 0, currency };
}

/** The amount in major units. */
export const inMajor = (value: Money): number => value.minor / 10 ** exponentOf(value.currency);

/**
 * Parts of a total in proportion to weights, by largest remainder: the parts sum to the total to the minor unit.
 * Weights are non-negative and finite; if all are zero the total is split evenly. Ties go to the earlier part.
 */
export function allocate(total: Money, weights: readonly number[]): Money[] {
  if (weights.length === 0) return [];
  const sum = weights.reduce((a, b) => a + b, 0);
  const shares = sum > 0 ? weights.map((w) => w / sum) : weights.map(() => 1 / weights.length);
  const exact = shares.map((share) => total.minor * share);
  const floors = exact.map((value) => Math.floor(value));
  let rest = total.minor - floors.reduce((a, b) => a + b, 0);
  const order = exact.map((value, index) => ({ index, remainder: value - Math.floor(value) }));
  order.sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  const parts = [...floors];
  for (const { index } of order) {
    if (rest <= 0) break;
    parts[index] = (parts[index] ?? 0) + 1;
    rest -= 1;
  }
  return parts.map((minor) => ({ minor, currency: total.currency }));
}

import { allocate, type Money } from '../units/money.ts';
import type { Good } from './goods.ts';

/**
 * What each item weighs in the split: one with a price of its own that; what is left of the price goes to the others in proportion to their
 * worth. Something of no worth to the buyer takes nothing, whatever the ad asks for it; something sold on counts at what it brings.
 */
function sharesOf(price: number, goods: readonly Good[]): number[] {
  const own = goods.map(({ item }) => ((item.plan?.value ?? 'keep') === 'keep' ? (item.ownPrice?.value.minor ?? null) : null));
  const ownSum = own.reduce<number>((sum, value) => sum + (value ?? 0), 0);
  const others = goods.reduce((sum, good, index) => sum + (own[index] === null ? good.worth.likely : 0), 0);
  const left = price - ownSum;
  const perWorth = ownSum === 0 || left < 0 || others <= 0 ? 1 : left / others;
  return goods.map((good, index) => own[index] ?? perWorth * good.worth.likely);
}

/**
 * How one price is split over the items: see `sharesOf`. Drive and rounding follow the same proportions, by largest remainder, so that the
 * parts sum to `allIn` to the minor unit. Where nothing has any worth, all that is not counted for nothing shares evenly.
 */
export function splitAllIn(allIn: Money, price: number, goods: readonly Good[]): Money[] {
  const shares = sharesOf(price, goods);
  if (shares.some((share) => share > 0)) return allocate(allIn, shares);
  return allocate(
    allIn,
    goods.map(({ item }) => (item.plan?.value === 'nothing' ? 0 : 1)),
  );
}

/**
 * What one item costs when all others are taken at their going worth: the all-in less that worth. Rounded to the minor unit; may be below
 * zero. `worths` in minor units, `index` the item's place among them.
 */
export function aloneOf(allIn: Money, worths: readonly number[], index: number): Money {
  const others = worths.reduce((sum, worth, place) => (place === index ? sum : sum + worth), 0);
  return { ...allIn, minor: Math.round(allIn.minor - others) };
}

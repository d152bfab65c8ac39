import { allocate, type Money } from '../units/money.ts';
import type { Good } from './goods.ts';

/**
 * How one price is split over the items: an item with a price of its own takes that; what is left goes to the others in proportion to
 * what they are worth at the going rate. Drive and rounding follow the same proportions. Parts sum to `allIn` to the minor unit.
 */
export function splitAllIn(allIn: Money, price: number, goods: readonly Good[]): Money[] {
  const own = goods.map((good) => good.item.ownPrice?.value.minor ?? null);
  const ownSum = own.reduce<number>((sum, value) => sum + (value ?? 0), 0);
  const others = goods.reduce((sum, good, index) => sum + (own[index] === null ? good.worth.likely : 0), 0);
  const left = price - ownSum;
  if (ownSum === 0 || left < 0 || others <= 0) {
    return allocate(
      allIn,
      goods.map((good, index) => own[index] ?? good.worth.likely),
    );
  }
  return allocate(
    allIn,
    goods.map((good, index) => own[index] ?? (left * good.worth.likely) / others),
  );
}

/** "10x5", "5-10": ten fives or five tens? The other lines of the ad decide; else the count is taken to stand first, and a doubt says so. */

import type { Quantity } from '../mention.ts';
import { isCount, isPlateSize } from '../recognisers/notation.ts';

const COUNT_FIRST = ['count-times-weight', 'count-dash-weight', 'count-weight', 'bracketed-count', 'count-slash-weight'];
const WEIGHT_FIRST = ['weight-times-count', 'weight-dash-count', 'count-behind-in-brackets', 'weight-slash-count'];

export function settleOrder(quantities: readonly Quantity[]): Quantity[] {
  let first = 0;
  let last = 0;
  for (const quantity of quantities) {
    if (quantity.either) continue;
    if (COUNT_FIRST.includes(quantity.rule)) first += 1;
    if (WEIGHT_FIRST.includes(quantity.rule)) last += 1;
  }
  return quantities
    .map((quantity) => {
      if (!quantity.either) return quantity;
      if (last > first && isCount(quantity.weight) && quantity.count !== null) {
        return { ...quantity, count: quantity.weight, weight: quantity.count, either: false, rule: `${quantity.rule}-turned` };
      }
      if (quantity.weight !== null && !isPlateSize(quantity.weight)) return { ...quantity, count: null, weight: null };
      const plain = first > last || quantity.count === null || quantity.count <= 8;
      return plain ? { ...quantity, either: false } : quantity;
    })
    .filter((quantity) => quantity.rule === 'weight-range' || quantity.count !== null || quantity.weight !== null);
}

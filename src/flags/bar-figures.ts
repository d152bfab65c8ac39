/** Bars whose figures can't all be true, or are too good to be. */
import type { Item } from '../listing/reading.ts';
import { barWeightBounds } from '../mechanics/steel.ts';
import { cellOf } from '../price/rates.ts';
import { convert, inKilograms } from '../units/mass.ts';
import { inMajor, money } from '../units/money.ts';
import { isOneInch } from './bar-sizes.ts';
import { held, LIMITS } from './limits.ts';
import { type ItemRule, priceOf, sourceOf } from './rule.ts';

const BAR = ['bar'] as const;

export const barTooCheap: ItemRule = {
  id: 'bar-too-cheap',
  kinds: BAR,
  weight: 'caution',
  source: 'common-practice',
  test(item, context) {
    const { settings } = context;
    const limit = held('barTooCheap', settings);
    const good = cellOf('bar', 'new', settings);
    const price = priceOf(item, context);
    if (good === null || price === null || isOneInch(item)) return null;
    const each = money(inMajor(price.value) / (item.count?.value ?? 1), settings.currency);
    if (inMajor(each) >= good.likely * limit.value) return null;
    return {
      ...sourceOf(limit),
      found: { price: { money: each } },
      limit: { good: { money: money(good.likely, settings.currency) } },
      evidence: price.evidence,
    };
  },
};

/** A full bar's weight at a length that no full bar has: two facts that exclude each other. */
const contradicts = ({ unitWeight, lengthMm }: Item): boolean =>
  unitWeight !== null &&
  lengthMm !== null &&
  inKilograms(unitWeight.value) >= LIMITS.barFullWeight.value &&
  lengthMm.value < LIMITS.barTooShort.value;

export const contradiction: ItemRule = {
  id: 'bar-facts-disagree',
  kinds: BAR,
  weight: 'caution',
  source: 'iwf',
  test(item) {
    const { unitWeight, lengthMm } = item;
    if (unitWeight === null || lengthMm === null || !contradicts(item)) return null;
    return {
      found: { weight: { weight: unitWeight.value }, length: { mm: lengthMm.value } },
      limit: { limit: { mm: LIMITS.barTooShort.value } },
      evidence: [...unitWeight.evidence, ...lengthMm.evidence],
    };
  },
};

export const offItsSteel: ItemRule = {
  id: 'bar-off-its-steel',
  kinds: BAR,
  weight: 'caution',
  source: 'steel',
  test(item) {
    const { unitWeight, lengthMm, shaftMm } = item;
    if (unitWeight === null || lengthMm === null || shaftMm === null || contradicts(item)) return null;
    const weight = inKilograms(unitWeight.value);
    const { low, high } = barWeightBounds(shaftMm.value, lengthMm.value, item.sleeveMm?.value ?? 50);
    const slack = LIMITS.barSteelSlack.value;
    if (weight >= low * (1 - slack) && weight <= high * (1 + slack)) return null;
    const { unit } = unitWeight.value;
    const rounded = (kilograms: number) => ({
      weight: { value: Math.round(convert({ value: kilograms, unit: 'kg' }, unit).value), unit },
    });
    return {
      found: { weight: { weight: unitWeight.value }, length: { mm: lengthMm.value }, shaft: { mm: shaftMm.value } },
      limit: { low: rounded(low), high: rounded(high) },
      evidence: [...unitWeight.evidence, ...lengthMm.evidence, ...shaftMm.evidence],
    };
  },
};

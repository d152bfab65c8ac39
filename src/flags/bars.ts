import { doubtfulBow, type Item, OF_ONE_PIECE } from '../listing/reading.ts';
import { stiffnessAgainst } from '../mechanics/beam.ts';
import { barWeightBounds } from '../mechanics/steel.ts';
import { isWideSleeve, sleevesOf } from '../price/fit.ts';
import { cellOf } from '../price/rates.ts';
import { convert, inKilograms } from '../units/mass.ts';
import { inMajor, money } from '../units/money.ts';
import { held, LIMITS } from './limits.ts';
import { isOfCatches } from './rack-words.ts';
import { type ItemRule, onCondition, sourceOf, stated } from './rule.ts';

const BAR = ['bar'] as const;
const ALL_BARS = ['bar', 'curl-bar', 'hex-bar'] as const;

/** IWF TCRR 2025, 3.3.3: the shaft of the men's bar. */
const MENS_SHAFT_MM = 28;

const shaftThick: ItemRule = {
  id: 'shaft-thick',
  kinds: BAR,
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item, context) {
    const limit = held('shaftThick', context.settings);
    if (item.shaftMm === null || item.shaftMm.value < limit.value - LIMITS.shaftSlack.value) return null;
    return {
      ...sourceOf(limit),
      found: { shaft: { mm: item.shaftMm.value } },
      limit: { limit: { mm: limit.value } },
      evidence: item.shaftMm.evidence,
    };
  },
};

const shaftThin: ItemRule = {
  id: 'shaft-thin',
  kinds: BAR,
  weight: 'note',
  source: 'common-practice',
  test(item, context) {
    const limit = held('shaftThin', context.settings);
    // The competition women's bar is 25 mm: right for small hands, so never more than a note.
    if (item.shaftMm === null || item.shaftMm.value > limit.value || isOneInch(item)) return null;
    return {
      ...sourceOf(limit),
      found: {
        shaft: { mm: item.shaftMm.value },
        stiffness: { percent: 100 * stiffnessAgainst(item.shaftMm.value, MENS_SHAFT_MM) },
      },
      limit: { limit: { mm: MENS_SHAFT_MM } },
      evidence: item.shaftMm.evidence,
    };
  },
};

const isOneInch = (item: Parameters<ItemRule['test']>[0]): boolean =>
  item.fits?.value === '25mm' || (item.sleeveMm !== null && item.sleeveMm.value < 40);

const oneInchBar: ItemRule = {
  id: 'one-inch-bar',
  kinds: ALL_BARS,
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item, { settings }) {
    if (!isOneInch(item)) return null;
    const evidence = (item.sleeveMm ?? item.fits)?.evidence ?? item.evidence;
    return sleevesOf(settings).some((sleeveMm) => !isWideSleeve(sleeveMm))
      ? { weight: 'note', says: 'flag_one_inch_bar_owned', evidence }
      : { evidence };
  },
};

const shortBar: ItemRule = {
  id: 'short-bar',
  bears: true,
  kinds: BAR,
  weight: 'caution',
  source: 'iwf',
  test(item, context) {
    if (item.lengthMm === null || item.lengthMm.value >= LIMITS.barShort.value) return null;
    const useless = held('barTooShort', context.settings);
    const isUseless = item.lengthMm.value < useless.value;
    return {
      weight: isUseless ? 'deal-breaker' : 'caution',
      ...(isUseless ? sourceOf(useless) : {}),
      found: { length: { mm: item.lengthMm.value } },
      limit: { limit: { mm: LIMITS.barShort.value } },
      evidence: item.lengthMm.evidence,
    };
  },
};

/** Of several bars the ad may speak of one: the others are not bent by that. */
const bent: ItemRule = {
  id: 'bent',
  kinds: ALL_BARS,
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item) {
    const fact = stated(item, 'bent');
    if (fact === null) return null;
    const { evidence } = fact;
    return fact.rule === OF_ONE_PIECE ? { weight: 'caution', says: 'flag_bent_piece', evidence } : { evidence };
  },
};

/** Measured, and neither: it may be within what can be used, or turn under load. */
const bowDoubtful: ItemRule = {
  id: 'bow-doubtful',
  kinds: BAR,
  weight: 'caution',
  source: 'common-practice',
  test(item) {
    const bow = doubtfulBow(item);
    if (bow === null) return null;
    return {
      found: { bow: { mm: bow.value } },
      limit: { usable: { mm: LIMITS.bowUsable.value }, bent: { mm: LIMITS.bowBent.value } },
      evidence: bow.evidence,
    };
  },
};

const straightnessUnknown: ItemRule = {
  id: 'straightness-unknown',
  kinds: BAR,
  weight: 'note',
  source: 'common-practice',
  test(item) {
    const known = ['bent', 'straight', 'new'] as const;
    return item.bowMm !== null || known.some((word) => stated(item, word) !== null) ? null : { evidence: item.evidence };
  },
};

const frozenSleeves: ItemRule = {
  id: 'frozen-sleeves',
  kinds: ['bar', 'curl-bar'],
  weight: 'caution',
  source: 'common-practice',
  test: onCondition('seized-sleeves'),
};

/** End caps, rings, bolts: what keeps a sleeve on its shaft. */
const barPartsMissing: ItemRule = {
  id: 'bar-parts-missing',
  kinds: ALL_BARS,
  weight: 'caution',
  source: 'common-practice',
  test(item, { reading }) {
    const missing = stated(item, 'missing-parts');
    // "No hooks, the bar sits in notches" is said of a rack.
    return missing === null || isOfCatches(reading, missing.evidence) ? null : { evidence: missing.evidence };
  },
};

const barTooCheap: ItemRule = {
  id: 'bar-too-cheap',
  kinds: BAR,
  weight: 'caution',
  source: 'common-practice',
  test(item, context) {
    const { reading, settings } = context;
    const limit = held('barTooCheap', context.settings);
    const good = cellOf('bar', 'new', settings);
    const price = item.ownPrice?.value ?? (reading.items.length === 1 ? reading.asking.amount?.value : undefined);
    if (good === null || price === undefined || price.currency !== settings.currency || reading.asking.placeholder) return null;
    if (isOneInch(item) || inMajor(price) >= good.likely * limit.value) return null;
    const evidence = (item.ownPrice ?? reading.asking.amount)?.evidence ?? [];
    return {
      ...sourceOf(limit),
      found: { price: { money: price } },
      limit: { good: { money: money(good.likely, settings.currency) } },
      evidence,
    };
  },
};

/** A full bar's weight at a length that no full bar has: two facts that exclude each other. */
const contradicts = ({ unitWeight, lengthMm }: Item): boolean =>
  unitWeight !== null &&
  lengthMm !== null &&
  inKilograms(unitWeight.value) >= LIMITS.barFullWeight.value &&
  lengthMm.value < LIMITS.barTooShort.value;

const contradiction: ItemRule = {
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

const offItsSteel: ItemRule = {
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

export const barRules: readonly ItemRule[] = [
  bent,
  bowDoubtful,
  shaftThick,
  oneInchBar,
  shortBar,
  contradiction,
  offItsSteel,
  frozenSleeves,
  barPartsMissing,
  barTooCheap,
  straightnessUnknown,
  shaftThin,
];

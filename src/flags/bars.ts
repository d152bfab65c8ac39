import { stiffnessAgainst } from '../mechanics/beam.ts';
import { barWeightBounds } from '../mechanics/steel.ts';
import { isWideSleeve, sleevesOf } from '../price/fit.ts';
import { cellOf } from '../price/rates.ts';
import { convert, inKilograms, inPounds } from '../units/mass.ts';
import { inMajor, money } from '../units/money.ts';
import { LIMITS } from './limits.ts';
import { type ItemRule, onCondition, stated } from './rule.ts';

const BAR = ['bar'] as const;

/** IWF TCRR 2025, 3.3.3: the shaft of the men's bar. */
const MENS_SHAFT_MM = 28;

const shaftThick: ItemRule = {
  id: 'shaft-thick',
  kinds: BAR,
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item) {
    if (item.shaftMm === null || item.shaftMm.value < LIMITS.shaftThick.value - 0.3) return null;
    return {
      found: { shaft: { mm: item.shaftMm.value } },
      limit: { limit: { mm: LIMITS.shaftThick.value } },
      evidence: item.shaftMm.evidence,
    };
  },
};

const shaftThin: ItemRule = {
  id: 'shaft-thin',
  kinds: BAR,
  weight: 'note',
  source: 'common-practice',
  test(item) {
    // The competition women's bar is 25 mm: right for small hands, so never more than a note.
    if (item.shaftMm === null || item.shaftMm.value > LIMITS.shaftThin.value || isOneInch(item)) return null;
    return {
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
  kinds: ['bar', 'curl-bar', 'hex-bar'],
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
  test(item) {
    if (item.lengthMm === null || item.lengthMm.value >= LIMITS.barShort.value) return null;
    const weight = item.lengthMm.value < LIMITS.barTooShort.value ? 'deal-breaker' : 'caution';
    return {
      weight,
      found: { length: { mm: item.lengthMm.value } },
      limit: { limit: { mm: LIMITS.barShort.value } },
      evidence: item.lengthMm.evidence,
    };
  },
};

const bent: ItemRule = {
  id: 'bent',
  kinds: ['bar', 'curl-bar'],
  weight: 'deal-breaker',
  source: 'common-practice',
  test: onCondition('bent'),
};

const straightnessUnknown: ItemRule = {
  id: 'straightness-unknown',
  kinds: BAR,
  weight: 'note',
  source: 'common-practice',
  test(item) {
    const known = ['bent', 'straight', 'new'] as const;
    return known.some((word) => stated(item, word) !== null) ? null : { evidence: item.evidence };
  },
};

const frozenSleeves: ItemRule = {
  id: 'frozen-sleeves',
  kinds: ['bar', 'curl-bar'],
  weight: 'caution',
  source: 'common-practice',
  test: onCondition('seized-sleeves'),
};

const lowCapacity: ItemRule = {
  id: 'low-capacity',
  kinds: BAR,
  weight: 'caution',
  source: 'common-practice',
  test(item) {
    if (item.capacity === null || inPounds(item.capacity.value) >= LIMITS.barCapacity.value) return null;
    return {
      found: { capacity: { weight: item.capacity.value } },
      limit: { limit: { weight: { value: LIMITS.barCapacity.value, unit: 'lb' } } },
      evidence: item.capacity.evidence,
    };
  },
};

const barTooCheap: ItemRule = {
  id: 'bar-too-cheap',
  kinds: BAR,
  weight: 'caution',
  source: 'common-practice',
  test(item, { reading, settings }) {
    const good = cellOf('bar', 'new', settings);
    const price = item.ownPrice?.value ?? (reading.items.length === 1 ? reading.asking.amount?.value : undefined);
    if (good === null || price === undefined || price.currency !== settings.currency || reading.asking.placeholder) return null;
    if (isOneInch(item) || inMajor(price) >= good.likely * LIMITS.barTooCheap.value) return null;
    const evidence = (item.ownPrice ?? reading.asking.amount)?.evidence ?? [];
    return { found: { price: { money: price } }, limit: { good: { money: money(good.likely, settings.currency) } }, evidence };
  },
};

const contradiction: ItemRule = {
  id: 'bar-facts-disagree',
  kinds: BAR,
  weight: 'caution',
  source: 'steel',
  test(item) {
    const { unitWeight, lengthMm, shaftMm } = item;
    if (unitWeight === null || lengthMm === null) return null;
    const weight = inKilograms(unitWeight.value);
    const bounds = shaftMm === null ? null : barWeightBounds(shaftMm.value, lengthMm.value, item.sleeveMm?.value ?? 50);
    const off = bounds !== null && (weight < bounds.low * 0.95 || weight > bounds.high * 1.05);
    const tooShort = weight >= LIMITS.barFullWeight.value && lengthMm.value < LIMITS.barTooShort.value;
    if (!off && !tooShort) return null;
    const unit = unitWeight.value.unit;
    const rounded = (kilograms: number) => ({
      weight: { value: Math.round(convert({ value: kilograms, unit: 'kg' }, unit).value), unit },
    });
    return {
      found: { weight: { weight: unitWeight.value }, length: { mm: lengthMm.value } },
      ...(bounds === null ? {} : { limit: { low: rounded(bounds.low), high: rounded(bounds.high) } }),
      evidence: [...unitWeight.evidence, ...lengthMm.evidence, ...(shaftMm?.evidence ?? [])],
    };
  },
};

const claims: ItemRule = {
  id: 'tensile-claim',
  kinds: BAR,
  weight: 'note',
  source: 'common-practice',
  test(item) {
    return item.tensilePsi === null ? null : { params: { psi: item.tensilePsi.value }, evidence: item.tensilePsi.evidence };
  },
};

export const barRules: readonly ItemRule[] = [
  bent,
  shaftThick,
  oneInchBar,
  shortBar,
  contradiction,
  frozenSleeves,
  lowCapacity,
  barTooCheap,
  straightnessUnknown,
  shaftThin,
  claims,
];

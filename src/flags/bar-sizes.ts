/** Bars by what they measure: too thick or thin to hold, made for other plates, too short for a rack. */
import type { Item } from '../listing/reading.ts';
import { stiffnessAgainst } from '../mechanics/beam.ts';
import { isWideSleeve, sleevesOf } from '../price/fit.ts';
import { held, LIMITS } from './limits.ts';
import { type ItemRule, sourceOf } from './rule.ts';

const BAR = ['bar'] as const;
const ALL_BARS = ['bar', 'curl-bar', 'hex-bar'] as const;

/** IWF TCRR 2025, 3.3.3: the shaft of the men's bar. */
const MENS_SHAFT_MM = 28;

export const isOneInch = (item: Item): boolean =>
  item.fits?.value === '25mm' || (item.sleeveMm !== null && item.sleeveMm.value < 40);

export const shaftThick: ItemRule = {
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

export const shaftThin: ItemRule = {
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

export const oneInchBar: ItemRule = {
  id: 'one-inch-bar',
  kinds: ALL_BARS,
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item, { settings }) {
    if (!isOneInch(item)) return null;
    const evidence = (item.sleeveMm ?? item.fits)?.evidence ?? item.evidence;
    if (sleevesOf(settings).some((sleeveMm) => !isWideSleeve(sleeveMm)))
      return { weight: 'note', says: 'flag_one_inch_bar_owned', evidence };
    return item.fits?.basis === 'assumed' ? { says: 'flag_one_inch_bar_likely', evidence } : { evidence };
  },
};

export const shortBar: ItemRule = {
  id: 'short-bar',
  bears: true,
  kinds: BAR,
  weight: 'caution',
  source: 'iwf',
  test(item, context) {
    // 1-inch bars are five to six feet long, and have a flag of their own.
    if (item.lengthMm === null || item.lengthMm.value >= LIMITS.barShort.value || isOneInch(item)) return null;
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

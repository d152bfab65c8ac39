import { doubtfulBow, OF_ONE_PIECE } from '../listing/reading.ts';
import { barTooCheap, contradiction, offItsSteel } from './bar-figures.ts';
import { oneInchBar, shaftThick, shaftThin, shortBar } from './bar-sizes.ts';
import { LIMITS } from './limits.ts';
import { isOfCatches } from './rack-words.ts';
import { type ItemRule, onCondition, stated } from './rule.ts';

const BAR = ['bar'] as const;
const ALL_BARS = ['bar', 'curl-bar', 'hex-bar'] as const;

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

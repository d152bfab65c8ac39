/** Plates that fit and are sound, but are not what their face says, or cost more than they need. */
import type { Item } from '../listing/reading.ts';
import { inPounds } from '../units/mass.ts';
import { inMajor, money } from '../units/money.ts';
import { held } from './limits.ts';
import { type ItemRule, priceOf, sourceOf, stated } from './rule.ts';

const isPlainCast = (item: Item): boolean =>
  (item.grade === null || item.grade.value === 'cast') && (item.material === null || item.material.value === 'iron');

const faceValue: ItemRule = {
  id: 'face-value-doubtful',
  kinds: ['plate'],
  weight: 'note',
  source: 'common-practice',
  test(item, context) {
    if (!isPlainCast(item) || item.weighed !== null) return null;
    const mixed = stated(item, 'mismatched');
    if (mixed !== null) return { weight: 'caution', says: 'flag_face_value_doubtful_mixed', evidence: mixed.evidence };
    const limit = held('castHeavy', context.settings);
    if (item.unitWeight === null || inPounds(item.unitWeight.value) < limit.value) return null;
    return { ...sourceOf(limit), params: { weight: { weight: item.unitWeight.value } }, evidence: item.unitWeight.evidence };
  },
};

const oddBumper: ItemRule = {
  id: 'odd-bumper',
  kinds: ['bumper'],
  weight: 'note',
  source: 'common-practice',
  test(item, { plates }) {
    const loss = plates.get(item.id)?.losses.find((one) => one.reason === 'odd');
    if (loss === undefined || item.unitWeight === null) return null;
    return { params: { weight: { weight: item.unitWeight.value } }, evidence: item.count?.evidence ?? item.evidence };
  },
};

const microOverWashers: ItemRule = {
  id: 'micro-over-washers',
  kinds: ['micro'],
  weight: 'note',
  source: 'assumption',
  test(item, context) {
    const limit = held('washerPound', context.settings);
    const price = priceOf(item, context);
    // The default is in dollars: in another currency the buyer's own is needed.
    if (price === null || item.totalWeight === null || (limit.source !== 'own' && context.settings.currency !== 'USD'))
      return null;
    const pounds = inPounds(item.totalWeight.value);
    const perPound = inMajor(price.value) / pounds;
    if (pounds <= 0 || perPound <= limit.value) return null;
    const { currency } = price.value;
    const rate = (major: number) => ({ rate: money(major, currency), per: 'lb' as const });
    return {
      ...sourceOf(limit),
      found: { rate: rate(perPound) },
      limit: { limit: rate(limit.value) },
      evidence: price.evidence,
    };
  },
};

export const plateValueRules: readonly ItemRule[] = [faceValue, oddBumper, microOverWashers];

/** What makers claim: shown as claims, and told when the claim itself is low. No public standard gives a load rating. */
import type { Kind } from '../listing/reading.ts';
import { inPounds } from '../units/mass.ts';
import { held, type LimitName, type LimitSource } from './limits.ts';
import { type Context, type ItemRule, sourceOf } from './rule.ts';

/** For each kind the least rating to train with. */
const LEAST: readonly (readonly [id: string, kinds: readonly Kind[], limit: LimitName, source: LimitSource])[] = [
  ['low-capacity', ['bar'], 'barCapacity', 'common-practice'],
  ['rack-low-capacity', ['rack', 'stands'], 'rackCapacity', 'assumption'],
  ['bench-low-capacity', ['bench'], 'benchCapacity', 'assumption'],
];

const low = LEAST.map(
  ([id, kinds, name, source]): ItemRule => ({
    id,
    bears: true,
    kinds,
    weight: 'caution',
    source,
    test(item, context) {
      const limit = held(name, context.settings);
      if (item.capacity === null || inPounds(item.capacity.value) >= limit.value) return null;
      return {
        ...sourceOf(limit),
        found: { capacity: { weight: item.capacity.value } },
        limit: { limit: { weight: { value: limit.value, unit: 'lb' } } },
        evidence: item.capacity.evidence,
      };
    },
  }),
);

/** Ids of the flags on what its maker rates low. */
export const LOW_RATINGS: ReadonlySet<string> = new Set(LEAST.map(([id]) => id));

const isLow = (kind: Kind, pounds: number, context: Context): boolean =>
  LEAST.some(([, kinds, name]) => kinds.includes(kind) && pounds < held(name, context.settings).value);

const capacity: ItemRule = {
  id: 'capacity-claim',
  kinds: LEAST.flatMap(([, kinds]) => kinds),
  weight: 'note',
  source: 'the-ad',
  test(item, context) {
    if (item.capacity === null || isLow(item.kind.value, inPounds(item.capacity.value), context)) return null;
    return { params: { capacity: { weight: item.capacity.value } }, evidence: item.capacity.evidence };
  },
};

const tensile: ItemRule = {
  id: 'tensile-claim',
  kinds: ['bar'],
  weight: 'note',
  source: 'common-practice',
  test(item) {
    return item.tensilePsi === null ? null : { params: { psi: item.tensilePsi.value }, evidence: item.tensilePsi.evidence };
  },
};

export const claimRules: readonly ItemRule[] = [...low, capacity, tensile];

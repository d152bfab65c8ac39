import { inPounds } from '../units/mass.ts';
import { LIMITS } from './limits.ts';
import { type ItemRule, onCondition } from './rule.ts';

const singleStands: ItemRule = {
  id: 'single-stands',
  kinds: ['stands'],
  weight: 'caution',
  source: 'common-practice',
  test: (item) => ({ evidence: item.kind.evidence }),
};

const partsMissing: ItemRule = {
  id: 'rack-parts-missing',
  kinds: ['rack', 'stands'],
  weight: 'caution',
  source: 'common-practice',
  test: onCondition('missing-parts'),
};

const welded: ItemRule = {
  id: 'welded',
  kinds: ['rack'],
  weight: 'note',
  source: 'common-practice',
  test: onCondition('welded'),
};
const bolted: ItemRule = {
  id: 'bolted',
  kinds: ['rack'],
  weight: 'note',
  source: 'common-practice',
  test: onCondition('bolted'),
};
const wobbly: ItemRule = {
  id: 'rack-wobbly',
  kinds: ['rack', 'stands'],
  weight: 'caution',
  source: 'common-practice',
  test: onCondition('wobbly'),
};
const homeMade: ItemRule = {
  id: 'home-made',
  kinds: ['rack', 'stands', 'bench', 'bar', 'plate'],
  weight: 'caution',
  source: 'common-practice',
  test: onCondition('home-made'),
};

const lowCapacity: ItemRule = {
  id: 'rack-low-capacity',
  kinds: ['rack', 'stands'],
  weight: 'caution',
  source: 'assumption',
  test(item) {
    if (item.capacity === null || inPounds(item.capacity.value) >= LIMITS.rackCapacity.value) return null;
    return {
      found: { capacity: { weight: item.capacity.value } },
      limit: { limit: { weight: { value: LIMITS.rackCapacity.value, unit: 'lb' } } },
      evidence: item.capacity.evidence,
    };
  },
};

export const rackRules: readonly ItemRule[] = [singleStands, partsMissing, wobbly, homeMade, lowCapacity, welded, bolted];

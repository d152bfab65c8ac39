import { inKilograms } from '../units/mass.ts';
import { LIMITS } from './limits.ts';
import { type ItemRule, onCondition } from './rule.ts';

const splitHub: ItemRule = {
  id: 'split-hub',
  kinds: ['bumper', 'plate'],
  weight: 'deal-breaker',
  source: 'common-practice',
  test: onCondition('split-hub'),
};

const small: ItemRule = {
  id: 'bumper-small',
  kinds: ['bumper'],
  weight: 'caution',
  source: 'iwf',
  test(item) {
    if (item.diameterMm === null || item.diameterMm.value >= LIMITS.bumperDiameter.value - LIMITS.bumperSlack.value) return null;
    // Discs under 10 kg may be smaller by the rule.
    if (item.unitWeight !== null && inKilograms(item.unitWeight.value) < 9.9) return null;
    return {
      found: { diameter: { mm: item.diameterMm.value } },
      limit: { limit: { mm: LIMITS.bumperDiameter.value } },
      evidence: item.diameterMm.evidence,
    };
  },
};

export const bumperRules: readonly ItemRule[] = [splitHub, small];

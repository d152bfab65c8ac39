import { OF_ONE_PIECE } from '../listing/reading.ts';
import { inKilograms } from '../units/mass.ts';
import { LIMITS } from './limits.ts';
import { type ItemRule, stated } from './rule.ts';

/** Of several the ad may speak of one: that one is scrap, the others are not. */
const splitHub: ItemRule = {
  id: 'split-hub',
  kinds: ['bumper', 'plate'],
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item) {
    const fact = stated(item, 'split-hub');
    if (fact === null) return null;
    const { evidence } = fact;
    return fact.rule === OF_ONE_PIECE ? { weight: 'caution', says: 'flag_split_hub_piece', evidence } : { evidence };
  },
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

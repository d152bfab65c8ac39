import { OF_ONE_PIECE, PLATE_KINDS } from '../listing/reading.ts';
import { leanAtRim, tiltOf } from '../mechanics/sleeve-fit.ts';
import { sloppyFrom } from '../price/fit.ts';
import { LIMITS } from './limits.ts';
import { type Finding, type ItemRule, stated } from './rule.ts';

/** Diameter of a full-size plate (IWF TCRR 2025): what the lean at the rim is told for when the ad gives no diameter. */
const FULL_DIAMETER_MM = 450;

const boreOversized: ItemRule = {
  id: 'bore-oversized',
  bears: true,
  kinds: PLATE_KINDS,
  weight: 'caution',
  source: 'common-practice',
  test(item, { plates, settings }) {
    const { clearanceMm, chance } = plates.get(item.id)?.fit ?? { clearanceMm: null, chance: 1 };
    const limit = sloppyFrom(settings.sleeveMm);
    if (item.boreMm === null || clearanceMm === null || clearanceMm < limit) return null;
    const tilt = tiltOf(item.boreMm.value, settings.sleeveMm, LIMITS.hub.value);
    const lean = leanAtRim(tilt, item.diameterMm?.value ?? FULL_DIAMETER_MM);
    const found = {
      bore: { mm: item.boreMm.value },
      sleeve: { mm: settings.sleeveMm },
      clearance: { mm: clearanceMm },
      tilt: { degrees: tilt },
      lean: { mm: lean },
    };
    const base = { found, limit: { clearance: { mm: limit } }, evidence: item.boreMm.evidence };
    if (chance === 0) return { ...base, weight: 'deal-breaker', says: 'flag_bore_oversized_useless' };
    // A competition disc may have this hole: the federation's rule and common practice differ, so both are told.
    const withinRule = item.boreMm.value <= LIMITS.boreIpfHigh.value && settings.sleeveMm >= 50;
    return withinRule ? { ...base, weight: 'note', says: 'flag_bore_oversized_rule', source: 'ipf-and-practice' } : base;
  },
};

const boreUndersized: ItemRule = {
  id: 'bore-undersized',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'geometry',
  test(item, { settings }) {
    if (item.boreMm === null || isOneInchOn50(item.boreMm.value, settings.sleeveMm)) return null;
    const clearance = item.boreMm.value - settings.sleeveMm;
    if (clearance >= -LIMITS.boreTight.value) return null;
    return {
      found: { bore: { mm: item.boreMm.value } },
      limit: { sleeve: { mm: settings.sleeveMm } },
      evidence: item.boreMm.evidence,
    };
  },
};

const isOneInchOn50 = (boreMm: number, sleeveMm: number): boolean => boreMm < 40 && sleeveMm >= 40;

const oneInchPlates: ItemRule = {
  id: 'one-inch-plates',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'geometry',
  test(item, { settings }) {
    const fact = item.boreMm ?? item.fits;
    const small = item.boreMm
      ? isOneInchOn50(item.boreMm.value, settings.sleeveMm)
      : item.fits?.value === '25mm' && settings.sleeveMm >= 40;
    return small && fact !== null ? { found: {}, limit: { sleeve: { mm: settings.sleeveMm } }, evidence: fact.evidence } : null;
  },
};

const twoInchPlates: ItemRule = {
  id: 'two-inch-plates',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'geometry',
  test(item, { settings }) {
    if (settings.sleeveMm >= 40 || item.boreMm !== null || item.fits?.value !== '50mm') return null;
    return { limit: { sleeve: { mm: settings.sleeveMm } }, evidence: item.fits.evidence };
  },
};

const oddPlate: ItemRule = {
  id: 'odd-plate',
  kinds: PLATE_KINDS,
  weight: 'note',
  source: 'common-practice',
  test(item, { plates }): Finding | null {
    const loss = plates.get(item.id)?.losses.find((one) => one.reason === 'odd');
    if (loss === undefined || item.unitWeight === null) return null;
    return { params: { weight: { weight: item.unitWeight.value } }, evidence: item.count?.evidence ?? item.evidence };
  },
};

const cracked: ItemRule = {
  id: 'cracked',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item) {
    const crack = stated(item, 'cracked');
    return crack === null || crack.rule === OF_ONE_PIECE ? null : { evidence: crack.evidence };
  },
};

/** One of several is cracked: that one is scrap, the others are not. */
const crackedPiece: ItemRule = {
  id: 'cracked-piece',
  kinds: PLATE_KINDS,
  weight: 'caution',
  source: 'common-practice',
  test(item) {
    const crack = stated(item, 'cracked');
    return crack?.rule === OF_ONE_PIECE ? { evidence: crack.evidence } : null;
  },
};

const filled: ItemRule = {
  id: 'cement-filled',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'common-practice',
  test(item) {
    const material = item.material;
    return material !== null && (material.value === 'cement' || material.value === 'vinyl')
      ? { evidence: material.evidence }
      : null;
  },
};

export const plateRules: readonly ItemRule[] = [
  boreOversized,
  boreUndersized,
  oneInchPlates,
  twoInchPlates,
  oddPlate,
  cracked,
  crackedPiece,
  filled,
];

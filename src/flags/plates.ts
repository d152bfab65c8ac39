import { type Item, measuredBore, OF_ONE_PIECE, PLATE_KINDS } from '../listing/reading.ts';
import { leanAtRim, tiltOf } from '../mechanics/sleeve-fit.ts';
import { type Fit, isWideSleeve, sloppyFrom } from '../price/fit.ts';
import { LIMITS } from './limits.ts';
import { type Context, type Finding, type ItemRule, sourceOf, stated } from './rule.ts';

/** Diameter of a full-size plate (IWF TCRR 2025): what the lean at the rim is told for when the ad gives no diameter. */
const FULL_DIAMETER_MM = 450;

/** How a plate fits the buyer's sleeves, where it is known that it goes on none of them. */
function noFit(item: Item, { plates }: Context): Fit | null {
  const fit = plates.get(item.id)?.fit;
  return fit?.known === true && fit.chance === 0 ? fit : null;
}

/** A 1-inch hole before a 50 mm sleeve: another kind of plate, not a tight one. */
const isOneInchOn50 = (boreMm: number, sleeveMm: number): boolean => boreMm < 40 && isWideSleeve(sleeveMm);

const boreOversized: ItemRule = {
  id: 'bore-oversized',
  bears: true,
  kinds: PLATE_KINDS,
  weight: 'caution',
  source: 'common-practice',
  test(item, { plates, settings }) {
    const fit = plates.get(item.id)?.fit;
    const bore = measuredBore(item);
    if (bore === null || fit === undefined || fit.clearanceMm === null) return null;
    const { clearanceMm, chance, sleeveMm } = fit;
    const limit = sloppyFrom(sleeveMm, settings);
    if (clearanceMm < limit.value) return null;
    const tilt = tiltOf(bore.value, sleeveMm, LIMITS.hub.value);
    const lean = leanAtRim(tilt, item.diameterMm?.value ?? FULL_DIAMETER_MM);
    const found = {
      bore: { mm: bore.value },
      sleeve: { mm: sleeveMm },
      clearance: { mm: clearanceMm },
      tilt: { degrees: tilt },
      lean: { mm: lean },
    };
    const base = { ...sourceOf(limit), found, limit: { clearance: { mm: limit.value } }, evidence: bore.evidence };
    if (chance === 0) return { ...base, weight: 'deal-breaker', says: 'flag_bore_oversized_useless' };
    // A competition disc may have this hole: the federation's rule and common practice differ, so both are told.
    const withinRule = bore.value <= LIMITS.boreIpfHigh.value && sleeveMm >= 50;
    return withinRule
      ? { ...base, weight: 'note', says: 'flag_bore_oversized_rule', source: base.source ?? 'ipf-and-practice' }
      : base;
  },
};

const boreUndersized: ItemRule = {
  id: 'bore-undersized',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'geometry',
  test(item, context) {
    const fit = noFit(item, context);
    const bore = measuredBore(item);
    if (bore === null || fit === null || fit.clearanceMm === null || fit.clearanceMm >= 0) return null;
    if (isOneInchOn50(bore.value, fit.sleeveMm)) return null;
    return {
      found: { bore: { mm: bore.value } },
      limit: { sleeve: { mm: fit.sleeveMm } },
      evidence: bore.evidence,
    };
  },
};

const oneInchPlates: ItemRule = {
  id: 'one-inch-plates',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'geometry',
  test(item, context) {
    const fit = noFit(item, context);
    const bore = measuredBore(item);
    const fact = bore ?? item.fits;
    if (fit === null || fact === null) return null;
    const small = bore === null ? item.fits?.value === '25mm' : isOneInchOn50(bore.value, fit.sleeveMm);
    return small ? { found: {}, limit: { sleeve: { mm: fit.sleeveMm } }, evidence: fact.evidence } : null;
  },
};

const twoInchPlates: ItemRule = {
  id: 'two-inch-plates',
  kinds: PLATE_KINDS,
  weight: 'deal-breaker',
  source: 'geometry',
  test(item, context) {
    const fit = noFit(item, context);
    if (fit === null || measuredBore(item) !== null || item.fits?.value !== '50mm') return null;
    return { limit: { sleeve: { mm: fit.sleeveMm } }, evidence: item.fits.evidence };
  },
};

const oddPlate: ItemRule = {
  id: 'odd-plate',
  kinds: ['plate', 'micro'],
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

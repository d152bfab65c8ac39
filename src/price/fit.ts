/** Whether a plate goes on one of the buyer's sleeves. */
import { type Held, held, LIMITS } from '../flags/limits.ts';
import type { Item, Reading } from '../listing/reading.ts';
import { isPlate, measuredBore } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { clearanceOf } from '../mechanics/sleeve-fit.ts';
import { inPounds } from '../units/mass.ts';

export interface Fit {
  /** Chance that it goes on and can be used: 1 or 0 where the ad says, between where it doesn't. */
  readonly chance: number;
  readonly known: boolean;
  /** Hole minus sleeve in millimetres, where the hole is known. */
  readonly clearanceMm: number | null;
  /** The sleeve that it goes on, or most likely does: plates on different sleeves are no mates. */
  readonly sleeveMm: number;
}

/** The buyer's sleeves, the main one first. */
export const sleevesOf = ({ sleeveMm, otherSleeveMm }: Pick<Settings, 'sleeveMm' | 'otherSleeveMm'>): readonly number[] =>
  otherSleeveMm === null || otherSleeveMm === sleeveMm ? [sleeveMm] : [sleeveMm, otherSleeveMm];

/** Sleeves from here up are 50 mm sleeves; below, 25 mm ones. */
const WIDE_SLEEVE_MM = 40;
export const isWideSleeve = (sleeveMm: number): boolean => sleeveMm >= WIDE_SLEEVE_MM;

/** Clearance at which plates count as sloppy on a sleeve: 1-inch plates are made with wider holes. */
export const sloppyFrom = (sleeveMm: number, settings: Pick<Settings, 'limits'>): Held =>
  held(isWideSleeve(sleeveMm) ? 'boreClearance' : 'boreClearanceOneInch', settings);

/** What the lot as a whole says about holes that the ad doesn't state. */
export interface LotFit {
  readonly wideSaid: boolean;
  readonly narrowSaid: boolean;
  /** Heaviest plate in pounds. */
  readonly heaviest: number;
}

export function lotFitOf(reading: Reading): LotFit {
  let wideSaid = false;
  let narrowSaid = false;
  let heaviest = 0;
  for (const item of reading.items) {
    wideSaid ||= item.fits?.value === '50mm';
    narrowSaid ||= item.fits?.value === '25mm';
    if (isPlate(item.kind.value) && item.unitWeight !== null) heaviest = Math.max(heaviest, inPounds(item.unitWeight.value));
  }
  return { wideSaid, narrowSaid, heaviest };
}

/**
 * Chance that plates whose hole the ad doesn't state have 50 mm holes. Heavy plates nearly always do; small ones alone are as often
 * 1-inch plates; what the ad says of other items in the lot speaks for these too. Assumptions, from common practice.
 */
function chanceOfWideBore(item: Item, lot: LotFit): number {
  if (item.kind.value === 'bumper') return 0.99;
  if (lot.wideSaid !== lot.narrowSaid) return lot.wideSaid ? 0.95 : 0.15;
  if (lot.heaviest >= 44) return 0.93;
  if (lot.heaviest >= 33) return 0.9;
  return lot.heaviest >= 22 ? 0.7 : 0.55;
}

/** Sleeves over this are made to the upper end of the powerlifting rule, 50 to 52 mm: not every 50 mm plate's hole passes them. */
export const TIGHT_FROM_MM = 51;
/** Chance that a plate called a 50 mm plate has a hole of 52 mm or so. Calibrated ones have by the rule (IPF: 52 to 53 mm); else an assumption. */
const passesTightSleeve = (item: Item): number => (item.grade?.value === 'calibrated' ? 0.95 : 0.6);

function fitOn(item: Item, lot: LotFit, sleeveMm: number): Fit {
  const bore = measuredBore(item);
  if (bore !== null) {
    const clearance = clearanceOf(bore.value, sleeveMm);
    const goesOn = clearance >= -LIMITS.boreTight.value && clearance <= LIMITS.boreUseless.value;
    return { chance: goesOn ? 1 : 0, known: true, clearanceMm: clearance, sleeveMm };
  }
  const wideSleeve = isWideSleeve(sleeveMm);
  const passes = sleeveMm > TIGHT_FROM_MM ? passesTightSleeve(item) : 1;
  if (item.fits !== null) {
    const chance = (item.fits.value === '50mm') === wideSleeve ? passes : 0;
    return { chance, known: chance === 0 || chance === 1, clearanceMm: null, sleeveMm };
  }
  const wide = chanceOfWideBore(item, lot);
  return { chance: wideSleeve ? wide * passes : 1 - wide, known: false, clearanceMm: null, sleeveMm };
}

/** Of two sleeves that a plate goes on, the one that it sits better on. */
const sitsBetter = (a: Fit, b: Fit): Fit => {
  if (a.chance !== b.chance) return a.chance > b.chance ? a : b;
  return Math.abs(a.clearanceMm ?? 0) <= Math.abs(b.clearanceMm ?? 0) ? a : b;
};

/** How a plate fits the best of the buyer's sleeves. With a wide and a narrow one, a hole that the ad doesn't state matters no more. */
export function fitOf(item: Item, lot: LotFit, sleeves: readonly number[]): Fit {
  const [first, ...others] = sleeves.map((sleeveMm) => fitOn(item, lot, sleeveMm));
  if (first === undefined) throw new RangeError('fitOf: no sleeve');
  const best = others.reduce(sitsBetter, first);
  const either = measuredBore(item) === null && item.fits === null && new Set(sleeves.map(isWideSleeve)).size > 1;
  if (!either) return best;
  const chance = Math.min(
    1,
    others.reduce((sum, fit) => sum + fit.chance, first.chance),
  );
  return { ...best, chance, known: chance > 1 - 1e-9 };
}

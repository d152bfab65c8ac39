/** Whether a plate goes on the buyer's sleeve. */
import { LIMITS } from '../flags/limits.ts';
import type { Item, Reading } from '../listing/reading.ts';
import { isPlate } from '../listing/reading.ts';
import { clearanceOf } from '../mechanics/sleeve-fit.ts';
import { inPounds } from '../units/mass.ts';

export interface Fit {
  /** Chance that it goes on and can be used: 1 or 0 where the ad says, between where it doesn't. */
  readonly chance: number;
  readonly known: boolean;
  /** Hole minus sleeve in millimetres, where the hole is known. */
  readonly clearanceMm: number | null;
}

/** Sleeves from here up are 50 mm sleeves; below, 25 mm ones. */
const WIDE_SLEEVE_MM = 40;

/** Clearance at which plates count as sloppy on a sleeve: 1-inch plates are made with wider holes. */
export const sloppyFrom = (sleeveMm: number): number =>
  sleeveMm >= WIDE_SLEEVE_MM ? LIMITS.boreClearance.value : LIMITS.boreClearanceOneInch.value;

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
export function chanceOfWideBore(item: Item, lot: LotFit): number {
  if (item.kind.value === 'bumper') return 0.99;
  if (lot.wideSaid !== lot.narrowSaid) return lot.wideSaid ? 0.95 : 0.15;
  if (lot.heaviest >= 44) return 0.93;
  if (lot.heaviest >= 33) return 0.9;
  return lot.heaviest >= 22 ? 0.7 : 0.55;
}

export function fitOf(item: Item, lot: LotFit, sleeveMm: number): Fit {
  if (item.boreMm !== null) {
    const clearance = clearanceOf(item.boreMm.value, sleeveMm);
    const goesOn = clearance >= -LIMITS.boreTight.value && clearance <= LIMITS.boreUseless.value;
    return { chance: goesOn ? 1 : 0, known: true, clearanceMm: clearance };
  }
  const wideSleeve = sleeveMm >= WIDE_SLEEVE_MM;
  if (item.fits !== null) {
    return { chance: (item.fits.value === '50mm') === wideSleeve ? 1 : 0, known: true, clearanceMm: null };
  }
  const wide = chanceOfWideBore(item, lot);
  return { chance: wideSleeve ? wide : 1 - wide, known: false, clearanceMm: null };
}

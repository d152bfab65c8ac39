/** What the drive to the seller costs, and how far the saving carries. */
import type { Trip } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { type Distance, inMiles, MILE_IN_KILOMETRES } from '../units/length.ts';
import { exponentOf } from '../units/money.ts';
import { type Range, scale } from '../units/range.ts';

/** How far a drive's cost may be off either way (detours, traffic). An assumption. */
const SPREAD: Range = { low: 0.9, likely: 1, high: 1.2 };

/** Cost in minor units of one mile of distance to the seller: there and back, driving and time. */
export function costPerMileAway(settings: Settings): number {
  const each = settings.perMile + settings.hourWorth / settings.speedMph;
  return 2 * each * 10 ** exponentOf(settings.currency);
}

/** One-way distance and where it comes from: the buyer's word first, then the ad's. */
export function distanceOf(reading: Reading, settings: Settings): { distance: Distance; basis: Trip['basis'] } | null {
  if (settings.distance !== null) return { distance: settings.distance, basis: 'typed' };
  return reading.distance === null ? null : { distance: reading.distance.value, basis: 'stated' };
}

/** Cost of the drive in minor units; null when the distance isn't known. */
export function driveCost(reading: Reading, settings: Settings): Range | null {
  const known = distanceOf(reading, settings);
  return known === null ? null : scale(SPREAD, inMiles(known.distance) * costPerMileAway(settings));
}

/**
 * One-way distance at which the drive eats the saving up: saving / cost per mile away. `saving` in minor units, before the drive.
 * Null when there is no saving, or when driving costs nothing.
 */
export function breakEven(saving: number, settings: Settings, unit: Distance['unit']): Distance | null {
  const perMile = costPerMileAway(settings);
  if (saving <= 0 || perMile <= 0) return null;
  const miles = saving / perMile;
  return { value: Math.floor(unit === 'mi' ? miles : miles * MILE_IN_KILOMETRES), unit };
}

/** The trip of an evaluation; `saving` is what the goods are worth paying for less the price, in minor units; null when not known. */
export function tripOf(reading: Reading, settings: Settings, saving: number | null): Trip | null {
  const known = distanceOf(reading, settings);
  const cost = driveCost(reading, settings);
  if (known === null || cost === null) return null;
  const limit = saving === null ? null : breakEven(saving, settings, known.distance.unit);
  return { ...known, cost: { ...cost, currency: settings.currency }, breakEven: limit };
}

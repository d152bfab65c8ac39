/** How far away the seller is, and how that is known. */
import type { Trip } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { type Distance, type DistanceUnit, inMiles, MILE_IN_KILOMETRES } from '../units/length.ts';
import { exactly, type Range, scale } from '../units/range.ts';
import { roadKm } from './great-circle.ts';

export interface Away {
  /** One way, as likely as can be said. */
  readonly distance: Distance;
  readonly basis: Trip['basis'];
  /** One way in miles, as a range. */
  readonly miles: Range;
}

/** The buyer's unit of distance where the ad gives none. */
export const distanceUnit = (settings: Settings): DistanceUnit => (settings.unit === 'kg' ? 'km' : 'mi');

const known = (distance: Distance, basis: Trip['basis']): Away => ({ distance, basis, miles: exactly(inMiles(distance)) });

/** One-way distance and where it comes from: the buyer's word first, then the ad's, then the two places; null when none is known. */
export function distanceOf(reading: Reading, settings: Settings): Away | null {
  if (settings.distance !== null) return known(settings.distance, 'typed');
  if (reading.distance !== null) return known(reading.distance.value, 'stated');
  const { home, sellerAt } = settings;
  if (home === null || sellerAt === null) return null;
  const km = roadKm(home, sellerAt);
  const unit = distanceUnit(settings);
  const miles = scale(km, 1 / MILE_IN_KILOMETRES);
  return { distance: { value: unit === 'km' ? km.likely : miles.likely, unit }, basis: 'between-places', miles };
}

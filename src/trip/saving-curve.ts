/** What is left of a saving after the drive, distance by distance: the data of a chart. */
import type { SavingAt } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { type Distance, inMiles, MILE_IN_KILOMETRES } from '../units/length.ts';
import { driveCosts } from './drive.ts';

/** So far past the break-even, and past the seller, the curve goes on. */
const BEYOND = 1.25;
/** Nobody drives further for iron than this in miles, whatever the sums say, unless the seller lives there: an assumption. */
const FARTHEST = 250;
/** Straight but for where another way to fetch the goods becomes the cheaper one; so many pieces show that bend well enough. */
const PIECES = 20;

/**
 * `saving` in minor units, before the drive; `away` and `breakEven` one way, null when not known or not there. Empty without a saving, and
 * where a drive costs nothing.
 */
export function savingByDistance(
  saving: number,
  away: Distance | null,
  breakEven: Distance | null,
  reading: Reading,
  settings: Settings,
  unit: Distance['unit'],
): SavingAt[] {
  if (saving <= 0 || breakEven === null) return [];
  const seller = away === null ? 0 : inMiles(away);
  const far = Math.max(Math.min(FARTHEST, BEYOND * inMiles(breakEven)), BEYOND * seller, 1);
  const costAt = driveCosts(reading, settings);
  return Array.from({ length: PIECES + 1 }, (_, piece) => {
    const miles = (far * piece) / PIECES;
    const cost = costAt(miles);
    return {
      distance: { value: unit === 'mi' ? miles : miles * MILE_IN_KILOMETRES, unit },
      saving: { low: saving - cost.high, likely: saving - cost.likely, high: saving - cost.low },
    };
  });
}

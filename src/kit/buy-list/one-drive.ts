/** One drive over all places of a list, where it is known where they are. */
import type { Settings } from '../../listing/settings.ts';
import { milesBetween, type RoundTrip, tripOver } from '../../trip/round-trip.ts';
import type { TripPlace } from './consider.ts';

/** Looking, measuring and loading at one door. An assumption. */
const DOOR_MINUTES = 20;
/** More are no one day's drive. */
export const MOST_STOPS = 10;

export interface OneDrive {
  readonly round: RoundTrip;
  /** Places of the list that it leaves out, for nobody knows where they are. */
  readonly without: readonly TripPlace[];
}

/** Null without a home, with fewer than two places that are known, or with more than ten. */
export function oneDrive(places: readonly TripPlace[], settings: Settings): OneDrive | null {
  const { home } = settings;
  const known = places.flatMap(({ id, at }) => (at === null ? [] : [{ id, at, minutes: DOOR_MINUTES }]));
  if (home === null || known.length < 2 || known.length > MOST_STOPS) return null;
  const miles = milesBetween([home, ...known.map(({ at }) => at)]);
  return {
    round: tripOver(
      known.map(({ id, minutes }) => ({ id, minutes })),
      miles,
      settings,
    ),
    without: places.filter(({ at }) => at === null),
  };
}

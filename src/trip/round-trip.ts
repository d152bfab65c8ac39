/** One drive over several ads: the best order, what it costs, and what each ad bears of it. */
import type { MoneyRange } from '../listing/evaluation.ts';
import type { Settings } from '../listing/settings.ts';
import { MILE_IN_KILOMETRES } from '../units/length.ts';
import { allocate, exponentOf, type Money } from '../units/money.ts';
import { exactly, type Range, scale, sumShared } from '../units/range.ts';
import { SPREAD } from './drive.ts';
import { type Place, roadKm } from './great-circle.ts';
import { type Distances, fairShares, shortestRound } from './route.ts';

/** One seller on the way. */
export interface Stop {
  readonly id: string;
  /** Minutes spent there: looking, measuring, loading. */
  readonly minutes: number;
}

export interface RoundTrip {
  /** Ids of the stops in the order in which they are visited. */
  readonly order: readonly string[];
  /** The whole round in miles. */
  readonly miles: number;
  /** On the road and at the stops. */
  readonly hours: Range;
  readonly cost: MoneyRange;
  /** What each stop bears of the likely cost, in the order of `stops`; they sum to it to the minor unit. */
  readonly shares: readonly { readonly id: string; readonly cost: Money; readonly alone: Money }[];
  /** Likely cost of a drive for each stop alone, less that of the round: what going together saves. */
  readonly saved: Money;
}

/** Likely miles by road between all places, for `tripOver`; the first is home. Throws a RangeError on a place that is none. */
export const milesBetween = (places: readonly Place[]): number[][] =>
  places.map((from) => places.map((to) => roadKm(from, to).likely / MILE_IN_KILOMETRES));

/**
 * The cost of one drive over all stops in the best order. `miles` is the table of distances, home first and then the stops in their
 * order. Tolls count once. A stop bears its fair share of the round (Shapley value), of the tolls (alike), and its own time at the door.
 * A van, or a load that takes several trips, is not counted here. Throws a RangeError on a table that does not fit the stops.
 */
export function tripOver(stops: readonly Stop[], miles: Distances, settings: Settings): RoundTrip {
  if (miles.length !== stops.length + 1) throw new RangeError('round trip: one row for home and one for each stop');
  const { currency, perMile, hourWorth, speedMph, tolls } = settings;
  const unit = 10 ** exponentOf(currency);
  const perRoadMile = (perMile + hourWorth / speedMph) * unit;
  const atDoor = ({ minutes }: Stop): number => (minutes / 60) * hourWorth * unit;
  const { order, length } = shortestRound(miles);
  const toll = stops.length > 0 ? tolls * unit : 0;
  const waiting = stops.reduce((sum, { minutes }) => sum + minutes, 0) / 60;
  const cost = sumShared([scale(SPREAD, length * perRoadMile), exactly(toll + waiting * hourWorth * unit)]);
  const money = (minor: number): Money => ({ minor: Math.round(minor), currency });
  const shares = fairShares(miles);
  // A table in which a detour is shorter than the way itself could give a stop less than nothing: it then bears nothing.
  const bears = stops.map((stop, index) => Math.max(0, (shares[index] ?? 0) * perRoadMile + toll / stops.length + atDoor(stop)));
  const parts = allocate(money(cost.likely), bears);
  const alone = stops.map((stop, index) =>
    money(((miles[0]?.[index + 1] ?? 0) + (miles[index + 1]?.[0] ?? 0)) * perRoadMile + toll + atDoor(stop)),
  );
  return {
    order: order.map((stop) => stops[stop - 1]?.id ?? ''),
    miles: length,
    hours: sumShared([scale(SPREAD, length / speedMph), exactly(waiting)]),
    cost: { ...cost, currency },
    shares: stops.map(({ id }, index) => ({ id, cost: parts[index] ?? money(0), alone: alone[index] ?? money(0) })),
    saved: money(alone.reduce((sum, { minor }) => sum + minor, 0) - cost.likely),
  };
}

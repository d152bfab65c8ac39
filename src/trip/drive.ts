/** What the drive to the seller costs, part by part, and how far a saving carries. All money here is in minor units. */
import type { DriveParts, Trip } from '../listing/evaluation.ts';
import type { Reading } from '../listing/reading.ts';
import type { Settings } from '../listing/settings.ts';
import { type Distance, MILE_IN_KILOMETRES } from '../units/length.ts';
import { exponentOf } from '../units/money.ts';
import { exactly, type Range, scale, sumShared, times } from '../units/range.ts';
import { type Message, message } from '../words/message.ts';
import { type Away, distanceOf } from './distance.ts';
import { loadOf, type Way, waysOf } from './load.ts';

/** How far a drive's cost may be off either way (detours, traffic). An assumption. */
export const SPREAD: Range = { low: 0.9, likely: 1, high: 1.2 };

const perUnit = (settings: Settings): number => 10 ** exponentOf(settings.currency);
const drivingPerMile = (settings: Settings): number => 2 * settings.perMile * perUnit(settings);
const timePerMile = (settings: Settings): number => ((2 * settings.hourWorth) / settings.speedMph) * perUnit(settings);
const tollsOf = (settings: Settings): number => settings.tolls * perUnit(settings);

/** Cost of one mile of distance to the seller: there and back, driving and time. */
export const costPerMileAway = (settings: Settings): number => drivingPerMile(settings) + timePerMile(settings);

/** Cost of fetching the goods in one way from so many miles off. */
const costOf = (way: Way, miles: number, settings: Settings): number =>
  way.times * (miles * costPerMileAway(settings) + tollsOf(settings)) + way.hire;

/** The cheapest way, and of those alike the first. */
const cheapest = (ways: readonly Way[], miles: number, settings: Settings): Way =>
  ways.reduce((best, way) => (costOf(way, miles, settings) < costOf(best, miles, settings) ? way : best));

/** The drive to a seller who is `miles` away, likely cost only. */
export function driveCostAt(reading: Reading, miles: number, settings: Settings): number {
  const { ways } = waysOf(loadOf(reading), settings);
  return costOf(cheapest(ways, miles, settings), miles, settings);
}

/** The drive's cost at any distance in miles, as a range: the cheapest way that far, with the road's spread on what rises with the miles. */
export function driveCosts(reading: Reading, settings: Settings): (miles: number) => Range {
  const { ways } = waysOf(loadOf(reading), settings);
  return (miles) => {
    const way = cheapest(ways, miles, settings);
    const at = (factor: number): number => costOf(way, miles * factor, settings);
    return { low: at(SPREAD.low), likely: at(SPREAD.likely), high: at(SPREAD.high) };
  };
}

export interface Drive extends Away {
  readonly way: Way;
  readonly parts: { readonly [part in keyof DriveParts]: Range };
  readonly total: Range;
  readonly note: Message | null;
}

/** The drive, part by part; null when the distance isn't known. */
export function driveOf(reading: Reading, settings: Settings): Drive | null {
  const away = distanceOf(reading, settings);
  if (away === null) return null;
  const { ways, note } = waysOf(loadOf(reading), settings);
  const way = cheapest(ways, away.miles.likely, settings);
  const driven = scale(times(away.miles, SPREAD), way.times);
  const parts = {
    driving: scale(driven, drivingPerMile(settings)),
    time: scale(driven, timePerMile(settings)),
    tolls: exactly(way.times * tollsOf(settings)),
    van: exactly(way.hire),
  };
  return { ...away, way, parts, total: sumShared(Object.values(parts)), note };
}

/**
 * One-way distance at which the drive eats a saving up: in the way that carries furthest, (saving − tolls − hire) / cost per mile away.
 * Rounded down to a whole unit. Null when the saving does not even pay tolls and hire, or when driving costs nothing.
 */
export function breakEven(saving: number, reading: Reading, settings: Settings, unit: Distance['unit']): Distance | null {
  const perMile = costPerMileAway(settings);
  if (saving <= 0 || perMile <= 0) return null;
  const { ways } = waysOf(loadOf(reading), settings);
  const miles = Math.max(...ways.map((way) => (saving - costOf(way, 0, settings)) / (way.times * perMile)));
  return miles < 0 ? null : { value: Math.floor(unit === 'mi' ? miles : miles * MILE_IN_KILOMETRES), unit };
}

const between = (basis: Trip['basis'], { home, sellerAt }: Settings): Message | null =>
  basis === 'between-places' ? message('trip_between', { home: home?.name ?? '', seller: sellerAt?.name ?? '' }) : null;

/** The trip of an evaluation; `saving` is what going there saves on average before the drive; null when not known. */
export function tripOf(drive: Drive | null, reading: Reading, settings: Settings, saving: number | null): Trip | null {
  if (drive === null) return null;
  const { distance, basis, miles, way, parts, total, note } = drive;
  const { currency } = settings;
  return {
    distance,
    basis,
    miles,
    cost: { ...total, currency },
    parts,
    times: way.times,
    notes: [between(basis, settings), way.why, note].filter((one) => one !== null),
    breakEven: saving === null ? null : breakEven(saving, reading, settings, distance.unit),
  };
}

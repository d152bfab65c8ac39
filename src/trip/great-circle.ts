/** How far it is between two places whose coordinates are known: the great circle, and what roads add to it. */
import type { Range } from '../units/range.ts';

export interface Place {
  readonly name: string;
  /** Degrees north, −90 to 90. */
  readonly lat: number;
  /** Degrees east, −180 to 180. */
  readonly lon: number;
}

/** Mean radius of the earth in kilometres. A sphere is off by 0.6 % of the distance at most. */
const EARTH_RADIUS_KM = 6371.0;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

function check({ lat, lon }: Pick<Place, 'lat' | 'lon'>): void {
  if (!(Math.abs(lat) <= 90)) throw new RangeError(`great circle: ${lat} is no latitude`);
  if (!(Math.abs(lon) <= 180)) throw new RangeError(`great circle: ${lon} is no longitude`);
}

/** Kilometres along the great circle, by the haversine formula. Throws a RangeError on a latitude or longitude that is none. */
export function greatCircleKm(from: Pick<Place, 'lat' | 'lon'>, to: Pick<Place, 'lat' | 'lon'>): number {
  check(from);
  check(to);
  const half = (a: number, b: number): number => Math.sin(radians(b - a) / 2) ** 2;
  const h = half(from.lat, to.lat) + Math.cos(radians(from.lat)) * Math.cos(radians(to.lat)) * half(from.lon, to.lon);
  return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(h)));
}

/**
 * Road over straight line: about 1.4 for local trips (Boscoe, Henry & Zdeb 2012: 1.417), 1.3 for typical and 1.2 for long ones (Ballou,
 * Rahardja & Sakai 2002: 1.20 in the US); short trips are the more circuitous ones (Giacomin & Levinson 2015). That local ends at
 * 10 km and long begins at 100 km is an assumption, and so is 0.1 either way.
 */
const LOCAL = { km: 10, factor: 1.4 };
const LONG = { km: 100, factor: 1.2 };
const EITHER_WAY = 0.1;

/** Road over straight line for a straight line of `km`: falls evenly with the logarithm of the distance between local and long. */
export function roadFactor(km: number): Range {
  const along = Math.log(km / LOCAL.km) / Math.log(LONG.km / LOCAL.km);
  const likely = LOCAL.factor + (LONG.factor - LOCAL.factor) * Math.min(1, Math.max(0, along));
  return { low: likely - EITHER_WAY, likely, high: likely + EITHER_WAY };
}

/** Kilometres by road between two places, as a range: great circle times road factor. Throws like `greatCircleKm`. */
export function roadKm(from: Pick<Place, 'lat' | 'lon'>, to: Pick<Place, 'lat' | 'lon'>): Range {
  const km = greatCircleKm(from, to);
  if (km === 0) return { low: 0, likely: 0, high: 0 };
  const { low, likely, high } = roadFactor(km);
  return { low: km * low, likely: km * likely, high: km * high };
}

/**
 * The great circle against a published value, against exact circles of the sphere, and against an independent solution on the
 * ellipsoid (geographiclib-geodesic, MIT; Karney 2013, Algorithms for geodesics).
 */
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { greatCircleKm, roadFactor, roadKm } from '../../src/trip/great-circle.ts';

const at = (lat: number, lon: number) => ({ lat, lon });

/** Numbers that look like chance but are the same every time: multiplier and modulus of Park & Miller 1988. */
function* seeded(seed: number): Generator<number, never> {
  let state = seed;
  for (;;) {
    state = (state * 48271) % 2147483647;
    yield state / 2147483647;
  }
}

describe('the great circle', () => {
  it('gives the well-known value of 2886.44444283798 km at a radius of 6371.0 km', () =>
    // Worked example of a public collection of algorithms, which tells it with other radii too.
    expect(greatCircleKm(at(36.12, -86.67), at(33.94, -118.4))).toBeCloseTo(2886.44444283798, 8));

  it('is a quarter and a half of the circumference where it must be', () => {
    expect(greatCircleKm(at(0, 0), at(90, 0))).toBeCloseTo((Math.PI / 2) * 6371, 9);
    expect(greatCircleKm(at(0, -90), at(0, 90))).toBeCloseTo(Math.PI * 6371, 9);
    expect(greatCircleKm(at(12, 34), at(12, 34))).toBe(0);
    expect(greatCircleKm(at(50, 179.9), at(50, -179.9))).toBeLessThan(20);
  });

  it('is within 0.6 % of the ellipsoid, whatever the two places', () => {
    const chance = seeded(2026);
    const next = () => chance.next().value;
    let widest = 0;
    for (let round = 0; round < 5000; round += 1) {
      const from = at(140 * next() - 70, 360 * next() - 180);
      // Half of them as near as sellers are, half anywhere.
      const near = at(from.lat + 2 * next() - 1, Math.max(-180, Math.min(180, from.lon + 2 * next() - 1)));
      const to = round % 2 === 0 ? near : at(180 * next() - 90, 360 * next() - 180);
      const km = (geodesic.Geodesic.WGS84.Inverse(from.lat, from.lon, to.lat, to.lon).s12 ?? Number.NaN) / 1000;
      widest = Math.max(widest, Math.abs(greatCircleKm(from, to) / km - 1));
    }
    expect(widest).toBeLessThan(0.006);
    // So wide that a wrong radius would be seen: the sphere is known to differ by up to about 0.56 %.
    expect(widest).toBeGreaterThan(0.003);
  });

  it('refuses what is no place', () => {
    for (const bad of [at(90.1, 0), at(-91, 0), at(0, 180.5), at(Number.NaN, 0), at(0, Number.POSITIVE_INFINITY)]) {
      expect(() => greatCircleKm(bad, at(0, 0))).toThrow(RangeError);
      expect(() => greatCircleKm(at(0, 0), bad)).toThrow(RangeError);
    }
  });
});

describe('road over straight line', () => {
  it('is 1.4 for local trips, 1.3 between, 1.2 for long ones', () => {
    // Boscoe, Henry & Zdeb 2012: 1.417; Ballou, Rahardja & Sakai 2002: 1.20 in the US (from memory).
    expect(roadFactor(3).likely).toBeCloseTo(1.4, 9);
    expect(roadFactor(Math.sqrt(1000)).likely).toBeCloseTo(1.3, 9);
    expect(roadFactor(500).likely).toBeCloseTo(1.2, 9);
    expect(roadFactor(3).low).toBeLessThan(1.417);
    expect(roadFactor(3).high).toBeGreaterThan(1.417);
  });

  it('is the more the shorter the trip (Giacomin & Levinson 2015), but further is never nearer by road', () => {
    for (let km = 0.5; km < 400; km += 0.5) {
      expect(roadFactor(km + 0.5).likely).toBeLessThanOrEqual(roadFactor(km).likely);
      expect((km + 0.5) * roadFactor(km + 0.5).likely).toBeGreaterThan(km * roadFactor(km).likely);
    }
  });

  it('keeps its order, and is nothing on the spot', () => {
    const { low, likely, high } = roadKm(at(40, -80), at(40.2, -80.1));
    expect(low).toBeLessThan(likely);
    expect(likely).toBeLessThan(high);
    expect(roadKm(at(40, -80), at(40, -80))).toEqual({ low: 0, likely: 0, high: 0 });
  });
});

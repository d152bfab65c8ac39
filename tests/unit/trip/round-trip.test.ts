import { describe, expect, it } from 'vitest';
import { milesBetween, tripOver } from '../../../src/trip/round-trip.ts';
import { settings } from '../making/readings.ts';

const own = settings({ perMile: 0.2, hourWorth: 12, speedMph: 40, tolls: 3 });
const along = [0, 10, 30];
const ROAD = along.map((a) => along.map((b) => Math.abs(a - b)));
const STOPS = [
  { id: 'near', minutes: 30 },
  { id: 'far', minutes: 20 },
];

describe('one drive over several ads', () => {
  it('costs the round, the time at each stop and the tolls once', () => {
    const { miles, hours, cost, order } = tripOver(STOPS, ROAD, own);
    expect(miles).toBe(60);
    expect(order).toHaveLength(2);
    expect(hours.likely).toBeCloseTo(60 / 40 + 50 / 60, 9);
    // 60 miles at $0.20, 2 h 20 min at $12, $3 of tolls.
    expect(cost.likely).toBeCloseTo(1200 + 2800 + 300, 9);
    expect(cost.low).toBeCloseTo(0.9 * 3000 + 1000 + 300, 9);
  });

  it('is borne by those who use each stretch, and sums to the cent', () => {
    const { shares, cost, saved } = tripOver(STOPS, ROAD, own);
    // 50 cents a mile: both use the first 10 miles there and back, the far one alone the other 20.
    expect(shares.map((share) => share.cost.minor)).toEqual([500 + 150 + 600, 500 + 2000 + 150 + 400]);
    expect(shares.map((share) => share.alone.minor)).toEqual([1000 + 300 + 600, 3000 + 300 + 400]);
    expect(shares.reduce((sum, share) => sum + share.cost.minor, 0)).toBe(Math.round(cost.likely));
    expect(saved.minor).toBe(1900 + 3700 - 4300);
  });

  it('costs what a single drive costs where there is one stop, and nothing where there is none', () => {
    const one = tripOver(
      [{ id: 'a', minutes: 0 }],
      [
        [0, 20],
        [20, 0],
      ],
      own,
    );
    expect(one.cost.likely).toBeCloseTo(40 * 50 + 300, 9);
    expect(one.saved.minor).toBe(0);
    expect(tripOver([], [[0]], own)).toMatchObject({ order: [], miles: 0, cost: { likely: 0 }, shares: [] });
  });

  it('refuses a table that does not fit the stops', () =>
    expect(() =>
      tripOver(
        STOPS,
        [
          [0, 1],
          [1, 0],
        ],
        own,
      ),
    ).toThrow(RangeError));

  it('takes ten stops from their coordinates in well under 50 ms', () => {
    const places = Array.from({ length: 11 }, (_none, index) => ({
      name: `${index}`,
      lat: 40 + Math.sin(7 * index) / 3,
      lon: -80 + Math.cos(11 * index) / 3,
    }));
    const stops = places.slice(1).map(({ name }) => ({ id: name, minutes: 15 }));
    const table = milesBetween(places);
    tripOver(stops, table, own);
    const began = process.cpuUsage().user;
    for (let round = 0; round < 5; round += 1) tripOver(stops, table, own);
    const each = (process.cpuUsage().user - began) / 5000;
    expect(each).toBeLessThan(50);
    expect(tripOver(stops, table, own).saved.minor).toBeGreaterThan(0);
  });
});

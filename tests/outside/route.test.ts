/**
 * Shortest rounds against published optima and against trying every order; fair shares against their definition.
 *
 * Published: burma14 of TSPLIB (Reinelt 1991), 14 places, optimum 3323, coordinates and distance rule from memory; a table of four with
 * ways that differ there and back, optimum 35 (Horowitz & Sahni, Fundamentals of Computer Algorithms, dynamic programming; from memory).
 */
import { describe, expect, it } from 'vitest';
import { type Distances, fairShares, shortestRound } from '../../src/trip/route.ts';

/** Degrees and minutes as TSPLIB writes them: 16.47 is 16° 47'. */
const BURMA14 = [
  [16.47, 96.1],
  [16.47, 94.44],
  [20.09, 92.54],
  [22.39, 93.37],
  [25.23, 97.24],
  [22.0, 96.05],
  [20.47, 97.02],
  [17.2, 96.29],
  [16.3, 97.38],
  [14.05, 98.12],
  [16.53, 97.38],
  [21.52, 95.59],
  [19.41, 97.13],
  [20.09, 94.55],
] as const;

/** TSPLIB's own rule for places on the earth: a rounded pi, a radius of 6378.388 km, whole kilometres rounded up. */
function tsplibGeo(places: readonly (readonly [number, number])[]): number[][] {
  const radians = (written: number): number => {
    const degrees = Math.trunc(written);
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the published lengths rest on this rounded pi.
    return (3.141592 * (degrees + (5 * (written - degrees)) / 3)) / 180;
  };
  return places.map((from, i) =>
    places.map((to, j) => {
      if (i === j) return 0;
      const [a, b] = [from.map(radians), to.map(radians)];
      const q1 = Math.cos((a[1] ?? 0) - (b[1] ?? 0));
      const q2 = Math.cos((a[0] ?? 0) - (b[0] ?? 0));
      const q3 = Math.cos((a[0] ?? 0) + (b[0] ?? 0));
      return Math.trunc(6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
    }),
  );
}

function* orders(stops: readonly number[]): Generator<number[]> {
  if (stops.length === 0) yield [];
  for (const first of stops) for (const rest of orders(stops.filter((stop) => stop !== first))) yield [first, ...rest];
}

const lengthOf = (order: readonly number[], table: Distances): number =>
  [0, ...order].reduce((sum, from, index, all) => sum + (table[from]?.[all[index + 1] ?? 0] ?? Number.NaN), 0);
const stopsOf = (table: Distances): number[] => table.slice(1).map((_row, index) => index + 1);
const byTrying = (table: Distances, stops = stopsOf(table)): number =>
  Math.min(...[...orders(stops)].map((order) => lengthOf(order, table)));

/** Park & Miller 1988, with the multiplier of 1993. */
function* seeded(seed: number): Generator<number, never> {
  let state = seed;
  for (;;) {
    state = (state * 48271) % 2147483647;
    yield state / 2147483647;
  }
}
/** Any table, ways there and back apart. */
function anyTable(size: number, chance: Generator<number, never>): number[][] {
  return Array.from({ length: size }, (_row, i) =>
    Array.from({ length: size }, (_column, j) => (i === j ? 0 : Math.round(100 * chance.next().value))),
  );
}
/** Straight lines between points of a square. */
function flatTable(size: number, chance: Generator<number, never>): number[][] {
  const points = Array.from({ length: size }, () => [chance.next().value, chance.next().value] as const);
  return points.map(([x, y]) => points.map(([u, v]) => Math.hypot(x - u, y - v)));
}

describe('the shortest round', () => {
  it('is 3323 over the 14 places of burma14', () => {
    const table = tsplibGeo(BURMA14);
    const { order, length } = shortestRound(table);
    expect(length).toBe(3323);
    expect([...order].sort((a, b) => a - b)).toEqual(stopsOf(table));
    expect(lengthOf(order, table)).toBe(3323);
  });

  it('is 35 over the textbook table whose ways differ there and back', () => {
    const table = [
      [0, 10, 15, 20],
      [5, 0, 9, 10],
      [6, 13, 0, 12],
      [8, 8, 9, 0],
    ];
    expect(shortestRound(table)).toEqual({ order: [1, 3, 2], length: 35 });
  });

  it('is what trying every order finds, up to eight stops', () => {
    const chance = seeded(11);
    let tried = 0;
    for (let stops = 1; stops <= 8; stops += 1) {
      for (let round = 0; round < (stops === 8 ? 2 : 12); round += 1) {
        const table = round % 2 === 0 ? anyTable(stops + 1, chance) : flatTable(stops + 1, chance);
        const { order, length } = shortestRound(table);
        expect(length).toBeCloseTo(byTrying(table), 9);
        expect(lengthOf(order, table)).toBeCloseTo(length, 9);
        expect(new Set(order).size).toBe(stops);
        tried += 1;
      }
    }
    expect(tried).toBe(86);
  });

  it('needs no stop, and refuses what is no table', () => {
    expect(shortestRound([[0]])).toEqual({ order: [], length: 0 });
    const bad: Distances[] = [
      [],
      [[0, 1]],
      [
        [0, -1],
        [1, 0],
      ],
      [
        [0, Number.NaN],
        [1, 0],
      ],
      flatTable(15, seeded(3)),
    ];
    for (const table of bad) expect(() => shortestRound(table)).toThrow(RangeError);
  });
});

describe('fair shares', () => {
  /** The definition itself: what each stop adds, over all orders in which the stops are decided on. */
  function byDefinition(table: Distances): number[] {
    const all = [...orders(stopsOf(table))];
    const sums = new Array<number>(table.length - 1).fill(0);
    for (const order of all) {
      order.forEach((stop, index) => {
        const [before, after] = [byTrying(table, order.slice(0, index)), byTrying(table, order.slice(0, index + 1))];
        sums[stop - 1] = (sums[stop - 1] ?? 0) + after - before;
      });
    }
    return sums.map((sum) => sum / all.length);
  }

  it('are what each stop adds on average over all orders', () => {
    const chance = seeded(5);
    for (let stops = 1; stops <= 5; stops += 1) {
      for (const table of [anyTable(stops + 1, chance), flatTable(stops + 1, chance)]) {
        const [shares, meant] = [fairShares(table), byDefinition(table)];
        for (const [index, share] of shares.entries()) expect(share).toBeCloseTo(meant[index] ?? Number.NaN, 9);
      }
    }
  });

  it('split the airstrip of the textbooks as it is split there', () => {
    // Stops along one road: each stretch is borne alike by those who use it (Littlechild & Owen 1973, the airport game).
    const along = [0, 8, 11, 13, 18];
    const table = along.map((a) => along.map((b) => Math.abs(a - b)));
    const stretches = [8 / 4, 3 / 3, 2 / 2, 5 / 1].map((part) => 2 * part);
    const meant = stretches.map((_part, index) => stretches.slice(0, index + 1).reduce((sum, part) => sum + part, 0));
    for (const [index, share] of fairShares(table).entries()) expect(share).toBeCloseTo(meant[index] ?? Number.NaN, 9);
  });

  it('sum to the round, and no stop bears more than a drive for it alone, or less than nothing', () => {
    const chance = seeded(23);
    for (let stops = 1; stops <= 10; stops += 1) {
      const table = flatTable(stops + 1, chance);
      const shares = fairShares(table);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(shortestRound(table).length, 9);
      for (const [index, share] of shares.entries()) {
        expect(share).toBeGreaterThanOrEqual(-1e-9);
        expect(share).toBeLessThanOrEqual(2 * (table[0]?.[index + 1] ?? 0) + 1e-9);
      }
    }
  });
});

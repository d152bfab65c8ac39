import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenSplit } from '../../../src/kit/even-split.ts';
import { pairUp, type WeighedPlate } from '../../../src/kit/pairing.ts';

const weighed = (face: number, weights: readonly number[]): WeighedPlate[] =>
  weights.map((pounds, index) => ({ id: `${face}-${index}`, face, pounds }));

/** All ways to make pairs of a list, with at most one plate left alone. */
function matchings(plates: readonly WeighedPlate[]): (readonly [WeighedPlate, WeighedPlate])[][] {
  const [first, ...rest] = plates;
  if (first === undefined || plates.length === 1) return [[]];
  const withFirst = rest.flatMap((mate, index) =>
    matchings(rest.filter((_, other) => other !== index)).map((others) => [[first, mate] as const, ...others]),
  );
  return plates.length % 2 === 0 ? withFirst : [...withFirst, ...matchings(rest)];
}

/** Worst difference over all loads by trying everything: matchings, sides, and subsets of pairs. In hundredths of a pound. */
function worstByTryingAll(groups: readonly (readonly WeighedPlate[])[]): number {
  const combined = groups
    .map(matchings)
    .reduce<(readonly [WeighedPlate, WeighedPlate])[][]>(
      (made, ways) => made.flatMap((a) => ways.map((b) => [...a, ...b])),
      [[]],
    );
  const fullest = Math.max(...combined.map((pairs) => pairs.length));
  let best = Number.POSITIVE_INFINITY;
  for (const pairs of combined.filter(({ length }) => length === fullest)) {
    const differences = pairs.map(([a, b]) => Math.round(a.pounds * 100) - Math.round(b.pounds * 100));
    for (let sides = 0; sides < 2 ** pairs.length; sides += 1) {
      let worst = 0;
      for (let load = 0; load < 2 ** pairs.length; load += 1) {
        const off = differences.reduce(
          (sum, one, index) => sum + ((load >> index) & 1 ? ((sides >> index) & 1 ? one : -one) : 0),
          0,
        );
        worst = Math.max(worst, Math.abs(off));
      }
      best = Math.min(best, worst);
    }
  }
  return best;
}

describe('pairing', () => {
  const plate45 = fc.integer({ min: 4200, max: 4900 }).map((n) => n / 100);
  const plate10 = fc.integer({ min: 900, max: 1150 }).map((n) => n / 100);

  it('is as good as trying every matching, side and load', () => {
    fc.assert(
      fc.property(fc.array(plate45, { maxLength: 7 }), fc.array(plate10, { maxLength: 4 }), (heavy, light) => {
        const groups = [weighed(45, heavy), weighed(10, light)];
        expect(Math.round(pairUp(groups.flat(), 45).worst * 100)).toBe(worstByTryingAll(groups));
      }),
      { numRuns: 40 },
    );
  });

  it('is as good for twelve plates', () => {
    const cases = [
      [45.2, 44.1, 46.9, 45.5, 43.8, 47.2, 45.1, 44.6, 46.0, 45.9],
      [41.75, 56, 45, 45.5, 44.2, 48.8, 45, 46.1, 43.9, 47.3],
    ];
    for (const weights of cases) {
      const plates = weighed(45, weights);
      expect(Math.round(pairUp(plates, 45).worst * 100)).toBe(worstByTryingAll([plates]));
    }
    // Twelve, in two face values, so that all their matchings can be tried.
    const groups = [weighed(45, [45.2, 44.1, 46.9, 45.5, 43.8, 47.2]), weighed(25, [25.4, 24.6, 26.1, 25, 25.9, 24.9])];
    expect(Math.round(pairUp(groups.flat(), 45).worst * 100)).toBe(worstByTryingAll(groups));
  });

  it('puts each plate in one pair, or names it as alone', () => {
    const plates = [...weighed(45, [45, 46, 44, 47, 45.5]), ...weighed(10, [10.2, 9.8, 10])];
    const { pairs, alone } = pairUp(plates, 45);
    expect([...pairs.flatMap(({ left, right }) => [left.id, right.id]), ...alone.map(({ id }) => id)].sort()).toEqual(
      plates.map(({ id }) => id).sort(),
    );
    for (const { left, right } of pairs) expect(left.face).toBe(right.face);
    expect(alone.map(({ face }) => face)).toEqual([45, 10]);
  });

  it('says when not every choice of odd plates was tried', () => {
    // Each face value has three odd places to leave alone: 3^9 = 19,683 choices are tried, 3^10 = 59,049 are not.
    const groups = (count: number) =>
      Array.from({ length: count }, (_, face) =>
        weighed(
          face + 1,
          [1, 2, 3, 4, 5].map((n) => face + 1 + n * (n + face) * 0.01),
        ),
      );
    expect(pairUp(groups(9).flat(), 45).proven).toBe(true);
    const many = pairUp(groups(10).flat(), 45);
    expect(many.proven).toBe(false);
    expect(many.pairs).toHaveLength(20);
    expect(many.alone).toHaveLength(10);
  });

  it('tells the worst share of a load, the bar included', () => {
    const plates = [...weighed(45, [46, 45]), ...weighed(5, [5.5, 5])];
    const { pairs, worst, worstShare } = pairUp(plates, 45);
    // The 45s heavy on one side, the 5s on the other: worst alone, 1 lb in 45 + 91, or half a pound in 45 + 10.5.
    expect(worst).toBe(1);
    expect(pairs).toHaveLength(2);
    expect(worstShare).toBeCloseTo(Math.max(1 / 136, 0.5 / 55.5), 10);
  });

  it('sixty plates take no time, and nothing is nothing', () => {
    const plates = weighed(
      45,
      Array.from({ length: 60 }, (_, index) => 45 + ((index * 37) % 101) / 25),
    );
    const before = performance.now();
    expect(pairUp(plates, 45).pairs).toHaveLength(30);
    expect(performance.now() - before).toBeLessThan(2000);
    expect(pairUp([], 45)).toEqual({ pairs: [], alone: [], worst: 0, proven: true, worstShare: 0 });
    expect(() => pairUp(weighed(45, [Number.NaN]), 45)).toThrow(RangeError);
  });
});

it('an even split is the best of all splits', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(60), { maxLength: 10 }), (numbers) => {
      const sum = numbers.reduce((a, b) => a + b, 0);
      let best = sum;
      for (let bits = 0; bits < 2 ** numbers.length; bits += 1) {
        const part = numbers.reduce((total, one, index) => total + ((bits >> index) & 1 ? one : 0), 0);
        best = Math.min(best, Math.max(part, sum - part));
      }
      const { first, larger } = evenSplit(numbers);
      const part = numbers.reduce((total, one, index) => total + (first[index] ? one : 0), 0);
      expect(larger).toBe(best);
      expect(Math.max(part, sum - part)).toBe(best);
    }),
  );
  expect(() => evenSplit([1.5])).toThrow(RangeError);
  expect(() => evenSplit([-1])).toThrow(RangeError);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Exact, exactWeight, weightOf } from '../../../src/kit/exact-weight.ts';
import { loadsOf, nearestLoads, widestGap } from '../../../src/kit/loads.ts';
import type { LoadedBar, OwnedPlates } from '../../../src/kit/plates.ts';
import { kilograms, pounds, type Weight } from '../../../src/units/mass.ts';

const bar = (over: Partial<LoadedBar> = {}): LoadedBar => ({ weight: pounds(45), collars: pounds(0), sleeveMm: null, ...over });
const plates = (weight: Weight, pieces: number, thicknessMm: number | null = null): OwnedPlates => ({
  weight,
  pieces,
  thicknessMm,
});
const totals = (owned: readonly OwnedPlates[], on = bar()): Exact[] => loadsOf(owned, on).map(({ total }) => total);

/** Every total by going through all counts of all plates: nothing shared with the code. */
function byBruteForce(owned: readonly OwnedPlates[], { weight, collars, sleeveMm }: LoadedBar): Map<Exact, number> {
  const found = new Map<Exact, number>();
  const go = (index: number, side: Exact, room: number, count: number): void => {
    if (sleeveMm !== null && room > sleeveMm) return;
    const one = owned[index];
    if (one === undefined) {
      const total = exactWeight(weight) + exactWeight(collars) + 2 * side;
      found.set(total, Math.min(found.get(total) ?? Number.POSITIVE_INFINITY, count));
      return;
    }
    for (let n = 0; n <= Math.floor(one.pieces / 2); n += 1)
      go(index + 1, side + n * exactWeight(one.weight), room + n * (one.thicknessMm ?? 0), count + n);
  };
  go(0, 0, 0, 0);
  return found;
}

/** Lines of the same plates count together, so each kind of plate stands on one line here. */
const anyPlates = fc.uniqueArray(
  fc.record({
    weight: fc.oneof(
      fc.constantFrom(2.5, 5, 10, 25, 35, 45, 1.25).map(pounds),
      fc.constantFrom(0.5, 1.25, 2.5, 5, 10, 15, 20, 25).map(kilograms),
    ),
    pieces: fc.integer({ min: 0, max: 7 }),
    thicknessMm: fc.option(fc.integer({ min: 5, max: 90 })),
  }),
  { maxLength: 5, selector: ({ weight, thicknessMm }) => `${exactWeight(weight)} ${thicknessMm ?? 0}` },
);
const anyBar = fc.record({
  weight: fc.constantFrom(pounds(45), kilograms(20), kilograms(15)),
  collars: fc.constantFrom(pounds(0), kilograms(5), pounds(1)),
  sleeveMm: fc.option(fc.integer({ min: 60, max: 420 })),
});

describe('all loads', () => {
  it('are those of brute force, with the fewest plates, pounds and kilograms mixed', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyPlates, anyBar, (owned, on) => {
        const loads = loadsOf(owned, on);
        const expected = byBruteForce(owned, on);
        expect(loads.map(({ total }) => total)).toEqual([...expected.keys()].sort((a, b) => a - b));
        for (const load of loads) {
          expect(load.platesPerSide).toBe(expected.get(load.total));
          const side = load.side.reduce((sum, { weight, count }) => sum + count * exactWeight(weight), 0);
          expect(2 * side + exactWeight(on.weight) + exactWeight(on.collars)).toBe(load.total);
          if (on.sleeveMm !== null) expect(load.thicknessMm).toBeLessThanOrEqual(on.sleeveMm);
        }
        seen += loads.length;
      }),
    );
    expect(seen).toBeGreaterThan(500);
  });

  it('mixed units add up exactly', () => {
    // 45 lb = 20.41165665 kg exactly (international yard and pound agreement, 1959; NIST SP 811).
    expect(exactWeight(pounds(45))).toBe(204_116_566_500);
    expect(weightOf(exactWeight(pounds(45)), 'kg').value).toBe(20.41165665);
    expect(totals([plates(kilograms(20), 2), plates(pounds(45), 2)], bar({ weight: kilograms(20) }))).toEqual([
      200_000_000_000,
      200_000_000_000 + 2 * 200_000_000_000,
      200_000_000_000 + 2 * 204_116_566_500,
      200_000_000_000 + 2 * 404_116_566_500,
    ]);
  });

  it('a short sleeve keeps the heavy loads off', () => {
    const owned = [plates(pounds(45), 8, 50)];
    expect(totals(owned)).toHaveLength(5);
    expect(totals(owned, bar({ sleeveMm: 160 }))).toHaveLength(4);
  });

  it('thin plates are taken where thick ones of the same weight don’t fit', () => {
    const owned = [plates(kilograms(20), 4, 80), plates(kilograms(20), 4, 25)];
    const [heaviest] = loadsOf(owned, bar({ sleeveMm: 130 })).slice(-1);
    expect(heaviest?.platesPerSide).toBe(3);
    expect(heaviest?.thicknessMm).toBe(130);
  });
});

describe('the widest gap', () => {
  it('counts up to the target, the target included', () => {
    const loads = loadsOf([plates(pounds(45), 4), plates(pounds(25), 2)], bar());
    const gap = widestGap(loads, pounds(225));
    expect(gap && [weightOf(gap.from, 'lb').value, weightOf(gap.to, 'lb').value]).toEqual([45, 95]);
    expect(widestGap(loads, pounds(40))).toBeNull();
    const beyond = widestGap(loads, pounds(400));
    expect(beyond && weightOf(beyond.to, 'lb').value).toBe(400);
  });
});

it('a wanted total: exact, or its neighbours', () => {
  const loads = loadsOf([plates(pounds(45), 2), plates(pounds(10), 2)], bar());
  const near = (value: number) => {
    const { under, over } = nearestLoads(loads, pounds(value));
    return [under, over].map((load) => load && weightOf(load.total, 'lb').value);
  };
  expect(near(135)).toEqual([135, 135]);
  expect(near(140)).toEqual([135, 155]);
  expect(near(20)).toEqual([null, 45]);
  expect(near(500)).toEqual([155, null]);
});

it('odd plates of two lines make a pair', () => {
  expect(totals([plates(pounds(45), 1), plates(pounds(45), 3)])).toHaveLength(3);
});

it('refuses what is no number of plates and no weight', () => {
  expect(() => loadsOf([plates(pounds(45), 1.5)], bar())).toThrow(RangeError);
  expect(() => loadsOf([plates(pounds(-45), 2)], bar())).toThrow(RangeError);
  expect(() => loadsOf([plates(pounds(Number.NaN), 2)], bar())).toThrow(RangeError);
});

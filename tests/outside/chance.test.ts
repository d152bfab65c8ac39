/** Chance that one range lies below another: against tables of the normal distribution and against a simulation that shares nothing with it. */
import { describe, expect, it } from 'vitest';
import { chanceBelow, normalBelow } from '../../src/compare/index.ts';

describe('the normal distribution', () => {
  // Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.1 (from memory; the same to be found in any statistics text).
  it.each([
    [0, 0.5],
    [0.5, 0.6914625],
    [1, 0.8413447],
    [1.645, 0.9500151],
    [1.96, 0.9750021],
    [2.5758293, 0.995],
    [3, 0.9986501],
  ])('below %d', (z, chance) => {
    expect(normalBelow(z)).toBeCloseTo(chance, 6);
    expect(normalBelow(-z)).toBeCloseTo(1 - chance, 6);
  });
});

describe('two ranges', () => {
  /** Sums of twelve even chances, less six: nearly normal. Numbers by Lehmer's generator, 48271 mod 2³¹ − 1 (Park & Miller 1988). */
  function simulated(a: { likely: number; half: number }, b: { likely: number; half: number }): number {
    let state = 12_345;
    const even = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    const normal = (): number => Array.from({ length: 12 }, even).reduce((sum, one) => sum + one, -6);
    const RUNS = 40_000;
    let below = 0;
    for (let run = 0; run < RUNS; run += 1) {
      if (a.likely + (a.half / 1.645) * normal() < b.likely + (b.half / 1.645) * normal()) below += 1;
    }
    return below / RUNS;
  }

  it.each([
    [
      { likely: 1, half: 0.2 },
      { likely: 1.1, half: 0.3 },
    ],
    [
      { likely: 0.6, half: 0.1 },
      { likely: 0.9, half: 0.2 },
    ],
    [
      { likely: 2, half: 1 },
      { likely: 1.5, half: 0.5 },
    ],
  ])('symmetric ones, as simulated', (a, b) => {
    const range = ({ likely, half }: typeof a) => ({ low: likely - half, likely, high: likely + half });
    expect(chanceBelow(range(a), range(b))).toBeCloseTo(simulated(a, b), 1.7);
  });

  it('only the sides that face each other count', () => {
    const a = { low: 0.9, likely: 1, high: 1.05 };
    const far = { low: 1.9, likely: 2, high: 9 };
    expect(chanceBelow(a, far)).toBeGreaterThan(0.999);
    expect(chanceBelow(far, a)).toBeLessThan(0.001);
  });

  it('equals, and exact ones', () => {
    const exactly = (value: number) => ({ low: value, likely: value, high: value });
    expect(chanceBelow(exactly(1), exactly(1))).toBe(0.5);
    expect(chanceBelow(exactly(1), exactly(2))).toBe(1);
    expect(chanceBelow(exactly(2), exactly(1))).toBe(0);
  });
});

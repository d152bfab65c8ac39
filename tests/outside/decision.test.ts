/**
 * Expected saving and the value of answers against a published decision analysis, and exact counting against a seeded simulation.
 *
 * The oil wildcatter: Raiffa, Decision Analysis (1968); tables as in Shenoy, Valuation-based systems for Bayesian decision analysis
 * (1992). A well costs 70 and brings 0, 120 or 270 when dry, wet or soaking, at chances of 0.5, 0.3, 0.2. Sounding first costs 10 and
 * gives one of three patterns. Published: 20 without sounding, 22.5 with it (so 12.5 is what its answer is worth, and worth more than
 * its price); knowing everything is worth 35. To drill is to drive, the well's yield is the goods' worth, and their price is 0.
 */
import { describe, expect, it } from 'vitest';
import { breakEvenPriceOf, refusalChance } from '../../src/trip/prospect.ts';
import {
  expectedSaving,
  type State,
  statesOf,
  valueOfAnswer,
  valueOfAsking,
  valueOfKnowingAll,
} from '../../src/trip/questions.ts';
import type { Unknown } from '../../src/trip/unknowns.ts';

const WELLS = [
  { chance: 0.5, brings: 0, patterns: [0.6, 0.3, 0.1] },
  { chance: 0.3, brings: 120, patterns: [0.3, 0.4, 0.3] },
  { chance: 0.2, brings: 270, patterns: [0.1, 0.4, 0.5] },
];
const DRILLING = 70;
const SOUNDING = 10;

const branch = (pattern: number): State[] =>
  WELLS.map(({ chance, brings, patterns }) => ({ chance: chance * (patterns[pattern] ?? 0), bad: [], value: brings }));
const branches = [branch(0), branch(1), branch(2)];
const wells: State[] = WELLS.map(({ chance, brings }) => ({ chance, bad: [], value: brings }));

describe('the oil wildcatter', () => {
  it('expects 20 of drilling at once', () => expect(expectedSaving(wells, 0) - DRILLING).toBeCloseTo(20, 9));
  it('expects 12.5 of the answer of a sounding, so 22.5 in all', () => {
    expect(valueOfAnswer(branches, 0, DRILLING)).toBeCloseTo(12.5, 9);
    expect(expectedSaving(wells, 0) - DRILLING + valueOfAnswer(branches, 0, DRILLING) - SOUNDING).toBeCloseTo(22.5, 9);
  });
  it('would pay 35 to know everything', () => expect(valueOfKnowingAll(wells, 0, DRILLING)).toBeCloseTo(35, 9));
});

describe('counting every way in which it may turn out', () => {
  const CHANCES = [0.15, 0.3, 0.05, 0.45];
  const LOSSES = [90, 60, 40, 25];
  const unknowns: Unknown[] = CHANCES.map((chance, index) => ({
    id: `${index}`,
    part: 'rest',
    about: '',
    says: { key: 'test' },
    chance,
    bad: [],
    good: [],
  }));
  const worth = (bad: readonly boolean[]): number => 200 - LOSSES.reduce((sum, loss, index) => sum + (bad[index] ? loss : 0), 0);
  const states = statesOf(unknowns, worth);
  const PRICE = 130;
  const TRIP = 42;

  it('agrees with 400,000 drives drawn by chance, within four standard errors', () => {
    let state = 7;
    const draw = (): number => {
      state = (state * 48271) % 2147483647;
      return state / 2147483647;
    };
    const rounds = 400_000;
    let [saved, squares, refused, knowing] = [0, 0, 0, 0];
    for (let round = 0; round < rounds; round += 1) {
      const value = worth(CHANCES.map((chance) => draw() < chance));
      const gain = Math.max(0, value - PRICE);
      saved += gain;
      squares += gain * gain;
      refused += value < PRICE ? 1 : 0;
      knowing += Math.max(0, gain - TRIP);
    }
    const mean = saved / rounds;
    const error = Math.sqrt((squares / rounds - mean * mean) / rounds);
    expect(Math.abs(expectedSaving(states, PRICE) - mean)).toBeLessThan(4 * error);
    const chance = refusalChance(states, PRICE);
    expect(Math.abs(chance - refused / rounds)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / rounds));
    const blind = Math.max(0, expectedSaving(states, PRICE) - TRIP);
    expect(Math.abs(valueOfKnowingAll(states, PRICE, TRIP) - (knowing / rounds - blind))).toBeLessThan(4 * error);
    // A drive that were not counted, or a chance that were turned round, would be far outside.
    expect(error).toBeLessThan(0.1);
  });

  it('gives no single answer more than knowing everything is worth', () => {
    for (let price = 0; price <= 220; price += 5) {
      for (let trip = 0; trip <= 150; trip += 10) {
        const all = valueOfKnowingAll(states, price, trip);
        for (const index of CHANCES.keys()) {
          const one = valueOfAsking(states, index, price, trip);
          expect(one).toBeGreaterThanOrEqual(0);
          expect(one).toBeLessThanOrEqual(all + 1e-9);
        }
      }
    }
  });

  it('finds the price at which the saving just pays the drive, as bisection does', () => {
    for (const trip of [0.5, 10, 42, 80, 130]) {
      let [low, high] = [0, 200];
      for (let round = 0; round < 80; round += 1) {
        const middle = (low + high) / 2;
        if (expectedSaving(states, middle) >= trip) low = middle;
        else high = middle;
      }
      expect(breakEvenPriceOf(states, trip)).toBeCloseTo(low, 6);
    }
    expect(breakEvenPriceOf(states, 500)).toBeNull();
  });
});

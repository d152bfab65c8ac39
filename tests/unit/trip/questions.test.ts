import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import { statesOf, valueOfAsking } from '../../../src/trip/questions.ts';
import type { Unknown } from '../../../src/trip/unknowns.ts';
import { item, lb, plates, reading, settings } from '../making/readings.ts';

const unknown = (id: string, chance: number): Unknown => ({
  id,
  part: 'rest',
  about: id,
  says: { key: 'question_test' },
  chance,
  bad: [],
  good: [],
});

describe('states', () => {
  it('are all there, with chances that sum to one', () => {
    const states = statesOf([unknown('a', 0.1), unknown('b', 0.25)], (bad) => bad.filter(Boolean).length);
    expect(states.map((state) => state.value).sort()).toEqual([0, 1, 1, 2]);
    expect(states.reduce((sum, state) => sum + state.chance, 0)).toBeCloseTo(1, 12);
    expect(states.find((state) => state.bad[0] && state.bad[1])?.chance).toBeCloseTo(0.025, 12);
  });
});

describe('what asking is worth', () => {
  it('is the wasted drive, when the buyer would refuse at the door', () => {
    // Worth 100 or nothing at 20 % bad, asked 40, drive 10: asking spares the drive in one case of five.
    const states = statesOf([unknown('a', 0.2)], ([bad]) => (bad ? 0 : 100));
    expect(valueOfAsking(states, 0, 40, 10)).toBeCloseTo(2, 9);
  });

  it('is more when one would not have gone without it', () => {
    // 20 % good: 0.2 × 60 − 20 < 0, so one stays at home; asking first gains 0.2 × (60 − 20).
    const states = statesOf([unknown('a', 0.8)], ([bad]) => (bad ? 0 : 100));
    expect(valueOfAsking(states, 0, 40, 20)).toBeCloseTo(8, 9);
  });

  it('is never below zero, nor above what the drive can lose or the goods can gain', () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    const money = fc.integer({ min: 0, max: 500 });
    fc.assert(
      fc.property(chance, chance, fc.array(money, { minLength: 4, maxLength: 4 }), money, money, (p, q, values, price, trip) => {
        const states = statesOf([unknown('a', p), unknown('b', q)], (bad) => values[(bad[0] ? 1 : 0) + (bad[1] ? 2 : 0)] ?? 0);
        for (const index of [0, 1]) {
          const value = valueOfAsking(states, index, price, trip);
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(Math.max(trip, ...values) + 1e-9);
        }
      }),
    );
  });
});

describe('questions of an ad', () => {
  const far = settings({ distance: { value: 40, unit: 'mi' } });

  it('come with the most valuable first, and none where nothing is open', () => {
    const { questions } = judge(reading([plates('plate-1', 8, lb(10), {}), item('bar-1', 'bar', { count: 1 })], 100), far);
    expect(questions.length).toBeGreaterThan(1);
    expect(questions.map((one) => one.value.minor)).toEqual(questions.map((one) => one.value.minor).sort((a, b) => b - a));
    expect(judge(reading([plates('plate-1', 4, lb(45))], 100), far).questions).toEqual([]);
  });

  it('leave out what would change nothing', () => {
    const { questions } = judge(reading([plates('plate-1', 8, lb(45)), item('bar-1', 'bar', { count: 1 })], 100), far);
    expect(questions).toEqual([]);
  });
});

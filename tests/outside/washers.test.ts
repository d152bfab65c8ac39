/** Washers against ASME B18.21.1 and Machinery's Handbook, 31st edition (pages 1695 and 1697): dimensions of theirs, weights by ρ·π/4·(OD² − ID²)·t at 7.85 g/cm³. */
import { expect, it } from 'vitest';
import { ringPounds, stackFor, WASHERS, washerClearance, washerPounds } from '../../src/kit/washers.ts';

it.each([
  ['a-2-narrow', 0.383],
  ['a-2-wide', 0.631],
  ['a-2-plain', 0.554],
  ['b-2-regular', 0.876],
  ['b-1-7/8-narrow', 0.459],
  ['b-1-7/8-regular', 0.783],
  ['b-1-7/8-wide', 1.034],
])('%s weighs %d lb', (id, weighs) => {
  const washer = WASHERS.find((one) => one.id === id);
  if (!washer) throw new Error(id);
  const { low, likely, high } = washerPounds(washer);
  expect(likely).toBeCloseTo(weighs, 3);
  expect(low).toBeLessThanOrEqual(likely);
  expect(high).toBeGreaterThanOrEqual(likely);
});

it('a 2-inch washer goes on both sleeves, a 1-7/8-inch one not on a 52 mm one', () => {
  const clearance = (id: string, sleeve: number) => {
    const washer = WASHERS.find((one) => one.id === id);
    return washer ? washerClearance(washer, sleeve) : Number.NaN;
  };
  expect(clearance('b-2-regular', 50)).toBeCloseTo(3.975, 3);
  expect(clearance('b-2-regular', 52)).toBeGreaterThan(0);
  expect(clearance('b-1-7/8-narrow', 50)).toBeCloseTo(0.8, 6);
  expect(clearance('b-1-7/8-narrow', 52)).toBeLessThan(0);
});

it('the nearest stack', () => {
  expect(stackFor(1.25, 0.631, 4.6, 0.05)).toMatchObject({ washers: 2, withinTolerance: true });
  expect(stackFor(1.25, 0.383, 4.6, 0.05)).toMatchObject({ washers: 3, withinTolerance: false });
  expect(stackFor(0.1, 0.383, 4.6, 0.05)).toMatchObject({ washers: 1, withinTolerance: false });
  for (const wanted of [0.25, 0.5, 1, 1.25, 2.5])
    for (const each of [0.383, 0.459, 0.631, 0.876]) {
      const { washers, off } = stackFor(wanted, each, 5, 0.05);
      for (let other = 1; other <= 20; other += 1)
        expect(Math.abs(other * each - wanted)).toBeGreaterThanOrEqual(Math.abs(off) - 1e-9);
      expect(washers).toBeGreaterThan(0);
    }
});

it('refuses what is no washer', () => {
  expect(() => ringPounds(2, 2, 0.1)).toThrow(RangeError);
  expect(() => stackFor(0, 1, 1, 1)).toThrow(RangeError);
});

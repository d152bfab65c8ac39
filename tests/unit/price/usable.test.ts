import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Condition } from '../../../src/listing/reading.ts';
import { OF_ONE_PIECE } from '../../../src/listing/reading.ts';
import { plateWeights, totalOffered, totalUsable } from '../../../src/price/usable.ts';
import { fact, item, kg, lb, plates, reading, settings } from '../making/readings.ts';

const usable = (items: Parameters<typeof reading>[0], sleeveMm = 50, changes = {}) =>
  totalUsable(plateWeights(reading(items, 100, changes), settings({ sleeveMm })));
const losses = (items: Parameters<typeof reading>[0], sleeveMm = 50) =>
  plateWeights(reading(items, 100), settings({ sleeveMm })).flatMap((plate) =>
    plate.losses.map((loss) => [loss.reason, Math.round(loss.pounds)]),
  );

describe('usable plate weight', () => {
  it('is the face value of sound pairs that fit, heavier rather than lighter', () => {
    const { low, likely, high } = usable([plates('plate-1', 4, lb(45))]);
    expect(likely).toBe(180);
    expect(180 - low).toBeLessThan(high - 180);
  });

  it('leaves out 1-inch plates on a 50 mm sleeve, and 50 mm plates on a 1-inch sleeve', () => {
    expect(usable([plates('plate-1', 4, lb(25), { fits: '25mm' })]).likely).toBe(0);
    expect(losses([plates('plate-1', 4, lb(25), { fits: '25mm' })])).toEqual([['wrong-bore', 100]]);
    expect(usable([plates('plate-1', 4, lb(25), { fits: '25mm' })], 25).likely).toBe(100);
    expect(usable([plates('plate-1', 4, lb(45))], 25).likely).toBe(0);
  });

  it('leaves out a hole smaller than the sleeve', () => {
    expect(losses([plates('plate-1', 2, lb(45), { boreMm: 48 })])).toEqual([['wrong-bore', 90]]);
    expect(losses([plates('plate-1', 2, lb(45), { boreMm: 50 })])).toEqual([]);
  });

  it('counts an odd plate for nothing, wherever its mates stand', () => {
    expect(usable([plates('plate-1', 3, lb(45))]).likely).toBe(90);
    expect(losses([plates('plate-1', 3, lb(45))])).toEqual([['odd', 45]]);
    expect(usable([plates('plate-1', 3, lb(45)), plates('plate-2', 1, lb(45))]).likely).toBe(180);
    expect(usable([plates('plate-1', 1, lb(45)), item('bumper-1', 'bumper', { count: 1, unitWeight: lb(45) })]).likely).toBe(0);
  });

  it('counts one cracked piece of several for nothing, and its mate with it', () => {
    const four = item('plate-1', 'plate', { count: 4, unitWeight: lb(45) }, ['cracked']);
    const ofOne = { ...four, conditions: four.conditions.map((known) => ({ ...known, rule: OF_ONE_PIECE })) };
    expect(losses([ofOne])).toEqual([
      ['cracked', 45],
      ['odd', 45],
    ]);
  });

  // Common practice, no source: a bumper whose hub has come loose is not to be loaded.
  it('counts bumpers with a loose hub for nothing, or the one of several that the ad speaks of', () => {
    const four = item('bumper-1', 'bumper', { count: 4, unitWeight: lb(45) }, ['split-hub']);
    expect(losses([four])).toEqual([['split-hub', 180]]);
    expect(usable([four]).likely).toBe(0);
    const ofOne = { ...four, conditions: four.conditions.map((known) => ({ ...known, rule: OF_ONE_PIECE })) };
    expect(losses([ofOne])).toEqual([
      ['split-hub', 45],
      ['odd', 45],
    ]);
  });

  it('counts cracked and filled plates for nothing', () => {
    expect(losses([item('plate-1', 'plate', { count: 2, unitWeight: lb(45) }, ['cracked'])])).toEqual([['cracked', 90]]);
    expect(losses([plates('plate-1', 2, lb(25), { material: 'vinyl' })])).toEqual([['cement', 50]]);
  });

  it('lowers only the low end where the hole is not stated', () => {
    const known = usable([plates('plate-1', 4, lb(45))]);
    const unknown = usable([plates('plate-1', 4, lb(45), {})]);
    expect(unknown.likely).toBe(known.likely);
    expect(unknown.low).toBeLessThan(known.low);
    const small = usable([plates('plate-1', 4, lb(5), {})]);
    expect(small.low / small.likely).toBeLessThan(unknown.low / unknown.likely);
  });

  it('gives a wide range for an unknown count or weight, and nothing for both', () => {
    expect(usable([item('plate-1', 'plate', { unitWeight: lb(45), fits: '50mm' })])).toEqual({ low: 0, likely: 90, high: 180 });
    const weightless = usable([item('plate-1', 'plate', { count: 10, fits: '50mm' })]);
    expect(weightless.high / weightless.likely).toBeGreaterThan(2);
    expect(plateWeights(reading([item('plate-1', 'plate')], 100), settings())[0]?.unknown).toBe(true);
  });

  it('shares a weight stated for the lot over what has none of its own', () => {
    const total = { statedTotal: fact(lb(300)) };
    expect(usable([item('plate-1', 'plate', { fits: '50mm' })], 50, total).likely).toBeCloseTo(300, 9);
    expect(usable([plates('plate-1', 4, lb(45)), item('plate-2', 'plate', { fits: '50mm' })], 50, total).likely).toBeCloseTo(
      300,
      9,
    );
    // A set's weight counts its bar in, as a rule.
    expect(usable([item('plate-1', 'plate', { fits: '50mm' }), item('bar-1', 'bar')], 50, total).likely).toBeCloseTo(255, 9);
  });

  it('knows a lot better than one plate', () => {
    const spread = (count: number) => {
      const { low, likely, high } = usable([plates('plate-1', count, lb(45))]);
      return (high - low) / likely;
    };
    expect(spread(8)).toBeLessThan(spread(4));
    expect(spread(4)).toBeLessThan(spread(2));
  });
});

describe('properties of usable weight', () => {
  const count = fc.integer({ min: 1, max: 12 });
  const weight = fc.constantFrom(2.5, 5, 10, 25, 35, 45);

  it('is ordered and never above what is on offer', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(count, weight, fc.boolean()), { maxLength: 8 }), (lines) => {
        const items = lines.map(([n, w, known], index) => plates(`plate-${index + 1}`, n, lb(w), known ? { fits: '50mm' } : {}));
        const weights = plateWeights(reading(items, 100), settings());
        const [offered, good] = [totalOffered(weights), totalUsable(weights)];
        expect(good.low).toBeLessThanOrEqual(good.likely);
        expect(good.likely).toBeLessThanOrEqual(good.high);
        expect(good.likely).toBeLessThanOrEqual(offered.likely + 1e-9);
      }),
    );
  });

  it('is the same in pounds and kilograms', () => {
    fc.assert(
      fc.property(count, weight, (n, w) => {
        const pounds = usable([plates('plate-1', n, lb(w))]);
        const kilos = usable([plates('plate-1', n, kg(w * 0.45359237))]);
        for (const end of ['low', 'likely', 'high'] as const) expect(kilos[end]).toBeCloseTo(pounds[end], 6);
      }),
    );
  });

  it('does not depend on how one weight is spread over lines', () => {
    fc.assert(
      fc.property(count, count, weight, (a, b, w) => {
        const together = usable([plates('plate-1', a + b, lb(w))]).likely;
        const apart = usable([plates('plate-1', a, lb(w)), plates('plate-2', b, lb(w))]).likely;
        expect(apart).toBeCloseTo(together, 6);
      }),
    );
  });

  it('never grows by a fault', () => {
    const faults: Condition[] = ['cracked', 'rust-heavy', 'odd', 'chipped'];
    for (const fault of faults) {
      const sound = usable([item('plate-1', 'plate', { count: 4, unitWeight: lb(45), fits: '50mm' })]);
      const worse = usable([item('plate-1', 'plate', { count: 4, unitWeight: lb(45), fits: '50mm' }, [fault])]);
      expect(worse.likely).toBeLessThanOrEqual(sound.likely);
    }
  });
});

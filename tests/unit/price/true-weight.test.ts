import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRADES } from '../../../src/listing/reading.ts';
import { ofPlates, rangeOf } from '../../../src/price/pounds.ts';
import { errorOf, gradeOf, learn, trueWeight } from '../../../src/price/true-weight.ts';
import { plateWeights, totalOffered, totalUsable, trueOffered } from '../../../src/price/usable.ts';
import { correct } from '../../../src/read/correct.ts';
import { item, kg, lb, plates, reading, settings } from '../making/readings.ts';

const weigh = (items: Parameters<typeof reading>[0]) => plateWeights(reading(items, 100), settings());
const spread = ({ low, likely, high }: { low: number; likely: number; high: number }) => (high - low) / likely;

describe('true weight by grade', () => {
  it('is told by grade, then kind, then material', () => {
    expect(gradeOf(plates('plate-1', 2, lb(45), { grade: 'machined', material: 'rubber' }))).toBe('machined');
    expect(gradeOf(item('bumper-1', 'bumper'))).toBe('bumper');
    expect(gradeOf(plates('plate-1', 2, lb(45), { material: 'urethane' }))).toBe('rubber-coated');
    expect(gradeOf(plates('plate-1', 2, lb(45), { material: 'iron' }))).toBe('cast');
    expect(gradeOf(plates('plate-1', 2, lb(45)))).toBe('unknown');
  });

  it('counts face value, and tells the centre of mass apart: above face value for cast, on it for machined', () => {
    const cast = weigh([plates('plate-1', 4, lb(45), { grade: 'cast', fits: '50mm' })]);
    expect(totalUsable(cast).likely).toBe(180);
    expect(trueOffered(cast).likely).toBeCloseTo(180 * 1.025, 9);
    expect(trueOffered(weigh([plates('plate-1', 4, lb(45), { grade: 'machined' })])).likely).toBeCloseTo(180, 9);
  });

  it('is known best for calibrated plates, worst for cast', () => {
    const widths = ['calibrated', 'machined', 'rubber-coated', 'cast'].map((grade) =>
      spread(totalOffered(weigh([plates('plate-1', 4, lb(45), { grade: grade as 'cast' })]))),
    );
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
    expect(new Set(widths).size).toBe(4);
  });

  it('is narrower for a lot than for one plate, for every grade', () => {
    for (const grade of [...GRADES, 'bumper', 'unknown'] as const) {
      const of = (pieces: number) => spread(rangeOf([ofPlates(trueWeight(grade, pieces, 45))]));
      expect(of(2)).toBeLessThan(of(1));
      expect(of(10)).toBeLessThan(of(2));
    }
  });
});

describe('weighed plates', () => {
  const AD = reading([plates('plate-1', 4, lb(45)), plates('plate-2', 2, lb(25)), item('bar-1', 'bar', { count: 1 })], 180);
  const shown = (...values: [path: string, value: string, unit?: string][]) => {
    const { reading: next, refused } = correct(
      AD,
      values.map(([path, value, unit]) => ({ path, value, unit: unit ?? 'lb', basis: 'measured' as const })),
    );
    return { next, refused, plates: plateWeights(next, settings()) };
  };

  it('are read from a list, in either unit', () => {
    const { next } = shown(['plate-1.weighed', '46.2, 44.8, 45.1']);
    expect(next.items[0]?.weighed).toMatchObject({ basis: 'measured', value: [lb(46.2), lb(44.8), lb(45.1)] });
    expect(shown(['plate-1.weighed', '20,3; 19,8', 'kg']).next.items[0]?.weighed?.value).toEqual([kg(20.3), kg(19.8)]);
    expect(shown(['plate-1.weighed', ' 46 45 ']).next.items[0]?.weighed?.value).toEqual([lb(46), lb(45)]);
  });

  it('are refused when they are no weights', () => {
    for (const bad of ['', 'heavy', '45, x', '45, -3', '0', '1e9'])
      expect(shown(['plate-1.weighed', bad]).refused).toHaveLength(1);
  });

  it('count with what they weigh; the scale is off a little', () => {
    const { plates: weighed } = shown(['plate-1.weighed', '46.2, 44.8, 45.1, 47']);
    const { usable } = weighed[0] ?? expect.fail();
    expect(usable.likely).toBeCloseTo(183.1, 9);
    expect(usable.low).toBeCloseTo(183.1 * 0.995, 9);
    expect(usable.high).toBeCloseTo(183.1 * 1.005, 9);
  });

  it('move the others of their grade toward themselves, on every line, and make them better known', () => {
    const { plates: weighed } = shown(['plate-1.weighed', '48, 48.4']);
    const [first, second] = weighed;
    // Two of errors 6.67 and 7.56 % about a centre of 2 %: they count for 2ρ/(1 + ρ) = 0.4.
    const expected = 1.02 + 0.4 * (0.5 * (3 / 45 + 3.4 / 45) - 0.02);
    expect(first?.usable.likely).toBeCloseTo(96.4 + 90 * expected, 0);
    expect(second?.usable.likely).toBeCloseTo(50 * expected, 0);
    expect(spread(second?.usable ?? expect.fail())).toBeLessThan(
      spread(weigh([plates('plate-2', 2, lb(25))])[0]?.usable ?? expect.fail()),
    );
  });

  it('say nothing of another grade', () => {
    const items = [plates('plate-1', 2, lb(45)), item('bumper-1', 'bumper', { count: 2, unitWeight: lb(45) })];
    const { reading: next } = correct(reading(items, 100), [{ path: 'plate-1.weighed', value: '49, 49' }]);
    expect(plateWeights(next, settings())[1]?.usable.likely).toBe(90);
  });

  it('are there: more on the scale than the ad counts are counted', () => {
    const { next } = shown(['plate-2.weighed', '25, 25, 26, 25']);
    expect(next.items[1]).toMatchObject({ count: { value: 4, basis: 'measured' }, totalWeight: { value: lb(100) } });
  });

  it('give a weight to plates of which the ad gives none', () => {
    const { reading: next } = correct(reading([item('plate-1', 'plate', { fits: '50mm' })], 100), [
      { path: 'plate-1.weighed', value: '22, 23' },
    ]);
    const [plate] = plateWeights(next, settings());
    expect(plate).toMatchObject({ unknown: false, offered: { likely: 45 } });
  });
});

describe('properties of weighing', () => {
  const weights = fc.array(fc.double({ min: 42, max: 50, noNaN: true }), { minLength: 1, maxLength: 6 });

  it('more weighings never make the rest less known, and pull toward their mean', () => {
    fc.assert(
      fc.property(weights, fc.double({ min: 42, max: 50, noNaN: true }), (seen, next) => {
        const weighings = seen.map((pounds) => ({ face: 45, pounds }));
        const [before, now] = [learn('cast', weighings), learn('cast', [...weighings, { face: 45, pounds: next }])];
        expect(now.deviation).toBeLessThan(before.deviation);
        const { mean, deviation } = errorOf('cast', 45);
        const at = (next / 45 - 1 - mean) / deviation;
        expect(Math.abs(now.mean - at)).toBeLessThanOrEqual(Math.abs(before.mean - at) + 1e-9);
      }),
    );
  });

  it('over how many lines plates are spread makes no difference to the lot', () => {
    const count = fc.integer({ min: 1, max: 9 });
    fc.assert(
      fc.property(count, count, fc.constantFrom(5, 25, 45), (a, b, face) => {
        const [apart, together] = [
          weigh([plates('plate-1', a, lb(face)), plates('plate-2', b, lb(face))]),
          weigh([plates('plate-1', a + b, lb(face))]),
        ].map(totalOffered);
        for (const end of ['low', 'likely', 'high'] as const) expect(apart?.[end]).toBeCloseTo(together?.[end] ?? Number.NaN, 9);
      }),
    );
  });
});

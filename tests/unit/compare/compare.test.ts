import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compare as compareLots, priceToEqual, USUAL_MILES, withUsualDrive } from '../../../src/compare/index.ts';
import { judge } from '../../../src/evaluate.ts';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import { item, lb, plates, reading, settings } from '../making/readings.ts';

const lot = (count: number, price: number | null, weight = 45): Evaluation =>
  judge(reading([plates('plate-1', count, lb(weight), { fits: '50mm' })], price), settings());
const withBar = (price: number): Evaluation =>
  judge(reading([plates('plate-1', 4, lb(45), { fits: '50mm' }), item('bar-1', 'bar', { count: 1 })], price), settings());

/** Lots whose drive is known for all or for none: nothing is assumed. */
const compare = (all: readonly Evaluation[]) =>
  compareLots(
    withUsualDrive(all, () => {
      throw new Error('nothing was to be assumed');
    }),
  );

describe('side by side', () => {
  it('plates alone: by the cost of a usable pound, however large the lots', () => {
    const { kind, best, second, by } = compare([lot(2, 90), lot(8, 200), lot(4, 160)]);
    expect(kind).toBe('per-pound');
    // $1.00, $0.56 and $0.89 a pound.
    expect([best, second]).toEqual([1, 2]);
    expect(by).toBeCloseTo(1 - 200 / 360 / (160 / 180), 6);
  });

  it('with other goods among them: by the share of what it costs new', () => {
    const { kind, best } = compare([lot(4, 200), withBar(220)]);
    expect(kind).toBe('per-new');
    expect(best).toBe(1);
  });

  it('one without a price takes no part; fewer than two that can be measured have no best', () => {
    expect(compare([lot(4, null), lot(4, 200), lot(4, 100)])).toMatchObject({ best: 2, second: 1 });
    expect(compare([lot(4, null), lot(4, 200)])).toMatchObject({ best: null, second: null });
    expect(compare([])).toMatchObject({ best: null });
  });

  it('the order of the lots does not matter, and a lower price never loses', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 20, max: 900 })), { minLength: 2, maxLength: 5 }),
        (lots) => {
          const all = lots.map(([pairs, price]) => lot(2 * pairs, price));
          const found = compare(all);
          const turned = compare([...all].reverse());
          const rate = (index: number | null) => (index === null ? null : all[index]?.worth.perUsablePound?.likely);
          expect(rate(found.best)).toBe(
            turned.best === null ? null : [...all].reverse()[turned.best]?.worth.perUsablePound?.likely,
          );
          expect(rate(found.best)).toBe(Math.min(...all.map(({ worth }) => worth.perUsablePound?.likely ?? Number.NaN)));
          expect(found.sure).toBeGreaterThanOrEqual(0.5);
          expect(found.sure).toBeLessThanOrEqual(1);
          expect(found.by).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('a drive that is known for some alone', () => {
  const four = (price: number) => reading([plates('plate-1', 4, lb(45), { fits: '50mm' })], price);
  const away = (miles: number) => [{ path: 'distance', value: miles, unit: 'mi' }] as const;
  /** Ads as [price, miles or null]. */
  const side = (...ads: readonly (readonly [number, number | null])[]) => {
    const judged = ads.map(([price, miles]) => judge(four(price), settings(), miles === null ? [] : away(miles)));
    const lots = withUsualDrive(judged, (index, more) => judge(four(ads[index]?.[0] ?? 0), settings(), more));
    return { lots, ...compareLots(lots) };
  };

  it('counts the usual drive for the others, so that silence does not win', () => {
    // Without a drive for the second the same plates at $150 would beat $120 at 10 miles.
    const { best, lots, values } = side([120, 10], [150, null]);
    expect(best).toBe(0);
    const usual = judge(four(150), settings(), away(USUAL_MILES.usual)).worth.perUsablePound?.likely;
    expect(values[1]?.likely).toBe(usual);
    expect(lots.map(({ apart }) => apart !== null)).toEqual([false, true]);
  });

  it('is less sure, for the seller may be near by or far off', () => {
    const known = side([120, 60], [150, USUAL_MILES.usual]);
    const open = side([120, 60], [150, null]);
    expect(known.best).toBe(1);
    expect(open.best).toBe(1);
    expect(open.sure).toBeLessThan(known.sure - 0.1);
    expect(open.values[1]?.low).toBeLessThan(known.values[1]?.low ?? 0);
    expect(open.values[1]?.high).toBeGreaterThan(known.values[1]?.high ?? Number.POSITIVE_INFINITY);
  });

  it('assumes nothing where all or none are known, or where the one without has no price', () => {
    for (const ads of [
      [
        [120, 60],
        [150, 5],
      ],
      [
        [120, null],
        [150, null],
      ],
    ] as const)
      expect(side(...ads).lots.every(({ apart, assumed }) => apart === null && assumed.length === 0)).toBe(true);
    const unpriced = judge(reading([plates('plate-1', 4, lb(45), { fits: '50mm' })], null), settings());
    const priced = judge(four(120), settings(), away(60));
    expect(compare([priced, unpriced]).best).toBeNull();
  });
});

describe('the price that makes the loser equal', () => {
  it('plates alone: its usable pounds at the winner’s rate', () => {
    const winner = lot(8, 200).worth.perUsablePound?.likely ?? 0;
    const price = priceToEqual('per-pound', winner, { minor: 16_000, currency: 'USD' }, ({ minor }) => lot(4, minor / 100));
    // 200 / 360 × 180 = 100.
    expect(price).toEqual({ minor: 10_000, currency: 'USD' });
  });

  it('is as good as the winner there, and no longer a unit above', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 400 }), fc.integer({ min: 150, max: 900 }), (good, dear) => {
        const all = [lot(4, good), withBar(dear)];
        const { kind, best, values } = compare(all);
        fc.pre(best === 0);
        const target = values[0]?.likely ?? 0;
        const price = priceToEqual(kind, target, { minor: dear * 100, currency: 'USD' }, ({ minor }) => withBar(minor / 100));
        if (price === null) return;
        const at = (minor: number) => compare([all[0] as Evaluation, withBar(minor / 100)]).values[1]?.likely ?? Number.NaN;
        expect(at(price.minor)).toBeLessThanOrEqual(target + 1e-9);
        if (price.minor < dear * 100) expect(at(price.minor + 100)).toBeGreaterThan(target - 1e-9);
      }),
      { numRuns: 40 },
    );
  });

  it('none when not even a gift would do', () => {
    expect(priceToEqual('per-pound', -1, { minor: 100, currency: 'USD' }, ({ minor }) => lot(4, minor / 100))).toBeNull();
  });
});

/**
 * The walk-away price against solving for it numerically: the price at which the expected saving against new falls to what the buyer wants to
 * save. Everything here is worked out anew from the settings' own figures, for sound plates and bars whose worth is plain; the bisection
 * knows nothing of the closed form. No published source gives such prices.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../src/evaluate.ts';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { RateCell, Settings } from '../../src/listing/settings.ts';
import { goodsOf } from '../../src/price/goods.ts';
import { plateWeights } from '../../src/price/usable.ts';
import { ceilingOf, savingAt } from '../../src/price/walk-away.ts';
import { item, lb, plates, reading, settings } from '../unit/making/readings.ts';

const cell = (low: number, up: number, further: number): RateCell => ({
  low,
  likely: low * up,
  high: low * up * further,
  source: 'own',
  date: '',
});
const step = fc.double({ min: 1, max: 2.5, noNaN: true });
const cells = (least: number, most: number) =>
  fc.tuple(fc.double({ min: least, max: most, noNaN: true }), step, step).map(([low, up, further]) => cell(low, up, further));

interface Case {
  readonly pairs: number;
  readonly weight: number;
  readonly bars: number;
  readonly price: number;
  readonly own: Settings;
}
const cases: fc.Arbitrary<Case> = fc
  .record({
    pairs: fc.integer({ min: 1, max: 6 }),
    weight: fc.constantFrom(2.5, 5, 10, 25, 35, 45),
    bars: fc.integer({ min: 0, max: 2 }),
    price: fc.integer({ min: 1, max: 900 }),
    margin: fc.double({ min: 0, max: 0.9, noNaN: true }),
    salesTax: fc.double({ min: 0, max: 0.25, noNaN: true }),
    miles: fc.integer({ min: 0, max: 60 }),
    perMile: fc.double({ min: 0, max: 1, noNaN: true }),
    iron: fc.tuple(cells(0.1, 1), cells(0.2, 3), cells(0.05, 0.5)),
    bar: fc.tuple(cells(30, 200), cells(60, 400), cells(5, 50)),
  })
  .map(({ pairs, weight, bars, price, iron, bar, miles, ...rest }) => {
    const table = ([used, fresh, shipping]: [RateCell, RateCell, RateCell]) => ({ used, new: fresh, shipping });
    const rates: Settings['rates'] = { iron: table(iron), bar: table(bar) };
    return {
      pairs,
      weight,
      bars,
      price,
      own: settings({ ...rest, rates, hourWorth: 0, distance: { value: miles, unit: 'mi' } }),
    };
  });

/** Bars whose shaft is a good one but of which nobody says that they are straight: they fetch no more than half way to the top. */
function judged({ pairs, weight, bars, price, own }: Case): Evaluation {
  const barItems = Array.from({ length: bars }, (_, index) =>
    item(`bar-${index + 1}`, 'bar', { count: 1, shaftMm: 28.5, lengthMm: 2200 }),
  );
  return judge(reading([plates('plate-1', 2 * pairs, lb(weight)), ...barItems], price), own);
}

/** Things on offer: how much of it, and used and new prices in major units. */
function things({ pairs, weight, bars, own }: Case): { quantity: number; top: number; fresh: number }[] {
  const of = (category: 'iron' | 'bar', quantity: number) => {
    const { used, new: fresh, shipping } = own.rates[category] ?? {};
    if (!used || !fresh || !shipping) throw new Error('no rate');
    const top = category === 'iron' ? used.high : (used.likely + used.high) / 2;
    return { quantity, top, fresh: fresh.likely * (1 + own.salesTax) + shipping.likely };
  };
  return [of('iron', 2 * pairs * weight), of('bar', bars)];
}

/** Price at which the saving has fallen to the wanted one, by bisection; null when not even a gift saves enough. */
function solve(one: Case): number | null {
  const drive = 2 * (one.own.distance?.value ?? 0) * one.own.perMile;
  const saving = (price: number): number =>
    things(one).reduce((sum, { quantity, fresh }) => sum + quantity * fresh, 0) - price - drive;
  const wanted = things(one).reduce(
    (sum, { quantity, top, fresh }) => sum + quantity * Math.max(one.own.margin * fresh, fresh - top),
    0,
  );
  if (saving(0) <= wanted) return null;
  let [enough, short] = [0, 1e6];
  for (let round = 0; round < 80; round++) {
    const middle = (enough + short) / 2;
    if (saving(middle) >= wanted) enough = middle;
    else short = middle;
  }
  return enough;
}

describe('the walk-away price', () => {
  it('is the price that bisection finds, rounded down to a whole unit', () => {
    let positive = 0;
    let byMargin = 0;
    fc.assert(
      fc.property(cases, (one) => {
        const walkAway = (judged(one).worth.walkAway?.minor ?? Number.NaN) / 100;
        const solved = solve(one) ?? 0;
        if (solved > 0) positive += 1;
        if (things(one).some(({ quantity, top, fresh }) => quantity > 0 && fresh * (1 - one.own.margin) < top)) byMargin += 1;
        expect(Number.isInteger(walkAway)).toBe(true);
        expect(walkAway).toBeLessThanOrEqual(solved + 1e-6);
        expect(walkAway).toBeGreaterThan(solved - 1 - 1e-6);
      }),
      { seed: 20261125, numRuns: 300 },
    );
    // Both limits were met: what another used lot costs, and the margin on new.
    expect(positive).toBeGreaterThan(150);
    expect(byMargin).toBeGreaterThan(30);
    expect(300 - byMargin).toBeGreaterThan(30);
  });

  it('is where the saving is just the least that is wanted, to a cent before rounding', () =>
    fc.assert(
      fc.property(cases, (one) => {
        const { reading: read } = judged(one);
        const goods = goodsOf(read, plateWeights(read, one.own), [], one.own);
        const solved = solve({ ...one, own: { ...one.own, distance: null } });
        if (solved !== null) expect(savingAt(goods, solved * 100, 0)).toBeCloseTo(savingAt(goods, ceilingOf(goods), 0), 2);
      }),
      { seed: 7, numRuns: 100 },
    ));
});

it('the saving at the asking price is new delivered less price and drive', () =>
  fc.assert(
    fc.property(cases, (one) => {
      const drive = 2 * (one.own.distance?.value ?? 0) * one.own.perMile;
      const fresh = things(one).reduce((sum, { quantity, fresh: price }) => sum + quantity * price, 0);
      expect(judged(one).worth.saving?.minor).toBeCloseTo((fresh - one.price - drive) * 100, -0.5);
    }),
    { seed: 3, numRuns: 100 },
  ));

it('all prices times a factor give the answer times that factor', () =>
  fc.assert(
    fc.property(cases, fc.integer({ min: 2, max: 20 }), (one, factor) => {
      const dearer = (own: RateCell | undefined) =>
        own && {
          ...own,
          low: own.low * factor,
          likely: own.likely * factor,
          high: own.high * factor,
        };
      const rates = Object.fromEntries(
        Object.entries(one.own.rates).map(([category, row]) => [
          category,
          Object.fromEntries(Object.entries(row ?? {}).map(([which, own]) => [which, dearer(own)])),
        ]),
      );
      const own = { ...one.own, rates, perMile: one.own.perMile * factor };
      const [before, after] = [judged(one).worth, judged({ ...one, price: one.price * factor, own }).worth];
      for (const what of ['allIn', 'goingWorth', 'newWorth', 'goingRate', 'newDelivered'] as const) {
        const ratio = (after[what]?.likely ?? 0) / (before[what]?.likely ?? 0);
        expect(ratio).toBeCloseTo(factor, 6);
      }
      // The plates' share is a whole number of cents before and after.
      const perPound = (after.perUsablePound?.likely ?? 0) - factor * (before.perUsablePound?.likely ?? 0);
      expect(Math.abs(perPound)).toBeLessThanOrEqual((factor + 1) / (2 * one.pairs * one.weight));
      // The walk-away price is rounded down to a whole unit before and after.
      const off = (after.walkAway?.minor ?? 0) - factor * (before.walkAway?.minor ?? 0);
      expect(off).toBeGreaterThanOrEqual(-100);
      expect(off).toBeLessThanOrEqual(100 * factor);
    }),
    { seed: 13, numRuns: 100 },
  ));

it('the opening offer leaves room: it never lies above the walk-away price or the asking price, nor under seven tenths of it', () =>
  fc.assert(
    fc.property(cases, (one) => {
      const { openingOffer, walkAway } = judged(one).worth;
      const open = openingOffer?.minor ?? Number.NaN;
      expect(open).toBeLessThanOrEqual(Math.min(walkAway?.minor ?? 0, one.price * 100));
      // Offers are rounded down to whole fives from fifty up.
      if (open < (walkAway?.minor ?? 0)) expect(open).toBeGreaterThan(0.7 * one.price * 100 - 500);
    }),
    { seed: 5, numRuns: 200 },
  ));

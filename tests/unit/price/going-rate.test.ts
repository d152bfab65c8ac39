/** Learning from finds: relations that need no source, and how settings take it up. Prices are invented. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, type RateCell, settingsSchema } from '../../../src/listing/settings.ts';
import { DEFAULT_RATES } from '../../../src/price/default-rates.ts';
import { learnRate, learnRates, type PricedFind } from '../../../src/price/going-rate.ts';
import { cellOf } from '../../../src/price/rates.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { settings } from '../making/readings.ts';

const IRON = DEFAULT_RATES.iron.used;
const OPTIONS = { halfLifeDays: 180 };
const find = (perUnit: number, ageDays = 0): PricedFind => ({ category: 'iron', perUnit, ageDays });

const price = fc.double({ min: 0.01, max: 50, noNaN: true });
const someFinds = fc.array(
  fc.record({ category: fc.constant('iron' as const), perUnit: price, ageDays: fc.integer({ min: 0, max: 3000 }) }),
  { maxLength: 20 },
);
const cells = fc
  .tuple(price, fc.double({ min: 1.05, max: 3, noNaN: true }), fc.double({ min: 1.05, max: 3, noNaN: true }))
  .map(([low, up, further]) => ({ low, likely: low * up, high: low * up * further }));

describe('whatever is found', () => {
  it('no finds leave the table as it is', () =>
    fc.assert(
      fc.property(cells, (cell) => {
        expect(learnRate(cell, [], OPTIONS)).toEqual({ ...cell, finds: 0, effective: 0 });
      }),
    ));

  it('the order does not matter, to the last bit', () =>
    fc.assert(
      fc.property(cells, someFinds, (cell, finds) => {
        expect(learnRate(cell, [...finds].reverse(), OPTIONS)).toEqual(learnRate(cell, finds, OPTIONS));
      }),
    ));

  it('all prices times a factor give the rate times that factor', () =>
    fc.assert(
      fc.property(cells, someFinds, fc.double({ min: 0.01, max: 100, noNaN: true }), (cell, finds, factor) => {
        const plain = learnRate(cell, finds, OPTIONS);
        const scaled = learnRate(
          { low: cell.low * factor, likely: cell.likely * factor, high: cell.high * factor },
          finds.map((one) => ({ ...one, perUnit: one.perUnit * factor })),
          OPTIONS,
        );
        for (const end of ['low', 'likely', 'high'] as const) expect(scaled[end] / factor / plain[end]).toBeCloseTo(1, 6);
        expect(scaled.effective).toBeCloseTo(plain.effective, 5);
      }),
    ));

  it('low, likely and high stay in order, and as the settings take them', () =>
    fc.assert(
      fc.property(someFinds, (finds) => {
        const learned = learnRates(finds, DEFAULT_SETTINGS, '2026-11');
        expect(settingsSchema.safeParse({ ...DEFAULT_SETTINGS, learned }).success).toBe(true);
      }),
    ));

  it("the spread is never narrower than the market's own: by assumption half the variance of the table", () =>
    fc.assert(
      fc.property(cells, someFinds, (cell, finds) => {
        const learned = learnRate(cell, finds, OPTIONS);
        const least = Math.log(cell.high / cell.low) * Math.SQRT1_2;
        expect(Math.log(learned.high / learned.low)).toBeGreaterThan(least - 1e-9);
      }),
    ));

  it('no more finds stand behind it than there are', () =>
    fc.assert(
      fc.property(cells, someFinds, (cell, finds) => {
        const learned = learnRate(cell, finds, OPTIONS);
        expect(learned.effective).toBeLessThanOrEqual(finds.length + 1e-9);
        expect(learned.finds).toBe(finds.length);
      }),
    ));
});

describe('age', () => {
  it('halves what a find counts in each half-life', () => {
    const [now, half, quarter] = [0, 180, 360].map((age) => learnRate(IRON, [find(0.75, age)], OPTIONS).effective);
    expect([now, half, quarter].map((value) => Number(value?.toFixed(9)))).toEqual([1, 0.5, 0.25]);
    expect(learnRate(IRON, [find(0.75, -30)], OPTIONS).effective).toBeCloseTo(1, 9);
  });

  it('makes a new price draw more than an old one', () => {
    const rate = learnRate(IRON, [find(0.6, 0), find(0.9, 700)], OPTIONS).likely;
    expect(rate).toBeLessThan(learnRate(IRON, [find(0.6, 700), find(0.9, 0)], OPTIONS).likely);
  });

  it('needs a half-life above zero', () => expect(() => learnRate(IRON, [], { halfLifeDays: 0 })).toThrow(RangeError));
});

it('leaves out what is no price, and can do nothing with a table that touches zero', () => {
  const finds = [find(0), find(-1), find(Number.NaN), find(Number.POSITIVE_INFINITY)];
  expect(learnRate(IRON, finds, OPTIONS)).toEqual({ low: 0.5, likely: 0.75, high: 1, finds: 0, effective: 0 });
  expect(learnRates(finds, DEFAULT_SETTINGS, '')).toEqual({});
  expect(learnRate({ low: 0, likely: 1, high: 2 }, [find(1)], OPTIONS)).toMatchObject({ low: 0, likely: 1, high: 2, finds: 0 });
});

it('narrows with finds that agree', () => {
  const width = (count: number) => {
    const { low, high } = learnRate(
      IRON,
      Array.from({ length: count }, () => find(0.75)),
      OPTIONS,
    );
    return Math.log(high / low);
  };
  expect([0, 1, 5, 50].map(width)).toEqual([0, 1, 5, 50].map(width).sort((a, b) => b - a));
});

describe('a learned rate', () => {
  const finds = [0.55, 0.5, 0.6, 0.52, 0.58, 0.54, 0.56].map((perUnit) => find(perUnit, 20));
  const learned = learnRates(finds, DEFAULT_SETTINGS, '2026-11');
  const own: RateCell = { low: 0.3, likely: 0.4, high: 0.5, source: 'own', date: '' };

  it("goes before the default and behind the buyer's own, and only for used prices in its currency", () => {
    const used = (changes: Parameters<typeof settings>[0]) => cellOf('iron', 'used', settings(changes))?.likely;
    expect(used({ learned })).toBe(learned.iron?.likely);
    expect(learned.iron?.likely).toBeLessThan(0.65);
    expect(used({ learned, rates: { iron: { used: own } } })).toBe(0.4);
    expect(cellOf('iron', 'new', settings({ learned }))).toBe(DEFAULT_RATES.iron.new);
    expect(cellOf('iron', 'used', settings({ learned, currency: 'CAD' }))).toBeNull();
  });

  it("starts from the buyer's own cell where there is one", () =>
    expect(learnRates([find(0.4)], settings({ rates: { iron: { used: own } } }), '').iron?.likely).toBeCloseTo(0.4, 9));

  /** Where the used rate of iron comes from, as the working says it. */
  const saidOf = (...given: readonly PricedFind[]): string | undefined => {
    const { worth } = evaluate(
      listingFromText('Olympic plates 4 x 45 lb, $100'),
      settings({ learned: learnRates(given, DEFAULT_SETTINGS, '2026-11') }),
    );
    expect(worth.steps.filter(({ fromFinds }) => fromFinds).map(({ id }) => id)).toEqual(['used-rate:iron']);
    const step = worth.steps.find(({ id }) => id === 'used-rate:iron');
    return step?.source ? english()(step.source) : undefined;
  };

  it('says in the working how many finds stand behind it', () => {
    expect(saidOf(...finds)).toBe('Learned from 7 of your finds (Nov 2026)');
    expect(saidOf(find(0.7))).toBe('Learned from one of your finds (Nov 2026)');
  });

  it('says that old finds and unusual prices count for less, where they do', () => {
    const { halfLifeDays } = DEFAULT_SETTINGS;
    const less = 'Learned from 2 of your finds; old ones and unusual prices count for less (Nov 2026)';
    const lone = 'Learned from one of your finds, which counts for less: it is old, or its price unusual (Nov 2026)';
    expect(saidOf(find(0.7), find(0.7, 2 * halfLifeDays))).toBe(less);
    expect(saidOf(find(0.7, halfLifeDays))).toBe(lone);
    expect(saidOf(find(70))).toBe(lone);
  });
});

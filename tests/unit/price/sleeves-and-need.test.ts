/** What a second sleeve and a kit's need make of the plates on offer. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import type { Item } from '../../../src/listing/reading.ts';
import { plateWeights, totalUsable } from '../../../src/price/usable.ts';
import { fact, item, kg, lb, plates, reading, settings } from '../making/readings.ts';

const BOTH = settings({ otherSleeveMm: 25 });
const NARROW = plates('plate-1', 4, lb(10), { fits: '25mm' });
const WIDE = plates('plate-2', 4, lb(10));
const weigh = (items: readonly Item[], buyer = BOTH) => plateWeights(reading(items, 50), buyer);
const usable = (items: readonly Item[], buyer = BOTH) => totalUsable(weigh(items, buyer)).likely;
const reasons = (items: readonly Item[], buyer = BOTH) =>
  weigh(items, buyer).flatMap(({ losses }) => losses.map(({ reason }) => reason));
const flags = (items: readonly Item[], buyer = BOTH) => judge(reading(items, 50), buyer).flags.map(({ id }) => id);

describe('a buyer with two sleeves', () => {
  it('uses plates that fit either, and gets no flag for them', () => {
    expect(usable([NARROW, WIDE])).toBe(80);
    expect(usable([NARROW, WIDE], settings())).toBe(40);
    expect(flags([NARROW], settings())).toContain('one-inch-plates');
    expect(flags([NARROW, WIDE]).filter((id) => /inch-plates|bore/.test(id))).toEqual([]);
  });

  it('pairs plates on each sleeve apart', () => {
    const one = (id: string, fits: '25mm' | '50mm') => plates(id, 1, lb(10), { fits });
    expect(reasons([one('plate-1', '25mm'), one('plate-2', '50mm')])).toEqual(['odd', 'odd']);
    expect(usable([one('plate-1', '50mm'), one('plate-2', '50mm')])).toBe(20);
    // A line that does not say pairs on the sleeve that it most likely fits.
    expect(usable([plates('plate-1', 1, lb(45), {}), one('plate-2', '50mm')])).toBe(0);
    expect(usable([plates('plate-1', 1, lb(45), {}), plates('plate-2', 1, lb(45))])).toBe(90);
  });

  it('need not ask which holes the plates have', () => {
    const silent = plates('plate-1', 8, lb(5), {});
    expect(judge(reading([silent], 20), settings()).questions.map(({ id }) => id)).toContain('bore');
    expect(judge(reading([silent], 20), BOTH).questions.map(({ id }) => id)).not.toContain('bore');
    expect(weigh([silent])[0]?.fit).toMatchObject({ chance: 1, known: true });
  });

  it('judges a stated hole by the sleeve that it sits on', () => {
    const bored = (boreMm: number) => plates('plate-1', 2, lb(10), { boreMm });
    expect(weigh([bored(27)])[0]?.fit).toMatchObject({ sleeveMm: 25, clearanceMm: 2 });
    expect(flags([bored(27)])).not.toContain('bore-oversized');
    expect(weigh([bored(50.5)])[0]?.fit).toMatchObject({ sleeveMm: 50, clearanceMm: 0.5 });
    expect(reasons([bored(48)])).toEqual(['wrong-bore']);
    expect(flags([bored(48)])).toContain('bore-undersized');
    expect(reasons([bored(62)])).toEqual(['sloppy']);
    expect(flags([bored(62)])).toContain('bore-oversized');
  });

  it('owns a 1-inch bar: another is a note', () => {
    const bar = item('bar-1', 'bar', { count: 1, fits: '25mm' });
    const weight = (buyer: typeof BOTH) => judge(reading([bar], 20), buyer).flags.find(({ id }) => id === 'one-inch-bar')?.weight;
    expect(weight(settings())).toBe('deal-breaker');
    expect(weight(BOTH)).toBe('note');
  });
});

describe('a sleeve of 52 mm, the upper end of the powerlifting rule', () => {
  const tight = settings({ sleeveMm: 52 });
  it('does not take every 50 mm plate for granted, and asks', () => {
    expect(weigh([WIDE], tight)[0]?.fit).toMatchObject({ known: false, chance: 0.6 });
    expect(judge(reading([WIDE], 20), tight).questions.map(({ id }) => id)).toContain('bore');
    expect(reasons([plates('plate-1', 2, lb(45), { boreMm: 50.8 })], tight)).toEqual(['wrong-bore']);
    expect(usable([plates('plate-1', 2, lb(45), { boreMm: 52.5 })], tight)).toBe(90);
  });
});

describe('plates that more likely have the wrong holes', () => {
  it('count for nothing, and the loss says why', () => {
    const bad = [plates('plate-1', 4, lb(10), {}), item('bar-1', 'bar', { fits: '25mm' })];
    expect(usable(bad, settings())).toBe(0);
    expect(reasons(bad, settings())).toEqual(['unknown-bore']);
  });
});

describe('what the kit has no need of', () => {
  const need = (...lacks: [value: number, pieces: number][]) =>
    settings({ need: lacks.map(([value, pieces]) => ({ weight: lb(value), pieces })) });
  const lot = [plates('plate-1', 6, lb(45)), plates('plate-2', 2, lb(25))];
  const worth = (items: readonly Item[], buyer = settings()) => judge(reading(items, 100), buyer).worth;

  it('is nothing while no need is known', () => expect(worth(lot).surplus).toEqual([]));

  it('is usable all the same, told apart, and worth the low end of the going rate', () => {
    const some = worth(lot, need([45, 4], [25, 2]));
    expect(some.usable).toEqual(worth(lot).usable);
    expect(some.surplus).toEqual([{ item: 'plate-1', pounds: expect.closeTo(90, 9) }]);
    // Iron is $0.50 to $1.00 a pound, $0.75 likely.
    expect(some.goingWorth?.likely).toBeCloseTo(230 * 75 + 90 * 50, 6);
    expect(some.walkAway?.minor).toBe(230 * 100 + 90 * 50);
  });

  it('is everything when the kit is whole, and a weight that it does not use', () => {
    expect(worth(lot, need()).surplus).toEqual([
      { item: 'plate-1', pounds: 270 },
      { item: 'plate-2', pounds: 50 },
    ]);
    expect(worth(lot, need([45, 10])).surplus).toEqual([{ item: 'plate-2', pounds: 50 }]);
  });

  it('takes kilograms for kilograms, and not for pounds that are near', () => {
    const kilos = [plates('plate-1', 4, kg(20))];
    expect(worth(kilos, settings({ need: [{ weight: kg(20), pieces: 4 }] })).surplus).toEqual([]);
    expect(worth(kilos, need([45, 4])).surplus).toHaveLength(1);
  });

  it('keeps the better plates of two lines, in whichever order they stand', () => {
    const rusty = item('plate-1', 'plate', { count: 2, unitWeight: lb(45), fits: '50mm' }, ['rust-heavy']);
    const clean = plates('plate-2', 2, lb(45));
    for (const items of [
      [rusty, clean],
      [clean, rusty],
    ])
      expect(worth(items, need([45, 2])).surplus).toEqual([{ item: 'plate-1', pounds: 90 }]);
  });

  it('gives an odd plate the mate that the kit has at home', () => {
    const single = [plates('plate-1', 1, lb(45))];
    expect(worth(single).usable.likely).toBe(0);
    expect(worth(single, need([45, 1])).usable.likely).toBe(45);
    expect(worth(single, need([45, 2])).usable.likely).toBe(0);
  });

  it('leaves a lot without single weights alone', () => {
    const total = [item('plate-1', 'plate', { totalWeight: lb(300), fits: '50mm' })];
    expect(worth(total, need()).surplus).toEqual([]);
  });
});

describe('the odd plate of several lines', () => {
  it('is the one worth least, so that leaving it out costs least', () => {
    const rusty = item('plate-1', 'plate', { count: 3, unitWeight: lb(45), fits: '50mm' }, ['rust-heavy']);
    const clean = plates('plate-2', 2, lb(45));
    for (const items of [
      [rusty, clean],
      [clean, rusty],
    ])
      expect(weigh(items, settings()).flatMap(({ losses }) => losses)).toEqual([{ item: 'plate-1', reason: 'odd', pounds: 45 }]);
  });
});

describe('properties of need', () => {
  it('a larger need never lowers what a lot is worth, and never changes what is usable', () => {
    const line = fc.record({ pieces: fc.integer({ min: 1, max: 8 }), face: fc.constantFrom(10, 25, 45), rust: fc.boolean() });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 5 }), fc.nat(4), fc.nat(4), (lines, few, more) => {
        const items = lines.map(({ pieces, face, rust }, index) =>
          item(`plate-${index + 1}`, 'plate', { count: pieces, unitWeight: lb(face), fits: '50mm' }, rust ? ['rust'] : []),
        );
        // In pairs: an odd need would say that the kit has a single plate at home.
        const lacking = (pairs: number) =>
          settings({ need: [10, 25, 45].map((face) => ({ weight: lb(face), pieces: 2 * pairs })) });
        const [small, large] = [few, few + more].map((pairs) => judge(reading(items, 100), lacking(pairs)).worth);
        expect(large?.usable).toEqual(small?.usable);
        expect(large?.goingWorth?.likely ?? 0).toBeGreaterThanOrEqual((small?.goingWorth?.likely ?? 0) - 1e-6);
        expect(large?.walkAway?.minor ?? 0).toBeGreaterThanOrEqual(small?.walkAway?.minor ?? 0);
      }),
    );
  });
});

it('a stated total with one line marked for nothing leaves the other lines as they are', () => {
  const ad = { statedTotal: fact(lb(300)) };
  const items = [plates('plate-1', 4, lb(45), { fits: '50mm', plan: 'nothing' }), item('plate-2', 'plate', { fits: '50mm' })];
  expect(totalUsable(plateWeights(reading(items, 100, ad), settings())).likely).toBeCloseTo(120, 9);
});

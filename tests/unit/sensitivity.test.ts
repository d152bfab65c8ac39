/** What turns a call. Figures are worked out by hand from the rates given here; nothing is published about such turns. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../src/evaluate.ts';
import { type Settings, UNKNOWNS } from '../../src/listing/settings.ts';
import { type Turn, turnsOf } from '../../src/sensitivity.ts';
import { english, readStrings } from '../tools/evaluate/strings.ts';
import { item, lb, plates, reading, settings } from './making/readings.ts';

const say = english();
const at20 = (changes: Partial<Settings> = {}): Settings => settings({ distance: { value: 20, unit: 'mi' }, ...changes });
const turns = (items: Parameters<typeof reading>[0], price: number | null, own: Settings): Turn[] | null =>
  turnsOf(judge(reading(items, price), own), own);

describe('a turn', () => {
  // 180 lb of plates that fit, 2 · 20 · (0.2 + 10/35) = $19.43 of drive. Worth it while 180 lb at the top of the going rate, 4/3 of the
  // likely one, less the drive, rounded down, is $120 or more: 120 + 19.43 = 240 · rate, 58.1 cents.
  const own = at20({ perMile: 0.2 });
  const found = turns([plates('plate-1', 4, lb(45))], 120, own) ?? [];

  it('is found where it lies', () => {
    expect(found.map(({ id, category, side, from, to }) => [id, category, side, from, to])).toEqual([
      ['used', 'iron', 'below', 'go', 'haggle'],
    ]);
    expect(found[0]?.at).toBeCloseTo((120 + 40 * (0.2 + 10 / 35)) / 240, 3);
    expect(found[0]?.shift).toBeCloseTo((0.75 - (found[0]?.at ?? 0)) / 0.25, 9);
  });

  it('is told in the unit of the buyer, rounded to the side on which it holds', () => {
    expect(found.map(({ says }) => say(says))).toEqual([
      'This turns to “Worth it for less” if the going rate (plain iron) is less than $0.58/lb.',
    ]);
    const kilograms = turns([plates('plate-1', 4, lb(45))], 120, { ...own, unit: 'kg' }) ?? [];
    expect(kilograms.map(({ says }) => say(says))).toEqual([
      'This turns to “Worth it for less” if the going rate (plain iron) is less than $1.28/kg.',
    ]);
  });

  it('is none for an ad that is far from any', () => expect(turns([plates('plate-1', 4, lb(45))], 20, own)).toEqual([]));

  it('is no matter without a price or with nothing to value', () => {
    expect(turns([plates('plate-1', 4, lb(45))], null, own)).toBeNull();
    expect(turns([plates('plate-1', 4, lb(45))], 120, at20({ currency: 'CAD' }))).toBeNull();
  });

  it('is the chance of wrong holes where that would have to be asked first', () => {
    const open = turns([plates('plate-1', 4, lb(45), {}), plates('plate-2', 4, lb(10), {})], 120, own) ?? [];
    // Chances under a tenth are not asked about.
    expect(open.map(({ id, to, at }) => [id, to, Number(at.toFixed(3))])).toContainEqual(['bore', 'ask', 0.1]);
    expect(open.map(({ says }) => say(says))).toContain(
      'This turns to “Ask before you drive” if the chance of wrong holes is more than 10%.',
    );
  });

  it('is the distance where none is known and the call does not tell it already', () => {
    const close = turns([plates('plate-1', 4, lb(45))], 165, settings()) ?? [];
    expect(judge(reading([plates('plate-1', 4, lb(45))], 165), settings()).call.kind).toBe('go');
    expect(close.map(({ id }) => id)).not.toContain('distance');
    const bar = item('bar-1', 'bar', { count: 1 });
    const asked = turns([bar], 200, settings()) ?? [];
    expect(asked.find(({ id }) => id === 'distance')?.side).toBe('above');
  });
});

describe('whatever is on offer', () => {
  const weights = fc.constantFrom(5, 10, 25, 45, 100);
  const items = fc
    .tuple(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), weights, fc.boolean()), { maxLength: 2 }),
      fc.boolean(),
      fc.boolean(),
    )
    .map(([lines, bar, rack]) => [
      ...lines.map(([count, weight, sure], index) =>
        plates(`plate-${index + 1}`, count, lb(weight), sure ? { fits: '50mm' } : {}),
      ),
      ...(bar ? [item('bar-1', 'bar', { count: 1 })] : []),
      ...(rack ? [item('rack-1', 'rack', { count: 1 })] : []),
    ]);

  it('the call turns at the value and not before it, and the nearest comes first', () => {
    let seen = 0;
    fc.assert(
      fc.property(items, fc.integer({ min: 10, max: 900 }), fc.integer({ min: 0, max: 80 }), (goods, price, miles) => {
        const own = settings({ distance: { value: miles, unit: 'mi' } });
        const evaluation = judge(reading(goods, price), own);
        const found = turnsOf(evaluation, own) ?? [];
        seen += found.length;
        expect(found.map(({ shift }) => shift)).toEqual(found.map(({ shift }) => shift).sort((a, b) => a - b));
        for (const { id, from, to, at, shift, side } of found) {
          expect(from).toBe(evaluation.call.kind);
          expect(to).not.toBe(from);
          expect(shift).toBeGreaterThan(0);
          expect(shift).toBeLessThanOrEqual(1 + 1e-9);
          if (id !== 'margin' && id !== 'per-mile') continue;
          const field = id === 'margin' ? 'margin' : 'perMile';
          const kind = (value: number) => judge(reading(goods, price), { ...own, [field]: value }).call.kind;
          const back = side === 'above' ? -1e-3 : 1e-3;
          expect(kind(at)).toBe(to);
          expect(kind(at + back)).toBe(from);
        }
      }),
      { seed: 11, numRuns: 60 },
    );
    expect(seen).toBeGreaterThan(30);
  });

  it('raising the margin never raises the walk-away price', () =>
    fc.assert(
      fc.property(
        items,
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (goods, a, b) => {
          const most = (margin: number) => judge(reading(goods, 100), settings({ margin })).worth.walkAway?.minor ?? 0;
          expect(most(Math.max(a, b))).toBeLessThanOrEqual(most(Math.min(a, b)));
        },
      ),
    ));

  it('raising the cell of used iron never lowers the going worth', () =>
    fc.assert(
      fc.property(
        items,
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (goods, low, up) => {
          const worth = (factor: number) => {
            const used = { low: low * factor, likely: low * 1.5 * factor, high: low * 2 * factor, source: 'own', date: '' };
            return judge(reading(goods, 100), settings({ rates: { iron: { used } } })).worth.goingWorth;
          };
          const [before, after] = [worth(1), worth(up)];
          for (const end of ['low', 'likely', 'high'] as const)
            expect((after?.[end] ?? 0) + 1e-6).toBeGreaterThanOrEqual(before?.[end] ?? 0);
        },
      ),
    ));
});

it("the buyer's own chance of wrong holes decides whether it is asked", () => {
  const open = [plates('plate-1', 4, lb(45), {})];
  const kind = (bore: number) => judge(reading(open, 120), at20({ chances: { bore } })).call.kind;
  expect([0.05, 0.3].map(kind)).toEqual(['go', 'ask']);
});

it('has words for every assumption, on both sides, and none left over', () => {
  const kinds = ['used', 'new', 'usable', ...UNKNOWNS, 'per_mile', 'hour', 'margin', 'distance'];
  const wanted = kinds.flatMap((kind) =>
    kind === 'distance' ? ['turn_distance_above'] : [`turn_${kind}_below`, `turn_${kind}_above`],
  );
  const calls = ['go', 'haggle', 'ask', 'leave'].map((kind) => `turn_to_${kind}`);
  const strings = Object.keys(readStrings());
  expect(strings.filter((key) => key.startsWith('turn_')).sort()).toEqual([...wanted, ...calls, 'turn_none'].sort());
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toContract } from '../../../src/contract.ts';
import { judge } from '../../../src/evaluate.ts';
import { contractSchema } from '../../../src/listing/contract.ts';
import { CONDITIONS, type Condition, type Item } from '../../../src/listing/reading.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { item, kg, lb, plates, reading, settings } from '../making/readings.ts';

const plateLine = fc.record({
  count: fc.integer({ min: 1, max: 10 }),
  weight: fc.constantFrom(2.5, 5, 10, 25, 35, 45),
  fits: fc.constantFrom('50mm' as const, '25mm' as const, null),
});
const others = fc.constantFrom<Item[]>(
  [],
  [item('bar-1', 'bar', { count: 1 })],
  [item('rack-1', 'rack', { count: 1 }), item('bench-1', 'bench', { count: 1 })],
  [item('bar-1', 'bar', { count: 1, shaftMm: 32 }), item('other-1', 'other', { count: 1 })],
  [item('dumbbell-1', 'dumbbell', { count: 2, unitWeight: lb(50) }), item('collars-1', 'collars', { count: 2 })],
);
const lot = fc
  .tuple(fc.array(plateLine, { maxLength: 6 }), others)
  .map(([lines, rest]) => [
    ...lines.map(({ count, weight, fits }, index) =>
      plates(`plate-${index + 1}`, count, lb(weight), fits === null ? {} : { fits }),
    ),
    ...rest,
  ]);
const price = fc.integer({ min: 0, max: 2000 });
const miles = fc.option(fc.integer({ min: 0, max: 200 }));
const away = (distance: number | null) => settings({ distance: distance === null ? null : { value: distance, unit: 'mi' } });
const say = english();

describe('relations that hold for every lot', () => {
  it('the shares sum to the all-in, to the cent', () => {
    let applied = 0;
    fc.assert(
      fc.property(lot, price, miles, (items, asked, distance) => {
        fc.pre(items.length > 0);
        const { worth } = judge(reading(items, asked), away(distance));
        const sum = worth.split.reduce((total, share) => total + share.allIn.minor, 0);
        expect(sum).toBe(Math.round(worth.allIn?.likely ?? Number.NaN));
        applied += 1;
      }),
    );
    expect(applied).toBeGreaterThan(50);
  });

  it('the contract holds, its ranges are ordered, and every sentence can be said', () => {
    fc.assert(
      fc.property(lot, fc.option(price), miles, (items, asked, distance) => {
        const contract = contractSchema.parse(toContract(judge(reading(items, asked), away(distance)), say));
        const { usable, allIn, perUsablePound, newDelivered, goingRate } = contract.worth;
        for (const range of [usable, allIn, perUsablePound, newDelivered, goingRate, contract.trip?.cost ?? null]) {
          if (range === null) continue;
          expect(range.low).toBeLessThanOrEqual(range.likely);
          expect(range.likely).toBeLessThanOrEqual(range.high);
        }
        expect(JSON.stringify(contract)).not.toMatch(/"[^"]*\[[a-z_]+\][^"]*"/);
      }),
    );
  });

  it('a worse condition never raises worth or the most to pay', () => {
    const worse = CONDITIONS.filter(
      (word) => !['new', 'like-new', 'no-rust', 'straight', 'spins', 'stored-indoors', 'welded', 'bolted'].includes(word),
    );
    fc.assert(
      fc.property(lot, fc.constantFrom<Condition>(...worse), fc.nat(), (items, word, which) => {
        fc.pre(items.length > 0);
        const at = which % items.length;
        const faulty = items.map((one, index) =>
          index === at ? { ...one, conditions: [{ value: word, basis: 'stated' as const, rule: 'test', evidence: [] }] } : one,
        );
        const [sound, bad] = [judge(reading(items, 100), settings()).worth, judge(reading(faulty, 100), settings()).worth];
        expect(bad.goingWorth?.likely ?? 0).toBeLessThanOrEqual((sound.goingWorth?.likely ?? 0) + 1e-6);
        expect(bad.walkAway?.minor ?? 0).toBeLessThanOrEqual(sound.walkAway?.minor ?? 0);
      }),
    );
  });

  it('more miles never lower the all-in and never raise the most to pay', () => {
    fc.assert(
      fc.property(lot, price, fc.tuple(fc.nat(300), fc.nat(300)), (items, asked, [a, b]) => {
        const [near, far] = [Math.min(a, b), Math.max(a, b)].map(
          (distance) => judge(reading(items, asked), away(distance)).worth,
        );
        expect(far?.allIn?.likely ?? 0).toBeGreaterThanOrEqual(near?.allIn?.likely ?? 0);
        expect(far?.walkAway?.minor ?? 0).toBeLessThanOrEqual(near?.walkAway?.minor ?? 0);
      }),
    );
  });

  it('pounds or kilograms make no difference to the money', () => {
    fc.assert(
      fc.property(fc.array(plateLine, { minLength: 1, maxLength: 5 }), price, (lines, asked) => {
        const made = (weigh: (value: number) => { value: number; unit: 'lb' | 'kg' }) =>
          lines.map(({ count, weight, fits }, index) =>
            plates(`plate-${index + 1}`, count, weigh(weight), fits === null ? {} : { fits }),
          );
        const pounds = judge(reading(made(lb), asked), settings());
        const kilos = judge(
          reading(
            made((value) => kg(value * 0.45359237)),
            asked,
          ),
          settings({ unit: 'kg' }),
        );
        expect(kilos.worth.usable.likely).toBeCloseTo(pounds.worth.usable.likely, 6);
        expect(kilos.call.kind).toBe(pounds.call.kind);
        const perPound = pounds.worth.perUsablePound?.likely;
        const perKilo = kilos.worth.perUsablePound?.likely;
        if (perPound !== undefined && perKilo !== undefined) expect(perKilo * 0.45359237).toBeCloseTo(perPound, 6);
      }),
    );
  });

  it('the order of the lines makes no difference to the call', () => {
    fc.assert(
      fc.property(lot, price, (items, asked) => {
        const [there, back] = [judge(reading(items, asked), settings()), judge(reading([...items].reverse(), asked), settings())];
        expect(back.call.kind).toBe(there.call.kind);
        expect(back.worth.usable.likely).toBeCloseTo(there.worth.usable.likely, 6);
        expect(back.worth.walkAway).toEqual(there.worth.walkAway);
      }),
    );
  });

  it('at the break-even distance the most to pay is the price', () => {
    const { trip } = judge(reading([plates('plate-1', 4, lb(45))], 100), away(10));
    const { worth } = judge(reading([plates('plate-1', 4, lb(45))], 100), away(trip?.breakEven?.value ?? 0));
    expect(worth.walkAway?.minor).toBeGreaterThanOrEqual(10_000);
    expect(worth.walkAway?.minor).toBeLessThan(10_200);
  });
});

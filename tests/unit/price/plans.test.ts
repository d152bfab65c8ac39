/** Keeping, selling on, counting for nothing. Rates are the project's defaults: iron $0.50 to $1.00, a bar $80 / $160 / $300. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import { type Correction, type Item, PLANS } from '../../../src/listing/reading.ts';
import { item, lb, plates, reading, settings } from '../making/readings.ts';

const LOT = [
  plates('plate-1', 4, lb(45)),
  item('bar-1', 'bar', { count: 1, fits: '50mm' }, ['straight']),
  item('bench-1', 'bench', { count: 1 }),
];
const plan = (id: string, value: string): Correction => ({ path: `${id}.plan`, value });
const worthOf = (corrections: readonly Correction[] = [], items: readonly Item[] = LOT, price = 300) =>
  judge(reading(items, price), settings(), corrections).worth;
const shareOf = (worth: ReturnType<typeof worthOf>, id: string) =>
  worth.split.find((share) => share.item === id) ?? expect.fail();
const minor = (worth: ReturnType<typeof worthOf>) => worth.walkAway?.minor ?? Number.NaN;

describe('worth nothing to the buyer', () => {
  const worth = worthOf([plan('bench-1', 'nothing')]);
  it('takes no share and adds no worth', () => {
    expect(shareOf(worth, 'bench-1')).toMatchObject({ allIn: { minor: 0 }, worth: { low: 0, likely: 0, high: 0 } });
    expect(worth.goingWorth?.likely).toBeCloseTo((worthOf().goingWorth?.likely ?? 0) - 7500, 6);
    expect(minor(worth)).toBeLessThan(minor(worthOf()));
  });

  it('leaves plates out of the usable pounds, with the reason', () => {
    const without = worthOf([plan('plate-1', 'nothing')]);
    expect(without.usable.likely).toBe(0);
    expect(without.losses).toEqual([{ item: 'plate-1', reason: 'unwanted', pounds: 180 }]);
    expect(without.perUsablePound).toBeNull();
  });

  it('takes no share either when the ad asks a price for it', () => {
    const priced = LOT.map((one) =>
      one.kind.value === 'bench' ? item('bench-1', 'bench', { count: 1, ownPrice: { minor: 9000, currency: 'USD' } }) : one,
    );
    expect(shareOf(worthOf([], priced), 'bench-1').allIn.minor).toBe(9000);
    expect(shareOf(worthOf([plan('bench-1', 'nothing')], priced), 'bench-1').allIn.minor).toBe(0);
  });

  it('of everything leaves nothing to pay for, and the price still spreads over something', () => {
    const none = judge(
      reading(LOT, 300),
      settings(),
      LOT.map(({ id }) => plan(id, 'nothing')),
    );
    expect(none.call.kind).toBe('leave');
    expect(none.worth.walkAway?.minor).toBe(0);
    expect(none.worth.split.reduce((sum, share) => sum + share.allIn.minor, 0)).toBe(30_000);
  });
});

describe('to be sold on', () => {
  it('counts at the low end of the going rate, for selling costs effort', () => {
    const worth = worthOf([plan('bar-1', 'sell')]);
    expect(shareOf(worth, 'bar-1').worth.likely).toBe(8000);
    // $80 for the bar in place of ($160 + $300) / 2.
    expect(minor(worthOf()) - minor(worth)).toBe(23_000 - 8000);
  });

  it('counts at the buyer’s own figure where there is one, in the split and in the most to pay', () => {
    const own: Correction = { path: 'bar-1.resale', value: 120, unit: 'USD' };
    const worth = worthOf([plan('bar-1', 'sell'), own]);
    expect(shareOf(worth, 'bar-1').worth).toMatchObject({ low: 12_000, likely: 12_000, high: 12_000 });
    expect(minor(worth) - minor(worthOf([plan('bar-1', 'sell')]))).toBe(4000);
    // A figure alone, or in another currency, changes nothing.
    expect(minor(worthOf([own]))).toBe(minor(worthOf()));
    expect(minor(worthOf([plan('bar-1', 'sell'), { ...own, unit: 'EUR' }]))).toBe(minor(worthOf([plan('bar-1', 'sell')])));
  });

  it('leaves plates out of the cost of a usable pound, with their share', () => {
    const two = [plates('plate-1', 4, lb(45)), plates('plate-2', 4, lb(10), { fits: '25mm' })];
    const worth = worthOf([plan('plate-2', 'sell')], two, 100);
    expect(worth.usable.likely).toBe(180);
    expect(worth.losses).toEqual([{ item: 'plate-2', reason: 'sold-on', pounds: 40 }]);
    // 1-inch plates are of no use on the buyer's sleeve, and of use to the next buyer: $0.25 a pound at the low end.
    expect(shareOf(worth, 'plate-2').worth.likely).toBe(1000);
    expect(worth.perUsablePound?.likely).toBeCloseTo(shareOf(worth, 'plate-1').allIn.minor / 180, 6);
  });

  it('brings nothing for scrap, unless the buyer knows better', () => {
    const bent = [plates('plate-1', 2, lb(45)), item('bar-1', 'bar', { count: 1 }, ['bent'])];
    expect(shareOf(worthOf([plan('bar-1', 'sell')], bent), 'bar-1').worth.likely).toBe(0);
    const own: Correction = { path: 'bar-1.resale', value: 15 };
    expect(shareOf(worthOf([plan('bar-1', 'sell'), own], bent), 'bar-1').worth.likely).toBe(1500);
  });

  it('refuses plans and sums that mean nothing', () => {
    const { corrections } = judge(reading(LOT, 300), settings(), [plan('bar-1', 'burn'), { path: 'bar-1.resale', value: -3 }]);
    expect(corrections).toEqual([]);
  });
});

describe('what one thing costs if the others are taken at the going rate', () => {
  it('is the all-in less the worth of the others', () => {
    const worth = worthOf();
    // $300 less 180 lb at $0.75 and a bench at $75.
    expect(shareOf(worth, 'bar-1').alone?.minor).toBe(30_000 - 13_500 - 7500);
    expect(shareOf(worthOf([], LOT, 120), 'bar-1').alone?.minor).toBe(12_000 - 13_500 - 7500);
  });
  it('is not told of an only thing', () => expect(worthOf([], LOT.slice(0, 1)).split[0]?.alone).toBeNull());
});

describe('under every combination of plans', () => {
  const chosen = fc.tuple(...LOT.map(() => fc.constantFrom(...PLANS, null)));
  const sums = fc.array(fc.option(fc.integer({ min: 0, max: 400 })), { minLength: LOT.length, maxLength: LOT.length });
  const made = (plans: readonly (string | null)[], amounts: readonly (number | null)[]): Correction[] =>
    LOT.flatMap(({ id }, index) => [
      ...(plans[index] ? [plan(id, plans[index])] : []),
      ...(amounts[index] == null ? [] : [{ path: `${id}.resale`, value: amounts[index] }]),
    ]);

  it('no cent is made or lost', () => {
    let applied = 0;
    fc.assert(
      fc.property(chosen, sums, fc.integer({ min: 0, max: 200_000 }), (plans, amounts, cents) => {
        const worth = worthOf(made(plans, amounts), LOT, cents / 100);
        expect(worth.split.reduce((sum, share) => sum + share.allIn.minor, 0)).toBe(cents);
        expect(worth.split.every((share) => share.allIn.minor >= 0)).toBe(true);
        applied += 1;
      }),
    );
    expect(applied).toBeGreaterThan(50);
  });

  it('going over to nothing never raises the most to pay', () => {
    let applied = 0;
    fc.assert(
      fc.property(chosen, sums, fc.nat(LOT.length - 1), (plans, amounts, which) => {
        const before = made(plans, amounts);
        const after = [...before, plan(LOT[which]?.id ?? '', 'nothing')];
        expect(minor(worthOf(after))).toBeLessThanOrEqual(minor(worthOf(before)));
        applied += 1;
      }),
    );
    expect(applied).toBeGreaterThan(50);
  });
});

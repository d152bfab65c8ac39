import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import type { Correction, Doubt } from '../../../src/listing/reading.ts';
import { correct } from '../../../src/read/correct.ts';
import { money } from '../../../src/units/money.ts';
import { fact, item, lb, plates, reading, settings } from '../making/readings.ts';

const AD = reading([plates('plate-1', 4, lb(45)), item('bar-1', 'bar', { count: 1 })], 180);
const corrected = (...corrections: Correction[]) => correct(AD, corrections);

describe('corrections', () => {
  it('set values, marked as the buyer’s', () => {
    const { reading: next, refused } = corrected(
      { path: 'plate-1.count', value: 6 },
      { path: 'plate-1.boreMm', value: 2.125, unit: 'in', basis: 'measured' },
      { path: 'bar-1.condition.bent', value: true },
      { path: 'asking.amount', value: '150' },
      { path: 'distance', value: 12, unit: 'km' },
    );
    expect(refused).toEqual([]);
    expect(next.items[0]?.totalWeight?.value).toEqual(lb(270));
    expect(next.items[0]?.boreMm).toMatchObject({ value: expect.closeTo(53.975, 9), basis: 'measured', rule: 'buyer' });
    expect(next.items[1]?.conditions.map((one) => one.value)).toEqual(['bent']);
    expect(next.asking.amount?.value).toEqual(money(150, 'USD'));
    expect(next.distance?.value).toEqual({ value: 12, unit: 'km' });
  });

  it('take out with nothing, and add with a kind', () => {
    const { reading: next } = corrected(
      { path: 'bar-1', value: null },
      { path: 'bench-1.kind', value: 'bench' },
      { path: 'asking.amount', value: null },
    );
    expect(next.items.map((one) => one.id)).toEqual(['plate-1', 'bench-1']);
    expect(next.asking.amount).toBeNull();
  });

  it('refuse what means nothing, and leave the reading as it was', () => {
    const bad: Correction[] = [
      { path: 'plate-1.count', value: -2 },
      { path: 'plate-1.count', value: 2.5 },
      { path: 'plate-9.count', value: 2 },
      { path: 'plate-1.colour', value: 'red' },
      { path: 'plate-1.material', value: 'gold' },
      { path: 'asking.amount', value: 'much' },
      { path: 'asking.amount', value: Number.POSITIVE_INFINITY },
      { path: '__proto__.kind', value: 'plate' },
      { path: '', value: 1 },
    ];
    const { reading: next, applied, refused } = corrected(...bad);
    expect(applied).toEqual([]);
    expect(refused).toEqual(bad);
    expect(next).toEqual(AD);
  });

  it('shut out opposite conditions', () => {
    const { reading: next } = corrected(
      { path: 'bar-1.condition.bent', value: true },
      { path: 'bar-1.conditions', value: 'straight, spins' },
    );
    expect(next.items[1]?.conditions.map((one) => one.value)).toEqual(['straight', 'spins']);
  });

  it('let a price by the piece or pound follow the items', () => {
    const each = corrected({ path: 'asking.basis', value: 'each' }).reading.asking;
    expect(each.unitAmount?.value).toEqual(money(180, 'USD'));
    expect(each.amount?.value).toEqual(money(900, 'USD'));
    const perPound = corrected({ path: 'asking.basis', value: 'per-pound' }, { path: 'asking.unitAmount', value: 0.75 });
    expect(perPound.reading.asking.amount?.value).toEqual(money(135, 'USD'));
    const more = corrected(
      { path: 'asking.basis', value: 'per-pound' },
      { path: 'asking.unitAmount', value: 0.75 },
      { path: 'plate-1.count', value: 6 },
    );
    expect(more.reading.asking.amount?.value).toEqual(money(202.5, 'USD'));
    const back = correct(perPound.reading, [{ path: 'asking.basis', value: 'lot' }]);
    expect(back.reading.asking).toMatchObject({ basis: 'lot', unitAmount: null });
  });

  it('leave a price by the pound alone when they say nothing of the goods on offer', () => {
    const bells = reading([item('dumbbell-1', 'dumbbell', { count: 2, unitWeight: lb(40) })], null, {}, { basis: 'per-pound' });
    const asking = {
      ...bells.asking,
      unitAmount: fact(money(1, 'USD')),
      amount: { ...fact(money(80, 'USD')), basis: 'implied' as const },
    };
    const priceAfter = (path: string, value: string | number) =>
      correct({ ...bells, asking }, [{ path, value }]).reading.asking.amount?.value;
    expect(priceAfter('dumbbell-1.plan', 'sell')).toEqual(money(80, 'USD'));
    expect(priceAfter('dumbbell-1.condition', 'rust')).toEqual(money(80, 'USD'));
    expect(priceAfter('dumbbell-1.count', 4)).toEqual(money(160, 'USD'));
  });

  it('turn a stand-in price into a price', () => {
    const standIn = reading([plates('plate-1', 4, lb(45))], 1, {}, { placeholder: true });
    const { worth, call } = judge(standIn, settings(), [{ path: 'asking.amount', value: 90 }]);
    expect(worth.allIn?.likely).toBe(9000);
    expect(call.kind).toBe('go');
  });

  it('settle the doubts about what they set', () => {
    const doubt = (id: string, about: string, path: string): Doubt => ({
      id,
      about,
      why: { key: 'doubt_test' },
      choices: [{ says: { key: 'choice_test' }, corrections: [{ path, value: 1 }] }],
      evidence: [],
    });
    const doubtful = {
      ...AD,
      doubts: [
        doubt('a', 'plate-1.count', 'plate-1.count'),
        doubt('b', 'asking', 'asking.basis'),
        doubt('c', 'x', 'bar-1.count'),
      ],
    };
    const { reading: next } = correct(doubtful, [
      { path: 'plate-1.count', value: 2 },
      { path: 'asking.basis', value: 'lot' },
    ]);
    expect(next.doubts.map((one) => one.id)).toEqual(['c']);
  });

  it('are taken from the settings too, and make the call follow', () => {
    expect(judge(AD, settings()).call.kind).toBe('go');
    expect(judge(AD, settings({ corrections: [{ path: 'plate-1.fits', value: '25mm' }] })).call.kind).not.toBe('go');
    expect(
      judge({ ...AD, statedTotal: fact(lb(225)) }, settings(), [{ path: 'statedTotal', value: null }]).reading.statedTotal,
    ).toBeNull();
  });
});

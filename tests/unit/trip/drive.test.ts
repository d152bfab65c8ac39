import { describe, expect, it } from 'vitest';
import { toContract } from '../../../src/contract.ts';
import { judge } from '../../../src/evaluate.ts';
import { contractSchema } from '../../../src/listing/contract.ts';
import type { Reading } from '../../../src/listing/reading.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { fact, item, lb, plates, reading, settings } from '../making/readings.ts';

const say = english();
const LOT = [plates('plate-1', 8, lb(45)), item('bar-1', 'bar', { count: 1 }, ['straight'])];
const judged = (changes: Partial<Settings>, ad: Reading = reading(LOT, 150)) =>
  judge(ad, settings({ distance: { value: 20, unit: 'mi' }, perMile: 0.2, hourWorth: 7, speedMph: 35, ...changes }));
const likely = (changes: Partial<Settings>, ad?: Reading) => {
  const { trip } = judged(changes, ad);
  if (trip === null) throw new Error('no trip');
  const { driving, time, tolls, van } = trip.parts;
  return { ...trip, is: [driving, time, tolls, van].map((part) => Math.round(part.likely)) };
};

describe('parts of the drive', () => {
  it('are driving, time, tolls and van, and sum to its cost', () => {
    // 40 miles there and back at $0.20, and at 35 mph with $7 an hour the same again.
    expect(likely({}).is).toEqual([800, 800, 0, 0]);
    const full = likely({ tolls: 6.5 });
    expect(full.is).toEqual([800, 800, 650, 0]);
    expect(full.cost.likely).toBeCloseTo(2250, 9);
    expect(full.cost.low).toBeCloseTo(0.9 * 1600 + 650, 9);
  });

  it('have a van only where the goods do not fit, and say why', () => {
    const van = { cost: 40, per: 'trip' as const };
    expect(likely({ van }).is[3]).toBe(0);
    expect(likely({ van, longestMm: 2300 }).is[3]).toBe(0);
    const long = likely({ van, longestMm: 2000 });
    expect(long.is[3]).toBe(4000);
    expect(long.notes.map(say)).toEqual([
      'A piece of 2,200 mm (86.6 in) is longer than the 2,000 mm (78.7 in) that your vehicle takes: a van is counted in.',
    ]);
    const rack = reading([item('rack-1', 'rack', { count: 1 }, ['welded'])], 200);
    expect(likely({ van }, rack).is[3]).toBe(4000);
    expect(likely({}, rack).is[3]).toBe(0);
  });

  it('say what does not fit when no price of a van is known', () => {
    const { is, notes } = likely({ longestMm: 2000 });
    expect(is[3]).toBe(0);
    expect(notes.map(say).join()).toMatch(/no price of a van is set/);
  });

  it('take several trips for a heavy lot, or a van where that is cheaper', () => {
    // 360 lb of plates and a bar of 45 lb.
    const twice = likely({ payloadLb: 300, tolls: 1 });
    expect(twice).toMatchObject({ times: 2, is: [1600, 1600, 200, 0] });
    expect(say(twice.notes[0] ?? { key: 'none' })).toBe(
      '405 lb is more than the 300 lb that your vehicle may carry besides people: 2 trips are counted.',
    );
    expect(likely({ payloadLb: 405 }).times).toBe(1);
    expect(likely({ payloadLb: 300, van: { cost: 30, per: 'trip' } })).toMatchObject({ times: 2, is: [1600, 1600, 0, 0] });
    expect(likely({ payloadLb: 300, van: { cost: 10, per: 'trip' } })).toMatchObject({ times: 1, is: [800, 800, 0, 1000] });
    expect(likely({ payloadLb: 300 }, reading(LOT, 150, { statedTotal: fact(lb(1000)) })).times).toBe(4);
  });

  it('stand in the working one by one, with where they come from', () => {
    const { worth } = judged({ tolls: 2, perMile: 0.205 });
    const lines = worth.steps.filter(({ id }) => ['distance', 'driving', 'time', 'tolls', 'van', 'trip'].includes(id));
    expect(lines.map(({ id }) => id)).toEqual(['distance', 'driving', 'time', 'tolls', 'trip']);
    expect(lines[1]?.source && say(lines[1].source)).toBe('IRS 2026, running cost only');
    expect(lines[2]?.source && say(lines[2].source)).toMatch(/US DOT/);
    const own = judged({ perMile: 0.31 }).worth.steps.find(({ id }) => id === 'driving');
    expect(own?.source && say(own.source)).toBe('your own figure');
  });
});

describe('between two places', () => {
  const home = { name: 'Here', lat: 40, lon: -80 };
  const sellerAt = { name: 'There', lat: 40.3, lon: -80 };

  it('the distance comes from their coordinates, as a range that the cost carries on', () => {
    const { distance, basis, miles, cost } = likely({ distance: null, home, sellerAt });
    // 0.3° of latitude are 33.36 km straight, and 1.295 times as much by road.
    expect(basis).toBe('between-places');
    expect(distance).toEqual({ value: expect.closeTo((33.3585 * 1.29537) / 1.609344, 2), unit: 'mi' });
    expect(miles.high / miles.likely).toBeCloseTo(1 + 0.1 / 1.29537, 4);
    expect(cost.high / cost.likely).toBeCloseTo(1 + Math.hypot(0.2, 0.1 / 1.29537), 4);
    expect(likely({ distance: null, home, sellerAt, unit: 'kg' }).distance.unit).toBe('km');
  });

  it('counts less than a typed or a stated distance, and needs both', () => {
    expect(likely({ home, sellerAt }).basis).toBe('typed');
    const stated = reading(LOT, 150, { distance: fact({ value: 8, unit: 'km' as const }) });
    expect(likely({ distance: null, home, sellerAt }, stated).basis).toBe('stated');
    expect(judged({ distance: null, home }).trip).toBeNull();
    expect(judged({ distance: null, sellerAt }).trip).toBeNull();
  });

  it('keeps the contract for tools in its shape', () => {
    const contract = contractSchema.parse(toContract(judged({ distance: null, home, sellerAt }), say));
    expect(contract.trip?.distance).toEqual({ value: 26.85, unit: 'mi' });
  });
});

describe('how far the saving carries', () => {
  it('is to where the drive costs what is saved, tolls and van first', () => {
    const straight = judged({});
    const saving = straight.prospect?.saving.minor ?? 0;
    // 80 cents a mile away.
    expect(straight.trip?.breakEven?.value).toBe(Math.floor(saving / 80));
    expect(judged({ tolls: 20 }).trip?.breakEven?.value).toBe(Math.floor((saving - 2000) / 80));
    const van = { cost: 30, per: 'trip' as const };
    expect(judged({ van, longestMm: 2000 }).trip?.breakEven?.value).toBe(Math.floor((saving - 3000) / 80));
    expect(judged({ payloadLb: 300 }).trip?.breakEven?.value).toBe(Math.floor(saving / 160));
    expect(judged({ payloadLb: 300, van }).trip?.breakEven?.value).toBe(Math.floor((saving - 3000) / 80));
    expect(judged({ tolls: 5000 }).trip?.breakEven).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import { english } from '../../tools/evaluate/strings.ts';
import { fact, item, kg, lb, plates, reading, settings } from '../making/readings.ts';

const say = english();
const LOT = [plates('plate-1', 4, lb(45)), plates('plate-2', 2, lb(25)), plates('plate-3', 4, lb(10))];
const call = (...ad: Parameters<typeof judge>) => {
  const { call: made } = judge(...ad);
  return { kind: made.kind, says: say(made.says), because: made.because.map(say) };
};
const far = (value: number) => settings({ distance: { value, unit: 'mi' } });

describe('the call', () => {
  it('goes for cheap plates, with the distance that it holds for where none is known', () => {
    const { kind, says } = call(reading(LOT, 150), settings());
    expect(kind).toBe('go');
    // $1.00 × 270 lb − $150 = $120; a mile away costs 2 × ($0.205 + $10/35).
    expect(says).toBe('Worth the drive up to 122 mi');
    expect(call(reading(LOT, 150), far(30))).toMatchObject({ kind: 'go', says: 'Worth the drive' });
  });

  it('carries kilometres for a buyer who thinks in kilograms', () => {
    expect(call(reading(LOT, 150), settings({ unit: 'kg' })).says).toMatch(/up to 196 km$/);
  });

  it('haggles when the price is within talk, and names the most to pay', () => {
    expect(call(reading(LOT, 350), settings())).toMatchObject({ kind: 'haggle', says: 'Worth it at $270 or less' });
    expect(call(reading(LOT, 250), far(40))).toMatchObject({ kind: 'haggle', says: 'Worth it at $230 or less' });
  });

  it('leaves what is far too dear, or firm above its worth', () => {
    expect(call(reading(LOT, 900), settings()).kind).toBe('leave');
    const firm = call(reading(LOT, 350, {}, { firm: fact(true) }), settings());
    expect(firm.kind).toBe('leave');
    expect(firm.because[0]).toBe('The price is firm, and this is worth $270 at most.');
  });

  it('asks for the price where there is none, and says up to what it is worth it', () => {
    const none = call(reading(LOT, null), settings());
    expect(none).toMatchObject({ kind: 'ask', says: 'Ask the price: worth it at $270 or less' });
    expect(call(reading(LOT, 1, {}, { placeholder: true }), settings())).toMatchObject({ kind: 'ask' });
  });

  it('asks about the bar that decides', () => {
    const bar = item('bar-1', 'bar', { count: 1, shaftMm: 28.5, fits: '50mm' });
    expect(call(reading([bar], 150), settings())).toMatchObject({ kind: 'ask', says: 'Ask before you drive' });
    const straight = item('bar-1', 'bar', { count: 1, shaftMm: 28.5, fits: '50mm' }, ['straight']);
    expect(call(reading([straight], 150), settings()).kind).toBe('go');
  });

  it('does not ask about a bar thrown in with plates that carry the price alone', () => {
    expect(call(reading([...LOT, item('bar-1', 'bar', { count: 1 })], 150), settings()).kind).toBe('go');
  });

  // Common practice, no source: a plate without a mate can't be loaded, and those beside a 1-inch bar go on that.
  it('says why plates are good for nothing, and asks where they may yet be', () => {
    const single = call(reading([plates('plate-1', 1, lb(45))], 30), settings());
    expect(single.kind).toBe('leave');
    expect(single.because[0]).toMatch(/has no mate/);
    const narrow = [item('bar-1', 'bar', { count: 1, fits: '25mm' }), plates('plate-1', 4, lb(25), {})];
    expect(call(reading(narrow, 40), settings())).toMatchObject({ kind: 'ask', because: [expect.stringMatching(/holes/)] });
    expect(judge(reading(narrow, 40), settings()).questions.map(({ id }) => id)).toEqual(['bore']);
  });

  // US Federal Trade Commission, advice to buyers: pay when you have seen the goods.
  it('asks before a drive to a seller who wants money ahead', () => {
    const ahead = call(reading(LOT, 150, { terms: [fact('paid-ahead')] }), far(10));
    expect(ahead.kind).toBe('ask');
    expect(ahead.because[0]).toMatch(/before you have seen/);
    expect(call(reading(LOT, 150, { terms: [fact('stock-photo')] }), far(10)).kind).toBe('go');
  });

  it('does not ask what plates weigh that are good for nothing', () => {
    const bench = item('bench-1', 'bench', { count: 1 });
    const ids = (material: 'vinyl' | 'iron') =>
      judge(reading([bench, item('plate-1', 'plate', { material })], 40), settings()).questions.map(({ id }) => id);
    expect(ids('iron')).toContain('weights');
    expect(ids('vinyl')).toEqual([]);
  });

  it('asks about holes when small plates alone may be of either kind', () => {
    const small = call(reading([plates('plate-1', 8, lb(10), {})], 40), settings());
    expect(small.kind).toBe('ask');
    expect(small.because[0]).toMatch(/holes/);
  });

  it('leaves a lot whose only good is broken, and says why', () => {
    const bent = call(reading([item('bar-1', 'bar', { count: 1 }, ['bent'])], 100), settings());
    expect(bent.kind).toBe('leave');
    expect(bent.because[0]).toMatch(/scrap/);
    expect(call(reading([plates('plate-1', 4, lb(25), { fits: '25mm' })], 20), settings()).kind).toBe('leave');
  });

  it('judges the plates of a lot whose bar is junk by themselves', () => {
    const junk = item('bar-1', 'bar', { count: 1, shaftMm: 32 });
    const { worth, call: made } = judge(reading([...LOT, junk], 180), settings());
    expect(made.kind).toBe('go');
    expect(worth.split.at(-1)).toMatchObject({ item: 'bar-1', allIn: { minor: 0 } });
    expect(worth.perUsablePound?.likely).toBeCloseTo(18_000 / 270, 6);
  });

  it('judges bars and racks as a lot', () => {
    const { worth } = judge(reading([item('rack-1', 'rack', { count: 1 })], 400), settings());
    expect(worth.perUsablePound).toBeNull();
    expect(worth.newDelivered?.per).toBe('lot');
    expect(worth.goingRate?.per).toBe('lot');
  });

  it('finds nothing in an ad about something else, a wanted ad, an ad of which all is sold', () => {
    expect(call(reading([], 20, { aboutThisTrade: false }), settings()).because).toEqual([
      'There is nothing here for a barbell gym.',
    ]);
    expect(call(reading([], null, { wanted: true }), settings()).kind).toBe('leave');
    expect(call(reading([], 20, { sold: LOT }), settings()).kind).toBe('leave');
    expect(judge(reading([], 20, { aboutThisTrade: false }), settings()).worth).toMatchObject({
      walkAway: null,
      perUsablePound: null,
    });
  });

  it('asks what the plates weigh where the ad does not say', () => {
    const { call: made, questions } = judge(reading([item('plate-1', 'plate')], 100), settings());
    expect(made.kind).toBe('ask');
    expect(questions.map((question) => question.id)).toEqual(['weights']);
  });

  it('never holds one currency against another', () => {
    const euros = reading(
      [plates('plate-1', 4, kg(20))],
      100,
      {},
      { amount: fact({ minor: 10_000, currency: 'EUR' }), currency: fact('EUR') },
    );
    const { worth, call: made } = judge(euros, far(30));
    expect(worth).toMatchObject({ goingRate: null, newDelivered: null, walkAway: null, goingWorth: null });
    expect(worth.perUsablePound).toMatchObject({ currency: 'EUR' });
    expect(worth.allIn).toMatchObject({ likely: 10_000, currency: 'EUR' });
    expect(say(made.because[0] ?? { key: 'none' })).toMatch(/EUR.*USD/);
  });

  it('has no rates in a currency whose rates the buyer has not entered', () => {
    const euros = reading(
      [plates('plate-1', 4, kg(20))],
      100,
      {},
      { amount: fact({ minor: 10_000, currency: 'EUR' }), currency: fact('EUR') },
    );
    expect(judge(euros, settings({ currency: 'EUR' })).worth.goingRate).toBeNull();
    const cell = (low: number, likely: number, high: number) => ({ low, likely, high, source: 'mine', date: '2026-02' });
    const own = { iron: { used: cell(0.5, 0.8, 1.1), new: cell(1.2, 1.6, 2.2) } };
    expect(judge(euros, settings({ currency: 'EUR', rates: own })).worth.goingRate?.likely).toBeCloseTo(80, 9);
  });
});

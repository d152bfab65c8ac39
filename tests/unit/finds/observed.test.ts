/** What an ad's price says of the going rate, and what it must not be taken to say. Ads are invented. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { pricedFinds } from '../../../src/finds/priced.ts';
import type { Find } from '../../../src/finds/record.ts';
import { summarise } from '../../../src/finds/summary.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { learnRates } from '../../../src/price/going-rate.ts';
import { observedPrices } from '../../../src/price/observed.ts';

const judge = (text: string) => evaluate(listingFromText(text), DEFAULT_SETTINGS);
const seen = (text: string) =>
  observedPrices(judge(text)).map(({ category, perUnit, currency }) => [category, Number(perUnit.toFixed(4)), currency]);

describe('a price tells the going rate', () => {
  it('of a lot of one category, by the pound at face value', () =>
    // $180 / (4 × 45 lb)
    expect(seen('4 x 45 lb olympic plates, cast iron, $180 for all')).toEqual([['iron', 1, 'USD']]));

  it('of a total that is stated for the lot', () =>
    expect(seen('300 lbs of olympic cast iron plates, $225')).toEqual([['iron', 0.75, 'USD']]));

  it('by the pound', () => expect(seen('olympic plates, 4 x 45 lb and 2 x 25 lb, $0.80 per lb')).toEqual([['iron', 0.8, 'USD']]));

  it('by the piece', () => expect(seen('olympic barbell, 7 ft, straight, $140')).toEqual([['bar', 140, 'USD']]));

  it('of each line that has a price of its own', () =>
    expect(seen('2 x 45 lb olympic plates $90\nolympic barbell 7 ft $150')).toEqual([
      ['iron', 1, 'USD'],
      ['bar', 150, 'USD'],
    ]));

  it('as it would be for sound goods', () => {
    // Rusty goods are worth 0.85 of sound ones: 180 / (180 × 0.85)
    expect(seen('4 x 45 lb olympic plates, cast iron, rusty, $180 for all')).toEqual([['iron', 1.1765, 'USD']]);
    expect(seen('2 x 45 lb olympic plates, rusty, $90\nolympic barbell 7 ft $150')[0]).toEqual(['iron', 1.1765, 'USD']);
    expect(seen('olympic plates, 4 x 45 lb and 2 x 25 lb, rusty, $0.80 per lb')).toEqual([['iron', 0.9412, 'USD']]);
  });
});

describe('a price tells nothing', () => {
  it.each([
    ['of several categories in one lot', '4 x 45 lb olympic plates and an olympic barbell, $300 for all'],
    ['when it is a stand-in', '4 x 45 lb olympic plates $1 make an offer'],
    ['when nothing is for sale', 'WANTED: 4 x 45 lb olympic plates, paying $180'],
    ['when there is none', '4 x 45 lb olympic plates'],
    ['when the ad does not say how many', 'some 45 lb olympic plates $100'],
    ['of what is broken', '2 x 45 lb olympic plates, both cracked, $60'],
  ])('%s', (_why, text) => expect(seen(text)).toEqual([]));

  it('when a deal-breaker is on the ad as a whole', () => {
    const sound = judge('4 x 45 lb olympic plates, cast iron, $180 for all');
    const says = { key: 'unused' };
    const flag = {
      id: 'x',
      weight: 'deal-breaker' as const,
      item: null,
      says,
      found: null,
      limit: null,
      source: says,
      evidence: [],
    };
    expect(observedPrices(sound)).toHaveLength(1);
    expect(observedPrices({ ...sound, flags: [flag] })).toEqual([]);
  });
});

const DAY = 86_400_000;
const NOW = 1000 * DAY;
const find = (text: string, over: Partial<Find> = {}): Find => ({
  id: 'a',
  title: '',
  address: null,
  path: null,
  status: 'new',
  summary: summarise(judge(text)),
  prices: [],
  paid: null,
  notes: '',
  keptAt: NOW,
  metAt: NOW,
  changedAt: NOW,
  ...over,
});
const PLATES = '4 x 45 lb olympic plates, cast iron, $180 for all';

describe('finds as what is learned from', () => {
  const only = (one: Find, settings: Settings = DEFAULT_SETTINGS) => pricedFinds([one], settings, NOW + 10.4 * DAY)[0];

  it('are as old as the last time that they were met, in whole days', () =>
    expect(only(find(PLATES, { metAt: NOW + 3 * DAY }))).toMatchObject({ category: 'iron', perUnit: 1, ageDays: 7 }));

  it('count what was paid once they are bought', () => {
    const money = (minor: number) => ({ minor, currency: 'USD' });
    const prices = [{ at: NOW, ...money(180_00) }];
    expect(only(find(PLATES, { status: 'bought', prices, paid: money(90_00) }))?.perUnit).toBe(0.5);
    expect(only(find(PLATES, { status: 'asked', prices, paid: money(90_00) }))?.perUnit).toBe(1);
  });

  it('in another currency count by the buyer’s own rate, and without one not at all', () => {
    const euros = { ...DEFAULT_SETTINGS, currency: 'EUR' };
    expect(only(find(PLATES), euros)).toBeUndefined();
    expect(only(find(PLATES), { ...euros, exchange: { USD: 0.9 } })?.perUnit).toBeCloseTo(0.9, 12);
  });

  it('kept before there was such a thing teach nothing', () => {
    const { observed: _none, ...summary } = summarise(judge(PLATES));
    expect(only(find('', { summary }))).toBeUndefined();
  });

  it('move the going rate to where the prices are', () => {
    const finds = [120, 110, 130, 125, 115].map((price) => find(PLATES.replace('$180', `$${price}`)));
    const learned = learnRates(pricedFinds(finds, DEFAULT_SETTINGS, NOW), DEFAULT_SETTINGS, '2026-05').iron;
    expect(learned?.finds).toBe(5);
    // From $0.75 of the table towards $0.67 of the finds.
    expect(learned?.likely).toBeGreaterThan(0.66);
    expect(learned?.likely).toBeLessThan(0.72);
  });
});

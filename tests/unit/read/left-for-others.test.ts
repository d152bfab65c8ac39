/** Goods that are promised, lots side by side, and weights that are no plates' or no lot's. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { doubts, offer, readText } from './goods.ts';

describe('what somebody has spoken for is still there, with a doubt', () => {
  it.each([
    ['45s are pending. 4x45, 4x25 olympic plates. $300', '300 lot | 4 plate 45 lb, 4 plate 25 lb', ['pending:plate-1']],
    ['4x45 olympic plates (45s are pending), 2x25. $100', '100 lot | 4 plate 45 lb, 2 plate 25 lb', ['pending:plate-1']],
    ['Squat rack $200 - SALE PENDING\nBench $60', '260 lot | 1 rack =200, 1 bench =60', ['pending:rack-1']],
    ['Squat rack $200 - SOLD\nBench $60', '60 lot | 1 bench', []],
    ['Squat rack $200, not pending. Bench $60', '260 lot | 1 rack =200, 1 bench =60', []],
    [
      'EDIT: bar pending pickup. Rack $100, bar $50, 4x45 plates. Just the plates are left for sure, $80',
      '80 lot | 4 plate 45 lb',
      [],
    ],
  ])('%s', (text, said, raised) => {
    expect(offer(text)).toBe(said);
    expect(doubts(text).filter((id) => id.startsWith('pending'))).toEqual(raised);
  });
});

it.each([
  [
    'Two lots\nLot A: olympic bar, 4x45, 2x25\nLot B: olympic bar, 2x45, 4x10',
    '? none | 1 bar, 6 plate 45 lb, 2 plate 25 lb, 1 bar, 4 plate 10 lb',
  ],
  ['Gear\nSet 1 - bar, 2x45 plates\nSet 2 - bar, 2x45 plates', '? none | 1 bar, 4 plate 45 lb, 1 bar'],
  // One lot is no lots, and a title says the same again.
  ['Set A: olympic bar, 4x45 plates. The bar is straight. $100', '100 lot | 1 bar, 4 plate 45 lb'],
  [
    'Rack, olympic barbell and a 300 lb set (the 7ft bar that came with it was junk, I threw it out). $650',
    '650 lot | 1 rack, 1 bar, 2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb, 2 plate 10 lb, 4 plate 5 lb, 2 plate 2.5 lb',
  ],
  // Balls, vests and bags weigh something and are no plates.
  ['wall balls 14 lb, 5, $20 each. Bumpers 2x45 $100', '200 lot | 5 other 14 lb =100, 2 bumper 45 lb =100'],
  [
    'Olympic plates 4x45. medicine balls 10 lb, 12 lb and 14 lb. $200',
    '200 lot | 4 plate 45 lb, ? other 10 lb, ? other 12 lb, ? other 14 lb',
  ],
  ['4x45 olympic plates $100. Also a weighted vest, 40 lbs, $50', '150 lot | 4 plate 45 lb =100, 1 other 40 lb =50'],
  ['Slam ball and 25 lb plates, 4 of them $40', '40 lot | 1 other, 4 plate 25 lb'],
  ['Hantelscheiben 4x10 kg, Medizinball 5 kg, 60 €', '60 lot | 4 plate 10 kg, 1 other 5 kg'],
  // Bars over a list and behind it.
  [
    'Bars\nMens 20 kg bars, 3 left\nWomens 15 kg bars, 2 left\nI will not test bars for you. $500',
    '500 lot | 3 bar 20 kg, 2 bar 15 kg',
  ],
  ['Axle bar 2 inch thick, about 31 lbs. $60', '60 lot | 1 bar 31 lb'],
  ['Multi grip swiss bar and an olympic bar, $100', '100 lot | 1 other, 1 bar'],
])('%s', (text, said) => expect(offer(text)).toBe(said));

describe('what the weight is said of', () => {
  const total = (text: string) => readText(text).statedTotal?.value.value ?? null;
  const plates = (text: string) =>
    readText(text).items.map(({ kind, totalWeight }) => [kind.value, totalWeight?.value.value ?? null]);

  it.each([
    ['Bench, bar and 300 lbs of plates, mostly 45s and 25s. $425', null],
    ['300 lbs of olympic plates, mostly 45s and 25s. $425', 300],
    ['Rack, bench. Total weight of plates is 280 lb. 4x45, 4x25, $600', null],
    ['Rack, olympic plates 2x25kg 2x20kg (90kg) $600', null],
    ['Olympic plates 2x25kg 2x20kg (90kg) $600', 90],
    ['Rack, bar, plates, 400 lb total. $600', 400],
    ['Standard weights, approx 120lb. 25s 10s 5s and 2.5s. $50', 120],
    ['Olympic plates, 100 lb, 45s and 25s. $50', null],
    ['Rack and a 300 lb set (the bar that came with it was junk, I threw it out). $650', null],
  ])('%s: %s', (text, pounds) => expect(total(text)).toBe(pounds));

  it('takes what a bench comes with for plates, and not what it holds', () => {
    expect(plates('bench press with 200lbs of weight $100')).toEqual([
      ['bench', null],
      ['plate', 200],
    ]);
    expect(plates('flat bench, holds 600 lbs of weight, $100')).toEqual([['bench', null]]);
    expect(plates('flat bench, rated to 600 lbs of weight, $100')).toEqual([['bench', null]]);
    expect(plates('flat bench $100, I lost 40 lbs of weight')).toEqual([['bench', null]]);
  });

  it('keeps sizes that only tell what a weight is made of together', () => {
    expect(plates('300 lbs of olympic plates, mostly 45s and 25s. $425')).toEqual([['plate', 300]]);
    expect(plates('150 kg Hantelscheiben, hauptsächlich 20er und 10er, 200 €')).toEqual([['plate', 150]]);
    expect(plates('olympic plates, mostly 45s. $425')).toEqual([['plate', null]]);
  });
});

it.each([
  ['Olympic bar 45 lb, turns over by itself in the hooks. $50', ['bent']],
  ['Olympic bar, it rolls over by itself in the hooks $50', ['bent']],
  ['Langhantel, dreht sich von selbst in den Ablagen, 50 €', ['bent']],
  ['Olympic bar, straight, I am turning the garage over to my kid. $50', ['straight']],
])('%s', (text, conditions) =>
  expect(readText(text).items.flatMap((item) => item.conditions.map(({ value }) => value))).toEqual(conditions),
);

it.each([
  [
    'Stall mats 3 of them, $30 each, they are 100 lbs a piece\nRack $200\nTake the whole thing for $250',
    '250 lot | 3 other 100 lb =90, 1 rack =200',
  ],
  ['Need it gone by the 30th. Olympic bar $90', '90 lot | 1 bar'],
  [
    'Squat rack, bar and three sets of plates: 45s, 25s and 10s. $350',
    '350 lot | 1 rack, 1 bar, 2 plate 45 lb, 2 plate 25 lb, 2 plate 10 lb',
  ],
  ['I did three sets of 10. Rack $100', '100 lot | 1 rack'],
  ['Two 35 lb kettlebells, one 53. $120', '120 lot | 2 kettlebell 35 lb, 1 kettlebell 53 lb'],
  ['EZ curl bar w/ 50 lbs (4 10s, 4 2.5s) $40', '40 lot | 1 curl-bar, 4 plate 10 lb, 4 plate 2.5 lb'],
  ['EZ curl bar, 50 lbs, $40', '40 lot | 1 curl-bar 50 lb'],
  ['Qty 4 45lb plates, Qty 2 25 lb plates, qty 1 barbell $200', '200 lot | 4 plate 45 lb, 2 plate 25 lb, 1 bar'],
  ['plates in 5, 10, 25, all in pairs. $220', '220 lot | 2 plate 5 lb, 2 plate 10 lb, 2 plate 25 lb'],
])('%s', (text, said) => expect(offer(text)).toBe(said));

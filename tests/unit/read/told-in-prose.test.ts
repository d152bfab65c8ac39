/** Goods and prices told in sentences: chains of counts, goods wanted in trade, pounds that are money. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { asked, goods } from './goods.ts';

const GOODS: readonly (readonly [string, ...string[]])[] = [
  [
    'Have 8 discs of 45, 4 of 25, 2 of 5.',
    '8 plate 45 lb | count-noun-weight | 8 discs of 45',
    '4 plate 25 lb | count-of-weight-in-list | 4 of 25',
    '2 plate 5 lb | count-of-weight-in-list | 2 of 5',
  ],
  [
    'Six plates of twenty kilos. Two of fifteen.',
    '6 plate 20 kg | count-noun-weight | Six plates of twenty kilos',
    '2 plate 15 kg | count-of-weight-in-list | Two of fifteen',
  ],
  [
    'plates: four 15s two 10s and four 5s oh and two 2.5.',
    '4 plate 15 lb | count-weight | four 15s + plates',
    '2 plate 10 lb | count-weight | two 10s',
    '4 plate 5 lb | count-weight | four 5s',
    '2 plate 2.5 lb | count-weight-in-list | two 2.5',
  ],
  [
    '4 large plates (say 45), 6 medium plates (25)',
    '4 plate 45 lb | count-noun-weight | 4 large plates (say 45',
    '6 plate 25 lb | count-noun-weight | 6 medium plates (25',
  ],
  [
    'Plates that say 45 (there are 4), 25 (3 of those)',
    '4 plate 45 lb | count-behind-in-brackets | 45 (there are 4) + Plates',
    '3 plate 25 lb | count-behind-in-brackets | 25 (3 of those)',
  ],
  [
    'Rubber bumpers - 2 ea 45. Iron - 2 ea 5.',
    '2 bumper 45 lb | count-each-weight | 2 ea 45 + Rubber bumpers',
    '2 plate 5 lb | count-each-weight | 2 ea 5',
  ],
  ['Three bars. All three bars roll straight.', '3 bar ? | noun | Three bars + three bars'],
  ['Two pairs of spring collars, one pair is shot', '4 collars ? | noun | Two pairs of spring collars'],
  ['Four 45 lb plates, $120 or trade for a 24 kg kettlebell', '4 plate 45 lb | count-weight | Four 45 lb plates'],
  [
    'Plates 4x45\nBar: 5\'6", no spin locks. Not bent. About 15 lb.',
    '4 plate 45 lb | count-times-weight | 4x45 + Plates',
    '1 bar 15 lb | weight-alone | 15 lb',
  ],
  ['Bench & stands, $90', '1 bench ? | noun | Bench', '2 stands ? | noun | stands'],
  ['Power rack. It stands 7 ft tall.', '1 rack ? | noun | Power rack'],
];

const PRICES: readonly (readonly [string, ...string[]])[] = [
  ['Plates 20 kg - 2 pcs. 350 pounds for all.', 'lot 350 GBP | price-sign-behind | 350 pounds'],
  ['Four 20 kg plates, 176 pounds total', 'none'],
  ['4x45 plates. Was asking 600, 500 now.', 'lot 500 USD | price-now | 500'],
  ["4x45 plates. $90 takes it, that's around 30 cents a pound", 'lot 90 USD | price-sign-first | $90'],
  [
    "Plates 4x45 and a power rack. I'd sell just the plates for $200. Asking $500.",
    'lot 500 USD | price-sign-first | $500',
    'plate-1 200 USD | price-sign-first | $200',
  ],
  [
    'Two 45 lb plates, $35 each or both for $60. Also a curl bar for $20',
    'lot 80 USD | worked-out | ',
    'plate-1 60 USD | price-sign-first | $60',
    'curl-bar-1 20 USD | price-sign-first | $20',
  ],
  [
    '4x45 plates £100. I can bring them, £1 for 1 mile',
    'lot 100 GBP | price-sign-first | £100',
    'delivery 1 GBP | price-sign-first | £1',
  ],
  [
    'Lot A: 3 power racks, each with 2 J-hooks. $200 each.\nLot B: 4x45. $150 for the lot.',
    'lot 750 USD | worked-out | ',
    'rack-1 600 USD | price-sign-first | $200',
    'plate-1 150 USD | price-sign-first | $150',
  ],
];

describe('goods told in prose', () => {
  it.each(GOODS)('%s', (text, ...expected) => {
    expect(goods(text)).toEqual(expected);
  });
});

describe('prices told in prose', () => {
  it.each(PRICES)('%s', (text, ...expected) => {
    expect(asked(text)).toEqual(expected);
  });
});

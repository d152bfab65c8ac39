/** Weights read off the goods, lone weights that sum them, and counts and prices that hold for several. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { asked, goods, readText } from './goods.ts';

const GOODS: readonly (readonly [string, ...string[]])[] = [
  ['Plates, four little ones that say 2 1/2', '4 plate 2.5 lb | count-marked-weight | four little ones that say 2 1/2 + Plates'],
  [
    'Some round plates with 45 on them and smaller ones that say 10 and 5.',
    '? plate 45 lb | marked-weight | 45',
    '? plate 10 lb | marked-weight | 10',
    '? plate 5 lb | marked-weight | 5',
  ],
  [
    'pair each of quarter lb, half lb and 1 lb fractional plates',
    '2 micro 0.25 lb | each-of-list | quarter lb + fractional plates',
    '2 micro 0.5 lb | each-of-list | half lb',
    '2 micro 1 lb | each-of-list | 1 lb',
  ],
  ['4 discs x 5kg', '4 plate 5 kg | count-noun-weight | 4 discs x 5kg'],
  ['45s x 4. Some say 20.4 kg on the back', '4 plate 45 lb | weight-times-count | 45s x 4'],
  [
    'Two odd bars: safety squat bar $150, cambered bar $80.',
    '1 other ? | noun | safety squat bar',
    '1 other ? | noun | cambered bar',
  ],
  ['20 single dumbbell', '1 dumbbell 20 lb | single-weight | 20 single dumbbell'],
  ['rack. bench 185x5 squat 275', '1 rack ? | noun | rack'],
  ['No plates for sale, the 4x45 hold it down. Rack', '1 rack ? | noun | Rack'],
  [
    'iron 4 x 20kg, bumpers 2 x 10kg',
    '4 plate 20 kg | count-times-weight | 4 x 20kg',
    '2 bumper 10 kg | count-times-weight | 2 x 10kg + bumpers',
  ],
  [
    '- 45 @ 4\n- 10 @ 8\nplates',
    '4 plate 45 lb | weight-dash-count | 45 @ 4 + plates',
    '8 plate 10 lb | count-dash-weight-turned | 10 @ 8',
  ],
  ['Curl bar. Rust by the collars.', '1 curl-bar ? | noun | Curl bar'],
  ["Bar is bent so I'm chucking it, not included. Bench", '1 bench ? | noun | Bench'],
  ['Every bar is straight.', '? bar ? | noun | bar'],
  ['Spring clips, 2 sets', '4 collars ? | noun | Spring clips'],
  ['Rack, bolts M16 x 100', '1 rack ? | noun | Rack'],
  ['Rack, needs a 2x8 or 2x10 board', '1 rack ? | noun | Rack'],
  ['4 plates 40 lb apiece, slide on a 2" bar', '4 plate 40 lb | count-noun-weight | 4 plates 40 lb'],
];

const TOTALS: readonly (readonly [string, number | null])[] = [
  ['60 lb even (2 tens, 2 fives, 2 fifteens).', 60],
  ["Plates 45 x 2, 25 x 2. That's 140 lb.", 140],
  ['Plates 45 x 2, 25 x 2. The rack takes 700 lb.', null],
  ['got 45s, 35s and 25s plates, 500 pounds give or take', 500],
  ['Plates 45 x 2, 25 x 2. Total with bar about 185 lb', 185],
  ['Bundle: 20 kg bar, bumpers 2 x 20 kg', null],
];

const PRICES: readonly (readonly [string, ...string[]])[] = [
  [
    'Plates 4x45, $35 shipped or $28 if you come',
    'lot 28 USD | price-sign-first | $28',
    'delivery 35 USD | price-sign-first | $35',
  ],
  ['2x45 plates, $1 a pound... no wait 75c a pound', 'per-pound 67.5 USD | cents | 75c', 'unit 0.75 USD | cents | 75c'],
  ['4x45 lb plates dollar a pound, text me', 'per-pound 180 USD | price-of-one | dollar', 'unit 1 USD | price-of-one | dollar'],
  ['4x45 plates. dollar a pound', 'per-pound 180 USD | price-of-one | dollar', 'unit 1 USD | price-of-one | dollar'],
  [
    'A: 2x45 bumpers $200\nB: a 45 lb bar $140\nTake A and B for 300.',
    'lot 300 USD | price-for-all | 300',
    'bumper-1 200 USD | price-sign-first | $200',
    'bar-1 140 USD | price-sign-first | $140',
  ],
  ['less than 300$ new. Rack 180 USD', 'lot 180 USD | price-sign-behind | 180 USD', 'former 300 USD | price-sign-behind | 300$'],
  ['Rack. 220 and bring tools', 'lot 220 USD | lone-number | 220'],
  ['Rack. Asking 260, price drops 10 a week', 'lot 260 USD | price-told | 260'],
  [
    'plates 25 lb $25, 35 lb $35, two of each',
    'lot 120 USD | worked-out | ',
    'plate-1 50 USD | price-sign-first | $25',
    'plate-2 70 USD | price-sign-first | $35',
  ],
  [
    'Plates fr $15. 25 lb $25, 35 lb $35',
    'lot 60 USD | worked-out | ',
    'plate-1 25 USD | price-sign-first | $25',
    'plate-2 35 USD | price-sign-first | $35',
  ],
];

describe('weights on the goods, and counts of several', () => {
  it.each(GOODS)('%s', (text, ...expected) => expect(goods(text)).toEqual(expected));
});

describe('a lone weight that sums the plates', () => {
  it.each(TOTALS)('%s: %s', (text, expected) => expect(readText(text).statedTotal?.value.value ?? null).toBe(expected));
});

describe('prices beside other prices', () => {
  it.each(PRICES)('%s', (text, ...expected) => expect(asked(text)).toEqual(expected));
});

/** Sets of one make, weights of the lot in other words, lists of weight and count, stock. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { asked, goods, readText } from './goods.ts';

const COUNTS: readonly (readonly [string, ...string[]])[] = [
  ['Plates: 20 lb two, 10 lb four', '2 plate 20 lb | weight-count-list', '4 plate 10 lb | weight-count-list'],
  ['45 lb plates ..... 64 pcs', '64 plate 45 lb | weight-dash-count'],
  ['45 lb plates, 120 pcs. 25 lb plates, 80 pcs.', '120 plate 45 lb | weight-pieces', '80 plate 25 lb | weight-pieces'],
  ['4 pcs. 20 kg, 2 pcs. 15 kg discs', '4 plate 20 kg | count-weight', '2 plate 15 kg | count-weight'],
  ['4 ea. plate 10 kg', '4 plate 10 kg | count-noun-weight'],
  ['plates- 2-45 4-25', '2 plate 45 lb | dashed-chain', '4 plate 25 lb | dashed-chain'],
  ['plates 45-2 25-4', '2 plate 45 lb | dashed-chain', '4 plate 25 lb | dashed-chain'],
  ['2 (two) 45 lb plates', '2 plate 45 lb | count-weight'],
  ['two (2) 45 lb plates', '2 plate 45 lb | count-weight'],
  ['plates 2 at 20 lb', '2 plate 20 lb | count-dash-weight'],
  [
    '3 sets of bumpers. Each set: pair of 45s, pair of 25s',
    '6 bumper 45 lb | pair-of-per-set',
    '6 bumper 25 lb | pair-of-per-set',
  ],
  ['4 x 20 kg discs, true mass 19.9 / 20.1 / 20.3 kg', '4 plate 20 kg | count-times-weight'],
  ['4 x 45 lb plates. Minimum order 100 lb.', '4 plate 45 lb | count-times-weight'],
  ['4 x 45 lb plates. I used to pull 3 plates.', '4 plate 45 lb | count-times-weight'],
  ['Squat rack. The rack weighs 180 lb.', '1 rack 180 lb | bar-weight'],
  // A count of the next goods is none of the weight before it, and a score no plates.
  ['20 lb plate, two 10 lb plates', '1 plate 20 lb | one-weight', '2 plate 10 lb | count-weight'],
  ['4 x 45 lb plates. The board voted 5-2 against them.', '4 plate 45 lb | count-times-weight'],
];

const LATER: readonly (readonly [string, ...string[]])[] = [
  ['Flat bench\nTwo in stock.\n$75 each', '2 bench ? | noun'],
  ['Collars - $10 a pair, 4 pair', '8 collars ? | noun'],
  ['Flat bench. Two of them are torn.', '1 bench ? | noun'],
];

const TOTALS: readonly (readonly [string, string | null])[] = [
  ['Bar and 270 in plates', '270 lb <weight-in-goods>'],
  // Beside a rack it is what the plates weigh.
  ['Rack, bar and 270 in plates', null],
  ['Bar + 270 in plates = 315', '315 lb <total-sum>'],
  ['Plates and a bar, had them on the scale all together and it said 345', '345 lb <total-on-scale>'],
  ['4 x 45 lb plates, 80 in a rack', null],
  ['4 x 45 lb plates. My scale only goes to 345.', null],
];

describe('counts and weights of lots', () => {
  it.each([...COUNTS, ...LATER])('%s', (text, ...said) =>
    expect(goods(text).map((line) => line.split(' | ').slice(0, 2).join(' | '))).toEqual(said),
  );

  it.each(TOTALS)('%s', (text, said) => {
    const total = readText(text).statedTotal;
    expect(total ? `${total.value.value} ${total.value.unit} <${total.rule}>` : null).toBe(said);
  });
});

const PRICES: readonly (readonly [string, string])[] = [
  ['Squat rack, $400. Also have two 50 lb plates, $30 for both.', 'lot 430 USD'],
  ['3 sets of bumpers. Each set: pair of 45s. $260 per set', 'lot 780 USD'],
  ['350 for rack. 75 for the bar.', 'lot 425 USD'],
  ['45 lb plates x 4 $40 ea\nbar $100\ntakes all 200', 'lot 200 USD'],
  ['4 x 45 lb plates $190. Also: bookshelf $30, patio set $80.', 'lot 190 USD'],
  ['Each plate is $30. I have 4 45s.', 'each 120 USD'],
  ['Dumbbells: pair of 15s $20, pair of 25s $35', 'lot 55 USD'],
  ['4 x 45 lb plates $160. Delivery within 15 miles, $20.', 'lot 160 USD'],
  ['Dumbbells, pair of 50 lb, $100. Two 45 lb plates, $1/lb', 'per-pound 190 USD'],
];

describe('prices of lots', () => {
  it.each(PRICES)('%s', (text, said) => expect(asked(text)[0]?.split(' | ')[0]).toBe(said));
});

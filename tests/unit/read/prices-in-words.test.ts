/** Prices for what is left, worked out from a rate, by a rate or a size of some goods, and in words. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { asked } from './goods.ts';

it.each<[string, ...string[]]>([
  [
    '35s (2) $70\n25s (4) $100\n150 takes whats left',
    'lot 150 USD | price-for-all | 150',
    'plate-1 70 USD | price-sign-first | $70',
    'plate-2 100 USD | price-sign-first | $100',
  ],
  [
    'Olympic plates 4x45 $120, 2x25 $30. 130 takes the rest',
    'lot 130 USD | price-for-all | 130',
    'plate-1 120 USD | price-sign-first | $120',
    'plate-2 30 USD | price-sign-first | $30',
  ],
  [
    'Rack $200, bench $60, bar $50. All three 280',
    'lot 280 USD | price-for-all | 280',
    'rack-1 200 USD | price-sign-first | $200',
    'bench-1 60 USD | price-sign-first | $60',
    'bar-1 50 USD | price-sign-first | $50',
  ],
  [
    'Rack $200, bench $60. Both 240',
    'lot 240 USD | price-for-all | 240',
    'rack-1 200 USD | price-sign-first | $200',
    'bench-1 60 USD | price-sign-first | $60',
  ],
  ['two 45 lb plates, both 45', 'none'],
  [
    'weights n plates around 400lbs maybe more .. want 1 a lb so 400 .. come look',
    'per-pound 400 USD | price-worked-out | 400',
    'unit 1 USD | price-per-weight | 1',
  ],
  ['4x45 and 2x25 plates, $1 a lb, so 230.', 'per-pound 230 USD | price-worked-out | 230', 'unit 1 USD | price-sign-first | $1'],
  [
    'Olympic plates 6x45 2x35 $1.25/lb, comes to 425 and change, 420 is fine',
    'lot 420 USD | price-told | 420',
    'unit 1.25 USD | price-sign-first | $1.25',
  ],
  ["Rack, bar and 4x45. A hundred and fifty and it's yours", 'lot 150 USD | price-told | A hundred and fifty'],
  ['Olympic bar, sixty for it.', 'lot 60 USD | price-told | sixty'],
  ['Olympic bar and 4x45, a hundred and fifty takes it', 'lot 150 USD | price-before-terms | a hundred and fifty'],
  ['Olympic bar and 4x45, a hundred and fifty takes everything', 'lot 150 USD | price-for-all | a hundred and fifty'],
  ['4x20 kg Hantelscheiben, 80 reicht', 'lot 80 EUR | price-told | 80'],
  ['bar, 28 works for most people, 4x45 plates $200', 'lot 200 USD | price-sign-first | $200'],
  [
    'Langhantel 60 €, dazu 100 € für die Scheiben 4x20 kg',
    'lot 160 EUR | worked-out | ',
    'bar-1 60 EUR | price-sign-behind | 60 €',
    'plate-1 100 EUR | price-sign-behind | 100 €',
  ],
  [
    'Kurzhanteln 2x10 kg für 40 €, dazu Hantelbank 100 €',
    'lot 140 EUR | worked-out | ',
    'dumbbell-1 40 EUR | price-sign-behind | 40 €',
    'bench-1 100 EUR | price-sign-behind | 100 €',
  ],
  [
    'Olympic bar 20kg, calibrated plates 4x20 kg. All of it together is 266 something kilos if you do the math. Price is $650',
    'lot 650 USD | price-sign-first | $650',
  ],
  [
    "Iron plates for sale $260 (see edits)\nOriginally had 6 x 45 and 2 x 5.\nEDIT 3: the 5s sold too. New price for what's left is $200. Please stop asking if I'd take $100.",
    'lot 200 USD | price-sign-first | $200',
    'former 260 USD | price-sign-first | $260',
  ],
  [
    'Plates 4x45 $150. New price $300 in stores',
    'lot 150 USD | price-sign-first | $150',
    'former 300 USD | price-sign-first | $300',
  ],
  ['set of 45s and a set of 35s, olympic. 160 total.', 'none'],
  [
    '4x45 plates, between 100 and 120 dollars',
    'range 100 USD | price-sign-behind | 100 and 120 dollars',
    'high 120 USD | price-sign-behind | 100 and 120 dollars',
  ],
  [
    'Selling 6 x 45 olympic plates, deep dish old style, and 2 x 100s. $1.50 per lb for the deep dish, the hundreds are $130 for the two.',
    'lot 535 USD | worked-out | ',
    'plate-1 405 USD | price-sign-first | $1.50',
    'plate-2 130 USD | price-sign-first | $130',
  ],
  [
    '6 x 45 lb plates and 2 x 100 lb plates. 45s are $50 each, the hundreds are $150 for both.',
    'lot 450 USD | worked-out | ',
    'plate-1 300 USD | price-sign-first | $50',
    'plate-2 150 USD | price-sign-first | $150',
  ],
  [
    '4x45, 2x25 lb plates. 25s are $40. The 45s are $1 a pound.',
    'lot 220 USD | worked-out | ',
    'plate-1 180 USD | price-sign-first | $1',
    'plate-2 40 USD | price-sign-first | $40',
  ],
  [
    'Plates 4x45 2x35 2x10. $1/lb for the 45s, $1.50/lb for the rest.',
    'lot 315 USD | worked-out | ',
    'plate-1 180 USD | price-sign-first | $1',
    'plate-2 105 USD | price-sign-first | $1.50',
    'plate-3 30 USD | price-sign-first | $1.50',
  ],
  [
    'Half rack, 4x45 plates. Rack $300, plates $1 a pound, $450 for everything.',
    'lot 450 USD | price-sign-first | $450',
    'rack-1 300 USD | price-sign-first | $300',
  ],
])('%s', (text, ...said) => expect(asked(text)).toEqual(said));

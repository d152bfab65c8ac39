/** Money that the seller does not ask, prices for goods taken together, and ranges for all. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { asked } from './goods.ts';

it.each<[string, ...string[]]>([
  ["4x45 plates $200. Please stop asking if I'd take $100.", 'lot 200 USD | price-sign-first | $200'],
  [
    'Weight bench $50, plates 4x45 $100, dont come at me with 10 bucks for the bench',
    'lot 150 USD | worked-out | ',
    'bench-1 50 USD | price-sign-first | $50',
    'plate-1 100 USD | price-sign-first | $100',
  ],
  [
    'Olympic bar, someone offered me $80 and I said no. $120 firm.',
    'lot 120 USD | price-sign-first | $120',
    'firm | firm | firm',
  ],
  ["2x45 lb plates. Won't take less than $60.", 'lot 60 USD | price-sign-first | $60', "firm | firm | Won't take less"],
  [
    "Two 55 lb bumpers. Price is for both, $60. New they're like 130 each.",
    'lot 60 USD | price-sign-first | $60',
    'former 130 USD | price-per-piece | 130',
  ],
  [
    '4x45 lb plates, these are $400 new. Brand new these are around $300 in stores. Asking $150',
    'lot 150 USD | price-sign-first | $150',
    'former 400 USD | price-sign-first | $400',
    'former 300 USD | price-sign-first | $300',
  ],
  [
    'Competition bumpers 2x20kg - retail over $900, asking $525\nI saw the same ones today for $949 plus $110 freight, so at 525 somebody is getting a deal',
    'lot 525 USD | price-sign-first | $525',
    'former 900 USD | price-sign-first | $900',
    'delivery 110 USD | price-sign-first | $110',
  ],
  [
    "Olympic plates 4x45. I've seen these go for over $2 a pound, I want $1/lb",
    'per-pound 180 USD | price-sign-first | $1',
    'unit 1 USD | price-sign-first | $1',
  ],
  ["Olympic plates 4x45. Others are asking $300 so I'm asking $200", 'lot 200 USD | price-sign-first | $200'],
  [
    "Rack, bench and 4x45 plates. If you want everything in the shop it's $600 even. The rack is $200.",
    'lot 600 USD | price-sign-first | $600',
    'rack-1 200 USD | price-sign-first | $200',
  ],
  [
    'Half rack $250, bench $100, together $325.',
    'lot 325 USD | price-sign-first | $325',
    'rack-1 250 USD | price-sign-first | $250',
    'bench-1 100 USD | price-sign-first | $100',
  ],
  ['Two 45s and two 25s plates, $95 together', 'lot 95 USD | price-sign-first | $95'],
  [
    'bench 60 dollars, bar $50, both together: $100',
    'lot 100 USD | price-sign-first | $100',
    'bench-1 60 USD | price-sign-behind | 60 dollars',
    'bar-1 50 USD | price-sign-first | $50',
  ],
  [
    'Eight 10 lb bumpers looking for $70-80 for the bunch',
    'range 70 USD | price-sign-first | $70-80',
    'high 80 USD | price-sign-first | $70-80',
  ],
  [
    'Eight 10 lb bumpers, all for 70 to 80 dollars',
    'range 70 USD | price-sign-behind | 70 to 80 dollars',
    'high 80 USD | price-sign-behind | 70 to 80 dollars',
  ],
  [
    'MSRP $239 per pair (45 lb), $129 per pair (25 lb). I have 1 pair of the 45s and 1 pair of the 25s bumpers. $220 for both pairs',
    'lot 220 USD | price-sign-first | $220',
    'former 239 USD | price-sign-first | $239',
    'former 129 USD | price-sign-first | $129',
  ],
  [
    '45 lb plates $60 a pair, 35 lb plates $45 a pair. Were $80 a pair in the store.',
    'lot 105 USD | worked-out | ',
    'former 80 USD | price-sign-first | $80',
    'plate-1 60 USD | price-sign-first | $60',
    'plate-2 45 USD | price-sign-first | $45',
  ],
  [
    'Hantelscheiben 4x20 kg, 100 €. Angebote unter 50 € werden ignoriert',
    'lot 100 EUR | price-sign-behind | 100 €',
    'open to offers | open-to-offers | Angebote',
  ],
])('%s', (text, ...said) => expect(asked(text)).toEqual(said));

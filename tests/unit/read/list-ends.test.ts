/** Bare numbers at the ends of lists and rows that are prices, also beside signed ones, and those that are none. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { asked } from './goods.ts';

it.each<[string, ...string[]]>([
  [
    'Moving sale\nAdjustable bench 80\nEZ curl bar 40\n2x45 2x25 olympic plates 120 for those\nBox fan 10\nAll USD',
    'lot 250 USD | worked-out | ',
    'bench-1 80 USD | price-at-line-end | 80',
    'curl-bar-1 40 USD | price-at-line-end | 40',
  ],
  [
    'Squat rack 200\nBench (adjustable, small tear) 80\nBar, olympic 7ft, 70\n4 x 45 plates 160\nplate tree 30',
    'lot 540 USD | worked-out | ',
    'rack-1 200 USD | price-of-goods | 200',
    'bench-1 80 USD | price-at-line-end | 80',
    'bar-1 70 USD | price-at-line-end | 70',
    'plate-1 160 USD | price-at-line-end | 160',
    'storage-1 30 USD | price-at-line-end | 30',
  ],
  [
    '$475 for everything, or:\nbumpers + bar + collars 350\nsquat rack 80\ndumbbells 60',
    'lot 475 USD | price-sign-first | $475',
    'rack-1 80 USD | price-at-line-end | 80',
    'dumbbell-1 60 USD | price-at-line-end | 60',
  ],
  [
    'Platform 150 bench 60 collars 15 or everything for $200',
    'lot 200 USD | price-sign-first | $200',
    'bench-1 60 USD | price-at-line-end | 60',
    'collars-1 15 USD | price-at-line-end | 15',
  ],
  [
    'Rack and bench. $325 for both or separately: rack 250, bench 100',
    'lot 325 USD | price-sign-first | $325',
    'rack-1 250 USD | price-at-line-end | 250',
    'bench-1 100 USD | price-at-line-end | 100',
  ],
  [
    'Rack, bench, 4x45 plates: 400 for all. rack 200 / bench 100 / plates 150',
    'lot 400 USD | price-for-all | 400',
    'rack-1 200 USD | price-at-line-end | 200',
    'bench-1 100 USD | price-at-line-end | 100',
    'plate-1 150 USD | price-at-line-end | 150',
  ],
  [
    '$900 total for the iron\n45 lb plates - 24\n25 lb plates - 16\n10 lb plates - 40\nBench - 4',
    'lot 900 USD | price-sign-first | $900',
  ],
  [
    'Pair of 45s 80, pair of 25s 40, pair of 10s 15, all for $120',
    'lot 120 USD | price-sign-first | $120',
    'plate-1 80 USD | price-at-line-end | 80',
    'plate-2 40 USD | price-at-line-end | 40',
    'plate-3 15 USD | price-at-line-end | 15',
  ],
  [
    'pair of 45s 80, 10s 15, all for 90',
    'lot 90 USD | price-told | 90',
    'plate-1 80 USD | price-at-line-end | 80',
    'plate-2 15 USD | price-at-line-end | 15',
  ],
  ['Gym stuff, $500 takes it\nBar 45\nPlates 45 35 25\nBench 4', 'lot 500 USD | price-sign-first | $500'],
  [
    'Rack $200\nBench $80\nOlympic bar, some rust 60\nEZ bar $30',
    'lot 370 USD | worked-out | ',
    'rack-1 200 USD | price-sign-first | $200',
    'bench-1 80 USD | price-sign-first | $80',
    'bar-1 60 USD | price-at-line-end | 60',
    'curl-bar-1 30 USD | price-sign-first | $30',
  ],
  [
    'Hantelbank 60\nLanghantel 7 kg 35\nKurzhanteln 2x10 kg 40\nAlles zusammen 120 €',
    'lot 120 EUR | price-sign-behind | 120 €',
    'bench-1 60 EUR | price-at-line-end | 60',
    'bar-1 35 EUR | price-at-line-end | 35',
    'dumbbell-1 40 EUR | price-at-line-end | 40',
  ],
  [
    'Hantelbank und Rack, zusammen 200 €, einzeln: Bank 60, Rack 160',
    'lot 200 EUR | price-sign-behind | 200 €',
    'bench-1 60 EUR | price-at-line-end | 60',
    'rack-1 160 EUR | price-at-line-end | 160',
  ],
  ['Bench 60, flat. Rack 84 tall. $300 for all', 'lot 300 USD | price-sign-first | $300', 'bench-1 60 USD | price-of-goods | 60'],
  [
    'Olympic plates\n45 - 6\n35 - 2\n25 - 4\n$1.25/lb',
    'per-pound 550 USD | price-sign-first | $1.25',
    'unit 1.25 USD | price-sign-first | $1.25',
  ],
  ['Power rack 90 inches, bench 17 high. $400 for everything', 'lot 400 USD | price-sign-first | $400'],
  [
    "Rack is 200. Bench is 50 more. Bar's another hundred.",
    'lot 350 USD | worked-out | ',
    'rack-1 200 USD | price-of-goods | 200',
    'bench-1 50 USD | price-of-goods | 50',
    'bar-1 100 USD | price-in-words | hundred',
  ],
  ['Dumbbells 20, 25, 30 and 35. $100 for all', 'lot 100 USD | price-sign-first | $100'],
  [
    '15 kettlebells 12kg .......... $20 ea\n6 barbells 15kg ................ $90 ea\nMirrors 4x6 (3) ................ $50 ea',
    'lot 990 USD | worked-out | ',
    'kettlebell-1 300 USD | price-sign-first | $20',
    'bar-1 540 USD | price-sign-first | $90',
  ],
  [
    'Puzzle mats red/blue, 64 pcs, $6 each\nOne squat rack $350\nMedicine balls, 4, $10 each\nMirrors, six panels, $50 each',
    'lot 690 USD | worked-out | ',
  ],
  [
    'Bumpers: pair of 45s 130, pair of 35s 105, two pairs of 25s 75 a pair, pair of 10s 35. Take the whole gym for 350 dollars',
    'lot 350 USD | price-sign-behind | 350 dollars',
    'bumper-1 130 USD | price-at-line-end | 130',
    'bumper-2 105 USD | price-at-line-end | 105',
    'bumper-3 150 USD | price-per-piece | 75',
    'bumper-4 35 USD | price-at-line-end | 35',
  ],
  [
    'Fan 10\nBox fan 15\nAdjustable bench 80\nSquat rack 150\nRug 5x7 25\nAll prices USD',
    'lot 270 USD | worked-out | ',
    'bench-1 80 USD | price-at-line-end | 80',
    'rack-1 150 USD | price-at-line-end | 150',
  ],
])('%s', (text, ...said) => expect(asked(text)).toEqual(said));

/** Pieces told in a sentence behind the weight. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { offer } from './goods.ts';

const counted = (text: string): string => offer(text).split(' | ')[1] ?? '';

it.each([
  ["plates: 45's there are 8, 25's there are 4. olympic", '8 plate 45 lb, 4 plate 25 lb'],
  [
    'olympic plates. 45s, I have 3. 35s - two - $30 each. 10s - four - $10 each',
    '3 plate 45 lb, 2 plate 35 lb =60, 4 plate 10 lb =40',
  ],
  [
    'barbell and plates: 4 of the 45, 2 of the 35, then 10s there is 6 of those and 5s 2.',
    '1 bar, 4 plate 45 lb, 2 plate 35 lb, 6 plate 10 lb, 2 plate 5 lb',
  ],
  ["olympic plates. 45s I've got four of, 25s I have a pair of", '4 plate 45 lb, 2 plate 25 lb'],
  ['olympic plates. 45 lb - there are four, 25 lb - there are two', '4 plate 45 lb, 2 plate 25 lb'],
  ['Hantelscheiben 50 mm: 20er sind es 4, 10er habe ich 2, 5er gibt es 4', '4 plate 20 kg, 2 plate 10 kg, 4 plate 5 kg'],
])('%s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['olympic bar and 45s, I have 2 kids', '1 bar, ? plate 45 lb'],
  ['I have 45s, 25s, 10s. olympic plates', '? plate 45 lb, ? plate 25 lb, ? plate 10 lb'],
  ['one of the 45 lb plates is cracked. olympic plates 4x45', '4 plate 45 lb'],
  ['olympic plates: 45s, 25s, 10s', '? plate 45 lb, ? plate 25 lb, ? plate 10 lb'],
])('no count: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['coloured bumper plates: 2 reds (25 kg), 2 blues (20 kg)', '2 bumper 25 kg, 2 bumper 20 kg'],
  ['Hantelscheiben: 2 rote (25 kg), 4 schwarze (5 kg)', '2 plate 25 kg, 4 plate 5 kg'],
  ['olympic (2 inch): 45 lb (2), 25 lb (4) plates', '2 plate 45 lb, 4 plate 25 lb'],
  ['olympic plates: two little 1 1/4s and four rusty 45s', '4 plate 45 lb, 2 micro 1.25 lb'],
  ['Qty 22 - 45 lb iron plate\nQty 8 - barbell, 7 ft\nQty 4 - flat bench', '22 plate 45 lb, 8 bar, 4 bench'],
  ['Olympic barbells, 7 ft, quantity 8. Hex bars, quantity 2.', '8 bar, 2 hex-bar'],
])('in brackets and by quantity: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['Lifting platform 8x8, bumper plates 2x45', '1 other, 2 bumper 45 lb'],
  ['Squat rack, plates 2x45 4x25. Mirrors, 4x8, six panels', '1 rack, 2 plate 45 lb, 4 plate 25 lb, ? other'],
  ['Power Rack, 60x60 Profil. Scheiben 2x10 kg', '1 rack, 2 plate 10 kg'],
  ['Half rack, 3x3 uprights, 4x45 plates', '1 rack, 4 plate 45 lb'],
  // Goods by weight have sizes of their own.
  ['hex dumbbells: 4x8, 4x12', '4 dumbbell 8 lb, 4 dumbbell 12 lb'],
])('two sides are no count: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  [
    '3 bars, take your pick\n1 - 45 lb olympic 7 ft. $30\n2 - 35 lb womens bar. $95\n3 - tricep bar $25',
    '1 bar 45 lb =30, 1 bar 35 lb =95, 1 other =25',
  ],
  ["I've got 3 bars. 1) 7' oly, slight bend. 2) 5' oly, straight. 3) 6' standard.", '1 bar, 1 bar, 1 bar'],
  ['Two barbells\n#1 beater bar, 45 lb: $75\n#2 multi bar, 45 lb: $120', '1 bar 45 lb =75, 1 bar 45 lb =120'],
  ['Zwei Langhanteln\n1. 20 kg, verbogen 40 €\n2. 15 kg, gerade 60 €', '1 bar 20 kg =40, 1 bar 15 kg =60'],
  ['Two benches\n1 - flat bench, torn. $20\n2 - incline bench. $60', '1 bench =20, 1 bench =60'],
  // Without the sum they count.
  ['Plates for sale\n1 - 45 lb\n2 - 35 lb\n3 - 25 lb', '1 plate 45 lb, 2 plate 35 lb, 3 plate 25 lb'],
])('lines with numbers under their sum: %s', (text, goods) => expect(counted(text)).toBe(goods));

/** Numbered inventories, context that is no goods, pairs on hand, stations, pieces lost. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { offer } from './goods.ts';

it.each([
  [
    'Home gym\n1) Half rack\n2) Olympic bar, 20 kg\n3) Flat bench\n4) Spring collars, 1 pair\n$500',
    '500 lot | 1 rack, 1 bar 20 kg, 1 bench, 2 collars',
  ],
  ['Home gym\n1. Half rack\n2. Olympic bar, 45 lb\n3. Flat bench\n$500', '500 lot | 1 rack, 1 bar 45 lb, 1 bench'],
  ['Garage gym, $500: 1) power rack, 2) olympic barbell, 3) flat bench', '500 lot | 1 rack, 1 bar, 1 bench'],
  ['Olympic plates\n1) 4x45\n2) 2x25\n3) 2x10\n$200', '200 lot | 4 plate 45 lb, 2 plate 25 lb, 2 plate 10 lb'],
  ['Hanteltraining\n1. Langhantel 20 kg\n2. Hantelbank\n3. Power Rack\n150 €', '150 lot | 1 bar 20 kg, 1 bench, 1 rack'],
  ['Olympic plates\n2) 45 lb\n2) 25 lb\n4) 10 lb\n$120', '120 lot | 2 plate 45 lb, 2 plate 25 lb, 4 plate 10 lb'],
  ['Olympic plates\n(4) 45 lb\n(2) 25 lb\n$120', '120 lot | 4 plate 45 lb, 2 plate 25 lb'],
])('%#: ordinals are no counts', (text, said) => expect(offer(text)).toBe(said));

it.each([
  [
    'FS: plates\nDowngrading? No, downsizing to just dumbbells.\n\n(4) 45 lb - $240\n(2) 25 lb - $75',
    '315 lot | 4 plate 45 lb =240, 2 plate 25 lb =75',
  ],
  ['Olympic plates\nSwitching to kettlebells and dumbbells.\n4x45 lb\n2x25 lb\n$200', '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['Olympic bar 45 lb, chipped where it hits the rack. $100', '100 lot | 1 bar 45 lb'],
  ['Steel plates: four 45s, two 25s. They go on the thick kind of bar. $150', '150 lot | 4 plate 45 lb, 2 plate 25 lb'],
  ['Olympic plates 4x45. Bench press PRs guaranteed. $150', '150 lot | 4 plate 45 lb'],
  ['3 tier dumbbell rack, holds 10 pairs. No dumbbells, just the rack. $90', '90 lot | 1 storage'],
  ['Dumbbell rack and a power rack. The rack is bolted. $300', '300 lot | 1 storage, 1 rack'],
  ["Short olympic bar, 5', 30#. Holds the big hole plates. $65", '65 lot | 1 bar 30 lb'],
  ['Olympic plates 4x45, switched to a new gym. Weight bench too. $150', '150 lot | 4 plate 45 lb, 1 bench'],
])('%#: context is no goods', (text, said) => expect(offer(text)).toBe(said));

it.each([
  ['35 lb olympic plates, $55/pair, have 5 pair', '275 pair of 55 | 10 plate 35 lb'],
  ['35 lb olympic plates, $55/pair, five pair on hand', '275 pair of 55 | 10 plate 35 lb'],
  ['Olympic plates: I have 2 pair 45 lb and 1 pair 25 lb. $200', '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
])('%#: pairs on hand', (text, said) => expect(offer(text)).toBe(said));

it.each([
  [
    'kettlebells 53/35/26 and a pair of 15 lb bumpers $140',
    '140 lot | 1 kettlebell 53 lb, 1 kettlebell 35 lb, 1 kettlebell 26 lb, 2 bumper 15 lb',
  ],
  ['Kettlebells 16/20/24 kg, $150', '150 lot | 1 kettlebell 16 kg, 1 kettlebell 20 kg, 1 kettlebell 24 kg'],
])('%#: sizes with slashes behind kettlebells', (text, said) => expect(offer(text)).toBe(said));

it.each([
  ['Hantelscheiben, es sind 2 Stück mit 15 kg, 6 Stück mit 5 kg. 25 €', '25 lot | 2 plate 15 kg, 6 plate 5 kg'],
  ['Hantelscheiben 15 kg 2 Stück mit Hantelstange, 50 €', '50 lot | 2 plate 15 kg, 1 bar'],
  ['Hantelscheiben 4x 5 kg, 8x 2,5 kg.\nEine 5er hat einen Riss. 10 €', '10 lot | 4 plate 5 kg, 8 plate 2.5 kg'],
])('%#: German pieces', (text, said) => expect(offer(text)).toBe(said));

it.each([
  [
    '160 lb weight set. Originally 160 lb but a 10 got lost. What I count today: 4x25, 3x10, 4x5. $35',
    '35 lot | 4 plate 25 lb, 3 plate 10 lb, 4 plate 5 lb',
  ],
  ['Some odd 1.25 kg plates, standard. Four of the 1.25s I think. £5', '5 lot | 4 plate 1.25 kg'],
  ['Bumpers 4x10 lb, 2x25 lb.\nTwo 10s are cracked. $90', '90 lot | 4 bumper 10 lb, 2 bumper 25 lb'],
  ['Olympic plates 4x45 lb.\nTwo 45s, new. $90', '90 lot | 2 plate 45 lb'],
])('%#: what is there today', (text, said) => expect(offer(text)).toBe(said));

it.each([
  [
    'Four identical stations, $700 per station. Each station = 1 squat rack, 1 20 kg bar, 1 pair each of 45/25 lb bumpers.',
    '2800 lot | 4 rack, 4 bar 20 kg, 8 bumper 45 lb, 8 bumper 25 lb',
  ],
  [
    'Three stations for sale, each station has a squat rack and a barbell and 2x45 lb plates. $900',
    '900 lot | 3 rack, 3 bar, 6 plate 45 lb',
  ],
  ['Squat rack and barbell from a radio station, 2x45 lb plates. $300', '300 lot | 1 rack, 1 bar, 2 plate 45 lb'],
])('%#: stations', (text, said) => expect(offer(text)).toBe(said));

it('multiplies what each station holds, and keeps what is said of a few of them apart', () => {
  const text =
    'Four identical stations, $2800.\nEach station = 1 squat rack, 1 pair each of 25/10 lb bumpers. Two bumpers (both 10s) are cracked.';
  expect(offer(text)).toBe('2800 lot | 4 rack, 8 bumper 25 lb, 8 bumper 10 lb');
});

it.each([
  ['barbell 50', '50 lot | 1 bar'],
  ['Olympic barbell 45', '? none | 1 bar 45 lb'],
  ['squat rack 150\ncome get it', '150 lot | 1 rack'],
  [
    'Rack $350. Bench, make me an offer. Bumpers: pair of 45s $130, pair of 25s $75.',
    '? lot | 1 rack =350, 1 bench, 2 bumper 45 lb =130, 2 bumper 25 lb =75',
  ],
  [
    'Hantelscheiben 40 kg\n4x 5 kg, 8x 2,5 kg. Für 30er Stangen. Eine 5er hat einen Riss. 10 €',
    '10 lot | 4 plate 5 kg, 8 plate 2.5 kg',
  ],
  ['Hantelscheiben 4x 5 kg. Für die Hantelstange 20 €', '20 lot | 4 plate 5 kg, 1 bar'],
  ['Hantelbank + Kniebeugenständer (2 einzelne) + 120 kg Scheiben, 150 €', '150 lot | 1 bench, 2 stands, ? plate (120 kg)'],
])('%#: %s', (text, said) => expect(offer(text)).toBe(said));

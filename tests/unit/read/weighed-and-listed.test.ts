/** What a piece weighed on a scale, sizes told again for bars, parts of other goods, runs of dumbbells. Forms that sellers write: common practice, no source. */
import { expect, it } from 'vitest';
import { offer } from './goods.ts';

const counted = (text: string): string => offer(text).split(' | ')[1] ?? '';

it.each([
  [
    'Six 45 lb iron plates. On a bench scale: 44.2, 44.8, 45.1, 45.3, 45.9, 46.0 lb. Also two 25 lb',
    '6 plate 45 lb, 2 plate 25 lb',
  ],
  ['2 x 45 lb olympic plates. I weighed one of the 45s and it was 43.8 lb fyi', '2 plate 45 lb'],
  ['20 kg weightlifting bar, 28 mm. Actual mass 19.96 kg. $310', '1 bar 20 kg'],
  ['4 x 20 kg Hantelscheiben, eine habe ich gewogen: 19,7 kg', '4 plate 20 kg'],
])('on the scale: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['4 x 45 lb olympic plates and 2 x 35 lb', '4 plate 45 lb, 2 plate 35 lb'],
  ['2 x 10 kg bumper plates and some 11 kg ones', '2 bumper 10 kg, ? bumper 11 kg'],
  ['olympic plates: 45s, 44 lb, 35s', '? plate 45 lb, ? plate 44 lb, ? plate 35 lb'],
])('sizes of their own: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  [
    'Ten 20 kg bars and six 15 kg bars.\nTwenties are $90 each, fifteens are $75 each, two of the 20s are slightly bent',
    '10 bar 20 kg =900, 6 bar 15 kg =450',
  ],
  // One bar is not told by its weight: these are plates.
  ['45 lb bar and four 45s, two of the 45s are chipped', '1 bar 45 lb, 4 plate 45 lb'],
])('bars by their size: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['Weights. There are four of the big ones, they say 45 on them, and two that say 35.', '4 plate 45 lb, 2 plate 35 lb'],
  ['It is a barbell, he calls it a power bar, it says 45 on the end.', '1 bar 45 lb'],
  ['olympic bar plus 3 forty fives per side, plus the bar which is 45', '1 bar 45 lb, 6 plate 45 lb'],
  ['Hantelstange. Gewicht keine Ahnung, meine Badezimmerwaage sagt 19.', '1 bar 19 kg'],
  ['Home made axle, 1.9 inch OD pipe, 25ish lb', '1 bar 25 lb'],
])('what they say: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  [
    "Adjustable dumbbells: two short handles with the star nuts, and the weights that go on: four 5's, four 2 1/2's, and two 10's",
    '4 plate 5 lb, 4 plate 2.5 lb, 2 plate 10 lb',
  ],
  ['Weight bench w/ rack attached to it, heavy duty', '1 bench'],
  ['Weight bench and a rack, heavy duty', '1 bench, 1 rack'],
  ['Kniebeugenständer (Half Rack) 180 €', '1 rack'],
  ['Squat rack and two benches. One bench like new, the other has a cracked leg', '1 rack, 2 bench'],
  ['- Power rack, 11 gauge\n- Bench\nThe rack I paid 700 for by itself.', '1 rack, 1 bench'],
  ['SZ-Stange 120 cm, Langhantel 180 cm, jeweils mit Sternverschlüssen (4 Stk.)', '1 curl-bar, 1 bar, 4 collars'],
  ['Half rack $200\n35 lb kettlebell, 40', '1 rack, 1 kettlebell 35 lb'],
])('parts and the same again: %s', (text, goods) => expect(counted(text)).toBe(goods));

it.each([
  ['dumbbells, a run in fives, pair of each, 5 thru 15', '2 dumbbell 5 lb, 2 dumbbell 10 lb, 2 dumbbell 15 lb'],
  ['DBs, pair prices: 15s $25, 25s $40', '2 dumbbell 15 lb =25, 2 dumbbell 25 lb =40'],
  ['bumper plates (45s and 35s pairs)', '2 bumper 45 lb, 2 bumper 35 lb'],
  ['weights: 6 pcs 11 lb, 4 pcs 5.5 lb, 2 pcs 8.8', '6 plate 11 lb, 4 plate 5.5 lb, 2 plate 8.8 lb'],
  // A range and a step apart are no run.
  ['dumbbells 5-50', '? dumbbell'],
])('runs and pairs: %s', (text, goods) => expect(counted(text)).toBe(goods));

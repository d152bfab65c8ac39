/** Counts, weights and kinds in orders and words that the notations had not met. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer } from './goods.ts';

const goods = (text: string): string => offer(text).replace(/^.*? \| /, '');

describe('counts and weights', () => {
  it.each([
    ['a stack of 10s, I counted five, and a pair of 45s, olympic plates', '5 plate 10 lb, 2 plate 45 lb'],
    ['Olympic plates. 45s: four. 10s: about six.', '4 plate 45 lb, 6 plate 10 lb'],
    ['KETTLEBELLS\n35 x6\n53 x10\n70 x3', '6 kettlebell 35 lb, 10 kettlebell 53 lb, 3 kettlebell 70 lb'],
    ['12 mens, 20kg, 28mm – $150 ea, olympic barbells', '12 bar 20 kg'],
    ['Barbells: 3 men’s 20kg, 2 women’s 15kg', '3 bar 20 kg, 2 bar 15 kg'],
    ['Old weights: four 1 stone discs (14lb), two half stone (7lb), bar', '4 plate 14 lb, 2 plate 7 lb, 1 bar'],
    ['45lb*4, 35lb*2 olympic plates', '4 plate 45 lb, 2 plate 35 lb'],
    ['Four off 20kg olympic discs, two off 10kg', '4 plate 20 kg, 2 plate 10 kg'],
    ['2 nr 20kg discs & 4 nr 10kg discs olympic', '2 plate 20 kg, 4 plate 10 kg'],
    ["weights: four forty-five's, two twenty-five's, olympic", '4 plate 45 lb, 2 plate 25 lb'],
    ['About 160 lb mixed standard (1" hole) plates', '? plate (160 lb)'],
    ['two identical sets. Each set: 45 lb olympic bar, 2x45, 2x25.', '2 bar 45 lb, 4 plate 45 lb, 4 plate 25 lb'],
  ])('%s', (text, wanted) => expect(goods(text)).toBe(wanted));

  it.each([
    ['olympic barbell, 20kg. Won it at a comp, have three already.', '1 bar 20 kg'],
    ['olympic bar 45 lb. I own two others.', '1 bar 45 lb'],
    ['3 tier dumbbell rack, holds about 10 pairs. $75', '1 storage'],
    ['weight tree, holds up to 10 plates. 4x45 olympic', '1 storage, 4 plate 45 lb'],
    ['dumbbell rack, room for 12 pairs, with 2 pairs of 25s', '1 storage, 4 dumbbell 25 lb'],
    ['20% off, 4x45 olympic plates', '4 plate 45 lb'],
    ['ez bar, one of the spin lock collars is cracked', '1 curl-bar, 2 collars'],
    ['selling one of the bars, olympic', '1 bar'],
  ])('%s', (text, wanted) => expect(goods(text)).toBe(wanted));
});

describe('series', () => {
  const pairs = (...weights: number[]): string => weights.map((weight) => `2 dumbbell ${weight} lb`).join(', ');
  it.each([
    ['dumbbells 5 through 20 in 5 lb steps, one pair each (8 dumbbells)', pairs(5, 10, 15, 20)],
    ['dumbbells, pairs from 10 to 30 lb in 5s', pairs(10, 15, 20, 25, 30)],
    ['dumbbells, pairs, 5 to 25 lb every 5 lb', pairs(5, 10, 15, 20, 25)],
    ['dumbbells 5-20 lb, one pair of each, 5 lb increments', pairs(5, 10, 15, 20)],
    ['hex dumbbells: 5s 10s 15s all pairs $200', pairs(5, 10, 15)],
    ['vertical dumbbell tree with 3 pairs: 5,8,10', `1 storage, ${pairs(5, 8, 10)}`],
  ])('%s', (text, wanted) => expect(goods(text)).toBe(wanted));
});

describe('kinds', () => {
  it.each([
    ['two 45 lb Oakforge plates, olympic', '2 plate 45 lb'],
    ['45 lb Oakforge plates, pair, olympic', '2 plate 45 lb'],
    ['4 Oakforge 45 lb plates olympic', '4 plate 45 lb'],
    ['Bumpers and iron\n20kg bumpers x 4\n10kg iron x 4', '4 bumper 20 kg, 4 plate 10 kg'],
    ['10 lb technique plates, pair, full diameter, 2" hole. olympic bar', '2 bumper 10 lb, 1 bar'],
    ['2.5 kg technique plates, pair, olympic bar', '2 plate 2.5 kg, 1 bar'],
    ['olympic bar 2 5s 2 2.5s clips and a rack to hang them on', '1 bar, 2 plate 5 lb, 2 plate 2.5 lb, 2 collars, 1 storage'],
    ["4 45's 2 25's 4 10's olympic bar", '4 plate 45 lb, 2 plate 25 lb, 4 plate 10 lb, 1 bar'],
    ['bar 2 5 lb collars 2 45s olympic', '1 bar, 2 collars 5 lb, 2 plate 45 lb'],
    ['Kurzhanteln Hex gummiert\n10 kg Paar\n15 kg Paar', '2 dumbbell 10 kg, 2 dumbbell 15 kg'],
    ['4x20kg plates to suit olympic bar', '4 plate 20 kg'],
    ['Scheiben 4 x 10 kg für 30er Stange', '4 plate 10 kg'],
    ['squat rack, takes standard or olympic plates', '1 rack'],
    ['Squat rack with 2 inch tubing, no plates needed. $200', '1 rack'],
    ['plate loaded lat pulldown. Lat bar and short bar included. Squat rack', '1 rack'],
  ])('%s', (text, wanted) =>
    expect(
      goods(text)
        .split(', ')
        .filter((line) => !line.includes('other'))
        .join(', '),
    ).toBe(wanted),
  );
});

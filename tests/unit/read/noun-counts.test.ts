/** Pieces told behind a noun, with other words between, and goods that are only spoken of. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

const lines = (text: string): string[] => goods(text).map((line) => line.split(' | ').slice(0, 2).join(' | '));

describe('noun-counts.ts', () => {
  it.each([
    ['Flat bench x 4 - £60 each\nHalf rack x 3 - £450 each', ['4 bench ? | noun', '3 rack ? | noun']],
    ['Oly bars, 7ft 45 lb, 6 of them, all straight - $75 each', ['6 bar 45 lb | weight-alone']],
    ['Ladies bar 15kg, 25mm shaft x 2 - £80 each', ['2 bar 15 kg | bar-weight']],
    ['Power racks, bolted, 4 available - $350 each', ['4 rack ? | noun']],
    ['BENCH X2 40 EACH. BAR X3 50 EACH', ['2 bench ? | noun', '3 bar ? | noun']],
    // A size, a price, and plates behind a bar.
    ['Power rack 48 x 48 x 84 $300', ['1 rack ? | noun']],
    ['Squat rack, 4 ft x 4 ft, $300', ['1 rack ? | noun']],
    [
      'Barbell, 45 lb x 4, 25 lb x 2. $200',
      ['1 bar ? | noun', '4 plate 45 lb | weight-times-count', '2 plate 25 lb | weight-times-count'],
    ],
  ])('%s', (text, said) => expect(lines(text)).toEqual(said));
});

describe('goods that are only spoken of', () => {
  it.each([
    ['4 x 45 lb olympic plates $160. They fit on most bars.', ['4 plate 45 lb | count-times-weight']],
    ['Pair of 45 lb bumpers $100, you will need your own bar', ['2 bumper 45 lb | pair-of']],
    ['Power rack $300. Trades considered: heavy dumbbells, an adjustable bench.', ['1 rack ? | noun']],
    ['Trade only. I have 4 x 25 lb plates, I want 2 x 45 bumpers.', ['4 plate 25 lb | count-times-weight']],
    ['Barbell 45 lb $100. See our other listings for racks and benches.', ['1 bar 45 lb | bar-weight']],
    ['Bench $60. Has uprights to hold a barbell.', ['1 bench ? | noun']],
    ['Wall mount rack, $200\nRack is already off the wall.', ['1 rack ? | noun']],
    ['Flat bench $40\nRack $200\nOther rack $150', ['1 bench ? | noun', '1 rack ? | noun', '1 rack ? | noun']],
    ['Olympic bar and the clips that go on the end, $60', ['1 bar ? | noun', '2 collars ? | noun']],
    ['EZ bar 1" chrome, one threaded nut gone. $15', ['1 curl-bar ? | noun']],
    ['EZ bar 1" chrome, gone. Bench $15', ['1 bench ? | noun']],
    ['Metal bar, zig zag in the middle, $15, and 4x10 lb plates', ['1 curl-bar ? | noun', '4 plate 10 lb | count-times-weight']],
  ])('%s', (text, said) => expect(lines(text)).toEqual(said));
});

describe('told by what is read on them, in sets and runs', () => {
  it.each([
    [
      'Weight plates. Two say 35 and three say 10. $40',
      ['2 plate 35 lb | count-marked-weight', '3 plate 10 lb | count-marked-weight'],
    ],
    ['Weight plates. Five of the big ones have 45 on them. $90', ['5 plate 45 lb | count-marked-weight']],
    ['2 sets of 45 lb plates $160', ['4 plate 45 lb | set-of']],
    ['A pair of those big 45 lb plates $90', ['2 plate 45 lb | pair-of']],
    [
      'Hex dumbbells in pairs from 10kg up to 15kg going up in 2.5kg jumps',
      ['2 dumbbell 10 kg | series', '2 dumbbell 12.5 kg | series', '2 dumbbell 15 kg | series'],
    ],
    [
      'Bench, some 25 and 10 lb weights, dumbbells. $50',
      ['1 bench ? | noun', '? plate 25 lb | list-of-weights', '? plate 10 lb | list-of-weights', '? dumbbell ? | noun'],
    ],
    ['45s $40 each, bumpers $1.50 a lb', ['? plate 45 lb | weight-alone', '? bumper ? | noun']],
    ['3 sets of 10 with these 45 lb plates was plenty. 2x45 $80', ['2 plate 45 lb | count-times-weight']],
  ])('%s', (text, said) => expect(lines(text)).toEqual(said));
});

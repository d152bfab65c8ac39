/** A weight with no count of its own, and weights of bars. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['45 lb plate', '1 plate 45 lb | one-weight | 45 lb plate'],
  ['45 lb plates', '? plate 45 lb | weight-alone | 45 lb plates'],
  ['45s', '? plate 45 lb | weight-alone | 45s'],
  ['some 45s and 25s', '? plate 45 lb | list-of-weights | 45s', '? plate 25 lb | list-of-weights | 25s'],
  ['25 lb dumbbells', '? dumbbell 25 lb | weight-alone | 25 lb dumbbells'],
  ['Olympic bar 45 lb', '1 bar 45 lb | bar-weight | Olympic bar 45 lb'],
  ['45 lb olympic bar', '1 bar 45 lb | one-weight | 45 lb olympic bar'],
  ['20kg barbell', '1 bar 20 kg | one-weight | 20kg barbell'],
  ['barbell, weighs 20 kg', '1 bar 20 kg | weight-alone | 20 kg'],
  ['curl bar 25 lb', '1 curl-bar 25 lb | bar-weight | curl bar 25 lb'],
  ['hex bar (60 lb)', '1 hex-bar 60 lb | bar-weight | hex bar (60 lb)'],
  [
    'Hex bar (trap bar) 60 lb with 4 25 lb plates',
    '1 hex-bar 60 lb | bar-weight | Hex bar (trap bar) 60 lb',
    '4 plate 25 lb | count-weight | 4 25 lb plates',
  ],
  ['16 kg kettlebell', '1 kettlebell 16 kg | one-weight | 16 kg kettlebell'],
  ['plate, 8 kg (17.6 lb)', '1 plate 8 kg | noun-weight | plate, 8 kg (17.6 lb)'],
  ['60lb / 28kg olympic hex bar', '1 hex-bar 60 lb | one-weight | 60lb / 28kg olympic hex bar'],
  ['dumbbells 5 to 50 lb', '? dumbbell ? | weight-range | dumbbells 5 to 50 lb'],
  ['2.5 kg change plate', '1 micro 2.5 kg | one-weight | 2.5 kg change plate'],
  ["45 lb's plates", "? plate 45 lb | weight-alone | 45 lb's plates"],
];

describe('single-weights.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});

/** Pairs, couples, sets and dozens of a weight. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['pair of 45s', '2 plate 45 lb | pair-of | pair of 45s'],
  ['a pair of 45 lb plates', '2 plate 45 lb | pair-of | pair of 45 lb plates'],
  ['2 pairs of 45# olympic', '4 plate 45 lb | pair-of | 2 pairs of 45# olympic'],
  ['40 pairs of 45 lb plates', '80 plate 45 lb | pair-of | 40 pairs of 45 lb plates'],
  ['2 pair of 25 lb plates', '4 plate 25 lb | pair-of | 2 pair of 25 lb plates'],
  ['two pairs of tens and a bar', '4 plate 10 lb | pair-of | two pairs of tens', '1 bar ? | noun | bar'],
  ['pair 25lb plates', '2 plate 25 lb | pair-of | pair 25lb plates'],
  ['25 lb plates, pair', '2 plate 25 lb | weight-pair | 25 lb plates, pair'],
  ['25 lb plates, 2 pairs', '4 plate 25 lb | weight-pair | 25 lb plates, 2 pairs'],
  ['couple of 45 lb plates', '2 plate 45 lb | count-weight | couple of 45 lb plates'],
  ['a couple 45s', '2 plate 45 lb | count-weight | a couple 45s'],
  ['set of 45s', '2 plate 45 lb | set-of | set of 45s'],
  ['set of four 45 lb plates', '4 plate 45 lb | set-of | set of four 45 lb plates'],
  ['set of 4 45s', '4 plate 45 lb | set-of | set of 4 45s'],
  ['pair of 35 lb dumbbells', '2 dumbbell 35 lb | pair-of | pair of 35 lb dumbbells'],
  ['pair of hex dumbbells 40s', '2 dumbbell 40 lb | pair-of-noun | pair of hex dumbbells 40s'],
  ['matching pair of 35 lb plates', '2 plate 35 lb | pair-of | matching pair of 35 lb plates'],
  ['half dozen 10 lb plates', '6 plate 10 lb | count-weight | half dozen 10 lb plates'],
  ['half a dozen 25 lb plates', '6 plate 25 lb | count-weight | half a dozen 25 lb plates'],
  ['a dozen 5 lb plates', '12 plate 5 lb | count-weight | a dozen 5 lb plates'],
];

describe('pairs.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});

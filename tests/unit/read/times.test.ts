/** A count times a weight, in both orders. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['4x45 plates', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['45x4 plates', '4 plate 45 lb | weight-times-count | 45x4 + plates'],
  ['4 x 45 lb olympic', '4 plate 45 lb | count-times-weight | 4 x 45 lb'],
  ['olympic 45 lb x 4', '4 plate 45 lb | weight-times-count | 45 lb x 4'],
  ['4 X 45LB plates', '4 plate 45 lb | count-times-weight | 4 X 45LB plates'],
  ['olympic 4×45 lbs', '4 plate 45 lb | count-times-weight | 4×45 lbs'],
  ['olympic 4 * 45 lb', '4 plate 45 lb | count-times-weight | 4 * 45 lb'],
  ['2 X 45 plates', '2 plate 45 lb | count-times-weight | 2 X 45 plates'],
  ['olympic 45lbsx4', '4 plate 45 lb | weight-times-count | 45lbsx4'],
  ['45 lb plates x 4', '4 plate 45 lb | weight-times-count | 45 lb plates x 4'],
  ['45s x 4', '4 plate 45 lb | weight-times-count | 45s x 4'],
  ['four x 45 lb plates', '4 plate 45 lb | count-times-weight | four x 45 lb plates'],
  ['1x1.25kg plate', '1 plate 1.25 kg | count-times-weight | 1x1.25kg plate'],
  ['2 x 2 1/2 lb plates', '2 plate 2.5 lb | count-times-weight | 2 x 2 1/2 lb plates'],
  ['2 x 2.5 lb plates', '2 plate 2.5 lb | count-times-weight | 2 x 2.5 lb plates'],
  ['2 x pair 45 lb plates', '4 plate 45 lb | count-times-weight | 2 x pair 45 lb plates'],
  ['10 kg x 4 discs', '4 plate 10 kg | weight-times-count | 10 kg x 4 + discs'],
  ['6 x 20kg bumpers', '6 bumper 20 kg | count-times-weight | 6 x 20kg bumpers'],
  ['2x45# plates', '2 plate 45 lb | count-times-weight | 2x45# plates'],
  ['2 x 25 lb dumbbells', '2 dumbbell 25 lb | count-times-weight | 2 x 25 lb dumbbells'],
  ['4 x 45-lb plates', '4 plate 45 lb | count-times-weight | 4 x 45-lb plates'],
  ['2x tens olympic plates', '2 plate 10 lb | count-times-weight | 2x tens olympic plates'],
  [
    'plates 4x45, 2x35, 2x25',
    '4 plate 45 lb | count-times-weight | 4x45 + plates',
    '2 plate 35 lb | count-times-weight | 2x35',
    '2 plate 25 lb | count-times-weight | 2x25',
  ],
  ['2 x 16kg kettlebell', '2 kettlebell 16 kg | count-times-weight | 2 x 16kg kettlebell'],
];

describe('times.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});

/** One weight written in two units is one weight. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['2 x 8 kg (17.6 lb) plates', '2 plate 8 kg | count-times-weight | 2 x 8 kg (17.6 lb) plates'],
  ['2 x 20kg/44lb bumpers', '2 bumper 20 kg | count-times-weight | 2 x 20kg/44lb bumpers'],
  ['2 x 45 lb (20.4 kg) plates', '2 plate 45 lb | count-times-weight | 2 x 45 lb (20.4 kg) plates'],
  ['2 x 45# (20.4 kg) plates', '2 plate 45 lb | count-times-weight | 2 x 45# + plates'],
  ['2 x 44 lb [20 kg] bumpers', '2 bumper 44 lb | count-times-weight | 2 x 44 lb [20 kg] bumpers'],
  ['2 x 20 kg = 44 lb bumpers', '2 bumper 20 kg | count-times-weight | 2 x 20 kg = 44 lb bumpers'],
];

describe('text/conversions.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});

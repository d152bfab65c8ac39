/** A count that comes in a later sentence or clause. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['45s. Four of them.', '4 plate 45 lb | weight-alone-counted-later | 45s'],
  ['25 lb plates $20 each, 6 available', '6 plate 25 lb | weight-alone-counted-later | 25 lb plates'],
  ['45 lb plates, I have 4', '4 plate 45 lb | weight-then-count | 45 lb plates, I have 4'],
  ['10 lb plates, two left', '2 plate 10 lb | weight-alone-counted-later | 10 lb plates'],
  ['olympic plates: 75lbs a piece, 2 of them', '2 plate 75 lb | weight-alone-counted-later | 75lbs + olympic plates'],
  ['10lb plates = $5 each, have 6', '6 plate 10 lb | weight-alone-counted-later | 10lb plates'],
];

describe('later-counts.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});

/** Counts in brackets, before and behind the weight. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['(4) 45s', '4 plate 45 lb | bracketed-count | (4) 45s'],
  ['(2) 10# plates', '2 plate 10 lb | bracketed-count | (2) 10# plates'],
  ['(4) 45 lb plates', '4 plate 45 lb | bracketed-count | (4) 45 lb plates'],
  ['(2x) 45 lb plates', '2 plate 45 lb | bracketed-count | (2x) 45 lb plates'],
  ['[4] 25 lb plates', '4 plate 25 lb | bracketed-count | [4] 25 lb plates'],
  ['45s (x4)', '4 plate 45 lb | weight-times-count | 45s (x4'],
  ['45 lb plates (2)', '2 plate 45 lb | count-behind-in-brackets | 45 lb plates (2)'],
  ['20 Pound (2X) plates', '2 plate 20 lb | count-behind-in-brackets | 20 Pound (2X) + plates'],
  ['45 lb plates (pair)', '2 plate 45 lb | pair-behind-in-brackets | 45 lb plates (pair)'],
  ['45 lb plate (Pair)', '2 plate 45 lb | pair-behind-in-brackets | 45 lb plate (Pair)'],
  ['25 lb olympic plates (two)', '2 plate 25 lb | count-behind-in-brackets | 25 lb olympic plates (two)'],
  ['(qty 2) 45 lb plates', '2 plate 45 lb | bracketed-count | (qty 2) 45 lb plates'],
  ['10 lb (2 pair) plates', '4 plate 10 lb | count-behind-in-brackets | 10 lb (2 pair) + plates'],
  ['45 lb plates (4 total)', '4 plate 45 lb | count-behind-in-brackets | 45 lb plates (4 total)'],
  ['(2) pairs of 25 lb plates', '4 plate 25 lb | bracketed-count | (2) pairs of 25 lb plates'],
  [
    '(2) 45lb plates, (4) 10lb plates',
    '2 plate 45 lb | bracketed-count | (2) 45lb plates',
    '4 plate 10 lb | bracketed-count | (4) 10lb plates',
  ],
  [
    'plates (2) each 45 lb, (4) each 25 lb',
    '2 plate 45 lb | bracketed-count | (2) each 45 lb + plates',
    '4 plate 25 lb | bracketed-count | (4) each 25 lb',
  ],
  ['45 lb plates (4) each $40', '4 plate 45 lb | count-behind-in-brackets | 45 lb plates (4)'],
  [
    '45 lb (2), 25 lb (4) plates',
    '2 plate 45 lb | count-behind-in-brackets | 45 lb (2) + plates',
    '4 plate 25 lb | count-behind-in-brackets | 25 lb (4)',
  ],
];

/** Read wrongly as yet: text and what it says. */
const AMISS: readonly (readonly [string, ...string[]])[] = [['5 kg discs (4 off)', '4 plate 5 kg']];

describe('brackets.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
  it.fails.each(AMISS)('%s', (text, ...said) => expect(goods(text).map((line) => line.split(' | ')[0])).toEqual(said));
});

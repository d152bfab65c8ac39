/** Lists of bare weights, where repetition counts. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['plates 45 45 25 25', '2 plate 45 lb | repeated-weights | 45 + plates', '2 plate 25 lb | repeated-weights | 25'],
  ['45/45/25/25 lb plates', '2 plate 45 lb | repeated-weights | 45', '2 plate 25 lb | repeated-weights | 25'],
  ['20-20-25 lb plates', '2 plate 20 lb | repeated-weights | 20', '1 plate 25 lb | repeated-weights | 25 lb'],
  [
    '45, 35, 25 and 10 lb plates',
    '? plate 45 lb | list-of-weights | 45',
    '? plate 35 lb | list-of-weights | 35',
    '? plate 25 lb | list-of-weights | 25',
    '? plate 10 lb | list-of-weights | 10 lb',
  ],
  [
    '45s, 25s and 10s',
    '? plate 45 lb | list-of-weights | 45s',
    '? plate 25 lb | list-of-weights | 25s',
    '? plate 10 lb | list-of-weights | 10s',
  ],
  [
    '10kg/15kg/20kg bumpers',
    '? bumper 10 kg | list-of-weights | 10kg',
    '? bumper 15 kg | list-of-weights | 15kg',
    '? bumper 20 kg | list-of-weights | 20kg',
  ],
];

/** Read wrongly as yet: text and what it says. */
const AMISS: readonly (readonly [string, ...string[]])[] = [
  ['7-7 lb plates', '2 plate 7 lb'],
  ['plates 7-7', '2 plate 7 lb'],
  ['olympic plates 20-20-25', '2 plate 20 lb', '1 plate 25 lb'],
];

describe('lists.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
  it.fails.each(AMISS)('%s', (text, ...said) => expect(goods(text).map((line) => line.split(' | ')[0])).toEqual(said));
});

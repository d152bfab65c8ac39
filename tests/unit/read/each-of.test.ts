/** One count for a list of weights. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  [
    '2 each of 45, 25, 10 plates',
    '2 plate 45 lb | each-of-list | 45 + plates',
    '2 plate 25 lb | each-of-list | 25',
    '2 plate 10 lb | each-of-list | 10',
  ],
  [
    '2 each of 10, 5, 2.5 lb plates',
    '2 plate 10 lb | each-of-list | 10 + plates',
    '2 plate 5 lb | each-of-list | 5',
    '2 plate 2.5 lb | each-of-list | 2.5 lb',
  ],
  [
    'plates, 2 of each: 45, 35 and 25',
    '2 plate 45 lb | each-of-list | 45 + plates',
    '2 plate 35 lb | each-of-list | 35',
    '2 plate 25 lb | each-of-list | 25',
  ],
  [
    'Olympic plates, 25 and 45 lb pairs',
    '2 plate 25 lb | list-pairs | 25 + Olympic plates',
    '2 plate 45 lb | list-pairs | 45 lb',
  ],
  [
    'pairs of 45/35/25 plates',
    '2 plate 45 lb | each-of-list | 45 + plates',
    '2 plate 35 lb | each-of-list | 35',
    '2 plate 25 lb | each-of-list | 25',
  ],
  [
    'plates 45, 35, 25, 10 (2 each)',
    '2 plate 45 lb | list-each | 45 + plates',
    '2 plate 35 lb | list-each | 35',
    '2 plate 25 lb | list-each | 25',
    '2 plate 10 lb | list-each | 10',
  ],
  ['plates (2) each 45, 25', '2 plate 45 lb | each-of-list | 45 + plates', '2 plate 25 lb | each-of-list | 25'],
  [
    '45s, 35s, 25s, a pair of each',
    '2 plate 45 lb | list-each | 45s',
    '2 plate 35 lb | list-each | 35s',
    '2 plate 25 lb | list-each | 25s',
  ],
  [
    'set of bumpers 10/15/20 kg',
    '2 bumper 10 kg | set-list | 10',
    '2 bumper 15 kg | set-list | 15',
    '2 bumper 20 kg | set-list | 20 kg',
  ],
  [
    'two each 45, 25 and 10 lb plates',
    '2 plate 45 lb | each-of-list | 45 + plates',
    '2 plate 25 lb | each-of-list | 25',
    '2 plate 10 lb | each-of-list | 10 lb',
  ],
  [
    'a pair each of 10, 15 and 20 kg bumpers',
    '2 bumper 10 kg | each-of-list | 10 + bumpers',
    '2 bumper 15 kg | each-of-list | 15',
    '2 bumper 20 kg | each-of-list | 20 kg',
  ],
  [
    '45, 25, 10 lb plates, 4 of each',
    '4 plate 45 lb | list-each | 45',
    '4 plate 25 lb | list-each | 25',
    '4 plate 10 lb | list-each | 10 lb',
  ],
];

/** Read wrongly as yet: text and what it says. */
const AMISS: readonly (readonly [string, ...string[]])[] = [
  ['dumbbells 10, 15, 20 pairs', '2 dumbbell 10 lb', '2 dumbbell 15 lb', '2 dumbbell 20 lb'],
];

describe('each-of.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
  it.fails.each(AMISS)('%s', (text, ...said) => expect(goods(text).map((line) => line.split(' | ')[0])).toEqual(said));
});

/** A count and a weight joined by a dash, a colon or a word for quantity. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['4-45lb plates', '4 plate 45 lb | count-dash-weight | 4-45lb plates'],
  ['2 - 45lb plates', '2 plate 45 lb | count-dash-weight | 2 - 45lb plates'],
  ['2 - 25 lb plates', '2 plate 25 lb | count-dash-weight | 2 - 25 lb plates'],
  ['4-45s', '4 plate 45 lb | count-dash-weight | 4-45s'],
  ['2 – 45 lb plates', '2 plate 45 lb | count-dash-weight | 2 – 45 lb plates'],
  ['45 lb plates - 4', '4 plate 45 lb | weight-dash-count | 45 lb plates - 4'],
  ['45s: 4', '4 plate 45 lb | weight-dash-count | 45s: 4'],
  ['45 lb: 2 plates', '2 plate 45 lb | weight-dash-count | 45 lb: 2 + plates'],
  ['45 lb = 2 plates', '2 plate 45 lb | weight-dash-count | 45 lb = 2 + plates'],
  ['qty 4: 45 lb plates', '4 plate 45 lb | count-dash-weight | qty 4: 45 lb plates'],
  ['45 lb plates qty 2', '2 plate 45 lb | weight-dash-count | 45 lb plates qty 2'],
  ['45 lb plates, qty: 2', '2 plate 45 lb | weight-dash-count | 45 lb plates, qty: 2'],
  ['45 lb plates, quantity 4', '4 plate 45 lb | weight-dash-count | 45 lb plates, quantity 4'],
  ['4 -- 25 lb plates', '4 plate 25 lb | count-dash-weight | 4 -- 25 lb plates'],
  [
    'Plates - 2@45, 4@35, 2@5 = $150',
    '2 plate 45 lb | count-dash-weight | 2@45 + Plates',
    '4 plate 35 lb | count-dash-weight | 4@35',
    '2 plate 5 lb | count-dash-weight | 2@5',
  ],
  ['a set of 5-45s', '5 plate 45 lb | set-of | set of 5-45s'],
  ['2 - 10 kg bumpers', '2 bumper 10 kg | count-dash-weight | 2 - 10 kg bumpers'],
];

describe('dashes.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
});

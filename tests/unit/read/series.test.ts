/** Ranges of sizes with and without a step, and pairs for a whole list. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

const sizes = (text: string): string[] => goods(text).map((line) => line.split(' | ').slice(0, 2).join(' | '));

const SERIES: readonly (readonly [string, ...string[]])[] = [
  [
    'dumbbells 10-20 lb in 5 lb increments',
    '? dumbbell 10 lb | series',
    '? dumbbell 15 lb | series',
    '? dumbbell 20 lb | series',
  ],
  [
    'dumbbells 5 through 15 in fives, pairs',
    '2 dumbbell 5 lb | series',
    '2 dumbbell 10 lb | series',
    '2 dumbbell 15 lb | series',
  ],
  ['dumbbells 10s to 30s by 10s', '? dumbbell 10 lb | series', '? dumbbell 20 lb | series', '? dumbbell 30 lb | series'],
  ['Hex dumbbells 5-50 lbs', '? dumbbell ? | weight-range'],
  ['Dumbbells 2-25lb', '2 dumbbell 25 lb | count-dash-weight'],
  [
    'Bumpers: 10, 15, 25 and 45 pairs',
    '2 bumper 10 lb | list-pairs',
    '2 bumper 15 lb | list-pairs',
    '2 bumper 25 lb | list-pairs',
    '2 bumper 45 lb | list-pairs',
  ],
  ['Pair of 45lb plates $80/pair, two pairs available', '4 plate 45 lb | pair-of-counted-later'],
];

describe('ranges and their steps', () => {
  it.each(SERIES)('%s', (text, ...expected) => {
    expect(sizes(text)).toEqual(expected);
  });
});

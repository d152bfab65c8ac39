/** Numbers that are neither weights nor prices. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods } from './goods.ts';

/** Text of the ad, then its goods with the rule that read them and the words they were read from. */
const NOTATIONS: readonly (readonly [string, ...string[]])[] = [
  ['call 555-0123, 4x45 plates', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates. Call (555) 555-0145 after 5pm', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates bought 2009', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates, room is 10x12', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates, my max is 315', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['I weigh 180 lbs. 4x45 plates', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['I squatted 405 on it. barbell', '1 bar ? | noun | barbell'],
  ['power rack built of 2x12 boards and 4x4s', '1 rack ? | noun | power rack'],
  ['4x45 plates, 1840 Larch St', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates, posted 11/25/2026', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates, 2 miles from the mall', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates, Saturday 9:30 to 12:00', '4 plate 45 lb | count-times-weight | 4x45 plates'],
  ['4x45 plates. Item #1234567', '4 plate 45 lb | count-times-weight | 4x45 plates'],
];

/** Read wrongly as yet: text and what it says. */
describe('noise.ts', () => {
  it.each(NOTATIONS)('%s', (text, ...said) => expect(goods(text)).toEqual(said));
  it('a lift told by its bench', () =>
    expect(goods('I bench 225 so I need heavier ones. 4x45 plates').map((line) => line.split(' | ')[0])).toEqual([
      '4 plate 45 lb',
    ]));
});

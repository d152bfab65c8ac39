/** One count for a list of sizes. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods, offer } from './goods.ts';

const LISTS: readonly (readonly [string, string])[] = [
  [
    '3 kettlebells\nOnly two left: 16 kg and 20 kg. $30 for the 16, $40 for the 20.',
    '70 lot | 1 kettlebell 16 kg =30, 1 kettlebell 20 kg =40',
  ],
  [
    'Bumper plates, 3 pairs\nTwo pairs left: 45 lb and 25 lb. $120 for the 45s and $70 for the 25s.',
    '190 lot | 2 bumper 45 lb =120, 2 bumper 25 lb =70',
  ],
  [
    'Four kettlebells: 12 kg, 16 kg, 20 kg and 24 kg. £120 for all four',
    '120 lot | 1 kettlebell 12 kg, 1 kettlebell 16 kg, 1 kettlebell 20 kg, 1 kettlebell 24 kg',
  ],
  ['Zwei Kettlebells: 16 kg und 24 kg. Zusammen 70 €', '70 lot | 1 kettlebell 16 kg, 1 kettlebell 24 kg'],
];

const NO_LISTS: readonly (readonly [string, string])[] = [['2 plates: 45 lb olympic. $60', '60 lot | 2 plate 45 lb']];

describe('told-singly.ts', () => {
  it.each(LISTS)('%s', (text, said) => expect(offer(text)).toBe(said));
  it.each(NO_LISTS)('%s', (text, said) => expect(offer(text)).toBe(said));

  it.each([
    [
      'Two kettlebells left: 16 kg and 20 kg',
      '1 kettlebell 16 kg | list-of-weights-told-singly | 16 kg',
      '1 kettlebell 20 kg | list-of-weights-told-singly | 20 kg',
    ],
  ])('names the rule: %s', (text, ...said) => expect(goods(text)).toEqual(said));

  it('counts the lists behind one clause by their word for each', () => {
    expect(offer('45s $60, 35s $50 each. Have 2 of each. olympic bumpers')).toMatch(/2 bumper 45 lb.*2 bumper 35 lb/);
  });
});

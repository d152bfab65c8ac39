/** One count for a list of sizes. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods, offer } from './goods.ts';

const LISTS: readonly (readonly [string, string])[] = [
  [
    '6 Kettlebells: 8, 12, 16, 20, 24 und 28 kg. Pro Kilo 2,50 €',
    '270 per-kilogram of 2.5 | 1 kettlebell 8 kg, 1 kettlebell 12 kg, 1 kettlebell 16 kg, 1 kettlebell 20 kg, 1 kettlebell 24 kg, 1 kettlebell 28 kg',
  ],
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

  it.each([
    [
      '6 kettlebells: 8, 12, 16, 20, 24 and 28 kg',
      ...[8, 12, 16, 20, 24, 28].map((weight) => `1 kettlebell ${weight} kg | headed-list | 6 kettlebells`),
    ],
  ])('reads the list as a whole: %s', (text, ...said) => {
    const rules = (lines: readonly string[]): string[] => lines.map((line) => line.split(' | ').slice(0, 2).join(' | '));
    expect(rules(goods(text))).toEqual(rules(said));
  });

  it.each([
    ['3 plates: 45, 25 lb olympic', 'headed-list'],
    ['2 kettlebells: 16 kg and 16 kg', 'headed-list'],
  ])('takes no list for pieces of its own where the count is another: %s', (text, rule) =>
    expect(goods(text).join()).not.toContain(rule),
  );

  it('counts the lists behind one clause by their word for each', () => {
    expect(offer('45s $60, 35s $50 each. Have 2 of each. olympic bumpers')).toMatch(/2 bumper 45 lb.*2 bumper 35 lb/);
  });
});

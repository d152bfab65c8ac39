/** Cutting a text into numbers, words and marks. Decimal signs by language: Unicode CLDR, locales en and de. */
import { describe, expect, it } from 'vitest';
import { GERMAN } from '../../../../src/read/language/de/index.ts';
import { ENGLISH } from '../../../../src/read/language/en/index.ts';
import { fold } from '../../../../src/read/text/fold.ts';
import { spanOf, tokenise } from '../../../../src/read/text/tokens.ts';

const numbers = (text: string, language = ENGLISH): (number | null)[] =>
  tokenise(fold(text), language).flatMap(({ type, value }) => (type === 'number' ? [value] : []));
const shape = (text: string): string =>
  tokenise(fold(text), ENGLISH)
    .map(({ type, text: token, glued }) => `${glued ? '~' : ''}${type[0]}:${token}`)
    .join(' ');

describe('numbers', () => {
  it.each<[string, number[]]>([
    ['45', [45]],
    ['2.5', [2.5]],
    ['.5', [0.5]],
    ['2 1/2', [2.5]],
    ['2-1/2', [2.5]],
    ['2½', [2.5]],
    ['1/2', [0.5]],
    ['1 1/16', [1.0625]],
    ['1,200', [1200]],
    ['1,200.50', [1200.5]],
    ['45/35/25', [45, 35, 25]],
    ['4x45', [4, 45]],
    ['45,35', [45, 35]],
    ['2,5 kg', [2.5]],
    ['5/3', [5, 3]],
    ['12:30', [12, 30]],
    ['0', [0]],
  ])('%s in English', (text, values) => expect(numbers(text)).toEqual(values));

  it.each<[string, number[]]>([
    ['2,5', [2.5]],
    ['1.200,50', [1200.5]],
    ['1.200', [1200]],
    ['4x20', [4, 20]],
  ])('%s in German', (text, values) => expect(numbers(text, GERMAN)).toEqual(values));

  it('takes more than fifteen digits for a word: no weight, no price', () =>
    expect(tokenise(fold('9'.repeat(400)), ENGLISH)).toMatchObject([{ type: 'word', value: null }]));
});

describe('tokens', () => {
  it.each([
    ['4 x 45 lb.', 'n:4 w:x n:45 w:lb ~m:.'],
    ['4x45lbs', 'n:4 ~w:x ~n:45 ~w:lbs'],
    ['45lbsx4', 'n:45 ~w:lbs ~w:x ~n:4'],
    ["don't", "w:don't"],
    ["45's", "n:45 ~w:'s"],
    ['a\nb', 'w:a l:\n w:b'],
    ['a ..... b', 'w:a m:..... w:b'],
    ['($5)', 'm:( ~m:$ ~n:5 ~m:)'],
    ['😀 bar', 'm:😀 w:bar'],
  ])('%j', (text, said) => expect(shape(text).replaceAll('~l:', 'l:')).toBe(said));

  it('keeps the places of the original', () => {
    const text = 'Plates: ４×４５\u200b lb, “olympic”';
    const tokens = tokenise(fold(text), ENGLISH);
    const words = tokens.map(({ start, end }) => text.slice(start, end));
    expect(words.slice(0, 6)).toEqual(['Plates', ':', '４', '×', '４５\u200b', 'lb']);
    const { start, end } = spanOf(tokens, 2, 5);
    expect(text.slice(start, end)).toBe('４×４５\u200b lb');
  });
});

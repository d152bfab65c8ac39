/**
 * Forms for counts by the rules of the strings' language. Expected forms are those of Unicode CLDR, Language Plural Rules (chart of cardinals):
 * Polish one 1, few 2–4 and 22–24 but not 12–14, many the rest, other fractions; Arabic zero 0, one 1, two 2, few n mod 100 = 3–10, many 11–99.
 */
import { describe, expect, it } from 'vitest';
import { message } from '../../../src/words/message.ts';
import { speaker } from '../../../src/words/say.ts';

const LANGUAGES = {
  pl: {
    strings: { plates: '{n} talerza', plates_one: '{n} talerz', plates_few: '{n} talerze', plates_many: '{n} talerzy' },
    forms: {
      1: 'talerz',
      2: 'talerze',
      4: 'talerze',
      5: 'talerzy',
      12: 'talerzy',
      22: 'talerze',
      100: 'talerzy',
      1.5: 'talerza',
    },
  },
  ar: {
    strings: { plates: 'o', plates_zero: 'z', plates_one: '1', plates_two: '2', plates_few: 'f', plates_many: 'm' },
    forms: { 0: 'z', 1: '1', 2: '2', 3: 'f', 10: 'f', 11: 'm', 99: 'm', 100: 'o', 103: 'f' },
  },
  ja: { strings: { plates: '枚' }, forms: { 0: '枚', 1: '枚', 2: '枚' } },
  // French counts 0 and 1 as one.
  fr: { strings: { plates: 'disques', plates_one: 'disque' }, forms: { 0: 'disque', 1: 'disque', 2: 'disques' } },
} as const;

describe.each(Object.entries(LANGUAGES))('%s', (language, { strings, forms }) => {
  const say = speaker(strings, language);
  it.each(Object.entries(forms))('says %s by its form', (n, form) => {
    expect(
      say(message('plates', { n: Number(n) }))
        .split(' ')
        .at(-1),
    ).toBe(form);
  });
});

it('takes the key itself where a form is missing, and never a form of another category', () => {
  const say = speaker({ plates: 'other', plates_one: 'one' }, 'pl');
  expect([1, 3, 7].map((n) => say(message('plates', { n })))).toEqual(['one', 'other', 'other']);
});

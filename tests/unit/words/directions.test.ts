/** Writing that runs the other way: whose script does (Unicode, Bidi_Class R and AL), and an ad that tries to turn our own words about. */
import { describe, expect, it } from 'vitest';
import { message } from '../../../src/words/message.ts';
import { speaker } from '../../../src/words/say.ts';
import { directionOf } from '../../../src/words/write-figures.ts';

it.each([
  ['ar', 'rtl'],
  ['he-IL', 'rtl'],
  ['fa', 'rtl'],
  ['ur', 'rtl'],
  ['pa-PK', 'rtl'],
  ['en', 'ltr'],
  ['de-CH', 'ltr'],
  ['uz', 'ltr'],
  ['ja', 'ltr'],
] as const)('%s runs %s', (tag, way) => expect(directionOf(tag)).toBe(way));

describe('words of an ad in a sentence', () => {
  const strings = { met: 'You kept “{title}” before, at {price}.' };
  const met = (locale: string, title: string) =>
    speaker(strings, locale)(message('met', { title, price: { money: { minor: 4500, currency: 'USD' } } }));

  it('stay as they are where nothing turns', () => expect(met('en', 'Plates')).toBe('You kept “Plates” before, at $45.'));

  it('lose what orders the writing, and stand apart', () =>
    expect(met('en', '\u202eevil\u2066 50 kg')).toBe('You kept “\u2068evil 50 kg\u2069” before, at $45.'));

  it('stand apart where they run the other way, or the sentence does', () => {
    expect(met('en', 'أوزان')).toContain('“\u2068أوزان\u2069”');
    expect(met('he', 'Plates')).toMatch(/“\u2068Plates\u2069” before, at \u2068[^\u2068]*45[^\u2069]*\u2069\.$/);
  });
});

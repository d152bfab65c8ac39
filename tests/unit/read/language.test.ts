/** Which language an ad is read in. The sentences are ours; that words outweigh the page's tag is a rule of this project, no source. */
import { describe, expect, it } from 'vitest';
import { chooseLanguage } from '../../../src/read/language/choose.ts';
import { GERMAN } from '../../../src/read/language/de/index.ts';
import { ENGLISH } from '../../../src/read/language/en/index.ts';

const codeOf = (text: string, tag: string | null = null): string => chooseLanguage(tag, text).code;

describe('the language of an ad', () => {
  it.each([
    ['Verkaufe meine Hantelscheiben, 4 x 20 kg, nur Abholung', 'de'],
    ['Gusseisenscheiben 2x20kg', 'de'],
    ['2,5 kg und 1,25 kg', 'de'],
    ['Selling my plates, 4 x 45 lb, pick up only', 'en'],
    ['bumper plates 2x20kg', 'en'],
    ['4x45', 'en'],
    ['', 'en'],
  ])('%s is %s', (text, code) => expect(codeOf(text)).toBe(code));

  it('takes the page tag where words do not tell', () => {
    expect(codeOf('2x20kg 60', 'de')).toBe('de');
    expect(codeOf('2x20kg 60', 'de-AT')).toBe('de');
    expect(codeOf('2x20kg 60', 'en-GB')).toBe('en');
    expect(codeOf('2x20kg 60', 'deu')).toBe('en');
  });

  it('lets the words outweigh the tag', () => {
    expect(codeOf('Verkaufe zwei Scheiben mit Bohrung und eine Stange', 'en')).toBe('de');
    expect(codeOf('Selling these plates and the bar, they are in good condition', 'de')).toBe('en');
  });

  it('looks at the beginning only, so that a long page costs no more', () => {
    const english = 'Selling the plates and the bar with these collars. '.repeat(80);
    expect(codeOf(english + 'Verkaufe und suche die Scheiben mit der Stange. '.repeat(400))).toBe('en');
  });
});

describe('numbers', () => {
  const german = (digits: string): number => GERMAN.valueOf(digits, { before: '', behind: '' });
  const matched = (text: string): string | undefined => {
    GERMAN.number.lastIndex = 0;
    return GERMAN.number.exec(text)?.[0];
  };

  // Source: the comma as decimal sign and the point or apostrophe between thousands, as Unicode CLDR gives for the locales de and de-CH.
  it.each([
    ['1.200,50', 1200.5],
    ['1.200', 1200],
    ["1'150", 1150],
    ['2,5', 2.5],
    ['2.5', 2.5],
    ['0.125', 0.125],
    ['1,25', 1.25],
    ['12.345.678', 12_345_678],
  ])('reads %s', (text, value) => {
    expect(matched(text)).toBe(text);
    expect(german(text)).toBe(value);
  });

  it('agrees with the platform on how de and de-CH write numbers', () => {
    for (const value of [0.5, 1.25, 2.5, 12.5, 999, 1000, 1200.5, 12_345, 1_234_567.25]) {
      for (const locale of ['de-DE', 'de-CH']) {
        const written = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 }).format(value).replaceAll('’', "'");
        expect(matched(written), `${locale} ${written}`).toBe(written);
        expect(german(written), `${locale} ${written}`).toBe(value);
      }
    }
  });

  it('parts a list at its commas', () => expect(matched('25,20,15')).toBe('25'));

  it('leaves English numbers as they are', () => {
    expect(ENGLISH.valueOf('1,200.50', { before: '$', behind: '' })).toBe(1200.5);
  });
});

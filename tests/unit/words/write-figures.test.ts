/** Figures as locales write them, and as fields read them again. Expected texts: Unicode CLDR as Node's own ICU has it, with plain blanks. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseAmount, parseMillimetres, parseNumber } from '../../../extension/components/parse-input.ts';
import { asWritten, figuresOf } from '../../../src/words/write-figures.ts';

const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');
const usd = (minor: number) => ({ minor, currency: 'USD' });

describe('German', () => {
  const figures = figuresOf('de');
  it.each([
    [figures.money(usd(123_450), 'cents'), '1.234,50 $'],
    [figures.number(1234.5), '1.234,5'],
    [figures.weight({ value: 2.5, unit: 'kg' }), '2,5 kg'],
    [figures.unit(40, 'kmh'), '40 km/h'],
    [figures.percent(35), '35 %'],
    [figures.percent(7.5, 1), '7,5 %'],
    [figures.day('2026-05-31'), '31.05.2026'],
    [figures.day('2026-01'), 'Jan. 2026'],
    [figures.day('last week'), 'last week'],
    [figures.list(['Eisen', '28 mm', 'gerade']), 'Eisen, 28 mm, gerade'],
    [figures.figure({ mm: 28.5 }), '28,5 mm (1,12 in)'],
    [figures.figure({ degrees: 5.84 }), '5,8°'],
    [figures.figure({ number: 1.0837, digits: 6 }), '1,0837'],
  ])('%s', (written, expected) => expect(plain(written)).toBe(expected));
});

// Arithmetic: what a reader takes off $3,236 to come to $1,202 is $2,034, whatever the cents were.
it('gives money as it reads once it is written, so that what is shown of it adds up', () => {
  const { money } = figuresOf('en');
  const [fresh, spent] = [asWritten(usd(323_638)), asWritten(usd(120_173))];
  expect([fresh, spent].map(({ minor }) => minor)).toEqual([323_600, 120_200]);
  expect(money(usd(fresh.minor - spent.minor))).toBe('$2,034');
  fc.assert(
    fc.property(fc.integer({ min: -1_000_000, max: 1_000_000 }), (minor) => {
      expect(money(asWritten(usd(minor)))).toBe(money(usd(minor)));
    }),
  );
});

it('follows the region within a language', () => {
  expect(plain(figuresOf('de-CH').number(1234.5))).toBe('1’234.5'.replace('’', figuresOf('de-CH').number(1234).charAt(1)));
  expect(figuresOf('de-CH').decimal).toBe('.');
  expect(figuresOf('de-AT').decimal).toBe(',');
  expect(figuresOf('en-GB').day('2026-05-31')).toBe('31 May 2026');
  expect(figuresOf('en-US').day('2026-05-31')).toBe('May 31, 2026');
});

it('writes the digits 0 to 9 whatever the locale has: Arabic of Egypt, Persian, Hindi of Nepal', () => {
  for (const tag of ['ar-EG', 'fa', 'ne']) {
    expect(figuresOf(tag).number(1234.5)).toMatch(/^1.?234\.5$/);
    expect(figuresOf(tag).locale).toBe(tag);
  }
});

describe('a typed number', () => {
  it.each([
    ['1.200', ',', 1200],
    ['1.200', '.', 1.2],
    ['1,200', ',', 1.2],
    ['1,200', '.', 1200],
    ['1.234,50', ',', 1234.5],
    ['1,234.50', ',', 1234.5],
    ['99,50', '.', 99.5],
    ['99.50', ',', 99.5],
    ['0,750', ',', 0.75],
    ['1.200.300', ',', 1_200_300],
  ] as const)('%s with the decimal sign %s', (text, decimal, value) => expect(parseNumber(text, decimal)).toBe(value));

  it('keeps the sign with money and lengths', () => {
    expect(parseAmount('1.200 €', ',')).toBe(1200);
    expect(parseMillimetres('2.200 mm', ',')).toBe(2200);
    expect(parseMillimetres('1 1/8 Zoll', ',')).toBeCloseTo(28.575);
  });

  it.each(['en', 'en-GB', 'de', 'de-CH', 'de-AT', 'fr', 'pl', 'es', 'ar', 'hi', 'en-IN'])('%s reads what it writes', (tag) => {
    const { number, decimal } = figuresOf(tag);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999_999 }), fc.integer({ min: 0, max: 4 }), (whole, digits) => {
        const value = Number((whole / 10 ** digits).toFixed(digits));
        expect(parseNumber(number(value, digits), decimal)).toBe(value);
      }),
    );
  });
});

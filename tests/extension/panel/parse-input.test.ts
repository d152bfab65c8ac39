import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAmount, parseCount, parseMillimetres, parseNumber } from '../../../extension/components/parse-input.ts';

describe('numbers as typed', () => {
  test.each([
    ['45', 45],
    [' 2.5 ', 2.5],
    ['2,5', 2.5],
    ['.5', 0.5],
    ['1,200', 1200],
    ['1.200,50', 1200.5],
    ['1,200.50', 1200.5],
    ['1 200', 1200],
    ['1,200,000', 1200000],
    ['2 1/2', 2.5],
    ['2-1/2', 2.5],
    ['3/4', 0.75],
    ['1.125', 1.125],
    ['1,20,300', 120_300],
  ])('"%s" is %d', (typed, value) => expect(parseNumber(typed)).toBe(value));

  test.each(['', ' ', '-5', '4x', '1/0', '1.2.3', '1,2,300', '4 5', 'Infinity', '1e3', '0x10', '..', ','])(
    '"%s" is no number',
    (typed) => expect(parseNumber(typed)).toBeNull(),
  );

  test('never anything but null or a finite number that is not negative', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[\d.,\s/'"a-z-]{0,20}$/)), (typed) => {
        for (const parse of [parseNumber, parseAmount, parseCount, parseMillimetres]) {
          const value = parse(typed);
          expect(value === null || (Number.isFinite(value) && value >= 0)).toBe(true);
        }
      }),
    );
  });

  test('what the panel writes it reads again', () => {
    const written = new Intl.NumberFormat('en-US', { maximumFractionDigits: 2 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000_000 }), (cents) => {
        expect(parseNumber(written.format(cents / 100))).toBeCloseTo(cents / 100, 6);
      }),
    );
  });

  test.each([
    ['$120', 120],
    ['120 €', 120],
    ['USD 99.50', 99.5],
  ])('amount "%s"', (typed, value) => expect(parseAmount(typed)).toBe(value));

  // 1 in = 25.4 mm exactly, 1 ft = 304.8 mm exactly (International yard and pound agreement, 1959).
  test.each([
    ['28', 28],
    ['28 mm', 28],
    ['2.2m', 2200],
    ['220 cm', 2200],
    ['1 1/8"', 28.575],
    ['1 1/8 in', 28.575],
    ['7\'2"', 2184.4],
    ['7 ft', 2133.6],
    ['7 ft 2 1/2 in', 2197.1],
  ])('length "%s" is %d mm', (typed, value) => expect(parseMillimetres(typed)).toBeCloseTo(value, 9));
});

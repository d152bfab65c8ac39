/**
 * The reader against what others publish: amounts as Unicode CLDR writes them (through the engine's own Intl), bars and discs of the
 * federations' rule books, and the definitions of the inch, the foot and the pound.
 */
import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../src/listing/page-listing.ts';
import type { Reading } from '../../src/listing/reading.ts';
import { read } from '../../src/read/index.ts';
import { inMajor } from '../../src/units/money.ts';

const readText = (text: string): Reading => read(listingFromText(text));
const AMOUNTS = [20, 45, 99.5, 120, 275, 480.25, 999, 1000, 1234.5, 2500, 9800];

// Source: Unicode CLDR number and currency formats.
describe('amounts as CLDR writes them', () => {
  const amountsRead = (locale: string, currency: string, ad: (price: string) => string, digits: number): string[] =>
    AMOUNTS.flatMap((amount) => {
      const price = new Intl.NumberFormat(locale, { style: 'currency', currency, minimumFractionDigits: digits }).format(amount);
      const { asking } = readText(ad(price));
      const said = asking.amount && inMajor(asking.amount.value);
      return said === amount && asking.currency?.value === currency ? [] : [`${price}: ${said} ${asking.currency?.value}`];
    });

  it.each([
    ['en-US', 'USD'],
    ['en-GB', 'GBP'],
    ['en-IE', 'EUR'],
    ['en-US', 'CAD'],
    ['en-US', 'AUD'],
    ['de-DE', 'EUR'],
    ['de-AT', 'EUR'],
    ['de-CH', 'CHF'],
  ])('%s, %s', (locale, currency) => {
    const ad = locale.startsWith('de')
      ? (price: string) => `Verkaufe 4 Hantelscheiben mit je 20 kg und eine Stange. Preis: ${price}`
      : (price: string) => `Selling 4 olympic plates of 45 lb and a bar. Price: ${price}`;
    expect(amountsRead(locale, currency, ad, 2)).toEqual([]);
  });
});

// Cents are no digits of a number to call.
it.each([
  ['Selling an olympic bar and a power rack. Price: $12000.00', 12000],
  ['Verkaufe 4 Hantelscheiben mit je 20 kg und eine Stange. Preis: CHF 12’000.00', 12000],
])('%s', (text, amount) => {
  const price = readText(text).asking.amount;
  expect(price && inMajor(price.value)).toBe(amount);
});

// Source: IWF TCRR 2025, 3.3.3: bars of 20 kg, 2200 mm, 28 mm and of 15 kg, 2010 mm, 25 mm; IPF Technical Rulebook 2026: 28 to 29 mm, at most 2.2 m.
describe('bars of the rule books', () => {
  it.each([
    ['olympic barbell, 20 kg, 28 mm shaft, 2200 mm long', 20, 28, 2200],
    ['womens olympic bar 15 kg, 25 mm shaft, length 2010 mm', 15, 25, 2010],
    ['power bar, 20 kg, 29 mm shaft, 2.2 m long', 20, 29, 2200],
  ])('%s', (text, weight, shaft, length) => {
    const [bar] = readText(text).items;
    expect(bar?.kind.value).toBe('bar');
    expect(bar?.unitWeight?.value).toEqual({ value: weight, unit: 'kg' });
    expect([bar?.shaftMm?.value, bar?.lengthMm?.value]).toEqual([shaft, length]);
  });
});

// Source: IWF TCRR 2025, 3.3.3: discs of 25, 20, 15, 10, 5, 2.5, 2, 1.5, 1 and 0.5 kg.
it('a pair of every disc of the rule book', () => {
  const sizes = [25, 20, 15, 10, 5, 2.5, 2, 1.5, 1, 0.5];
  const { items } = readText(`Competition discs\n${sizes.map((size) => `2 x ${size} kg`).join('\n')}`);
  expect(items.map(({ count, unitWeight }) => [count?.value, unitWeight?.value.value, unitWeight?.value.unit])).toEqual(
    sizes.map((size) => [2, size, 'kg']),
  );
});

// Source: international yard and pound agreement 1959: an inch is 25.4 mm, a foot 304.8 mm.
it.each([
  [`7' 2"`, 7 * 304.8 + 2 * 25.4],
  ['7 ft 3 in', 7 * 304.8 + 3 * 25.4],
  ['86 inches', 86 * 25.4],
  ['6 feet', 6 * 304.8],
])('an olympic barbell of %s', (length, millimetres) =>
  expect(readText(`olympic barbell, ${length} long`).items[0]?.lengthMm?.value).toBeCloseTo(millimetres, 6),
);

// Source: the same agreement: a pound is 0.45359237 kg.
it.each([2.5, 5, 10, 25, 35, 45, 100])('%d lb with its kilograms in brackets is one weight', (value) => {
  const { items } = readText(`olympic plates, 2 x ${value} lb (${(value * 0.45359237).toFixed(1)} kg)`);
  expect(items.map(({ count, unitWeight }) => [count?.value, unitWeight?.value])).toEqual([[2, { value, unit: 'lb' }]]);
});

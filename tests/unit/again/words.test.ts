/** What of an ad's words is kept to know it by. Wording is invented; what sellers write is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { clausesOf, numbersOf } from '../../../src/again/words.ts';

const clauses = (text: string): string[] => clausesOf({ title: '', text }).map((words) => words.join(' '));
const numbers = (text: string): readonly string[] => numbersOf(clausesOf({ title: '', text }));

describe('prices are taken away', () => {
  it.each([
    '$150',
    '150 USD',
    '€ 150',
    '150 €',
    'VB 150',
    '150 VB',
    '$1,200.50',
    'asking 150',
    'price: 150',
    'now 150',
    'was 150 or offer',
    '$0.75/lb',
  ])('%s', (price) => expect(numbers(`Iron plates, ${price}. Elmwick`)).toEqual([]));
  it.each([
    ['asking for 2 x 45 lb', ['2-45', '45-']],
    ['price is for 45 lb plates', ['45-']],
    ['now 45 lb plates', ['45-']],
    ['reduced to 35 lb', ['35-']],
  ])('not the sizes in "%s"', (text, kept) => expect(numbers(text)).toEqual(kept));
});

describe('passing numbers are taken away', () => {
  it.each([
    'call 555-0142',
    '555 010 0142',
    'after 6 pm',
    'at 18:30',
    'on 3/14/2026',
    'since 2019',
    '12 miles away',
    '3 days left',
    '20 % off',
    'id 7654321',
  ])('%s', (text) => expect(numbers(`Iron plates, ${text}`)).toEqual([]));
});

it.each([
  ['4x45, 2x25', ['2-25', '25-', '4-45', '45-']],
  ['2x25 and 4x45', ['2-25', '25-', '4-45', '45-']],
  ['2x45, 4x25', ['2-45', '25-', '4-25', '45-']],
  ['four 45s', ['4-45', '45-']],
  ['a pair of 2.5 lb', ['2-2.5', '2.5-']],
  ['vier Scheiben zu 20 kg', ['20-', '4-20']],
])('numbers of "%s"', (text, kept) => expect(numbers(text)).toEqual(kept));

it('clauses end at marks and lines, not within numbers', () =>
  expect(clauses('Bar, 2.5 m; STRAIGHT.\n• spins (well) – ½ inch')).toEqual([
    'bar',
    '2.5 m',
    'straight',
    'spins',
    'well',
    '1 2 inch',
  ]));

it('time grows with the text alone', () => {
  const hostile = [
    '$'.repeat(20_000),
    '1,'.repeat(10_000),
    'asking '.repeat(3000),
    '1 '.repeat(10_000),
    '555-'.repeat(5000),
    '½'.repeat(20_000),
    '́'.repeat(20_000),
  ];
  const started = performance.now();
  for (const text of hostile) numbers(text);
  expect(performance.now() - started).toBeLessThan(1000);
});

import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { read } from '../../../src/read/index.ts';

const shaft = (text: string) => {
  const fact = read(listingFromText(text)).items.find(({ kind }) => kind.value === 'bar')?.shaftMm;
  return fact ? [fact.value, fact.rule] : null;
};

describe('bar-sizes.ts', () => {
  it.each<[string, [number, string] | null]>([
    ['Olympic bar, shaft an inch and an eighth, $90', [28.575, 'inch-and']],
    ['Barbell, 1 and 1/8 inch, $90', [28.575, 'inch-and']],
    ['Barbell, inch and a quarter thick, $20', [31.75, 'inch-and']],
    ['Olympic bar (7ft, 28.5) - 150', [28.5, 'bare-shaft']],
    ['Olympic bar, $150. Inch and a half of rust on the rack', null],
    ['Olympic bar, 45 lb plates, 28', null],
  ])('%s', (text, said) => expect(shaft(text)).toEqual(said));
});

/** Prices in signs that are not what they look like. Read as they are seen, or not at all: never another figure without a doubt. */
import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { read } from '../../../src/read/index.ts';

const asked = (price: string): number | null =>
  read(listingFromText(`Olympic plates 2 inch, 4 x 45 lb, 2 x 25 lb. ${price}`)).asking.amount?.value.minor ?? null;

describe('a price is read as it is seen', () => {
  // Unicode Standard Annex 9: after an override every character runs from right to left.
  it.each([
    ['turned by an override', '\u202e005$', 50_000],
    ['turned by an override that ends', '\u202e001$\u202c firm', 10_000],
    ['with its figures turned', '$\u202e001\u202c', 10_000],
    ['in isolates', '\u2067$\u2066100\u2069\u2069', 10_000],
    ['in wide figures', '＄１００', 10_000],
    ['in mathematical figures', '$𝟏𝟎𝟎', 10_000],
    ['with a mark without width', '$1\u200b00', 10_000],
    ['with a soft hyphen', '$1\u00ad00', 10_000],
    ['with strokes put over it', '$100\u0336', 10_000],
    ['with a variation selector', '$\ufe0f100', 10_000],
  ])('%s', (_, price, minor) => expect(asked(price)).toBe(minor));
});

describe('no figure is made of', () => {
  it.each([
    ['letters for zeros', '$1OO'],
    ['one letter among figures', '$1O0'],
    ['letters for all figures', '$IOO'],
    ['a small L for a one', '$l00'],
    ['figures that this reader does not know', '$١٠٠'],
  ])('%s', (_, price) => expect(asked(price)).toBeNull());
});

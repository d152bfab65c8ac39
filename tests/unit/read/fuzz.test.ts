/** A part of `npm run fuzz` with a fixed seed. What must be so for every text is in tests/tools/fuzz/properties.ts; no source. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { read } from '../../../src/read/index.ts';
import { loadCases } from '../../corpus/case.ts';
import { alwaysFine, faultsOf, listings } from '../../tools/fuzz/properties.ts';

const texts = loadCases(`${process.cwd()}/tests/corpus/ads`).map(({ text }) => text);

describe('generated and damaged ads', () => {
  it('never break the reader or the contract', () => {
    fc.assert(alwaysFine(texts), { numRuns: 250, seed: 45 });
  }, 120_000);

  it('are ads enough to try the reader: many of them name goods and prices', () => {
    const readings = fc.sample(listings(texts), { numRuns: 300, seed: 45 }).map((listing) => read(listing));
    expect(readings.filter(({ items }) => items.length > 1).length).toBeGreaterThan(60);
    expect(readings.filter(({ asking }) => asking.amount !== null).length).toBeGreaterThan(60);
    expect(readings.filter(({ doubts }) => doubts.length > 0).length).toBeGreaterThan(10);
  });
});

it('finds a fault where there is one', () => {
  const listing = listingFromText('4 x 45 lb plates, $100');
  expect(faultsOf(listing)).toEqual([]);
  // A text that is longer when the reader comes back for it: spans and second reading can't agree with it.
  let asked = 0;
  const shifty = {
    ...listing,
    get text() {
      asked += 1;
      return `${'x '.repeat(asked)}${listing.text}`;
    },
  };
  expect(faultsOf(shifty)).toContain('read otherwise the second time');
});

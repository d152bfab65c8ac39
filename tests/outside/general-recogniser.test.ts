/**
 * Numbers, money and weights against a general-purpose recogniser that knows nothing of this trade:
 * @microsoft/recognizers-text-number and -number-with-unit 1.3.1 (npm, MIT), English, over every third of the English text ads of the corpus, for
 * the library is slow; over all of them with `EVERY_AD=1`.
 * Where the two differ the reason stands in general-recogniser/differences.ts; `npm run corpus -- --outside` prints every one.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { type Comparison, compare, ratesOf, tableOf, UNEXPLAINED } from './general-recogniser/compare.ts';
import { DIFFERENCES } from './general-recogniser/differences.ts';
import { englishAds, SORTS, type Sort } from './general-recogniser/found.ts';
import { weightsInReadings } from './general-recogniser/in-reading.ts';

const ads = englishAds(process.cwd()).filter((_, place) => process.env.EVERY_AD || place % 3 === 0);
let comparison: Comparison;

beforeAll(() => {
  comparison = compare(ads);
  console.log(tableOf(comparison).join('\n'));
}, 240_000);

describe('what the library finds is found by us with the same value and unit', () => {
  /** How many there must be to judge by, the share of all findings, and the share without those in which the library is mistaken. */
  it.each<[Sort, number, number, number]>([
    ['number', 2000, 0.93, 0.99],
    ['money', 400, 0.86, 0.99],
    ['weight', 400, 0.92, 0.985],
  ])('%s', (sort, least, plain, fair) => {
    const rates = ratesOf(comparison[sort]);
    expect(rates.found).toBeGreaterThanOrEqual(least);
    expect(rates.plain).toBeGreaterThanOrEqual(plain);
    expect(rates.fair).toBeGreaterThanOrEqual(fair);
  });

  it.each<[Sort, number]>([
    ['number', 6],
    ['money', 3],
    ['weight', 3],
  ])('%s: hardly a difference is without a reason', (sort, most) => {
    const unexplained = comparison[sort].theirs.get(UNEXPLAINED) ?? [];
    expect(unexplained.slice(most).map(({ ad, shown }) => `${ad}: ${shown}`)).toEqual([]);
  });
});

describe('where it differs, an example shows', () => {
  it.each(DIFFERENCES.map((one) => [one.name, one] as const))('%s', (name, { example, amounts = [] }) => {
    const shown = compare([{ name, listing: listingFromText(example), text: example, amounts, offers: true }]);
    expect(SORTS.filter((sort) => shown[sort].theirs.has(name))).not.toEqual([]);
  });
});

it('finds more than the library: bare prices and plates by "#" are unknown to it', () => {
  const alone = (sort: Sort): string[] => [...comparison[sort].ours.keys()];
  expect(alone('money')).toEqual(expect.arrayContaining(['price-told', 'price-before-terms']));
  expect(alone('weight')).toContain('#');
});

it('keeps the weights of an ad: they stand in its reading', () => {
  const { held, others } = weightsInReadings(ads);
  const share = held / (held + others.length);
  console.log(`weights: ${held} of ${held + others.length} stand in the reading (${(100 * share).toFixed(1)} %)`);
  expect(held).toBeGreaterThanOrEqual(300);
  expect(share).toBeGreaterThanOrEqual(0.93);
}, 60_000);

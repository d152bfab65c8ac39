/** What is kept of an ad to know it again. Small, and the same wherever and whenever it is made. */
import * as z from 'zod/mini';
import type { PageListing } from '../listing/page-listing.ts';
import { adAddress } from './address.ts';
import { bandsOf, shingles, smallest } from './sketch.ts';
import { clausesOf, numbersOf } from './words.ts';

const hash = z.int().check(z.gte(0), z.lte(0xffffffff));

export const markSchema = z.object({
  /** Normalised, where the address names one ad; null where it does not, or there is none. */
  address: z.nullable(z.string().check(z.maxLength(4000))),
  /** How many shingles the ad has. */
  size: z.int().check(z.nonnegative()),
  sketch: z.array(hash),
  bands: z.array(hash),
  numbers: z.array(z.string().check(z.maxLength(100))),
});
export type Mark = z.infer<typeof markSchema>;

/** Marks of another version are made anew from the listing. */
export const MARK_VERSION = 1;

export function markOf(listing: Pick<PageListing, 'title' | 'text' | 'address'>): Mark {
  const clauses = clausesOf(listing);
  const all = shingles(clauses);
  const address = adAddress(listing.address);
  return {
    address: address?.namesAd ? address.key : null,
    size: all.length,
    sketch: [...smallest(all)],
    bands: [...bandsOf(all)],
    numbers: numbersOf(clauses).map((one) => one.slice(0, 100)),
  };
}

/** What two marks must share one of to be worth comparing: the keys of an index. */
export const keysOf = ({ address, bands }: Mark): readonly string[] => [
  ...(address === null ? [] : [`address ${address}`]),
  ...bands.map((band, index) => `${index} ${band}`),
];

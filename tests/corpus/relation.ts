/** How a relation between readings is tried over the whole corpus. */
import { expect } from 'vitest';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Reading } from '../../src/listing/reading.ts';
import { read } from '../../src/read/index.ts';
import { listingOf, loadCases } from './case.ts';
import { goodsOf } from './essence.ts';

export interface Ad {
  readonly name: string;
  /** With nothing struck through, since rewriting moves places. */
  readonly listing: PageListing;
  readonly reading: Reading;
}
/** What differs in one ad, in words; none when the relation holds; null where it does not apply. */
export type Relation = (ad: Ad) => string[] | null;

const loading: Promise<readonly Ad[]> = Promise.all(
  loadCases(`${process.cwd()}/tests/corpus/ads`).map(async (one) => {
    const listing = { ...(await listingOf(one)), struck: [] };
    return { name: one.name, listing, reading: read(listing) };
  }),
);

/** Expects a relation of every ad that it applies to, at least so many. `except` names ads where it is known not to hold, and why. */
export async function holds(
  relation: Relation,
  atLeast: number,
  except: Readonly<Record<string, string>> = {},
  ads?: readonly Ad[],
): Promise<void> {
  let applied = 0;
  const broken: string[] = [];
  for (const ad of ads ?? (await loading)) {
    const faults = relation(ad);
    if (faults === null) continue;
    applied += 1;
    if (faults.length > 0 && !(ad.name in except)) broken.push(`${ad.name}: ${faults.join('; ')}`);
  }
  expect(broken).toEqual([]);
  expect(applied).toBeGreaterThanOrEqual(atLeast);
}

/** Every so many ads, beginning with another one for each `turn`; all of them with `EVERY_AD=1`. */
const some = async (every: number, turn = 0): Promise<readonly Ad[]> =>
  (await loading).filter((_, place) => process.env.EVERY_AD || place % every === turn % every);

/** The same for every fifth ad, where many judgements of each take their time. `atLeast` is of all ads. */
export const holdsOfEveryFifth = async (relation: Relation, atLeast: number): Promise<void> =>
  holds(relation, atLeast / 5, {}, await some(5));

/** The same for every third ad, another third at each turn, where one ad is looked at in many ways. */
export const holdsOfAThird = async (
  turn: number,
  relation: Relation,
  atLeast: number,
  except?: Readonly<Record<string, string>>,
): Promise<void> => holds(relation, atLeast, except, await some(3, turn));

export const rewritten = (ad: Ad, text: string, title = ad.listing.title): Reading => read({ ...ad.listing, text, title });

/** One item as a text to compare by. */
export const keyOf = (item: Reading['items'][number]): string => {
  const { count, kind, unitWeight, ownPrice } = goodsOf(item);
  return JSON.stringify([count, kind, unitWeight, ownPrice]);
};
export const keys = (reading: Reading): string[] => reading.items.map(keyOf).sort();

/** How a relation between readings is tried over the whole corpus. */
import { expect } from 'vitest';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Reading } from '../../src/listing/reading.ts';
import { read } from '../../src/read/index.ts';
import { type Case, listingOf, loadCases } from './case.ts';
import { goodsOf } from './essence.ts';

export interface Ad {
  readonly name: string;
  /** With nothing struck through, since rewriting moves places. */
  readonly listing: PageListing;
  readonly reading: Reading;
}
/** What differs in one ad, in words; none when the relation holds; null where it does not apply. */
export type Relation = (ad: Ad) => string[] | null;

const cases = loadCases(`${process.cwd()}/tests/corpus/ads`);
const known = new Map<Case, Promise<Ad>>();

/** Read when a relation first looks at it, and once for all of them. */
function adOf(one: Case): Promise<Ad> {
  const ad = known.get(one) ?? reading(one);
  known.set(one, ad);
  return ad;
}
async function reading(one: Case): Promise<Ad> {
  const listing = { ...(await listingOf(one)), struck: [] };
  return { name: one.name, listing, reading: read(listing) };
}

/** Every so many ads, another part of them for each test; all of them with `EVERY_AD=1`. */
function some(every: number): Promise<readonly Ad[]> {
  const turn = [...(expect.getState().currentTestName ?? '')].reduce((sum, letter) => sum + letter.charCodeAt(0), 0);
  return Promise.all(cases.filter((_, place) => process.env.EVERY_AD || place % every === turn % every).map(adOf));
}

/**
 * Expects a relation of every third ad that it applies to; of so many at least, had it been every one. `except` names ads where it is known not to
 * hold, and why.
 */
export async function holds(
  relation: Relation,
  atLeast: number,
  except: Readonly<Record<string, string>> = {},
  every = 3,
): Promise<void> {
  let applied = 0;
  const broken: string[] = [];
  for (const ad of await some(every)) {
    const faults = relation(ad);
    if (faults === null) continue;
    applied += 1;
    if (faults.length > 0 && !(ad.name in except)) broken.push(`${ad.name}: ${faults.join('; ')}`);
  }
  expect(broken).toEqual([]);
  expect(applied).toBeGreaterThanOrEqual(Math.floor(atLeast / every));
}

/** Of every tenth ad, where many judgements of each take their time. */
export const holdsOfEveryTenth = (relation: Relation, atLeast: number): Promise<void> => holds(relation, atLeast, {}, 10);

/** Of all ads, where few may show it. */
export const holdsOfAll = (relation: Relation, atLeast: number, except?: Readonly<Record<string, string>>): Promise<void> =>
  holds(relation, atLeast, except, 1);

export const rewritten = (ad: Ad, text: string, title = ad.listing.title): Reading => read({ ...ad.listing, text, title });

/** One item as a text to compare by. */
export const keyOf = (item: Reading['items'][number]): string => {
  const { count, kind, unitWeight, ownPrice } = goodsOf(item);
  return JSON.stringify([count, kind, unitWeight, ownPrice]);
};
export const keys = (reading: Reading): string[] => reading.items.map(keyOf).sort();

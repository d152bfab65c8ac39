/** One number, amount of money or weight that somebody found in a text, and the text ads that both look at. */
import { composeText } from '../../../src/listing/compose.ts';
import { listingFromText, type PageListing } from '../../../src/listing/page-listing.ts';
import { chooseLanguage } from '../../../src/read/language/choose.ts';
import { type Case, loadCases } from '../../corpus/case.ts';

export const SORTS = ['number', 'money', 'weight'] as const;
export type Sort = (typeof SORTS)[number];

export interface Found {
  readonly sort: Sort;
  /** Offsets in the text of the ad. */
  readonly start: number;
  readonly end: number;
  /** Money in major units. */
  readonly value: number;
  /** "lb" or "kg"; an ISO 4217 code, "dollar" for a dollar of no country, null for no currency. Null of a number. */
  readonly unit: string | null;
  /** Rule or notation by which it was found. */
  readonly how: string;
}

export const overlaps = (a: { start: number; end: number }, b: { start: number; end: number }): boolean =>
  a.start < b.end && b.start < a.end;

export interface Ad {
  readonly name: string;
  readonly listing: PageListing;
  readonly text: string;
  /** Amounts of money that its label tells: asked, per unit, of a line. */
  readonly amounts: readonly number[];
  /** Whether its label offers goods of the trade. */
  readonly offers: boolean;
}

/** The English text ads of the corpus in the order of their names; pages (HTML) are left out, for the library reads no markup. */
export function englishAds(root: string): Ad[] {
  const english = ({ label, html }: Case): boolean => !html && label.lang !== 'de';
  return loadCases(`${root}/tests/corpus/ads`)
    .filter(english)
    .map((one) => {
      const listing = listingFromText(one.text, 'file');
      const { asking, items, aboutThisTrade, wanted } = one.label;
      const amounts = [asking?.amount, asking?.unitAmount, ...(items ?? []).map(({ ownPrice }) => ownPrice)];
      return {
        name: one.name,
        listing,
        text: composeText(listing).text,
        amounts: amounts.filter((amount) => typeof amount === 'number'),
        offers: aboutThisTrade !== false && wanted !== true,
      };
    })
    .filter(({ text }) => chooseLanguage(null, text).code === 'en');
}

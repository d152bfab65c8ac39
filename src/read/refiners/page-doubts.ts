/** Doubts about the page rather than a value: too much text, or several ads in what was taken. They have no choices: the buyer takes another piece of the page. */
import type { PageListing } from '../../listing/page-listing.ts';
import type { Doubt } from '../../listing/reading.ts';
import { message } from '../../words/message.ts';

const doubt = (key: string, params: Readonly<Record<string, number>>): Doubt => ({
  id: `${key}:text`,
  about: 'text',
  why: message(`doubt_${key}`, params),
  choices: [],
  evidence: [],
});

/** "pickup at my shop, I… See more": the page shows the beginning and keeps the rest behind a link. */
const CUT_SHORT =
  /(?:…|\.{3})\s{0,3}(?:(?:see|show|read|view) (?:more|all|full [a-z]{1,12})|more|mehr (?:anzeigen|lesen)|weiterlesen|alles anzeigen)[ \t]{0,3}$/imu;

/** `read` is how many characters of the text were looked at. */
export function pageDoubts(listing: PageListing, length: number, read: number): Doubt[] {
  const doubts: Doubt[] = [];
  if (length > read) doubts.push(doubt('too_long', { read, length }));
  if (CUT_SHORT.test(listing.text)) doubts.push(doubt('cut_short', {}));
  // A page of one ad marks up one offer; one of a shop or a list of results has an offer for each.
  const names = new Set(listing.offers.flatMap(({ name, price }) => (name && price ? [name.trim().toLowerCase()] : [])));
  if (names.size > 1 && (listing.origin === 'page' || listing.origin === 'pick' || listing.origin === 'file'))
    doubts.push(doubt('several_ads', { n: names.size }));
  return doubts;
}

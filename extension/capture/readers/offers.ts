/** Which of the page's structured offers speak of the block that was chosen. */
import type { Offer } from '../../../src/listing/page-listing.ts';
import { readJsonLd } from './json-ld.ts';
import { MAX_OFFERS } from './limits.ts';
import { readMicrodata } from './microdata.ts';
import { readOpenGraph } from './open-graph.ts';
import { own } from './own.ts';

const squeeze = (text: string | null): string => (text ?? '').replace(/\s+/g, ' ').trim().toLowerCase();

const figures = (price: string | null): string => (price ?? '').replace(/[^\d.]/g, '').replace(/\.0+$/, '');

/** Named in the block, or the page's only one with its price shown there. */
const speaksOf = (offer: Offer, alone: boolean, words: string): boolean => {
  const name = squeeze(offer.name);
  if (name !== '' && words.includes(name)) return true;
  const price = figures(offer.price);
  return alone && price !== '' && words.replaceAll(',', '').includes(price);
};

const same = (a: Offer, b: Offer): boolean =>
  figures(a.price) === figures(b.price) && (a.currency ?? b.currency) === (b.currency ?? a.currency);

/**
 * The offers for a block, best first: those marked up in it, then JSON-LD, then the page's head. `words` are its title and text. For a
 * whole page, the only offer is the page's own; of several, those that are named in its text.
 */
export function readOffers(block: Element, words: string, wholePage: boolean): Offer[] {
  const document = own(block).ownerDocument;
  const lower = squeeze(words);
  const marked = readMicrodata(document)
    .filter(({ element }) => own(block).contains(element) || own(element).contains(block))
    .map(({ offer }) => offer);
  const linked = readJsonLd(document);
  const chosen = linked.filter(
    (offer) => (wholePage && linked.length === 1 && !offer.name) || speaksOf(offer, linked.length === 1, lower),
  );
  const head = readOpenGraph(document);
  const inHead = head && (wholePage || speaksOf(head, true, lower)) ? [head] : [];
  const all: Offer[] = [...marked, ...chosen];
  for (const offer of inHead) if (!all.some((known) => same(known, offer))) all.push(offer);
  return all.slice(0, MAX_OFFERS);
}

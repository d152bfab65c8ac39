/** One ad of a list as a plain listing: its own words, title, price and address; never the page's. */
import type { Offer, PageListing } from '../../../src/listing/page-listing.ts';
import { hintsOf, isPriceHint } from '../readers/hints.ts';
import type { Captured, Stretch } from '../readers/index.ts';
import { pageAddress } from '../readers/index.ts';
import { readJsonLd } from '../readers/json-ld.ts';
import { readLanguage } from '../readers/language.ts';
import { MAX_TITLE } from '../readers/limits.ts';
import { type MarkedOffer, readMicrodata } from '../readers/microdata.ts';
import { own } from '../readers/own.ts';
import { readPrice } from '../readers/price.ts';
import { readText } from '../readers/read-text.ts';
import { parentOf, tagOf } from '../readers/rendered.ts';
import type { Sight } from '../readers/sight.ts';
import { amountIn, lettersIn } from './amounts.ts';
import { linkAddress } from './parts.ts';

/** A card of a results page says little; what says more is cut, so that a long list fits into the browser's session storage. */
const MAX_CARD_TEXT = 4000;
const LONGEST_TITLE = 300;
const MOST_OFFERS = 500;

export interface PageOffers {
  readonly marked: readonly MarkedOffer[];
  readonly named: ReadonlyMap<string, Offer>;
}

const squeeze = (text: string): string => text.replace(/\s+/g, ' ').trim();
const bare = (text: string): string => text.replace(/\s+/g, '');
const keyOf = (name: string): string => squeeze(name).toLowerCase();

/** The page's structured offers, read once for all of its ads. */
export function offersOf(document: Document): PageOffers {
  const named = new Map<string, Offer>();
  for (const offer of readJsonLd(document, MOST_OFFERS))
    if (offer.name && !named.has(keyOf(offer.name))) named.set(keyOf(offer.name), offer);
  return { marked: readMicrodata(document, MOST_OFFERS), named };
}

/** All elements of a block, through shadow roots of elements of the page's own making. */
function elementsIn(block: readonly Element[], sight: Sight): Element[] {
  const found: Element[] = [];
  const pending = [...block].reverse();
  for (let element = pending.pop(); element; element = pending.pop()) {
    found.push(element);
    const shadow = own(element).localName.includes('-') ? sight.shadowRootOf(element) : null;
    for (const inside of [...(shadow?.children ?? []), ...own(element).children].reverse()) pending.push(inside);
  }
  return found;
}

const isHeading = (element: Element): boolean =>
  /^H[1-6]$/.test(tagOf(element)) ||
  own(element).getAttribute('role') === 'heading' ||
  (own(element).getAttribute('itemprop') ?? '').split(' ').includes('name');

const textOf = (element: Element, sight: Sight): string => squeeze(readText(element, { sight, limit: MAX_TITLE }).text);

/** What a link says when it only leads to the ad. */
const LEADS_ON =
  /^(?:view|see|show|read|open|more|details?|contact|message|mehr|ansehen|zur anzeige)(?: (?:more|ad|item|listing|details?|info|seller|it|lesen|erfahren))*\W*$/i;

/** Words of a title: some letters, and not a price. */
const isTitle = (text: string): boolean =>
  lettersIn(text) >= 3 && text.length <= LONGEST_TITLE && !(amountIn(text) && lettersIn(text) < 8) && !LEADS_ON.test(text);

/** The link around a block, when the whole card is one. */
function linkAround(element: Element): string | null {
  for (let at = parentOf(element); at && tagOf(at) !== 'BODY'; at = parentOf(at)) {
    const address = linkAddress(at);
    if (address !== null) return address;
  }
  return null;
}

interface Named {
  readonly title: string;
  readonly address: string | null;
}

/** The heading names the ad, else the link with the most words, else the first line that is no price. The title's own link is the ad's. */
function nameOf(elements: readonly Element[], lines: readonly string[], sight: Sight): Named {
  const links = elements.map((element) => ({ element, address: linkAddress(element) })).filter(({ address }) => address !== null);
  for (const heading of elements.filter(isHeading).slice(0, 5)) {
    const title = textOf(heading, sight);
    if (!isTitle(title)) continue;
    const around = links.find(({ element }) => own(heading).contains(element) || own(element).contains(heading));
    return { title, address: around?.address ?? links[0]?.address ?? null };
  }
  const first = lines.map(squeeze).find((line) => isTitle(line)) ?? '';
  let best: { readonly element: Element; readonly words: string; readonly address: string | null } | null = null;
  for (const { element, address } of links.slice(0, 12)) {
    const words = squeeze(own(element).textContent ?? '');
    // A link about the whole card says everything in it: its first line names it.
    if (isTitle(words) && !lines.every((line) => bare(words).includes(bare(line))) && words.length > (best?.words.length ?? 0))
      best = { element, words, address };
  }
  if (best) return { title: textOf(best.element, sight), address: best.address };
  // In a line that goes on to the price, the first element of it that can be a title.
  const piece = amountIn(first) && elements.find((one) => own(one).childElementCount === 0 && isTitle(textOf(one, sight)));
  return { title: (piece ? textOf(piece, sight) : first).replace(/^• /, ''), address: links[0]?.address ?? null };
}

/** What is marked up as the price, before what is only named so. */
function priceOf(elements: readonly Element[], sight: Sight): string | null {
  const named = elements.filter((element) => own(element).hasAttributes() && isPriceHint(hintsOf(element)));
  const marked = named.filter((element) => own(element).getAttribute('itemprop') === 'price');
  for (const element of [...marked, ...named]) {
    const price = readPrice(element, { sight });
    if (price) return price;
  }
  return null;
}

/** The block's text with the way back to its nodes; the parts of an ad that has no element of its own stand on lines of their own. */
function textOfBlock(block: readonly Element[], sight: Sight) {
  let text = '';
  let cut = false;
  const struck: { start: number; end: number }[] = [];
  const stretches: Stretch[] = [];
  for (const element of block) {
    const seen = readText(element, { sight, limit: MAX_CARD_TEXT - text.length });
    if (seen.text === '') continue;
    const shift = text === '' ? 0 : text.length + 1;
    text = text === '' ? seen.text : `${text}\n${seen.text}`;
    cut ||= seen.cut;
    struck.push(...seen.struck.map(({ start, end }) => ({ start: start + shift, end: end + shift })));
    stretches.push(...seen.stretches.map((one) => ({ ...one, start: one.start + shift, end: one.end + shift })));
    if (text.length >= MAX_CARD_TEXT - 1) break;
  }
  return { text, cut, struck, stretches };
}

/** Reads one ad. `page` is the address of the page, given where the ad has no link of its own. */
export function readBlock(block: readonly Element[], page: string, offers: PageOffers, sight: Sight): Captured {
  const { text, cut, struck, stretches } = textOfBlock(block, sight);
  const elements = elementsIn(block, sight);
  const { title, address } = nameOf(
    elements,
    text.split(/[\n\t]/).filter((line) => line.trim() !== ''),
    sight,
  );
  const [first] = block;
  const link = address ?? (first ? linkAround(first) : null);
  const marked = offers.marked.filter(({ element }) => block.some((one) => own(one).contains(element))).map(({ offer }) => offer);
  const named = offers.named.get(keyOf(title));
  const listing: PageListing = {
    origin: 'sweep',
    address: pageAddress(link ?? page),
    title,
    text,
    struck,
    priceText: priceOf(elements, sight),
    offers: marked.length > 0 ? marked.slice(0, 5) : named ? [named] : [],
    language: first ? readLanguage(first) : null,
  };
  return { listing, cut, stretches };
}

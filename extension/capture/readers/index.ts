/**
 * Readers: a document, element or selection in, a plain `PageListing` out, with a table from its text back to the page's nodes.
 * They only read. They run in the page, and on files in Node with jsdom.
 */
import type { PageListing } from '../../../src/listing/page-listing.ts';
import { isApart } from './hints.ts';
import { readLanguage } from './language.ts';
import { MAX_ADDRESS } from './limits.ts';
import { findAd, findMainBlock } from './main-block.ts';
import { readOffers } from './offers.ts';
import { own } from './own.ts';
import { readPrice, shownPrice } from './price.ts';
import { takenBy } from './ranges.ts';
import { type ReadTextOptions, readText } from './read-text.ts';
import { isElement, parentOf } from './rendered.ts';
import { computedSight, remembering, type Sight } from './sight.ts';
import type { Stretch } from './text-builder.ts';
import { isOneOfMany, readTitle } from './title.ts';

export { findMainBlock } from './main-block.ts';
export { computedSight, type Sight } from './sight.ts';
export type { Stretch } from './text-builder.ts';

export interface Captured {
  readonly listing: PageListing;
  /** The text was longer than 1,000,000 characters: its end is missing. */
  readonly cut: boolean;
  /** From stretches of `listing.text` to the nodes that show them. */
  readonly stretches: readonly Stretch[];
}

export interface ReadOptions {
  readonly origin: PageListing['origin'];
  /** What can be seen; by default computed style and open shadow roots. */
  readonly sight?: Sight | undefined;
  /** Address of the page; by default the document's own. */
  readonly address?: string | undefined;
}

/** The address without fragment; null for anything but a web page. */
export function pageAddress(address: string): string | null {
  let url: URL;
  try {
    url = new URL(address);
  } catch {
    return null;
  }
  if (url.protocol !== 'http:' && url.protocol !== 'https:') return null;
  url.hash = '';
  return url.href.length <= MAX_ADDRESS ? url.href : url.origin;
}

/** One reading asks for the same element many times. */
const sightOf = ({ sight }: ReadOptions): Sight => remembering(sight ?? computedSight());

const othersIn = (block: Element) => (element: Element) => element !== block && isApart(element);

/** Whoever selects this part of an ad's words means the ad; less is a choice from it. */
const MOST_OF_IT = 1 / 3;

/** Title and price of the ad that the selected words are the description of: pages show them elsewhere. */
function adAround(block: Element, words: string, { sight }: ReadTextOptions): Pick<PageListing, 'title' | 'priceText'> | null {
  const ad = isOneOfMany(block) ? null : findAd(own(block).ownerDocument, sight);
  if (!ad || !(own(ad.block).contains(block) || own(block).contains(ad.block))) return null;
  const how = { sight, skip: othersIn(ad.block) };
  if (words.length < MOST_OF_IT * readText(ad.block, how).text.length) return null;
  return { title: readTitle(ad.block, how), priceText: (ad.price && shownPrice(ad.price, how)) || null };
}

function read(block: Element, options: ReadOptions, how: ReadTextOptions, wholePage: boolean): Captured {
  const seen = readText(block, how);
  const around = how.ranges ? adAround(block, seen.text, how) : null;
  const title = readTitle(block, how) || (around?.title ?? '');
  return {
    listing: {
      origin: options.origin,
      address: pageAddress(options.address ?? own(own(block).ownerDocument).URL),
      title,
      text: seen.text,
      struck: seen.struck.map(({ start, end }) => ({ start, end })),
      priceText: readPrice(block, how) ?? around?.priceText ?? null,
      offers: readOffers(block, `${title}\n${seen.text}`, wholePage),
      language: readLanguage(block),
    },
    cut: seen.cut,
    stretches: seen.stretches,
  };
}

/** One block of a page, all of it that can be seen. */
export function readElement(block: Element, options: ReadOptions): Captured {
  return read(block, options, { sight: sightOf(options) }, false);
}

/** What is selected: one range, or several (Firefox). All must lie in one tree. Null when nothing is selected. */
export function readRanges(ranges: readonly Range[], options: ReadOptions): Captured | null {
  const [first, ...others] = ranges;
  if (!first) return null;
  const whole = first.cloneRange();
  for (const range of others) {
    if (whole.compareBoundaryPoints(2, range) < 0) whole.setEnd(range.endContainer, range.endOffset);
    if (whole.compareBoundaryPoints(0, range) > 0) whole.setStart(range.startContainer, range.startOffset);
  }
  const common = whole.commonAncestorContainer;
  const block = isElement(common) ? common : (parentOf(common) ?? (common as Document).documentElement);
  return block ? read(block, options, { sight: sightOf(options), ranges: ranges.map(takenBy) }, false) : null;
}

/** A whole page: its main block, without navigation, lists of other ads and the like. */
export function readDocument(document: Document, options: ReadOptions): Captured {
  const sight = sightOf(options);
  const block = findMainBlock(document, sight) ?? own(document).documentElement;
  return read(block, options, { sight, skip: othersIn(block) }, true);
}

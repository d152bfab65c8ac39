/** Which ads of a page are known already, and where they stand. */

import type { SweptAd } from '../../platform/messages.ts';
import { isThere, own } from '../readers/own.ts';
import type { Sight } from '../readers/sight.ts';
import { findBlocks } from './find-blocks.ts';
import type { Part } from './parts.ts';
import { offersOf, readBlock } from './read-block.ts';
import { isShown, rememberingSight } from './sight.ts';

/** So many ads are read of one page, at most. */
export const MOST_ADS = 500;

/** An ad and every place of the page that shows it: a featured ad stands in the list once more. */
export interface Known {
  readonly id: string;
  /** First element of each place, with all elements of it. */
  readonly places: Map<Element, readonly Element[]>;
}

export interface Gathered {
  readonly byId: ReadonlyMap<string, Known>;
  /** The ad whose place begins with this element. */
  readonly at: ReadonlyMap<Element, Known>;
  /** Reads what is new on the page, and tells of each ad as soon as it is read, and of each place. Stops now and then. */
  read(
    sight: Sight,
    met: (root: Node) => void,
    placed: (element: Element) => void,
    ad: (ad: SweptAd) => void,
  ): Generator<void, void>;
  /** Forgets places that the page has taken away. Gives their elements. */
  forgetGone(): readonly Element[];
}

export const rootOfPage = (): Element => own(document).body ?? own(document).documentElement;

const linkOf = (first: Element | undefined): string | null | undefined =>
  first && own(own(first).querySelector('a[href]') ?? first).getAttribute('href');

/** Tells whether an element still shows the same ad: lists that reuse their cards put others into them. */
const printOf = ({ characters, letters, pieces, elements: [first] }: Part): string =>
  `${characters} ${letters} ${pieces} ${linkOf(first)}`;

export function gather(page: () => string): Gathered {
  const byId = new Map<string, Known>();
  const at = new Map<Element, Known>();
  /** By address and words: the same ad in a new element is the same. */
  const byName = new Map<string, Known>();
  const prints = new WeakMap<Element, string>();

  const move = (first: Element, block: readonly Element[], known: Known): void => {
    const before = at.get(first);
    if (before !== known) before?.places.delete(first);
    known.places.set(first, block);
    at.set(first, known);
  };

  return {
    byId,
    at,
    *read(plain, met, placed, ad) {
      const sight = rememberingSight(plain);
      const blocks = yield* findBlocks(rootOfPage(), sight, met);
      const offers = blocks.length > 0 ? offersOf(document) : null;
      yield;
      for (const block of blocks) {
        const [first] = block.elements;
        if (!first || !offers || prints.get(first) === printOf(block)) continue;
        if (byId.size >= MOST_ADS) return;
        placed(first);
        if (!isShown(first, sight)) continue;
        const { listing } = readBlock(block.elements, page(), offers, sight);
        prints.set(first, printOf(block));
        if (listing.text.trim() !== '') {
          const own = listing.address !== null && listing.address !== page();
          const name = `${own ? listing.address : ''}\n${listing.title}\n${own ? listing.priceText : listing.text}`;
          const known = byName.get(name) ?? { id: `ad-${byId.size + 1}`, places: new Map() };
          move(first, block.elements, known);
          if (!byName.has(name)) {
            byName.set(name, known);
            byId.set(known.id, known);
            ad({ id: known.id, listing });
          }
        }
        yield;
      }
    },
    forgetGone: () => {
      const gone = [...at.keys()].filter((element) => !isThere(element));
      for (const element of gone) {
        at.get(element)?.places.delete(element);
        at.delete(element);
      }
      return gone;
    },
  };
}

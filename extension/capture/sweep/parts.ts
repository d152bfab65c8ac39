/**
 * A page as a tree of parts with what an ad shows: words, prices, links, headings, pictures. One walk through the page as it is
 * rendered (open shadow roots, slots, frames of the same origin); no style is asked for, so it costs little and needs no layout.
 */
import { hintsOf, isPriceHint } from '../readers/hints.ts';
import { own } from '../readers/own.ts';
import { isElement, isText, renderedChildren, tagOf } from '../readers/rendered.ts';
import type { Sight } from '../readers/sight.ts';
import { amountIn, lettersIn } from './amounts.ts';

export interface Part {
  /** One element, or several neighbours that make one ad together (a term and its definition, two rows of a table). */
  readonly elements: readonly Element[];
  readonly children: readonly Part[];
  /** Place in the page's order. */
  readonly order: number;
  /** Characters of text, blanks aside. */
  readonly characters: number;
  /** Letters of the alphabet among them: a title has some, a price next to none. */
  readonly letters: number;
  /** Letters before the first link, and letters in links: in a sentence the link stands amidst its words. */
  readonly lead: number;
  readonly linkLetters: number;
  /** Pieces of text. */
  readonly pieces: number;
  readonly prices: number;
  /** A piece of text that is a price and nothing else. */
  readonly bare: boolean;
  /** Links to other pages; what stands inside a link counts as one. */
  readonly links: number;
  readonly headings: number;
  readonly pictures: number;
  /** Belongs to the page and not to its ads: navigation, footer, dialog. */
  readonly apart: boolean;
  readonly tag: string;
}

const UNREAD = new Set(
  'SCRIPT STYLE TEMPLATE NOSCRIPT HEAD META LINK OBJECT EMBED AUDIO VIDEO CANVAS INPUT TEXTAREA SELECT OPTION DATALIST PROGRESS METER BR HR'.split(
    ' ',
  ),
);
const APART = /^(?:NAV|FOOTER|DIALOG)$/;
const APART_ROLES = new Set(
  'navigation banner contentinfo search dialog alertdialog menu menubar toolbar tablist listbox'.split(' '),
);
/** A page of more elements than this is read as far as it goes. */
const MOST_PARTS = 60_000;
const DEEPEST = 200;
/** A price alone is no longer than this. */
const LONGEST_FIGURE = 40;
/** Letters beside the figure of a price that stands alone: "C$5 ono". */
const BARE = 5;
/** Steps between two looks at the clock. */
const STRIDE = 200;

function isApart(element: Element, tag: string): boolean {
  const role = own(element).getAttribute('role');
  if (role !== null && APART_ROLES.has(role)) return true;
  if (tag === 'HEADER') return !own(element).closest('main, article, section, li, [role="main"]');
  return APART.test(tag);
}

/** The address that a link leads to; null for places on the same page, mail, telephone and scripts. */
export function linkAddress(element: Element, tag = tagOf(element)): string | null {
  if (tag !== 'A' && tag !== 'AREA') return null;
  const written = element.getAttribute('href')?.trim() ?? '';
  if (written === '' || written.startsWith('#') || /^(?!https?:)[a-z][a-z0-9+.-]*:/i.test(written)) return null;
  return (element as HTMLAnchorElement).href || null;
}

interface Open {
  readonly element: Element;
  readonly tag: string;
  readonly linked: boolean;
  readonly pending: readonly Node[];
  readonly depth: number;
  next: number;
  readonly children: Part[];
  readonly order: number;
  characters: number;
  letters: number;
  lead: number;
  linkLetters: number;
  pieces: number;
  prices: number;
  links: number;
  headings: number;
  pictures: number;
  bare: boolean;
  figures: boolean;
}

const HEADING = /^H[1-6]$/;

/** The tree of a page. A generator: it stops every few hundred elements, so that its caller can let the page go on. `met` is told every root that is walked. */
export function* partsOf(root: Element, sight: Sight, met: (root: Node) => void = () => undefined): Generator<void, Part> {
  let count = 0;
  const open = (element: Element, tag: string, around: Open | null): Open => {
    const shadow = sight.shadowRootOf(element);
    if (shadow) met(shadow);
    else if (tag === 'IFRAME' || tag === 'FRAME') {
      const [body] = renderedChildren(element, sight);
      if (body) met(body);
    }
    const address = linkAddress(element, tag);
    return {
      element,
      tag,
      linked: address !== null || (around?.linked ?? false),
      pending: renderedChildren(element, sight),
      depth: (around?.depth ?? 0) + 1,
      next: 0,
      children: [],
      order: count,
      characters: 0,
      letters: 0,
      lead: 0,
      linkLetters: 0,
      pieces: 0,
      prices: 0,
      links: address !== null && !around?.linked ? 1 : 0,
      headings: HEADING.test(tag) || own(element).getAttribute('role') === 'heading' ? 1 : 0,
      pictures: tag === 'IMG' || tag === 'PICTURE' || tag === 'SVG' ? 1 : 0,
      bare: false,
      figures: false,
    };
  };
  const close = (part: Open): Part => {
    const { element, tag, figures, linked, pending, next, depth, ...counts } = part;
    // A bare figure that the page calls a price.
    const isPrice = counts.prices === 0 && figures && counts.characters <= LONGEST_FIGURE && isPriceHint(hintsOf(element));
    return { ...counts, prices: isPrice ? 1 : counts.prices, elements: [element], apart: isApart(element, tag), tag };
  };
  const takeText = (part: Open, text: string): void => {
    const characters = text.replace(/\s+/g, '').length;
    if (characters === 0) return;
    part.characters += characters;
    const letters = lettersIn(text);
    part.letters += letters;
    if (part.linked) part.linkLetters += letters;
    else if (part.links === 0) part.lead += letters;
    part.pieces += 1;
    if (amountIn(text)) {
      part.prices += 1;
      part.bare ||= letters <= BARE;
    } else if (characters <= LONGEST_FIGURE && /\d/.test(text)) part.figures = true;
  };
  const stack: Open[] = [open(root, tagOf(root), null)];
  for (;;) {
    const top = stack.at(-1) as Open;
    const child = count < MOST_PARTS ? top.pending[top.next++] : undefined;
    if (child && isText(child)) takeText(top, child.data);
    else if (child && isElement(child)) {
      const tag = tagOf(child);
      if (UNREAD.has(tag) || own(child).hasAttribute('hidden') || top.depth > DEEPEST) continue;
      if (tag === 'SVG') {
        top.pictures += 1;
        continue;
      }
      stack.push(open(child, tag, top));
      count += 1;
      if (count % STRIDE === 0) yield;
    } else if (!child) {
      stack.pop();
      const done = close(top);
      const around = stack.at(-1);
      if (!around) return done;
      around.children.push(done);
      if (around.links === 0) around.lead += done.lead;
      around.linkLetters += done.linkLetters;
      around.characters += done.characters;
      around.letters += done.letters;
      around.pieces += done.pieces;
      around.prices += done.prices;
      around.links += done.links;
      around.headings += done.headings;
      around.pictures += done.pictures;
      around.bare ||= done.bare;
      around.figures ||= top.figures;
    }
  }
}

type Figure = 'characters' | 'letters' | 'linkLetters' | 'pieces' | 'prices' | 'links' | 'headings' | 'pictures';

/** Several neighbours as one part. */
export const joined = (parts: readonly Part[]): Part => {
  const sum = (figure: Figure): number => parts.reduce((total, part) => total + part[figure], 0);
  return {
    elements: parts.flatMap(({ elements }) => elements),
    children: parts,
    order: parts[0]?.order ?? 0,
    characters: sum('characters'),
    letters: sum('letters'),
    lead: parts[0]?.lead ?? 0,
    linkLetters: sum('linkLetters'),
    pieces: sum('pieces'),
    prices: sum('prices'),
    links: sum('links'),
    bare: parts.some(({ bare }) => bare),
    headings: sum('headings'),
    pictures: sum('pictures'),
    apart: parts.every(({ apart }) => apart),
    tag: parts.map(({ tag }) => tag).join('+'),
  };
};

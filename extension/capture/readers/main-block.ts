/** The part of a whole page that is most likely the ad: by the page's structure only, for no site in particular. */
import { hintsOf, isApart, isPriceHint } from './hints.ts';
import { own } from './own.ts';
import { isElement, isText, renderedChildren, shortText, tagOf } from './rendered.ts';
import type { Sight } from './sight.ts';
import { isLeftOut, showsAmount, squeeze } from './title.ts';

/** Elements whose text belongs to the paragraph or list around them. */
const PARTS = new Set(
  'P SPAN B I STRONG EM A BR UL OL LI FONT U SMALL SUP SUB PRE DL DT DD TABLE TBODY TR TD TH DEL S'.split(' '),
);

interface Found {
  heading: Element | null;
  price: Element | null;
  longest: Element | null;
  length: number;
  /** Begins as the page's title does; the last before the longest text, else the first. */
  named: Element | null;
  /** Nothing but an amount; likewise. */
  amount: Element | null;
}

/** Characters of text that stand directly in an element or in its paragraphs and lists. */
function ownText(element: Element, sight: Sight): number {
  let length = 0;
  const pending: Node[] = [...renderedChildren(element, sight)];
  for (let node = pending.pop(); node; node = pending.pop()) {
    if (isText(node)) length += node.data.trim().length;
    else if (isElement(node) && PARTS.has(tagOf(node)) && tagOf(node) !== 'A')
      for (const child of own(node).childNodes) pending.push(child);
  }
  return length;
}

/** An amount with little else: "$225", "VB 350 €", "Price: C$800 or best offer". */
const ALONE = /^\D{0,14}\d[\d.,' ]*\D{0,16}$/;
/** Longest text of what may name the ad or its price. */
const SHORT = 300;

function survey(root: Element, sight: Sight): Found {
  const found: Found = { heading: null, price: null, longest: null, length: 0, named: null, amount: null };
  const last: Pick<Found, 'named' | 'amount'> = { named: null, amount: null };
  const title = squeeze(own(own(root).ownerDocument).title);
  const pending: Element[] = [root];
  for (let element = pending.pop(); element; element = pending.pop()) {
    if (element !== root && isApart(element)) continue;
    const { hidden, struck } = sight.lookOf(element);
    if (hidden) continue;
    const short = squeeze(shortText(element, SHORT));
    // The masthead of a site stands last in the page's title.
    if (tagOf(element) === 'H1' && short && (short === title || !title.endsWith(short))) found.heading ??= element;
    if (short.length > 3 && title.startsWith(short) && /^($|\s\W)/.test(title.slice(short.length))) last.named = element;
    if (short.length <= 60 && /\d/.test(short) && isPriceHint(hintsOf(element))) found.price ??= element;
    // The outermost: what stands around the figure says what it is for.
    if (ALONE.test(short) && showsAmount(element) && !struck && !(last.amount && own(last.amount).contains(element)))
      last.amount = element;
    if (!PARTS.has(tagOf(element))) {
      const length = ownText(element, sight);
      if (length > found.length) Object.assign(found, { longest: element, length }, last);
    }
    found.named ??= last.named;
    found.amount ??= last.amount;
    for (const child of renderedChildren(element, sight).filter(isElement).reverse()) pending.push(child);
  }
  return found;
}

const commonAncestor = (a: Element, b: Element): Element => {
  let at: Element = a;
  for (let up = own(at).parentElement; up && !own(at).contains(b); up = own(at).parentElement) at = up;
  return at;
};

/** A dialog in front of the page with a price in it: the ad, opened over a list of others. */
const dialogOf = (document: Document, sight: Sight): Element | undefined =>
  [...own(document).querySelectorAll('[aria-modal="true"], dialog[open]')]
    .slice(0, 20)
    .find((dialog) => showsAmount(dialog) && !isLeftOut(dialog, null, { sight }));

/** What the page itself marks as its one subject. */
function rootOf(document: Document, sight: Sight): Element | null {
  const reading = own(document);
  const articles = reading.querySelectorAll('article:not(:is(article, aside, footer, nav) article)');
  return (
    dialogOf(document, sight) ??
    reading.querySelector('[itemscope][itemtype*="schema.org/Product"]') ??
    reading.querySelector('main, [role="main"]') ??
    (articles.length === 1 ? articles[0] : null) ??
    reading.body
  );
}

export interface Ad {
  readonly block: Element;
  /** Shows its price. */
  readonly price: Element | null;
}

/** Null only for a document without a body. What is in it and not part of the ad is told by `isApart`. */
export function findAd(document: Document, sight: Sight): Ad | null {
  const root = rootOf(document, sight);
  if (!root) return null;
  const { heading, named, longest, ...found } = survey(root, sight);
  const price = found.price ?? found.amount;
  let block = longest ?? root;
  for (const other of [heading ?? named, found.price]) if (other) block = commonAncestor(block, other);
  // Without a heading or price to hold on to, the longest text may be any text: keep all of it.
  if (!showsAmount(block)) block = price ? commonAncestor(block, price) : (heading ?? named) ? block : root;
  return { block: own(root).contains(block) ? block : root, price };
}

export const findMainBlock = (document: Document, sight: Sight): Element | null => findAd(document, sight)?.block ?? null;

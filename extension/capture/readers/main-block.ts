/** The part of a whole page that is most likely the ad: by the page's structure only, for no site in particular. */
import { hintsOf, isApart, isPriceHint } from './hints.ts';
import { own } from './own.ts';
import { isElement, isText, renderedChildren, shortText, tagOf } from './rendered.ts';
import type { Sight } from './sight.ts';

/** Elements whose text belongs to the paragraph or list around them. */
const PARTS = new Set(
  'P SPAN B I STRONG EM A BR UL OL LI FONT U SMALL SUP SUB PRE DL DT DD TABLE TBODY TR TD TH DEL S'.split(' '),
);

interface Found {
  heading: Element | null;
  price: Element | null;
  longest: Element | null;
  length: number;
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

function survey(root: Element, sight: Sight): Found {
  const found: Found = { heading: null, price: null, longest: null, length: 0 };
  const pending: Element[] = [root];
  for (let element = pending.pop(); element; element = pending.pop()) {
    if (element !== root && isApart(element)) continue;
    if (sight.lookOf(element).hidden) continue;
    if (tagOf(element) === 'H1') found.heading ??= element;
    if (!found.price && isPriceHint(hintsOf(element)) && /\d/.test(shortText(element, 60) ?? '')) found.price = element;
    if (!PARTS.has(tagOf(element))) {
      const length = ownText(element, sight);
      if (length > found.length) Object.assign(found, { longest: element, length });
    }
    for (const child of renderedChildren(element, sight).filter(isElement).reverse()) pending.push(child);
  }
  return found;
}

const commonAncestor = (a: Element, b: Element): Element => {
  let at: Element = a;
  for (let up = own(at).parentElement; up && !own(at).contains(b); up = own(at).parentElement) at = up;
  return at;
};

const roots = (document: Document): Element | null =>
  own(document).querySelector('[itemscope][itemtype*="schema.org/Product"]') ??
  own(document).querySelector('main, [role="main"]');

/** Null only for a document without a body. What is in it and not part of the ad is told by `isApart`. */
export function findMainBlock(document: Document, sight: Sight): Element | null {
  const { body } = own(document);
  if (!body) return null;
  const marked = roots(document);
  const articles = [...own(document).querySelectorAll('article')].filter(
    ({ parentElement }) => !(parentElement && own(parentElement).closest('article, aside, footer, nav')),
  );
  const root = marked ?? (articles.length === 1 && articles[0] ? articles[0] : body);
  const { heading, price, longest } = survey(root, sight);
  // Without a heading or price to hold on to, the longest text may be any text: keep all of it.
  if (!longest || !(heading ?? price)) return root;
  let block = longest;
  for (const other of [heading, price]) if (other) block = commonAncestor(block, other);
  return own(root).contains(block) ? block : root;
}

/** Moving a choice about a page: wider, narrower, to the neighbours. Every step changes what would be read. */

import { isThere, own } from '../readers/own.ts';
import { isElement, isText, parentOf, renderedChildren, tagOf } from '../readers/rendered.ts';
import { NEVER_SHOWN, type Sight } from '../readers/sight.ts';

/** The block that is chosen, and the narrower ones that it was widened from, nearest last. */
export interface Choice {
  readonly block: Element;
  readonly trail: readonly Element[];
}

export const choose = (block: Element): Choice => ({ block, trail: [] });

/** How many characters a node shows, blanks aside, through shadow roots and frames; counted no further than `enough`. */
function wordsIn(root: Node, sight: Sight, enough = Number.POSITIVE_INFINITY): number {
  let count = 0;
  const pending: Node[] = [root];
  for (let node = pending.pop(); node && count < enough; node = pending.pop()) {
    if (isText(node)) count += node.data.replace(/\s+/g, '').length;
    else if (isElement(node) && !NEVER_SHOWN.has(tagOf(node)))
      for (const child of renderedChildren(node, sight)) pending.push(child);
  }
  return count;
}

const hasWords = (node: Node, sight: Sight): boolean => wordsIn(node, sight, 1) > 0;

/** A block that holds another and shows no more is the same to the buyer. */
function showsMore(block: Element, inner: Element, sight: Sight): boolean {
  const children = renderedChildren(block, sight);
  return children.includes(inner)
    ? children.some((child) => child !== inner && hasWords(child, sight))
    : wordsIn(block, sight) > wordsIn(inner, sight);
}

const isTop = (element: Element): boolean => tagOf(element) === 'BODY' || tagOf(element) === 'HTML';

const isFramed = (element: Element): boolean => Boolean(own(own(element).ownerDocument).defaultView?.frameElement);

/** The next wider block that holds more words; the same choice at the top of the page. */
export function widen({ block, trail }: Choice, sight: Sight): Choice {
  let wider: Element = block;
  for (let at = isTop(block) && !isFramed(block) ? null : parentOf(block); at; at = parentOf(at)) {
    if (tagOf(at) === 'HTML' && !isFramed(at)) break;
    const inner = wider;
    wider = at;
    if (showsMore(at, inner, sight)) break;
  }
  return wider === block ? { block, trail } : { block: wider, trail: [...trail, block] };
}

const shownChildren = (element: Element, sight: Sight): Element[] =>
  renderedChildren(element, sight)
    .filter(isElement)
    .filter((child) => !sight.lookOf(child).hidden && hasWords(child, sight));

/** Back to where it was widened from, else to the part that holds the most words. */
export function narrow({ block, trail }: Choice, sight: Sight): Choice {
  const back = trail.at(-1);
  if (back && isThere(back)) return { block: back, trail: trail.slice(0, -1) };
  for (let at = block; ; ) {
    const parts = shownChildren(at, sight);
    const [only] = parts;
    if (!only) return { block, trail: [] };
    if (parts.length > 1 || showsMore(at, only, sight)) {
      const [most] = parts.map((part) => ({ part, words: wordsIn(part, sight) })).sort((a, b) => b.words - a.words);
      return choose(most?.part ?? only);
    }
    at = only;
  }
}

/** The next block beside it that has words, before (-1) or after (1); further out when it has no neighbours. */
export function beside(choice: Choice, direction: 1 | -1, sight: Sight): Choice {
  for (let at: Element | null = choice.block; at && !isTop(at); at = parentOf(at)) {
    const around = parentOf(at);
    const siblings = around ? shownChildren(around, sight) : [];
    const next = siblings[siblings.indexOf(at) + direction];
    if (siblings.includes(at) && next) return choose(next);
  }
  return choice;
}

/** The block around what the pointer is on: never less than a line. */
export function blockAround(element: Element, sight: Sight): Element {
  let at = element;
  while (!isTop(at) && sight.lookOf(at).flow === 'inline') {
    const parent = parentOf(at);
    if (!parent) break;
    at = parent;
  }
  return at;
}

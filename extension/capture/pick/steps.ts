/** Moving a choice about a page: wider, narrower, to the neighbours. Every step changes what would be read. */
import { isElement, parentOf, renderedChildren, tagOf } from '../readers/rendered.ts';
import type { Sight } from '../readers/sight.ts';

/** The block that is chosen, and the narrower ones that it was widened from, nearest last. */
export interface Choice {
  readonly block: Element;
  readonly trail: readonly Element[];
}

export const choose = (block: Element): Choice => ({ block, trail: [] });

const wordsOf = (element: Element): string => (element.textContent ?? '').replace(/\s+/g, '');

const isTop = (element: Element): boolean => tagOf(element) === 'BODY' || tagOf(element) === 'HTML';

/** The next wider block that holds more words; the same choice at the top of the page. */
export function widen({ block, trail }: Choice): Choice {
  if (isTop(block) && !block.ownerDocument.defaultView?.frameElement) return { block, trail };
  const words = wordsOf(block);
  let wider: Element = block;
  for (let at = parentOf(block); at && tagOf(at) !== 'HTML'; at = parentOf(at)) {
    wider = at;
    if (wordsOf(at) !== words) break;
  }
  return wider === block ? { block, trail } : { block: wider, trail: [...trail, block] };
}

const shownChildren = (element: Element, sight: Sight): Element[] =>
  renderedChildren(element, sight)
    .filter(isElement)
    .filter((child) => !sight.lookOf(child).hidden && (wordsOf(child) !== '' || sight.shadowRootOf(child) !== null));

/** Back to where it was widened from, else to the part that holds the most words. */
export function narrow({ block, trail }: Choice, sight: Sight): Choice {
  const back = trail.at(-1);
  if (back?.isConnected) return { block: back, trail: trail.slice(0, -1) };
  const words = wordsOf(block);
  for (let at = block; ; ) {
    const parts = shownChildren(at, sight);
    const [most] = parts.sort((a, b) => wordsOf(b).length - wordsOf(a).length);
    if (!most) return { block, trail: [] };
    if (wordsOf(most) !== words) return choose(most);
    at = most;
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

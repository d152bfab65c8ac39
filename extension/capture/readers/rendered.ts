/** The page as it is rendered: through shadow roots, slots and frames of the same origin. */

import { own } from './own.ts';
import type { Sight } from './sight.ts';

export const isElement = (node: Node): node is Element => own(node).nodeType === 1;
export const isText = (node: Node): node is Text => own(node).nodeType === 3;
export const tagOf = (element: Element): string => own(element).tagName.toUpperCase();

/** More nodes than this are no short text. */
const MOST_NODES = 300;

/** What an element holds, when that is short: null beyond so many characters. Looks no further than it must. */
export function shortText(element: Element, most: number): string | null {
  let text = '';
  let left = MOST_NODES;
  const pending: Node[] = [element];
  for (let node = pending.pop(); node; node = pending.pop()) {
    if (isText(node)) text += node.data;
    if (text.length > most || --left < 0) return null;
    const { nextSibling, firstChild } = own(node);
    if (nextSibling && node !== element) pending.push(nextSibling);
    if (firstChild) pending.push(firstChild);
  }
  return text;
}

/** The document of a frame of the same origin; null for other elements and other origins. */
export function frameDocument(element: Element): Document | null {
  const tag = tagOf(element);
  if (tag !== 'IFRAME' && tag !== 'FRAME') return null;
  try {
    return (element as HTMLIFrameElement).contentDocument;
  } catch {
    return null;
  }
}

/** Walked by its links, not spread out of a live list: a page has thousands of elements. */
function childrenOf(parent: Node): Node[] {
  const children: Node[] = [];
  for (let child = own(parent).firstChild; child; child = own(child).nextSibling) children.push(child);
  return children;
}

/** What is rendered inside an element: its shadow tree, its slotted nodes, its frame's body, or its children. */
export function renderedChildren(element: Element, sight: Sight): readonly Node[] {
  const frame = frameDocument(element);
  if (frame) {
    const { body } = own(frame);
    return body ? [body] : [];
  }
  const shadow = sight.shadowRootOf(element);
  if (shadow) return childrenOf(shadow);
  if (tagOf(element) === 'SLOT') {
    const slotted = (element as HTMLSlotElement).assignedNodes?.({ flatten: true }) ?? [];
    if (slotted.length > 0) return slotted;
  }
  return childrenOf(element);
}

/** The element around a node: through shadow roots to their hosts and through frames to their frame elements. */
export function parentOf(node: Node): Element | null {
  const parent = own(node).parentNode;
  if (!parent) return null;
  if (isElement(parent)) return parent;
  if (own(parent).nodeType === 11) return (parent as ShadowRoot).host ?? null;
  try {
    return own(parent as Document).defaultView?.frameElement ?? null;
  } catch {
    return null;
  }
}

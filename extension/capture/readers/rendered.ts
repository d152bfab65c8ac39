/** The page as it is rendered: through shadow roots, slots and frames of the same origin. */
import type { Sight } from './sight.ts';

export const isElement = (node: Node): node is Element => node.nodeType === 1;
export const isText = (node: Node): node is Text => node.nodeType === 3;
export const tagOf = (element: Element): string => element.tagName.toUpperCase();

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
  for (let child = parent.firstChild; child; child = child.nextSibling) children.push(child);
  return children;
}

/** What is rendered inside an element: its shadow tree, its slotted nodes, its frame's body, or its children. */
export function renderedChildren(element: Element, sight: Sight): readonly Node[] {
  const frame = frameDocument(element);
  if (frame) return frame.body ? [frame.body] : [];
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
  const parent = node.parentNode;
  if (!parent) return null;
  if (isElement(parent)) return parent;
  if ('host' in parent) return (parent as ShadowRoot).host;
  try {
    return (parent as Document).defaultView?.frameElement ?? null;
  } catch {
    return null;
  }
}

/** Which part of a page a selection takes: Firefox can hold several ranges, and none reaches into shadow roots or frames. */
import { own } from './own.ts';
import { isText } from './rendered.ts';

/** A range with every node that it takes, wholly or in part. Asking the range for each node would count that node's neighbours every time. */
export interface TakenRange extends StaticRangeInit {
  readonly nodes: ReadonlySet<Node>;
}

/** The node behind another with all that is in it, in the document's order. */
function behind(node: Node): Node | null {
  for (let at: Node | null = node; at; at = own(at).parentNode) {
    const { nextSibling } = own(at);
    if (nextSibling) return nextSibling;
  }
  return null;
}

/** The first node at or behind a boundary point. */
const nodeAt = (container: Node, offset: number): Node | null =>
  isText(container) ? container : (own(container).childNodes[offset] ?? behind(container));

export function takenBy(range: Range): TakenRange {
  const { startContainer, startOffset, endContainer, endOffset } = range;
  const nodes = new Set<Node>();
  for (let at: Node | null = startContainer; at; at = own(at).parentNode) nodes.add(at);
  const end = isText(endContainer) ? behind(endContainer) : nodeAt(endContainer, endOffset);
  let node = nodeAt(startContainer, startOffset);
  while (node && node !== end) {
    nodes.add(node);
    node = own(node).firstChild ?? behind(node);
  }
  return { startContainer, startOffset, endContainer, endOffset, nodes };
}

/** Another tree than the range's: a shadow root or frame whose host the walk has already found to be taken. */
const elsewhere = (node: Node, { startContainer }: TakenRange): boolean =>
  own(node).getRootNode() !== own(startContainer).getRootNode();

export const isOutside = (node: Node, ranges: readonly TakenRange[] | undefined): boolean =>
  ranges?.every((range) => !range.nodes.has(node) && !elsewhere(node, range)) ?? false;

/** Start and end of what the ranges take of a text node; null when they take none of it. */
export function clipText(node: Text, ranges: readonly TakenRange[] | undefined): readonly [number, number] | null {
  if (!ranges) return [0, node.length];
  let taken: readonly [number, number] | null = null;
  for (const range of ranges) {
    if (!range.nodes.has(node)) {
      if (elsewhere(node, range)) return [0, node.length];
      continue;
    }
    const from = range.startContainer === node ? range.startOffset : 0;
    const to = range.endContainer === node ? range.endOffset : node.length;
    taken = taken ? [Math.min(taken[0], from), Math.max(taken[1], to)] : [from, to];
  }
  return taken && taken[1] > taken[0] ? taken : null;
}

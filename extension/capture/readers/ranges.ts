/** Which part of a page a selection takes: Firefox can hold several ranges, and none reaches into shadow roots or frames. */

/** Another tree than the range's: a shadow root or frame whose host the walk has already found to be taken. */
const elsewhere = (node: Node, range: Range): boolean => node.getRootNode() !== range.startContainer.getRootNode();

export const isOutside = (node: Node, ranges: readonly Range[] | undefined): boolean =>
  ranges?.every((range) => !elsewhere(node, range) && !range.intersectsNode(node)) ?? false;

/** Start and end of what the ranges take of a text node; null when they take none of it. */
export function clipText(node: Text, ranges: readonly Range[] | undefined): readonly [number, number] | null {
  if (!ranges) return [0, node.length];
  let taken: readonly [number, number] | null = null;
  for (const range of ranges) {
    if (elsewhere(node, range)) return [0, node.length];
    if (!range.intersectsNode(node)) continue;
    const from = range.startContainer === node ? range.startOffset : 0;
    const to = range.endContainer === node ? range.endOffset : node.length;
    taken = taken ? [Math.min(taken[0], from), Math.max(taken[1], to)] : [from, to];
  }
  return taken && taken[1] > taken[0] ? taken : null;
}

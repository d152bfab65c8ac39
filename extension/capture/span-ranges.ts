/** From a span of a listing's text back to the page. */
import type { Span } from '../../src/listing/page-listing.ts';
import type { Captured, Stretch } from './readers/index.ts';
import { isThere, own } from './readers/own.ts';

/** Index of the first stretch that ends after `offset`. */
function firstAfter(stretches: readonly Stretch[], offset: number): number {
  let [low, high] = [0, stretches.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((stretches[middle]?.end ?? 0) > offset) high = middle;
    else low = middle + 1;
  }
  return low;
}

const squeeze = (text: string): string => text.replace(/\s/g, ' ');

/** The words of a span as DOM ranges, one for each piece of text; those that the page has changed or removed since are left out. */
export function rangesOf({ listing, stretches }: Pick<Captured, 'listing' | 'stretches'>, { start, end }: Span): Range[] {
  const ranges: Range[] = [];
  for (let index = firstAfter(stretches, start); index < stretches.length; index += 1) {
    const stretch = stretches[index];
    if (!stretch || stretch.start >= end) break;
    const [from, to] = [Math.max(start, stretch.start), Math.min(end, stretch.end)];
    const at = stretch.offset + from - stretch.start;
    const { node } = stretch;
    if (!isThere(node) || squeeze(node.data.slice(at, at + to - from)) !== squeeze(listing.text.slice(from, to))) continue;
    const range = own(node.ownerDocument).createRange();
    range.setStart(node, at);
    range.setEnd(node, at + to - from);
    ranges.push(range);
  }
  return ranges;
}

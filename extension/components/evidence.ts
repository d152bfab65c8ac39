/** Hovering or focusing a part marks the words that it rests on in the page. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Span } from '../../src/listing/page-listing.ts';

/** Given spans of `Reading.text`; null takes the marks away. */
export type Marker = (spans: readonly Span[] | null) => void;
export const Marking = createContext<Marker>(() => undefined);

/** Handlers for the outermost element of the part. Parts without evidence mark nothing. */
export function useEvidence(spans: readonly Span[]) {
  const mark = useContext(Marking);
  if (spans.length === 0) return {};
  const show = () => mark(spans);
  const clear = () => mark(null);
  return { onMouseEnter: show, onMouseLeave: clear, onFocusIn: show, onFocusOut: clear };
}

/** Spans of the read text as spans of `listing.text`: the composed title, which is not in the page's block, falls away. */
export const inPage = (spans: readonly Span[], shift: number): Span[] =>
  spans.filter((span) => span.end > shift).map((span) => ({ start: Math.max(0, span.start - shift), end: span.end - shift }));

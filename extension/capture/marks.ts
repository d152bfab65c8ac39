/**
 * Marks words in the page with the CSS Custom Highlight API: the page's own nodes stay as they are, and a strict content security policy
 * does not stand in the way, for the style is adopted and not written into the page.
 */
import type { Span } from '../../src/listing/page-listing.ts';
import { Failure } from '../platform/messages.ts';
import { own } from './readers/own.ts';
import type { Taken } from './report.ts';
import { rangesOf } from './span-ranges.ts';

const NAME = 'ironsift-evidence';
/** Dark words on a light ground: legible whatever the page's own colours are. */
const RULE = `::highlight(${NAME}) { background-color: #ffdf6b; color: #1a1a1a; }`;

type View = Window & typeof globalThis;
type Root = Document | ShadowRoot;

const styled = new Map<Root, CSSStyleSheet>();
const marked = new Set<View>();

const viewOf = ({ startContainer }: Range): View | null => {
  const { ownerDocument } = own(startContainer);
  return ownerDocument && own(ownerDocument).defaultView;
};

function adoptStyle(root: Root, view: View): void {
  const known = styled.get(root);
  const reading = own(root);
  if (known && reading.adoptedStyleSheets.includes(known)) return;
  const sheet = known ?? new view.CSSStyleSheet();
  if (!known) sheet.replaceSync(RULE);
  reading.adoptedStyleSheets = [...reading.adoptedStyleSheets, sheet];
  styled.set(root, sheet);
}

const isInView = ({ top, bottom }: DOMRect, view: View): boolean => bottom > 0 && top < view.innerHeight;

/** Marks what can be found of the spans and brings the first into view. Answers how many spans that are; throws `gone` when none is left. */
export function showMarks(taken: Taken | null, spans: readonly Span[]): number {
  clearHighlights();
  if (spans.length === 0) return 0;
  const found = taken ? spans.map((span) => rangesOf(taken, span)).filter((ranges) => ranges.length > 0) : [];
  if (found.length === 0) throw new Failure('gone');
  const byView = new Map<View, Range[]>();
  for (const range of found.flat()) {
    const view = viewOf(range);
    if (!view) continue;
    byView.set(view, [...(byView.get(view) ?? []), range]);
    adoptStyle(view.document, view);
    const root = own(range.startContainer).getRootNode();
    if (root.nodeType === 11) adoptStyle(root as ShadowRoot, view);
  }
  for (const [view, ranges] of byView) {
    view.CSS.highlights.set(NAME, new view.Highlight(...ranges));
    marked.add(view);
  }
  const [first] = found[0] ?? [];
  const view = first && viewOf(first);
  if (first && view && !isInView(first.getBoundingClientRect(), view))
    own(first.startContainer.parentElement ?? (first.startContainer as Element)).scrollIntoView({ block: 'center' });
  return found.length;
}

/** Frames may be gone, and their marks with them: in Firefox they throw then whatever is asked of them. */
function inEach<T>(all: Iterable<T>, work: (one: T) => void): void {
  for (const one of all) {
    try {
      work(one);
    } catch {
      // Gone.
    }
  }
}

function clearHighlights(): void {
  inEach(marked, (view) => view.CSS?.highlights.delete(NAME));
  marked.clear();
}

/** Takes the marks and their style away. */
export function clearMarks(): void {
  clearHighlights();
  inEach(styled, ([root, sheet]) => {
    own(root).adoptedStyleSheets = own(root).adoptedStyleSheets.filter((adopted) => adopted !== sheet);
  });
  styled.clear();
}

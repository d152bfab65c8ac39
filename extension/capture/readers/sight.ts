/** How an element looks, as far as reading its text depends on it: hidden, block or inline, struck through, line breaks kept. */
import { own } from './own.ts';

export type Keeps = 'nothing' | 'lines' | 'all';

export interface Look {
  /** Neither it nor anything in it can be seen. */
  readonly hidden: boolean;
  /** Its own text can't be seen; descendants may be made visible again. */
  readonly invisible: boolean;
  readonly flow: 'inline' | 'block' | 'cell' | 'row' | 'item';
  /** Its children stand beside each other or in tracks. */
  readonly lays: 'flow' | 'across' | 'grid';
  readonly struck: boolean;
  /** `lines`: line breaks of the source are kept; `all`: spaces too. Null: as its parent does. */
  readonly keeps: Keeps | null;
}

export interface Sight {
  lookOf(element: Element): Look;
  /** The shadow root of an element, where it may be seen. */
  shadowRootOf(element: Element): ShadowRoot | null;
  /** Whether an element stands beside the one before it rather than below. Null where there is no layout. */
  sameLine(before: Element, after: Element): boolean | null;
}

/** Elements that show no text of theirs. */
export const NEVER_SHOWN = new Set(
  'SCRIPT STYLE TEMPLATE NOSCRIPT HEAD META LINK OBJECT EMBED AUDIO VIDEO CANVAS SVG INPUT TEXTAREA SELECT OPTION DATALIST PROGRESS METER'.split(
    ' ',
  ),
);

const ICON_FONT = /icon|symbol|awesome|glyph/i;

/** Clipped to nothing or moved off the page: text for screen readers, which repeats what is shown elsewhere. */
function isOutOfSight(style: CSSStyleDeclaration): boolean {
  if (style.opacity === '0' || style.fontSize === '0px' || style.fontSize === '0') return true;
  if (style.position !== 'absolute' && style.position !== 'fixed') return false;
  if (/^rect\((?:0|1)(?:px)?[, ]/.test(style.clip) || /^inset\((?:50|100)%/.test(style.clipPath)) return true;
  const tiny = (size: string): boolean => /^[01](?:px)?$/.test(size);
  if (style.overflow.includes('hidden') && tiny(style.width) && tiny(style.height)) return true;
  return Number.parseFloat(style.left) <= -900 || Number.parseFloat(style.top) <= -900;
}

const flowOf = (display: string): Look['flow'] => {
  if (display === 'table-cell') return 'cell';
  if (display === 'table-row') return 'row';
  if (display === 'list-item') return 'item';
  if (display === '' || display === 'contents' || display.startsWith('inline') || display.startsWith('ruby')) return 'inline';
  return 'block';
};

const laysOf = (display: string, style: CSSStyleDeclaration): Look['lays'] => {
  if (display.endsWith('grid')) return 'grid';
  return display.endsWith('flex') && !style.flexDirection.startsWith('column') ? 'across' : 'flow';
};

const keepsOf = (whiteSpace: string): Look['keeps'] => {
  if (whiteSpace === '') return null; // jsdom does not inherit it.
  if (whiteSpace === 'pre-line' || whiteSpace.startsWith('preserve-breaks')) return 'lines';
  return whiteSpace.startsWith('pre') || whiteSpace === 'break-spaces' ? 'all' : 'nothing';
};

const HIDDEN: Look = { hidden: true, invisible: true, flow: 'block', lays: 'flow', struck: false, keeps: null };

/** Sight by computed style: the browser's, or jsdom's. */
export function computedSight(
  shadowRootOf: Sight['shadowRootOf'] = (element) => own(element).shadowRoot,
  sameLine: Sight['sameLine'] = () => null,
): Sight {
  const lookOf = (element: Element): Look => {
    const reading = own(element);
    const tag = reading.tagName.toUpperCase();
    const view = own(reading.ownerDocument).defaultView;
    if (NEVER_SHOWN.has(tag) || !view) return HIDDEN;
    const style = view.getComputedStyle(element);
    // Each property asked for takes its time, and a page has thousands of elements: none is asked for twice.
    const { display, visibility } = style;
    const found = reading.getAttribute('hidden') === 'until-found';
    if (display === 'none' || (reading.hasAttribute('hidden') && !found && display === '')) return HIDDEN;
    if (!found && style.contentVisibility === 'hidden') return HIDDEN;
    if (isOutOfSight(style)) return HIDDEN;
    if (reading.getAttribute('aria-hidden') === 'true' && ICON_FONT.test(style.fontFamily)) return HIDDEN;
    return {
      hidden: false,
      invisible: visibility === 'hidden' || visibility === 'collapse',
      flow: tag === 'LI' ? 'item' : flowOf(display),
      lays: laysOf(display, style),
      struck: tag === 'DEL' || tag === 'S' || tag === 'STRIKE' || style.textDecorationLine.includes('line-through'),
      keeps: keepsOf(style.whiteSpace),
    };
  };
  return { lookOf, shadowRootOf, sameLine };
}

/** Asks for each element's look once. To be made anew after the page has changed. */
export function remembering(sight: Sight): Sight {
  const looks = new Map<Element, Look>();
  const lookOf = (element: Element): Look => {
    const look = looks.get(element) ?? sight.lookOf(element);
    looks.set(element, look);
    return look;
  };
  return { ...sight, lookOf };
}

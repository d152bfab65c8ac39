/** Where blocks stand in the top window, and which element a pointer is on. */

import { own } from '../readers/own.ts';
import { frameDocument } from '../readers/rendered.ts';
import type { Sight } from '../readers/sight.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Box of an element in CSS pixels of the top window, also from inside frames. */
export function boxOf(element: Element): Box {
  const { left, top, width, height } = own(element).getBoundingClientRect();
  const frame = own(own(element).ownerDocument).defaultView?.frameElement;
  if (!frame) return { left, top, width, height };
  const around = boxOf(frame);
  return { left: left + around.left + frame.clientLeft, top: top + around.top + frame.clientTop, width, height };
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export const within = ({ left, top, width, height }: Box, { x, y }: Point): boolean =>
  x >= left && x <= left + width && y >= top && y <= top + height;

/** Where a pointer is in the top window; `glass` covers that window exactly. */
export function pointOf(event: PointerEvent, glass: Window | null): Point {
  const { clientX: x, clientY: y, view } = event;
  const frame = view && view !== glass ? view.frameElement : null;
  if (!frame) return { x, y };
  const { left, top } = boxOf(frame);
  return { x: x + left + frame.clientLeft, y: y + top + frame.clientTop };
}

/** The innermost element of the page at a point of the top window, in shadow roots and frames of the same origin too; what is ours is looked through. */
export function elementAt({ x, y }: Point, sight: Sight, ours: Element): Element | null {
  let element =
    own(document)
      .elementsFromPoint(x, y)
      .find((found) => found !== ours) ?? null;
  let at = { x, y };
  for (let inner = element; inner; ) {
    element = inner;
    const frame = frameDocument(inner);
    if (frame) {
      const { left, top } = inner.getBoundingClientRect();
      at = { x: at.x - left - inner.clientLeft, y: at.y - top - inner.clientTop };
    }
    const root: Document | ShadowRoot | null = frame ?? sight.shadowRootOf(inner);
    // A shadow root may also name what lies over or around it.
    inner = (root && own(root))?.elementsFromPoint(at.x, at.y).find((found) => own(found).getRootNode() === root) ?? null;
  }
  return element;
}

/** Where blocks stand in the top window, and which element a pointer is on. */
import { isElement } from '../readers/rendered.ts';
import type { Sight } from '../readers/sight.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Box of an element in CSS pixels of the top window, also from inside frames. */
export function boxOf(element: Element): Box {
  const { left, top, width, height } = element.getBoundingClientRect();
  const frame = element.ownerDocument.defaultView?.frameElement;
  if (!frame) return { left, top, width, height };
  const around = boxOf(frame);
  return { left: left + around.left + frame.clientLeft, top: top + around.top + frame.clientTop, width, height };
}

/** The innermost element under the pointer, in closed shadow roots too. */
export function elementAt(event: Event, sight: Sight): Element | null {
  const [target] = event.composedPath();
  if (!target || !('nodeType' in target) || !isElement(target as Node)) return null;
  let element = target as Element;
  const { clientX, clientY } = event as PointerEvent;
  for (let shadow = sight.shadowRootOf(element); shadow; shadow = sight.shadowRootOf(element)) {
    const inside = shadow.elementFromPoint(clientX, clientY);
    if (!inside || inside === element) break;
    element = inside;
  }
  return element;
}

/** Sight that remembers: one reading of a list asks for the same elements many times. To be made anew after the page has changed. */

import { own } from '../readers/own.ts';
import { parentOf } from '../readers/rendered.ts';
import { remembering, type Sight } from '../readers/sight.ts';

export function rememberingSight(sight: Sight): Sight {
  return {
    ...remembering(sight),
    // Asking the browser for a closed root takes long; a list's ads are behind one in elements of the page's own making, if at all.
    shadowRootOf: (element) =>
      own(element).shadowRoot ?? (own(element).localName.includes('-') ? sight.shadowRootOf(element) : null),
  };
}

/** Whether a part of the page is to be seen at all: hidden copies of a list, for other widths of window, are common. */
export function isShown(element: Element, sight: Sight): boolean {
  // Says more than style does: zero-sized closed details, skipped contents. Absent where there is no layout.
  if (own(element).checkVisibility?.() === false) return false;
  for (let at: Element | null = element; at; at = parentOf(at)) if (sight.lookOf(at).hidden) return false;
  return true;
}

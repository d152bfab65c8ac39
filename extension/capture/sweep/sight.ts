/** Sight that remembers: one reading of a list asks for the same elements many times. To be made anew after the page has changed. */
import { parentOf } from '../readers/rendered.ts';
import type { Look, Sight } from '../readers/sight.ts';

export function rememberingSight(sight: Sight): Sight {
  const looks = new Map<Element, Look>();
  return {
    ...sight,
    // Asking the browser for a closed root takes long; a list's ads are behind one in elements of the page's own making, if at all.
    shadowRootOf: (element) => element.shadowRoot ?? (element.localName.includes('-') ? sight.shadowRootOf(element) : null),
    lookOf: (element) => {
      const known = looks.get(element);
      if (known) return known;
      const look = sight.lookOf(element);
      looks.set(element, look);
      return look;
    },
  };
}

/** Whether a part of the page is to be seen at all: hidden copies of a list, for other widths of window, are common. */
export function isShown(element: Element, sight: Sight): boolean {
  // Says more than style does: zero-sized closed details, skipped contents. Absent where there is no layout.
  if (element.checkVisibility?.() === false) return false;
  for (let at: Element | null = element; at; at = parentOf(at)) if (sight.lookOf(at).hidden) return false;
  return true;
}

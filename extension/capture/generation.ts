/**
 * Only the latest script of its kind may act in a page. Within one version of the extension the scripts share a global; after an update the
 * old script lives in a world of its own, cut off from the extension, and hears only of an event on the window. A page that sends
 * this event moves nobody: a script that is not cut off does not listen to it. Firefox ends an old script's listeners with the old version (seen
 * in ESR 153): what that script has put into the page its successor takes away.
 */
import { isConnected } from '../platform/browser.ts';
import { own } from './readers/own.ts';

export type ScriptKind = 'capture' | 'sweep';

const eventOf = (kind: ScriptKind): string => `ironsift:newer-${kind}`;
/** By a symbol, for a page's elements may have any name: `<form id="ironsiftDispose">` would be found under it. */
const DISPOSE = Symbol.for('ironsift-dispose');
const world = globalThis as { [DISPOSE]?: Partial<Record<ScriptKind, () => void>> };

const MARK = 'data-ironsift';

/** Marks what a script adds to the page's root element, for a successor that has to take it away. */
export const markHost = (host: Element, kind: ScriptKind): void => host.setAttribute(MARK, kind);

/** Ends every earlier script of this kind in this page. */
export function replaceEarlier(kind: ScriptKind): void {
  world[DISPOSE]?.[kind]?.();
  window.dispatchEvent(new CustomEvent(eventOf(kind)));
  for (const left of own(document).querySelectorAll(`:root > [${MARK}="${kind}"]`)) left.remove();
}

/** From now on this is the script that the next one of its kind replaces. Gives a function that ends it before. */
export function markLatest(kind: ScriptKind, dispose: () => void): () => void {
  const onNewer = (): void => {
    if (!isConnected()) end();
  };
  const end = (): void => {
    window.removeEventListener(eventOf(kind), onNewer);
    delete world[DISPOSE]?.[kind];
    dispose();
  };
  window.addEventListener(eventOf(kind), onNewer);
  world[DISPOSE] = { ...world[DISPOSE], [kind]: end };
  return end;
}

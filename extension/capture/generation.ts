/**
 * Only the latest script of its kind may act in a page. Within one version of the extension the scripts share a global; after an update the
 * old script lives in a world of its own, cut off from the extension, and hears only of an event on the window. A page that sends
 * this event can do no more than stop a pick or a sweep.
 */
export type ScriptKind = 'capture' | 'sweep';

const eventOf = (kind: ScriptKind): string => `ironsift:newer-${kind}`;
const world = globalThis as { ironsiftDispose?: Partial<Record<ScriptKind, () => void>> };

/** Ends every earlier script of this kind in this page. */
export function replaceEarlier(kind: ScriptKind): void {
  world.ironsiftDispose?.[kind]?.();
  window.dispatchEvent(new CustomEvent(eventOf(kind)));
}

/** From now on this is the script that the next one of its kind replaces. Gives a function that ends it before. */
export function markLatest(kind: ScriptKind, dispose: () => void): () => void {
  const end = (): void => {
    window.removeEventListener(eventOf(kind), end);
    delete world.ironsiftDispose?.[kind];
    dispose();
  };
  window.addEventListener(eventOf(kind), end);
  world.ironsiftDispose = { ...world.ironsiftDispose, [kind]: end };
  return end;
}

/**
 * Only the latest capture script of a page may act. Within one version of the extension the scripts share a global; after an update the
 * old script lives in a world of its own, cut off from the extension, and hears only of an event on the window. A page that sends
 * this event can do no more than stop a pick.
 */
const NAME = 'ironsift:newer-capture';
const world = globalThis as { ironsiftDispose?: (() => void) | undefined };

/** Ends every earlier script of this page. */
export function replaceEarlier(): void {
  world.ironsiftDispose?.();
  window.dispatchEvent(new CustomEvent(NAME));
}

/** From now on this is the script that the next one replaces. */
export function markLatest(dispose: () => void): void {
  const end = (): void => {
    window.removeEventListener(NAME, end);
    world.ironsiftDispose = undefined;
    dispose();
  };
  window.addEventListener(NAME, end);
  world.ironsiftDispose = end;
}

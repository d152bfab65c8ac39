/** Watches the page while a sweep lasts: what is added, what comes into view, what moves. Everything is let go at once at the end. */
import { own } from '../readers/own.ts';

export interface Watch {
  /** Looks for changes under one more root: the page's body, a shadow root, a frame's body. */
  root(node: Node): void;
  /** Follows whether an element is in view. */
  element(element: Element): void;
  unwatch(element: Element): void;
  /** In view, or nearly. */
  readonly inView: ReadonlySet<Element>;
  stop(): void;
}

export interface Wishes {
  /** Something was added, removed or rewritten. */
  changed(): void;
  /** Ads came into view or left it. */
  seen(elements: readonly Element[]): void;
  /** Something may stand elsewhere. */
  moved(): void;
  leave(): void;
}

/** How far outside the window an ad counts as in view, so that its label is there when it comes. */
const MARGIN = '300px';

export function watchPage(wishes: Wishes): Watch {
  const roots = new WeakSet<Node>();
  const inView = new Set<Element>();
  const mutations = new MutationObserver(wishes.changed);
  // A new root element or body, without what is in them: those are roots of their own.
  for (const node of [document, own(document).documentElement]) if (node) mutations.observe(node, { childList: true });
  const views = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        if (isIntersecting) inView.add(target);
        else inView.delete(target);
      }
      wishes.seen(entries.filter(({ isIntersecting }) => isIntersecting).map(({ target }) => target));
    },
    { rootMargin: MARGIN },
  );
  const sizes = new ResizeObserver(wishes.moved);
  const { body } = own(document);
  if (body) sizes.observe(body);
  const onKey = (event: KeyboardEvent): void => {
    const { key, isTrusted, ctrlKey, altKey, metaKey, shiftKey } = event;
    if (isTrusted && key === 'Escape' && !ctrlKey && !altKey && !metaKey && !shiftKey) wishes.leave();
  };
  const listening = new AbortController();
  const quiet = { capture: true, passive: true, signal: listening.signal };
  // Pictures that arrive push what is below them.
  for (const type of ['scroll', 'resize', 'load', 'transitionend']) window.addEventListener(type, wishes.moved, quiet);
  window.addEventListener('keydown', onKey, quiet);
  window.addEventListener('pagehide', wishes.leave, quiet);
  return {
    inView,
    root: (node) => {
      if (roots.has(node)) return;
      roots.add(node);
      mutations.observe(node, { childList: true, characterData: true, subtree: true });
    },
    element: (element) => views.observe(element),
    unwatch: (element) => {
      inView.delete(element);
      try {
        views.unobserve(element);
      } catch {
        // Of a frame that was taken away: dead in Firefox (see own.ts).
      }
    },
    stop: () => {
      mutations.disconnect();
      views.disconnect();
      sizes.disconnect();
      inView.clear();
      listening.abort();
    },
  };
}

/** The shadow root of an element, closed ones included where the browser lets extensions see them. */
import { own } from '../capture/readers/own.ts';
import { api } from './browser.ts';

interface Peeking {
  /** Firefox gives content scripts this property on every element. */
  readonly openOrClosedShadowRoot?: ShadowRoot | null;
}

interface WithDom {
  /** Chromium's way; only for HTML elements. */
  readonly dom?: { openOrClosedShadowRoot(element: Element): ShadowRoot | null };
}

export function shadowRootOf(element: Element): ShadowRoot | null {
  const { shadowRoot } = own(element);
  if (shadowRoot) return shadowRoot;
  const seen = (element as Peeking).openOrClosedShadowRoot;
  if (seen !== undefined) return seen;
  try {
    return (api() as WithDom).dom?.openOrClosedShadowRoot(element) ?? null;
  } catch {
    return null;
  }
}

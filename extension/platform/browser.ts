/**
 * The one place that reaches for the browser's extension API. Firefox and newer Chromium call it `browser`, older Chromium
 * `chrome`; with Manifest V3 both answer with promises, so only the name differs. The Workshop, where a few kilobytes do not matter, hands
 * in webextension-polyfill, which also smooths older browsers over; the panel, the background and the capture script do without it.
 */
import type { Browser } from 'webextension-polyfill';

/** Chromium's side panel, which the shared type package does not describe. */
export interface SidePanel {
  open(where: { tabId: number } | { windowId: number }): Promise<void>;
}

export type ExtensionApi = Browser & { readonly sidePanel?: SidePanel };

const names = globalThis as { browser?: ExtensionApi; chrome?: ExtensionApi };

let handedIn: ExtensionApi | null = null;

/** Has the API used that a page hands in, from its start. */
export const handInApi = (given: Browser): void => {
  handedIn = given;
};

/** Throws when read outside an extension, where neither name exists. */
export const api = (): ExtensionApi => {
  // An element of the page with the id "browser" is found under that name too, but is no property of the global's own.
  const found = handedIn ?? (Object.hasOwn(names, 'browser') ? names.browser : names.chrome);
  if (!found) throw new Error('not in an extension');
  return found;
};

/** False in a content script left over from before the extension was updated or removed. */
export const isConnected = (): boolean => {
  try {
    return typeof api().runtime?.id === 'string';
  } catch {
    return false;
  }
};

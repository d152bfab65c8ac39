/** Puts a script into the page of a tab. Allowed only after the buyer asked (activeTab), until the tab navigates. */
import { api } from './browser.ts';

export type Refusal = 'browser-page' | 'store' | 'pdf' | 'no-access' | 'no-tab';

const STORES = [
  // Pages on which the browsers themselves forbid extensions to run, so that no page can be made to praise or block one.
  /^https:\/\/chromewebstore\.google\.com\//,
  /^https:\/\/chrome\.google\.com\/webstore/,
  /^https:\/\/microsoftedge\.microsoft\.com\/addons/,
  /^https:\/\/addons\.mozilla\.org\//,
];

/** Why the browser refuses, as far as the address tells; it is only used to word the message. */
export function refusalOf(address: string | undefined): Refusal {
  // The address is told only where access was granted: not on the browser's own pages.
  if (address === undefined || address === '') return 'browser-page';
  if (STORES.some((store) => store.test(address))) return 'store';
  if (/\.pdf(?:[?#]|$)/i.test(address)) return 'pdf';
  return /^(?:https?|file):/.test(address) ? 'no-access' : 'browser-page';
}

/** Chromium may apply the access that a key press grants a moment after it tells of the key press (seen in 156, about 1 in 20). */
const WAITS = [0, 50, 200];

export type PageScript = 'capture.js' | 'sweep.js';

/** Null when the script is in the page. Injecting again is harmless: the newer script replaces the older. */
export async function inject(tabId: number, file: PageScript = 'capture.js'): Promise<Refusal | null> {
  for (const wait of WAITS) {
    if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
    try {
      await api().scripting.executeScript({ target: { tabId }, files: [file] });
      return null;
    } catch {
      // The next try, or the words for it below.
    }
  }
  const tab = await api()
    .tabs.get(tabId)
    .catch(() => null);
  return tab ? refusalOf(tab.url) : 'no-tab';
}

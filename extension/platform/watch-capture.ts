/** What the panel follows: the capture of one tab, or of whichever tab is in front in the panel's window. */

import { listingFromText, MAX_TEXT } from '../../src/listing/page-listing.ts';
import { api } from './browser.ts';
import { type CaptureState, dropCapture, loadCapture, onCaptureChange, storeCapture } from './capture-state.ts';

/** The tab that a panel opened in a tab of its own watches; null in a side panel or sidebar. */
export const namedTab = (): number | null => {
  const named = new URLSearchParams(globalThis.location?.search ?? '').get('tab');
  return named !== null && /^\d+$/.test(named) ? Number(named) : null;
};

/** The tab in front in this window; null when there is none. */
export async function activeTabId(): Promise<number | null> {
  const named = namedTab();
  if (named !== null) return named;
  const [tab] = await api().tabs.query({ active: true, currentWindow: true });
  return tab?.id ?? null;
}

export type CaptureListener = (state: CaptureState | null, tabId: number | null) => void;

const dropUnread = async (tabId: number): Promise<void> => {
  const state = (await loadCapture(tabId))?.state;
  if (state === 'refused' || state === 'failed') await dropCapture(tabId);
};

/** Calls back at once and at every change (new capture, other tab in front). Gives a function that stops it. */
export function watchCapture(tab: number | 'active', listener: CaptureListener): () => void {
  let watched: number | null = null;
  let round = 0;
  /** The round that has told the listener: while a later one is under way nobody knows which tab is in front. */
  let told = 0;
  const tell = (mine: number, state: CaptureState | null, tabId: number | null): void => {
    watched = tabId;
    told = mine;
    listener(state, tabId);
  };
  const refresh = async (): Promise<void> => {
    const mine = ++round;
    const tabId = tab === 'active' ? await activeTabId() : tab;
    const state = tabId === null ? null : await loadCapture(tabId);
    if (mine === round) tell(mine, state, tabId); // Else a later one has overtaken it.
  };
  const again = (): void => void refresh();
  const stopStorage = onCaptureChange((tabId, read) => {
    if (round !== told) again();
    // The change brings the capture along: to ask for it, and for the tab, would keep the buyer waiting.
    else if (tabId === watched) tell(round, read(), tabId);
    else if (watched === null) again();
  });
  /** That a page could not be read is no news any more when the tab shows another. */
  const leaving = (tabId: number, { status }: { status?: string }): void => {
    if (tabId === watched && status === 'loading') void dropUnread(tabId);
  };
  if (tab === 'active') api().tabs.onActivated.addListener(again);
  api().tabs.onUpdated.addListener(leaving);
  again();
  return () => {
    round = -1;
    stopStorage();
    api().tabs.onUpdated.removeListener(leaving);
    api().tabs.onActivated.removeListener(again);
  };
}

/** Makes pasted text the capture of a tab. Answers whether it was stored; text over the limit is cut and says so. */
export const capturePaste = (tabId: number, text: string): Promise<boolean> =>
  storeCapture(tabId, {
    state: 'ready',
    listing: listingFromText(text.slice(0, MAX_TEXT), 'paste'),
    cut: text.length > MAX_TEXT,
    at: Date.now(),
  });

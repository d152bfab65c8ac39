/** The buyer asks for an ad: the panel opens, and the page is read into session storage, where the panel finds it. */
import type { Tabs } from 'webextension-polyfill';
import { listingFromText, MAX_TEXT } from '../../src/listing/page-listing.ts';
import { storeCapture } from '../platform/capture-state.ts';
import { inject, type Refusal } from '../platform/inject.ts';
import { type Answer, sendToTab, type TakeMode } from '../platform/messages.ts';
import { isBeside, openPanel, showPanelTab } from '../platform/open-panel.ts';
import { activeTabId } from '../platform/watch-capture.ts';
import { fail } from './hand-over.ts';

/** The browser's own copy of a selection: without its lines, but there where no script of ours may run (PDF, frames of other sites). */
async function storeSelected(tabId: number, selected: string, address: string | null): Promise<void> {
  await storeCapture(tabId, {
    state: 'ready',
    listing: { ...listingFromText(selected.slice(0, MAX_TEXT), 'selection'), address },
    cut: selected.length > MAX_TEXT,
    at: Date.now(),
  });
  await showPanelTab(tabId);
}

/** Says why a page is not read: the browser lets no script in, or ours failed in it. */
export async function tellUnread(tabId: number, refusal: Refusal | null, answer: Answer<unknown> | null): Promise<void> {
  if (answer?.ok === false && answer.code === 'unexpected') return fail(tabId, 'unexpected');
  await storeCapture(tabId, { state: 'refused', reason: refusal ?? 'no-access', at: Date.now() });
  await showPanelTab(tabId);
}

async function takeFrom(tabId: number, mode: TakeMode, selected: string): Promise<void> {
  const refusal = await inject(tabId);
  const answer = refusal === null ? await sendToTab(tabId, 'take', { mode }) : null;
  if (answer?.ok && answer.value !== 'nothing') return;
  if (selected.trim() !== '') await storeSelected(tabId, selected, null);
  else if (answer?.ok) await sendToTab(tabId, 'take', { mode: 'pick' });
  else await tellUnread(tabId, refusal, answer);
}

/** Must be called at once in the handler of the buyer's click or key press, for only then may the panel be opened. */
export function askForAd(tab: Tabs.Tab | undefined, mode: TakeMode, selected = ''): void {
  // A tab would cover the page while the buyer picks: it opens when there is something to show.
  if (isBeside()) void openPanel({ tabId: tab?.id, windowId: tab?.windowId });
  void (async () => {
    const tabId = tab?.id ?? (await activeTabId());
    if (tabId !== null) await takeFrom(tabId, mode, selected);
  })();
}

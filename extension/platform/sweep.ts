/** What the panel asks of a page's sweep. Each answers with a code when the page can't be reached or is past it. */
import type { PageListing, Span } from '../../src/listing/page-listing.ts';
import { storeCapture } from './capture-state.ts';
import { inject } from './inject.ts';
import { type Answer, type SweepTag, sendToBackground, sendToTab } from './messages.ts';
import { endSweep } from './sweep-state.ts';
import { activeTabId } from './watch-capture.ts';

/** Starts reading every ad of the page in front. `no-page`: the menu, the shortcut or the toolbar button must be used, which give access. */
export async function startSweep(): Promise<Answer<null>> {
  const tabId = await activeTabId();
  if (tabId === null) return { ok: false, code: 'no-tab' };
  const refusal = await inject(tabId, 'sweep.js');
  return refusal === null ? sendToTab(tabId, 'sweep', {}) : { ok: false, code: 'no-page' };
}

/** A page that does not answer any more has navigated: its sweep is over. */
async function orEnded<T>(tabId: number, asked: Promise<Answer<T>>): Promise<Answer<T>> {
  const answer = await asked;
  if (!answer.ok && answer.code === 'no-page') await endSweep(tabId);
  return answer;
}

export const stopSweep = (tabId: number): Promise<Answer<null>> => orEnded(tabId, sendToTab(tabId, 'sweep-stop', {}));

/** Ends the reading and takes the list away. */
export async function closeSweep(tabId: number, run: string): Promise<void> {
  await stopSweep(tabId);
  await sendToBackground('list-closed', { tabId, run });
}

export const tagSwept = (tabId: number, run: string, tags: readonly SweepTag[]): Promise<Answer<null>> =>
  orEnded(tabId, sendToTab(tabId, 'sweep-tags', { run, tags }));

/** Brings an ad into view; null takes the frame about it away. */
export const showSwept = (tabId: number, run: string, id: string | null): Promise<Answer<null>> =>
  sendToTab(tabId, 'sweep-show', { run, id });

export const markSwept = (tabId: number, run: string, id: string, spans: readonly Span[]): Promise<Answer<number>> =>
  sendToTab(tabId, 'sweep-mark', { run, id, spans });

/** Makes an ad of the list the capture of the tab, so that the panel shows its whole answer, or that there is no room for it. */
export async function openSwept(tabId: number, listing: PageListing): Promise<void> {
  const at = Date.now();
  if (await storeCapture(tabId, { state: 'ready', listing, cut: false, at })) return;
  await storeCapture(tabId, { state: 'failed', reason: 'full', at });
}

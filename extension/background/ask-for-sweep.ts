/** The buyer asks for every ad of a page: the panel opens, the page is read, and what it reports goes into session storage. */
import type { Tabs } from 'webextension-polyfill';
import { dropCapture } from '../platform/capture-state.ts';
import { inject } from '../platform/inject.ts';
import { Failure, type Input, type Sender, sendToTab } from '../platform/messages.ts';
import { openPanel } from '../platform/open-panel.ts';
import { closeList, dropIfGone, dropSweep, storeSweep } from '../platform/sweep-state.ts';
import { activeTabId } from '../platform/watch-capture.ts';
import { tellUnread } from './ask-for-ad.ts';
import { inTurn, tabOf } from './hand-over.ts';

/** Must be called at once in the handler of the buyer's click or key press, for only then may the panel be opened. */
export function askForSweep(tab: Tabs.Tab | undefined): void {
  void openPanel({ tabId: tab?.id, windowId: tab?.windowId });
  void (async () => {
    const tabId = tab?.id ?? (await activeTabId());
    if (tabId === null) return;
    const refusal = await inject(tabId, 'sweep.js');
    const answer = refusal === null ? await sendToTab(tabId, 'sweep', {}) : null;
    if (!answer?.ok) await tellUnread(tabId, refusal, answer);
  })();
}

/** Tabs that were closed while this background runs. What they sent last may come after that, when Firefox still knows the tab. */
const closed = new Set<number>();

export const onTabClosed = (tabId: number): Promise<null> => {
  closed.add(tabId);
  // In turn, for a report of it may just be put away.
  return inTurn(async () => {
    await dropCapture(tabId);
    await dropSweep(tabId);
  });
};

export const onSwept = (report: Input<'swept'>, sender: Sender): Promise<null> =>
  inTurn(async () => {
    const tabId = tabOf(sender);
    if (closed.has(tabId)) return;
    const stored = await storeSweep(tabId, report);
    await dropIfGone(tabId);
    if (!stored) throw new Failure('full');
  });

/** In turn, for a report of it may just be put away. */
export const onListClosed = ({ tabId, run }: Input<'list-closed'>): Promise<null> => inTurn(() => closeList(tabId, run));

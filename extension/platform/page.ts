/** What the panel asks of the page in a tab. Each answers with a code when the page can't be reached. */
import type { Span } from '../../src/listing/page-listing.ts';
import { api } from './browser.ts';
import { inject } from './inject.ts';
import { type Answer, sendToTab } from './messages.ts';
import { activeTabId, namedTab } from './watch-capture.ts';

const inActiveTab = async <T>(work: (tabId: number) => Promise<Answer<T>>): Promise<Answer<T>> => {
  const tabId = await activeTabId();
  return tabId === null ? { ok: false, code: 'no-tab' } : work(tabId);
};

/**
 * Marks spans of `listing.text` in the page (for spans of `Reading.text`, take `composeText(listing).shift` off first) and brings
 * the first into view. `no-page`: the page has navigated since; the shortcut must be pressed again. `gone`: the words are not there any more.
 */
export const highlight = (spans: readonly Span[]): Promise<Answer<number>> =>
  inActiveTab((tabId) => sendToTab(tabId, 'highlight', { spans }));

export const clearHighlight = (): Promise<Answer<null>> => inActiveTab((tabId) => sendToTab(tabId, 'clear-highlight', {}));

/** Starts choosing a block in the page. `no-page`: the shortcut or the toolbar button must be used, which gives access. */
export const startPick = (): Promise<Answer<unknown>> =>
  inActiveTab(async (tabId) => {
    const refusal = await inject(tabId);
    if (refusal !== null) return { ok: false, code: 'no-page' };
    // A panel in a tab of its own covers the page that is to be picked from.
    if (namedTab() !== null) await api().tabs.update(tabId, { active: true });
    return sendToTab(tabId, 'take', { mode: 'pick' });
  });

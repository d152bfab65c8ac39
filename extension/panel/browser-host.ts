/** The panel's host in a browser: the platform, and nothing more. */
import {
  activeTabId,
  capturePaste,
  clearHighlight,
  highlight,
  loadEdits,
  locale,
  saveEdits,
  startPick,
  strings,
  watchCapture,
} from '../platform/index.ts';
import type { Host } from './host.ts';
import { loadSettings, saveSettings } from './kept-settings.ts';

export const browserHost = (): Host => ({
  strings: strings(),
  locale: locale(),
  watchCapture: (seen) => watchCapture('active', (state) => seen(state)),
  highlight: (spans) => void highlight(spans),
  clearHighlight: () => void clearHighlight(),
  startPick: async () => (await startPick()).ok,
  paste: async (text) => {
    const tabId = await activeTabId();
    return tabId !== null && capturePaste(tabId, text);
  },
  loadEdits,
  saveEdits,
  loadSettings,
  saveSettings,
});

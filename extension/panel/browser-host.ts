/** The panel's host in a browser: the platform, and nothing more. */
import {
  activeTabId,
  capturePaste,
  clearHighlight,
  closeSweep,
  highlight,
  locale,
  markSwept,
  openSwept,
  openWorkshop,
  saveEdits,
  showSwept,
  startPick,
  startSweep,
  stopSweep,
  strings,
  tagSwept,
  watchCapture,
  watchSweep,
} from '../platform/index.ts';
import type { Host } from './host.ts';
import { keepHost } from './keep-host.ts';
import { editsFor } from './kept-edits.ts';
import { loadSettings, saveSettings, watchSettings } from './kept-settings.ts';
import type { SweepHost } from './sweep/sweep-host.ts';

const keeping = keepHost((address) => void openWorkshop(address));

const sweep: SweepHost = {
  watch: watchSweep,
  start: async () => (await startSweep()).ok,
  stop: ({ tabId }) => void stopSweep(tabId),
  drop: ({ tabId, run }) => void closeSweep(tabId, run),
  tag: ({ tabId, run }, tags) => void tagSwept(tabId, run, tags),
  show: ({ tabId, run }, id) => void showSwept(tabId, run, id),
  mark: ({ tabId, run }, id, spans) => void markSwept(tabId, run, id, spans),
  open: ({ tabId }, listing) => void openSwept(tabId, listing),
  again: keeping.again,
  keepMany: async (ads) => (await import('./sweep/keep-many.ts')).keepMany(keeping, ads),
};

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
  loadEdits: editsFor,
  saveEdits,
  loadSettings,
  saveSettings,
  watchSettings,
  sweep,
  keeping,
});

/** What the panel and the workshop use of the browser. The capture script imports single files, to stay small. */
export type { CaptureState, Ready } from './capture-state.ts';
export { loadEdits, saveEdits } from './edits.ts';
export type { Answer, FailCode, SweepState, SweepTag, SweptAd } from './messages.ts';
export { openPanel } from './open-panel.ts';
export { openWorkshop } from './open-workshop.ts';
export { clearHighlight, highlight, startPick } from './page.ts';
export { type LoadedSettings, loadSettings, oldSettings, readSettings, saveSettings } from './settings.ts';
export { closeSweep, markSwept, openSwept, showSwept, startSweep, stopSweep, tagSwept } from './sweep.ts';
export { activeTabId, type CaptureListener, capturePaste, watchCapture } from './watch-capture.ts';
export { type SweepListener, watchSweep } from './watch-sweep.ts';
export { getMessage, learnKeys, locale, strings } from './words.ts';

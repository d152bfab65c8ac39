/**
 * What the background listens to. It holds no state: the browser may end it at any time and start it again for the next event.
 * Firefox for Android has neither context menus nor shortcuts: what is missing is passed over, and the toolbar's entry remains.
 */
import { api } from '../platform/browser.ts';
import { answerMessages } from '../platform/messages.ts';
import { askForAd } from './ask-for-ad.ts';
import { askForSweep, onListClosed, onSwept, onTabClosed } from './ask-for-sweep.ts';
import { onCaptured, onCaptureFailed, onPicking, onPickLeft } from './hand-over.ts';
import { createMenus, onMenu } from './menus.ts';

api().runtime.onInstalled.addListener(createMenus);
api().runtime.onStartup.addListener(createMenus);
api().contextMenus?.onClicked.addListener(onMenu);
api().action.onClicked.addListener((tab) => askForAd(tab, 'selection-or-pick'));
api().commands?.onCommand.addListener((command, tab) => {
  if (command === 'take-ad') askForAd(tab, 'selection-or-pick');
  else if (command === 'read-every-ad') askForSweep(tab);
});
api().tabs.onRemoved.addListener((tabId) => void onTabClosed(tabId));
answerMessages({
  captured: onCaptured,
  picking: onPicking,
  'pick-left': onPickLeft,
  'capture-failed': onCaptureFailed,
  swept: onSwept,
  'list-closed': onListClosed,
});

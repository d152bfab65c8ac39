/** Entries in the page's context menu. */
import type { Menus, Tabs } from 'webextension-polyfill';
import { api } from '../platform/browser.ts';
import { getMessage } from '../platform/words.ts';
import { askForAd } from './ask-for-ad.ts';

const JUDGE_SELECTION = 'judge-selection';
const PICK_ON_PAGE = 'pick-on-page';

/** Browsers keep the entries; after an update they are made anew, for their words may have changed. */
export async function createMenus(): Promise<void> {
  const { contextMenus } = api();
  await contextMenus.removeAll();
  contextMenus.create({ id: JUDGE_SELECTION, contexts: ['selection'], title: getMessage('capture_menu_selection') });
  contextMenus.create({ id: PICK_ON_PAGE, contexts: ['page', 'frame', 'link', 'image'], title: getMessage('capture_menu_pick') });
}

export function onMenu(info: Menus.OnClickData, tab: Tabs.Tab | undefined): void {
  if (info.menuItemId === JUDGE_SELECTION) askForAd(tab, 'selection', info.selectionText);
  else if (info.menuItemId === PICK_ON_PAGE) askForAd(tab, 'pick');
}

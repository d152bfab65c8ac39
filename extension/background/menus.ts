/** Entries in the page's context menu. */
import type { Menus, Tabs } from 'webextension-polyfill';
import { api } from '../platform/browser.ts';
import { getMessage } from '../platform/words.ts';
import { askForAd } from './ask-for-ad.ts';
import { askForSweep } from './ask-for-sweep.ts';
import { inTurn } from './hand-over.ts';

const JUDGE_SELECTION = 'judge-selection';
const PICK_ON_PAGE = 'pick-on-page';
const READ_EVERY_AD = 'read-every-ad';
const ON_PAGE: Menus.ContextType[] = ['page', 'frame', 'link', 'image'];

/**
 * Browsers keep the entries. After an update they are made anew, for their words may have changed; when the browser starts too, for it may
 * have ended the background after the old ones were gone. In turn: two at once would each make every entry.
 */
export const createMenus = (): Promise<null> =>
  inTurn(async () => {
    const contextMenus: Menus.Static | undefined = api().contextMenus;
    if (!contextMenus) return;
    await contextMenus.removeAll();
    contextMenus.create({ id: JUDGE_SELECTION, contexts: ['selection'], title: getMessage('capture_menu_selection') });
    contextMenus.create({ id: PICK_ON_PAGE, contexts: ON_PAGE, title: getMessage('capture_menu_pick') });
    contextMenus.create({ id: READ_EVERY_AD, contexts: ON_PAGE, title: getMessage('sweep_menu') });
  });

export function onMenu(info: Menus.OnClickData, tab: Tabs.Tab | undefined): void {
  if (info.menuItemId === JUDGE_SELECTION) askForAd(tab, 'selection', info.selectionText);
  else if (info.menuItemId === PICK_ON_PAGE) askForAd(tab, 'pick');
  else if (info.menuItemId === READ_EVERY_AD) askForSweep(tab);
}

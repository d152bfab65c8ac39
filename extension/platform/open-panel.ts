/** Opens the panel. Browsers allow it only as the first call of a click, key press or menu choice: nothing may be awaited before. */
import { api } from './browser.ts';

export interface Place {
  readonly tabId?: number | undefined;
  readonly windowId?: number | undefined;
}

/** A panel in a tab of its own watches the tab that its address names. */
const inTab = async (tabId: number | undefined): Promise<void> => {
  const query = tabId === undefined ? '' : `?tab=${tabId}`;
  await api().tabs.create({ url: api().runtime.getURL(`panel.html${query}`) });
};

/** Side panel in Chromium, sidebar in Firefox, a tab where neither exists or the browser declines. Never rejects. */
export async function openPanel({ tabId, windowId }: Place): Promise<void> {
  const { sidePanel, sidebarAction } = api();
  try {
    if (sidePanel && tabId !== undefined) return await sidePanel.open({ tabId });
    if (sidePanel && windowId !== undefined) return await sidePanel.open({ windowId });
    if (typeof sidebarAction?.open === 'function') return await sidebarAction.open();
  } catch (error) {
    console.warn('Ironsift: the panel opens in a tab,', error);
  }
  await inTab(tabId).catch((error: unknown) => console.error('Ironsift:', error));
}

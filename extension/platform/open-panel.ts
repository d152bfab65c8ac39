/** Opens the panel. Browsers allow it only as the first call of a click, key press or menu choice: nothing may be awaited before. */
import { api } from './browser.ts';

export interface Place {
  readonly tabId?: number | undefined;
  readonly windowId?: number | undefined;
}

/** Whether the panel stands beside the page. Firefox for Android has no sidebar: there it is a tab, which covers the page. */
export const isBeside = (): boolean => {
  const { sidePanel, sidebarAction } = api();
  return Boolean(sidePanel) || typeof sidebarAction?.open === 'function';
};

/** A panel in a tab of its own watches the tab that its address names; one that is open already comes to the front. */
async function inTab(tabId: number | undefined): Promise<void> {
  const page = api().runtime.getURL('panel.html');
  const url = tabId === undefined ? page : `${page}?tab=${tabId}`;
  // Our own pages may be looked for by their address without any permission.
  const open = (await api().tabs.query({ url: `${page}*` })).find((tab) => tab.url === url);
  if (open?.id === undefined) await api().tabs.create({ url });
  else await api().tabs.update(open.id, { active: true });
}

const openTab = (tabId: number | undefined): Promise<void> =>
  inTab(tabId).catch((error: unknown) => console.error('Ironsift:', error));

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
  await openTab(tabId);
}

/** Brings the panel of a tab to the front where it can't stand beside the page: once there is something to show. Never rejects. */
export const showPanelTab = async (tabId: number): Promise<void> => {
  if (!isBeside()) await openTab(tabId);
};

/** Opens the Workshop in a tab; one that is open already is taken to the address and brought to the front. */
import { api } from './browser.ts';

export async function openWorkshop(address: string): Promise<void> {
  const page = api().runtime.getURL('workshop.html');
  const url = `${page}#${address}`;
  try {
    // Our own pages may be looked for by their address without any permission.
    const [open] = await api().tabs.query({ url: `${page}*` });
    if (open?.id === undefined) return void (await api().tabs.create({ url }));
    await api().tabs.update(open.id, { url, active: true });
    // Firefox for Android has no windows.
    if (open.windowId !== undefined) await api().windows?.update(open.windowId, { focused: true });
  } catch (error) {
    console.warn('Ironsift: the Workshop opens in a new tab,', error);
    await api().tabs.create({ url });
  }
}

import type { Browser, Page } from 'puppeteer-core';

/** Whether an address is the panel's, in Chromium. */
export const isPanel = (address: string): boolean => /^chrome-extension:\/\/[a-p]{32}\/panel\.html/.test(address);

const ids = new WeakMap<Browser, string>();

/** Id of the extension in Chromium, from its worker; the same when the worker has ended meanwhile, as it does after half a minute of nothing. */
export async function extensionId(browser: Browser): Promise<string> {
  const known = ids.get(browser);
  if (known !== undefined) return known;
  const worker = await browser.waitForTarget(
    (target) =>
      target.type() === 'service_worker' &&
      target.url().startsWith('chrome-extension://') &&
      target.url().endsWith('/background.js'),
    { timeout: 30_000 },
  );
  const { hostname } = new URL(worker.url());
  ids.set(browser, hostname);
  return hostname;
}

/** The side panel as a page, once it is open. Chromium only. */
export async function panelOf(browser: Browser, timeout = 30_000): Promise<Page> {
  const target = await browser.waitForTarget((candidate) => isPanel(candidate.url()), { timeout });
  return target.asPage();
}

/** The panel's page in a tab of its own: what a browser without side panels shows, and the way to reach it in any width. */
export async function openPanelInTab(browser: Browser, query = ''): Promise<Page> {
  const page = await browser.newPage();
  await page.goto(`chrome-extension://${await extensionId(browser)}/panel.html${query}`);
  return page;
}

/** Waits until the panel's root carries `data-state="STATE"`; on time-out says which state it is in. */
export async function waitForState(panel: Page, state: string, timeout = 30_000): Promise<void> {
  await panel.waitForSelector(`[data-state="${state}"]`, { timeout }).catch(async () => {
    const now = await panel
      .evaluate(() => document.querySelector('[data-state]')?.getAttribute('data-state') ?? 'none')
      .catch(() => 'closed');
    throw new Error(`the panel did not come to state "${state}" within ${timeout} ms; it is in "${now}"`);
  });
}

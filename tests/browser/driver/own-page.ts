/** The extension's own pages and its storage, the same way in both browsers. */
import type { Page } from 'puppeteer-core';
import { FIREFOX_ROOT, type Launched } from './launch.ts';
import { extensionId } from './panel.ts';

/** A browser with or without a window. */
export type Started = Pick<Launched, 'browser' | 'name'>;

/** Chromium tells it by the worker, which it ends after half a minute. */
const roots = new WeakMap<Started, string>();

export async function rootOf(launched: Started): Promise<string> {
  if (launched.name === 'firefox') return FIREFOX_ROOT;
  const root = roots.get(launched) ?? `chrome-extension://${await extensionId(launched.browser)}/`;
  roots.set(launched, root);
  return root;
}

let opened = 0;

/** An address of ours as one of a new page: a change of the part behind # alone is none, and a way by an empty page costs a process. */
export function anew(address: string): string {
  const [path = '', hash] = address.split('#');
  return `${path}${path.includes('?') ? '&' : '?'}${++opened}${hash === undefined ? '' : `#${hash}`}`;
}

/**
 * Goes to a page of the extension ("workshop.html#finds"). Firefox moves the tab into another process and BiDi hears of no end of loading:
 * there the document itself is asked, for so many milliseconds at most.
 */
export async function goToOwn(launched: Started, page: Page, path: string, patience = 20_000): Promise<void> {
  const address = anew(`${await rootOf(launched)}${path}`);
  if (launched.name === 'chromium') {
    await page.goto(address);
    return;
  }
  const gone = page.goto(address, { timeout: 0 }).catch(() => null);
  const end = Date.now() + patience;
  for (;;) {
    const there = await page.evaluate(() => document.readyState !== 'loading' && location.href).catch(() => false);
    if (there === address) break;
    if (Date.now() > end) throw new Error(`Firefox did not come to ${address}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  void gone;
}

/** A page of the extension in a tab of its own. */
export async function openOwn(launched: Started, path: string, width?: number): Promise<Page> {
  const page = await launched.browser.newPage();
  if (width !== undefined) await page.setViewport({ width, height: 900 });
  await goToOwn(launched, page, path);
  return page;
}

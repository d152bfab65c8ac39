/** Ways to a state of a screen: an address and what is kept, a few keys, and a script that holds the page where it would go on by itself. */
import type { Page } from 'puppeteer-core';
import type { Store } from '../../extension/store/index.ts';
import { anew } from './driver/index.ts';
import type { Everything } from './every-screen.ts';

export type Reach = (given: Everything) => Promise<unknown>;

export async function workshop({ page, address }: Everything, hash: string, shows: string): Promise<void> {
  await page.setViewport({ width: 1200, height: 900 });
  await page.goto(anew(address(`workshop.html#${hash}`)));
  await page.waitForSelector(shows);
}

/** The panel with something in session storage for its own tab, which the keys name. */
export async function panel(
  { page, address, putInSession, tab }: Everything,
  stored: (tab: number) => object,
  shows: string,
): Promise<void> {
  await page.setViewport({ width: 360, height: 900 });
  await putInSession(stored(tab));
  await page.goto(address(`panel.html?tab=${tab}`));
  await page.waitForSelector(shows);
}

/** The same in a page in which a script of the test has run before the page's own. */
export const held =
  (script: string, reach: Reach): Reach =>
  async (given) => {
    const { identifier } = await given.page.evaluateOnNewDocument(script);
    await reach(given).finally(() => given.page.removeScriptToEvaluateOnNewDocument(identifier));
  };

/** Changes what is kept, as the store does, by a text of the test's; gives what the change gives. */
export async function keeps<T>(
  { page, address }: Everything,
  change: (store: Store, text: string) => Promise<T>,
  text = '',
): Promise<T> {
  await page.goto(address('store-test.html'));
  return (await page.evaluate(`window.storeTest.open().then((store) => (${change})(store, ${JSON.stringify(text)}))`)) as T;
}

export async function click(page: Page, selector: string): Promise<void> {
  const control = await page.waitForSelector(selector);
  await control?.focus();
  await page.keyboard.press(
    await page.evaluate((one) => (document.querySelector(one) instanceof HTMLInputElement ? 'Space' : 'Enter'), selector),
  );
}

/** What goes wrong around the pages: the background is ended between two steps, a tab is closed. */
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { forget, inBackground, waitForCapture } from './captured.ts';
import {
  type Display,
  type Launched,
  launchChromium,
  panelOf,
  pressKeys,
  pressShortcut,
  pressSweepShortcut,
  selectText,
  startDisplay,
  waitForState,
} from './driver/index.ts';
import { type PageServer, servePages } from './serve-pages.ts';

let display: Display;
let server: PageServer;
let launched: Launched;
let page: Page;

beforeAll(async () => {
  display = await startDisplay();
  server = await servePages();
  launched = await launchChromium({ display });
  page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
});
afterAll(async () => {
  await launched?.browser.close();
  await server?.close();
  await display?.close();
});

const isWorker = (address: string): boolean => address.startsWith('chrome-extension://') && address.endsWith('/background.js');
/** Ends the background as the browser does when it is idle or short of memory. */
async function endBackground(): Promise<void> {
  const target = await launched.browser.waitForTarget((one) => one.type() === 'service_worker' && isWorker(one.url()));
  await (await target.worker())?.close();
  await expect.poll(() => launched.browser.targets().some((one) => isWorker(one.url())), { timeout: 5000 }).toBe(false);
}
const isAnswered = async (): Promise<void> => waitForState(await panelOf(launched.browser), 'answer');
const extras = () => page.evaluate(() => document.documentElement.childElementCount - 2);

describe('the background is ended', () => {
  beforeEach(async () => {
    await page.goto(server.address('ad.html'));
    // Wakes it where an earlier test has ended it.
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    await waitForCapture(launched.browser, 'ready');
    await page.goto(server.address('ad.html'));
    await forget(launched.browser);
  });

  it('before the buyer asks: the key press wakes it, and the ad comes', async () => {
    await selectText(page, '#ad');
    await endBackground();
    await pressShortcut(launched, page);
    await isAnswered();
  });

  it('between asking and choosing: the choice wakes it, and the ad comes', async () => {
    await pressShortcut(launched, page);
    await waitForCapture(launched.browser, 'picking');
    await endBackground();
    await pressKeys(launched, page, 'Return');
    await isAnswered();
  });

  it('while picking, and picking is left: what was there before comes back', async () => {
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    await waitForCapture(launched.browser, 'ready');
    await page.evaluate(() => getSelection()?.removeAllRanges());
    await pressShortcut(launched, page);
    await waitForCapture(launched.browser, 'picking');
    await endBackground();
    await pressKeys(launched, page, 'Escape');
    await isAnswered();
    expect(await extras()).toBe(0);
  });

  it('with the answer in front: the panel still has it, and an edit still counts', async () => {
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    await isAnswered();
    await endBackground();
    const panel = await panelOf(launched.browser);
    await panel.hover('[data-line]');
    await page.waitForFunction(() => CSS.highlights.has('ironsift-evidence'), { timeout: 5000 });
  });

  it('during a sweep: the rest of the ads is reported all the same', async () => {
    await page.goto(server.address('results.html'));
    await pressSweepShortcut(launched, page);
    const panel = await panelOf(launched.browser);
    await waitForState(panel, 'list');
    const rows = () => panel.$$eval('[data-row]', (all) => all.length);
    await expect.poll(rows, { timeout: 10_000 }).toBe(8);
    await endBackground();
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await expect.poll(rows, { timeout: 10_000 }).toBe(12);
  });
});

it('a tab that is closed in the midst of a sweep leaves nothing behind in the store of the session', async () => {
  await forget(launched.browser);
  const other = await launched.browser.newPage();
  await other.goto(server.address('results.html'));
  await pressSweepShortcut(launched, other);
  const stored = async () => Object.keys((await inBackground(launched.browser, 'chrome.storage.session.get(null)')) as object);
  await expect.poll(async () => (await stored()).some((key) => key.startsWith('sweep:')), { timeout: 10_000 }).toBe(true);
  const before = (await stored()).filter((key) => key.startsWith('sweep:')).length;
  await other.close();
  await expect
    .poll(async () => (await stored()).filter((key) => key.startsWith('sweep:')).length, { timeout: 15_000 })
    .toBeLessThan(before);
});

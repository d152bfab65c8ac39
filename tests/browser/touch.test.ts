/**
 * With fingers alone, on a screen that has nothing else (emulated in Chromium): picking an ad, leaving, and targets that are large enough
 * (WCAG 2.2, 2.5.5 Target Size (Enhanced): 44 px).
 */
import { mkdir } from 'node:fs/promises';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { violations } from './axe.ts';
import { forget, snapshot, waitForCapture } from './captured.ts';
import {
  type Display,
  type Launched,
  launchChromium,
  openPanelInTab,
  pasteInto,
  pressShortcut,
  startDisplay,
  waitForState,
} from './driver/index.ts';
import { middleOf } from './mouse.ts';
import { type PageServer, servePages } from './serve-pages.ts';

const OUT = 'out/test';
const PHONE = { width: 390, height: 700, hasTouch: true, isMobile: true };

let display: Display;
let server: PageServer;
let launched: Launched;
let page: Page;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  display = await startDisplay();
  server = await servePages();
  launched = await launchChromium({ display });
  page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  await page.setViewport(PHONE);
});

afterAll(async () => {
  await launched?.browser.close();
  await server?.close();
  await display?.close();
});

beforeEach(() => forget(launched.browser));

/** A finger on the middle of an element, or on one of the four buttons along the lower edge. */
const tap = async (where: string | 'wider' | 'narrower' | 'take' | 'leave'): Promise<void> => {
  const at = ['wider', 'narrower', 'take', 'leave'].indexOf(where);
  const { x, y } =
    at === -1
      ? await middleOf(page, where)
      : await page.evaluate((share) => ({ x: (innerWidth * share) / 8, y: innerHeight - 28 }), at * 2 + 1);
  await page.touchscreen.tap(x, y);
  await new Promise((resolve) => setTimeout(resolve, 300));
};
/** On a page of that name, or on the one that is there. */
const pick = async (name: string | null): Promise<string> => {
  if (name !== null) await page.goto(server.address(name));
  await forget(launched.browser);
  const before = await snapshot(page);
  await pressShortcut(launched, page);
  await waitForCapture(launched.browser, 'picking');
  return before;
};
const taken = async (): Promise<string> => (await waitForCapture(launched.browser, 'ready')).listing.text;
const seen = () => page.evaluate('window.seen ?? []');

describe('picking by touch', () => {
  it.each([['ad.html'], ['ad.html?strict'], ['key-swallower.html']])(
    'one tap outlines and a second takes on %s, of which the page sees nothing',
    async (name) => {
      const before = await pick(name);
      await tap('#ad li');
      await page.screenshot({ path: `${OUT}/touch-outlined.png` });
      // Only outlined so far.
      expect(await snapshot(page)).not.toBe(before);
      await tap('#ad li');
      expect(await taken()).toBe('4 x 45 lb');
      expect(await seen()).toEqual([]);
      expect(await snapshot(page)).toBe(before);
    },
  );
  it('another tap elsewhere outlines that instead', async () => {
    await pick('ad.html');
    await tap('#ad li');
    await tap('#ad li:nth-child(2)');
    await tap('#ad li:nth-child(2)');
    expect(await taken()).toBe('2 x 25 lb');
  });
  it('the buttons widen, narrow and take', async () => {
    await pick('key-swallower.html');
    await tap('#ad li');
    await tap('wider');
    await tap('take');
    expect(await taken()).toBe('• 4 x 45 lb\n• 2 x 25 lb');
    await pick('key-swallower.html');
    await tap('#ad li');
    await tap('wider');
    await tap('narrower');
    await tap('take');
    expect(await taken()).toBe('4 x 45 lb');
    expect(await seen()).toEqual([]);
  });
  it('a finger that moves scrolls the page and takes nothing; Cancel leaves nothing behind', async () => {
    await page.goto(server.address('ad.html'));
    await page.evaluate(() => {
      document.body.style.minHeight = '3000px';
    });
    const before = await pick(null);
    const { x, y } = await middleOf(page, '#ad li');
    await page.touchscreen.touchStart(x, y);
    for (let step = 1; step <= 8; step += 1) await page.touchscreen.touchMove(x, y - step * 20);
    await page.touchscreen.touchEnd();
    await page.waitForFunction(() => scrollY > 50, { timeout: 30_000 });
    // A tap on a page that is still moving only stops it.
    await new Promise((resolve) => setTimeout(resolve, 800));
    await tap('leave');
    expect(await snapshot(page)).toBe(before);
    await expect(waitForCapture(launched.browser, 'ready', 300)).rejects.toThrow('no capture');
  });
});

it('everything to be pressed in the panel is large enough for a finger, at the width of a phone', async () => {
  const panel = await openPanelInTab(launched.browser);
  await panel.setViewport({ ...PHONE, width: 360 });
  await panel.reload();
  await pasteInto(panel, '[data-paste]', 'Four 45 lb olympic plates, 2 inch holes, a 7 ft bar, flat bench. $190 for all');
  await panel.tap('[data-judge]');
  await waitForState(panel, 'answer');
  await panel.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  // What is unfolded is fetched then.
  for (const part of ['[data-part]', '.split']) await panel.waitForSelector(part);
  const small = await panel.$$eval('button, input, select, textarea, summary', (all) =>
    all
      .map((one) => ({
        html: one.outerHTML.slice(0, 100),
        box: (one.closest('label:has([type=checkbox])') ?? one).getBoundingClientRect(),
      }))
      .filter(({ box }) => box.height < 43.5)
      .map(({ box, html }) => `${box.width} x ${box.height}: ${html}`),
  );
  await panel.screenshot({ path: `${OUT}/touch-panel.png`, fullPage: true });
  expect(small).toEqual([]);
  expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  expect(await violations(panel)).toEqual([]);
});

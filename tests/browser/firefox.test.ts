/** What only Firefox has: its sidebar, looked at and read, its toolbar's button, and what its page of results shows. The rest is in stories/. */
import { mkdir } from 'node:fs/promises';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type Display,
  inFirefoxWindow,
  inSidebar,
  type Launched,
  launchFirefox,
  pressKeys,
  pressShortcut,
  pressSweepShortcut,
  selectText,
  startDisplay,
  toolbarButton,
} from './driver/index.ts';
import { CASES, type Hostile, hostileInFirefox } from './hostile-in-firefox.ts';
import { clickScreen } from './mouse.ts';
import { coloured, inked } from './pixels.ts';
import { type PageServer, servePages } from './serve-pages.ts';

let display: Display;
let server: PageServer;
let launched: Launched;
let page: Page;

const OUT = 'out/test';
const rootChildren = () => page.evaluate(() => document.documentElement.childElementCount);
const widthOf = () => page.evaluate(() => innerWidth);
const isPicking = (): Promise<unknown> =>
  page.waitForFunction(() => document.documentElement.childElementCount === 3, { timeout: 30_000 });
const hasLeft = (): Promise<unknown> =>
  page.waitForFunction(() => document.documentElement.childElementCount === 2, { timeout: 30_000 });

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  display = await startDisplay();
  server = await servePages();
  launched = await launchFirefox({ display });
  page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  await page.goto(server.address('ad.html'));
});

afterAll(async () => {
  await launched?.browser.close();
  await server?.close();
  await display?.close();
});

describe('Firefox', () => {
  it('opens the sidebar beside the page at the shortcut, and shows the call for what is selected', async () => {
    const wide = await widthOf();
    const markup = await page.evaluate(() => document.documentElement.outerHTML);
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    await page.waitForFunction((before) => innerWidth < before - 150, { timeout: 30_000 }, wide);
    // Under the sidebar's own heading stands the panel with its words, not an empty page.
    const words = async (): Promise<number> => {
      await display.screenshot(`${OUT}/firefox-sidebar.png`);
      return inked(`${OUT}/firefox-sidebar.png`, { x: 4, y: 170, width: 220, height: 600 });
    };
    await expect.poll(words, { timeout: 30_000, interval: 500 }).toBeGreaterThan(2500);
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(markup);
    const said = (what: string) => inSidebar(launched, `document.querySelector('${what}')?.textContent`);
    await expect.poll(() => said('[data-call] h1'), { timeout: 30_000 }).toMatch(/\w/);
    expect(await said('.ad-title')).toContain('Olympic plates');
    expect(Number(await inSidebar(launched, 'document.documentElement.scrollWidth'))).toBeLessThanOrEqual(
      Number(await inSidebar(launched, 'content.innerWidth')),
    );
  });
  it('judges what is selected when the button of the toolbar is pressed', async () => {
    await page.goto(server.address('ad-parts.html'));
    await selectText(page, '#struck');
    const { x, y } = await toolbarButton(launched);
    await clickScreen(launched, x, y);
    await expect
      .poll(() => inSidebar(launched, "document.querySelector('.ad-title')?.textContent"), { timeout: 30_000 })
      .toContain('Iron plates');
  });
  // What is picked on which page is told by the stories.
  it('picks by keyboard, left by Escape or not, leaves nothing behind, and the page sees none of it', async () => {
    await page.goto(server.address('key-swallower.html'));
    // A new window has the keyboard in its address bar, which no page may take it from.
    await clickScreen(launched, 900, 800);
    await page.evaluate('window.seen &&= []');
    const markup = await page.evaluate(() => document.documentElement.outerHTML);
    for (const keys of [['Down', 'Up', 'Escape'], ['Return']]) {
      await pressShortcut(launched, page);
      await isPicking();
      await display.screenshot(`${OUT}/firefox-pick.png`);
      for (const key of keys) {
        expect(await rootChildren()).toBe(3);
        await pressKeys(launched, page, key);
      }
      await hasLeft();
    }
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(markup);
    expect(await page.evaluate('window.seen ?? []')).toEqual([]);
  });
  it('labels every ad of a results page from the sidebar’s answers, and leaves nothing behind', async () => {
    await page.goto(server.address('results.html'));
    await clickScreen(launched, 900, 880);
    const markup = await page.evaluate(() => document.documentElement.outerHTML);
    const before = await coloured(page, '#1a1a1a');
    await pressSweepShortcut(launched, page);
    await expect.poll(() => coloured(page, '#1a1a1a'), { timeout: 30_000, interval: 500 }).toBeGreaterThan(before + 1500);
    await display.screenshot(`${OUT}/firefox-sweep.png`);
    await pressKeys(launched, page, 'Escape');
    await hasLeft();
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(markup);
  });
});

describe('hostile pages in Firefox', () => {
  let hostile: Hostile;
  beforeAll(async () => {
    hostile = await hostileInFirefox(launched, page);
  });
  afterAll(() => hostile?.close());

  it.each(CASES.map((one) => [one.name, one] as const))('%s', async (_, one) => {
    const { state, words, wrong } = await hostile.play(one);
    expect(wrong).toEqual([]);
    expect(one.ends ?? [one.by === 'sweep' ? 'list' : 'answer']).toContain(state);
    if (one.reads !== null) expect(words).toContain(one.reads ?? '4 x 45 lb');
  });
});

// Last, for the extension begins anew and Firefox's own words are not all there.
it('speaks German in a German Firefox', async () => {
  // Firefox's own words in German are not installed everywhere, and without them it takes no language: it is told that they are there.
  const language = await inFirefoxWindow(
    launched,
    `(async () => {
      Services.locale.availableLocales = ['de', 'en-US'];
      Services.locale.requestedLocales = ['de'];
      await (await AddonManager.getAddonByID('ironsift@ironsift.invalid')).reload();
      return Services.locale.appLocaleAsBCP47;
    })()`,
  );
  expect(language).toBe('de');
  await page.goto(server.address('ad.html'));
  await clickScreen(launched, 900, 800);
  await selectText(page, '#ad');
  await pressShortcut(launched, page);
  const said = (what: string) => inSidebar(launched, what).catch(String);
  await expect
    .poll(() => said("document.querySelector('[data-call] h1')?.textContent"), { timeout: 10_000 })
    .toContain('Die Fahrt lohnt sich');
  expect(await said('document.documentElement.lang')).toBe('de');
  const words = await said("document.querySelector('main').textContent");
  expect(words).toMatch(/Verlangt: 100\s\$/);
  expect(words).not.toMatch(/\[[a-z]+_\w+\]/);
  expect(await said('document.documentElement.scrollWidth <= content.innerWidth')).toBe('true');
});

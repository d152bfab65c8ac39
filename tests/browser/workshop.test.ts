/** The Workshop in real Chromium, on the browser's own IndexedDB: five hundred finds (ten thousand are the bench’s), in every width and scheme. */
import { mkdir } from 'node:fs/promises';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { OF_COLOURS, violations } from './axe.ts';
import { pictureOf } from './picture.ts';
import { sharedChromium } from './shared.ts';
import { storePage } from './store/kill.ts';

const OUT = 'out/test';

let browser: Browser;
let root: string;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  ({ browser, root } = await sharedChromium());
});

async function openPage(path: string, width = 1200): Promise<Page> {
  const page = await browser.newPage();
  await page.setViewport({ width, height: 900 });
  await page.goto(`${root}${path}`);
  return page;
}

describe('with five hundred finds', () => {
  let page: Page;
  beforeAll(async () => {
    const harness = await storePage(browser);
    await harness.evaluate(async () => {
      const { adOf, fill, must, open } = window.storeTest;
      await must((await open()).finds.keep(adOf('Seller one: 4 x 45 lb olympic plates, cast iron, $160 for all'), 1));
      await fill(500);
    });
    await harness.close();
    page = await openPage('workshop.html#finds');
    await page.waitForSelector('[data-find]');
    const first = await page.evaluate(() => performance.now());
    console.log(`first rows after ${Math.round(first)} ms`);
  });
  afterAll(() => page?.close());

  const rows = () => page.$$eval('[data-find]', (all) => all.length);
  const total = () => page.$eval('[data-find]', (row) => Number(row.getAttribute('aria-setsize')));

  test('draws what is in sight and little more', async () => {
    expect(await total()).toBeGreaterThan(500);
    expect(await rows()).toBeLessThan(80);
  });

  test('searches as one types', async () => {
    await page.type('[data-path="words"]', 'seller one');
    await page.waitForFunction(() => document.querySelectorAll('[data-find]').length === 1);
    expect(await page.$eval('[data-find] a', (link) => link.textContent)).toContain('Seller one');
    await page.$eval('[data-path="words"]', (box) => {
      (box as HTMLInputElement).value = '';
      box.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await page.waitForFunction(() => document.querySelectorAll('[data-find]').length > 10);
  });

  test('the last is one key away, and the first again', async () => {
    await page.focus('[data-find] a');
    await page.keyboard.press('End');
    const last = await total();
    await page.waitForFunction(
      (wanted) => document.activeElement?.closest('[data-find]')?.getAttribute('aria-posinset') === String(wanted),
      {},
      last,
    );
    await page.keyboard.press('Home');
    await page.waitForFunction(() => document.activeElement?.closest('[data-find]')?.getAttribute('aria-posinset') === '1');
  });

  test('fits every width, with nothing for axe to say in light and dark', async () => {
    const scheme = (value: 'light' | 'dark') => page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }]);
    await scheme('light');
    for (const width of [1200, 360, 320]) {
      await page.setViewport({ width, height: 900 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false);
      // What it looks at is in another order where there is little room.
      if (width !== 360) expect(await violations(page)).toEqual([]);
      await pictureOf(page, `${OUT}/finds-${width}.png`);
    }
    await scheme('dark');
    expect(await violations(page, [], OF_COLOURS)).toEqual([]);
  });
});

/** The sheet for a pickup and the bench for weighing, on a phone's width and on paper. */
import { mkdir } from 'node:fs/promises';
import type { Browser, Page } from 'puppeteer-core';
import { beforeAll, expect, test } from 'vitest';
import { OF_COLOURS, violations } from './axe.ts';
import { anew } from './driver/index.ts';
import { pictureOf } from './picture.ts';
import { sharedChromium } from './shared.ts';
import { storePage } from './store/kill.ts';

const OUT = 'out/test';
/** Everything that a sheet can hold. */
const LOT =
  'Home gym: 4 x 45 lb olympic plates, 4 x 25 lb, 2 x 10 lb, 2 x 2.5 lb, cast iron, light rust, an olympic bar, 7 ft, a curl bar, ' +
  'a power rack, a flat bench, spring collars. $700 for all, pick up in Elmwick';

let browser: Browser;
let root: string;
let page: Page;
let find: string;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  ({ browser, root } = await sharedChromium());
  const store = await storePage(browser);
  find = await store.evaluate(async (text) => {
    const { adOf, must, open } = window.storeTest;
    const { finds } = await open();
    const { id } = await must(finds.keep(adOf(text), 1));
    await must(finds.setStatus(id, 'going', 2));
    return id;
  }, LOT);
  page = await browser.newPage();
});

async function open(hash: string, selector: string): Promise<void> {
  await page.goto(anew(`${root}workshop.html#${hash}`));
  await page.waitForSelector(selector);
}

const SCREENS = [
  ['pickup', () => `pickup/${find}`, '.pickup-step'],
  ['weigh', () => 'weigh', '.washer-answer'],
] as const;

const scheme = (value: 'light' | 'dark') => page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }]);

test.each(SCREENS)('%s fits every width, with nothing for axe to say in light and dark', async (name, hash, selector) => {
  await scheme('light');
  await open(hash(), selector);
  if (name === 'weigh') {
    await page.$eval('[data-path=weighings]', (area) => (area as HTMLTextAreaElement).select());
    await page.type('[data-path=weighings]', '46.2 44.8 45.1 45.9 44.1');
    await page.waitForSelector('.labels');
  }
  const fits = async (width: number) => {
    await page.setViewport({ width, height: 800 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  };
  const widths = [1100, 360];
  for (const width of widths) await fits(width);
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  for (const width of widths) {
    await fits(width);
    await pictureOf(page, `${OUT}/${name}-${width}.png`, true);
  }
  expect(await violations(page)).toEqual([]);
  await scheme('dark');
  await pictureOf(page, `${OUT}/${name}-dark.png`, true);
  expect(await violations(page, [], OF_COLOURS)).toEqual([]);
});

test('on the sheet everything is large enough for a thumb', async () => {
  await page.setViewport({ width: 360, height: 800 });
  await open(`pickup/${find}`, '.pickup-step');
  const small = await page.$$eval('.pickup button, .pickup input, .pickup select, .pickup summary', (all) =>
    all
      .map((one) => ({ html: one.outerHTML.slice(0, 120), box: (one.closest('.tick') ?? one).getBoundingClientRect() }))
      .filter(({ box }) => box.height < 43.5)
      .map(({ html }) => html),
  );
  expect(small).toEqual([]);
});

test.each(['a4', 'letter'] as const)('prints on two sheets of %s at most', async (format) => {
  await scheme('light');
  await open(`pickup/${find}`, '.pickup-step');
  await page.emulateMediaType('print');
  await page.setViewport({ width: 714, height: 1000 });
  await page.screenshot({ path: `${OUT}/pickup-${format}.png`, fullPage: true });
  await page.emulateMediaType();
  const printed = await page.pdf({
    format,
    path: `${OUT}/pickup-${format}.pdf`,
    margin: { top: 40, bottom: 40, left: 40, right: 40 },
  });
  const sheets = [
    ...Buffer.from(printed)
      .toString('latin1')
      .matchAll(/\/Type\s*\/Page\b/g),
  ].length;
  expect(sheets).toBeGreaterThan(0);
  expect(sheets).toBeLessThanOrEqual(2);
});

test('one hole typed turns the price in sight', async () => {
  await open(`pickup/${find}`, '.pickup-step');
  const before = await page.$eval('.price-now', ({ textContent }) => textContent);
  await page.focus('[data-path="plate-1.boreMm"]');
  await page.keyboard.type('54.5');
  await page.waitForFunction((was) => document.querySelector('.price-now')?.textContent !== was, {}, before);
  const box = await page.$eval('.price-now', (one) => one.getBoundingClientRect().top);
  expect(box).toBeGreaterThanOrEqual(0);
});

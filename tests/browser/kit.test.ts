/** The kit in real Chromium: set up by keys alone, every width and scheme, its two printed pages, and five finds printed side by side. */
import { mkdir } from 'node:fs/promises';
import type { Browser, Page } from 'puppeteer-core';
import { beforeAll, expect, test } from 'vitest';
import { OF_COLOURS, violations } from './axe.ts';
import { anew } from './driver/index.ts';
import { tabTo as tabToIn } from './keys-alone.ts';
import { pictureOf } from './picture.ts';
import { sharedChromium } from './shared.ts';
import { sheetsOf } from './sheets.ts';
import { storePage } from './store/kill.ts';

const OUT = 'out/test';

let browser: Browser;
let root: string;
let page: Page;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  ({ browser, root } = await sharedChromium());
  const store = await storePage(browser);
  await store.evaluate(async () => {
    const { adOf, must, open } = window.storeTest;
    const { finds } = await open();
    await must(finds.keep(adOf('4 x 25 lb olympic plates, cast iron, $60 for all'), 1));
    await must(finds.keep(adOf('2 x 10 lb and 2 x 2.5 lb olympic plates, $30'), 2));
    await must(finds.keep(adOf('Couch, comfy, $60'), 3));
  });
  page = await browser.newPage();
});

async function open(hash: string, selector: string): Promise<void> {
  await page.goto(anew(`${root}workshop.html#${hash}`));
  await page.waitForSelector(selector);
}

const tabTo = (selector: string) => tabToIn(page, selector);

const startOver = () => page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());

async function typeInto(selector: string, text: string): Promise<void> {
  await tabTo(selector);
  await page.keyboard.down('Control');
  await page.keyboard.press('a');
  await page.keyboard.up('Control');
  await page.keyboard.type(text);
}

test('set up, a bar and plates added, by keys alone: the list of what is lacking follows', async () => {
  await page.setViewport({ width: 1200, height: 900 });
  await open('kit', '[data-set-up]');
  await typeInto('[data-path=best]', '405');
  await tabTo('[data-set-up]');
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-need="default/plate/45lb"][data-lacking="8"]');
  expect(await page.$('[data-need="default/bar/45lb"][data-lacking="1"]')).not.toBeNull();
  await startOver();
  await tabTo('[data-path="new.kind"]');
  // A select takes the beginning of a choice.
  await page.keyboard.type('straight');
  await typeInto('[data-path="new.weight"]', '45');
  await typeInto('[data-path="new.pieces"]', '1');
  await typeInto('[data-path="new.paid"]', '120');
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-need="default/bar/45lb"][data-lacking="0"]');
  await page.waitForFunction(() => /120/.test(document.querySelector('[data-money=spent]')?.textContent ?? ''));
  await startOver();
  await tabTo('summary');
  for (let presses = 0; presses < 60; presses += 1) {
    if (await page.evaluate(() => document.activeElement?.parentElement?.querySelector('[data-form=new]') !== null)) break;
    await page.keyboard.press('Tab');
    await tabTo('summary');
  }
  await page.keyboard.press('Enter');
  await tabTo('[data-path="new.kind"]');
  await page.keyboard.type('plates');
  await typeInto('[data-path="new.weight"]', '45');
  await typeInto('[data-path="new.pieces"]', '5');
  await page.keyboard.press('Enter');
  await page.waitForSelector('[data-need="default/plate/45lb"][data-lacking="3"]');
  await startOver();
  await typeInto('[data-path=budget]', '900');
  // 900 less the 120 that the bar cost.
  await page.waitForFunction(() => /780/.test(document.querySelector('[data-money=left]')?.textContent ?? ''));
  await page.waitForSelector('[data-fit=short]');
});

const PARTS = [
  ['kit', 'kit', '[data-need]'],
  ['loads', 'kit/loads', '[data-headline]'],
  ['platform', 'kit/platform', '[data-sheet]'],
] as const;

const scheme = (value: 'light' | 'dark') => page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }]);

test.each(PARTS)('%s fits every width, with nothing for axe to say in light and dark', async (name, hash, selector) => {
  await scheme('light');
  await open(hash, selector);
  if (name === 'loads') {
    await page.click('[data-additions]');
    await page.waitForSelector('[data-addition]');
  }
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  for (const width of [1200, 360, 240]) {
    await page.setViewport({ width, height: 800 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await pictureOf(page, `${OUT}/kit-${name}-${width}.png`, true);
  }
  expect(await violations(page)).toEqual([]);
  await scheme('dark');
  await pictureOf(page, `${OUT}/kit-${name}-dark.png`, true);
  expect(await violations(page, [], OF_COLOURS)).toEqual([]);
});

test('the finds that fill the kit, by a tick', async () => {
  await page.setViewport({ width: 1200, height: 900 });
  await open('finds', '[data-find]');
  await tabTo('[data-path="fills-kit"]');
  await page.keyboard.press('Space');
  await page.waitForFunction(() => document.querySelectorAll('[data-find]').length === 2);
});

test.each(['kit/loads', 'kit/platform'] as const)('%s prints on one sheet', async (hash) => {
  await scheme('light');
  await open(hash, hash === 'kit/loads' ? '[data-total]' : '[data-sheet]');
  const path = `${OUT}/${hash.replace('/', '-')}.pdf`;
  const printed = await page.pdf({ format: 'letter', path, margin: { top: 40, bottom: 40, left: 40, right: 40 } });
  expect(sheetsOf(printed)).toBe(1);
});

/** As sellers write: long titles, much that is not said, faults, several kinds of things. */
const FIVE = [
  'Whole corner of my garage gym, moving sale\nPower rack with safety pins, no j hooks left, 84 in tall. Olympic barbell 7 ft, some rust on the shaft, one sleeve is stiff. 4 x 45, 2 x 35, 4 x 25, 4 x 10, 2 x 5 and 2 x 2.5 lb cast iron plates. Flat bench, vinyl torn. $650 for all of it, pick up in Elmwick. Cash only.',
  '300 lb olympic set, barely used since the gym closed\n300 lb olympic weight set with 7 ft bar and spring collars, $260 obo. The bar may be a bit bent. Pick up in Tarn Edge.',
  'Old school plates and a bar, from the wrestling room\nSix 45s, four 35s and some 25s, all olympic with 2 inch hole, painted over more than once. Bar included, no idea about it. Asking $400, could deliver nearby.',
  'Bumper plates and bench, priced to go by the weekend\nPair of 45 lb bumpers, pair of 25 lb bumpers, pair of 10 lb bumpers, one hub turns a little. Adjustable bench that wobbles a bit. $380 for everything, Ferry Bank.',
  'Squat stands, bench with uprights and mixed weights\nSquat stands, bench with uprights, 2 x 45 lb, 3 x 25 lb, 4 x 10 lb olympic plates, one of the 25s is cracked, and a curl bar. $300 firm, in the barn at Upper Quillby.',
] as const;

test.each(['a4', 'letter'] as const)(
  'five finds side by side print on one sheet of %s, in type that can be read',
  async (format) => {
    const store = await storePage(browser);
    const ids = await store.evaluate(async (ads) => {
      const { adOf, must, open } = window.storeTest;
      const { finds } = await open();
      const kept: string[] = [];
      for (const [at, ad] of ads.entries()) kept.push((await must(finds.keep(adOf(ad), 10 + at))).id);
      return kept;
    }, FIVE);
    await page.setViewport({ width: 1200, height: 900 });
    await scheme('light');
    // What each would fill of what the kit lacks is a row too.
    await open('kit', '[data-path=best]');
    await (await page.$('[data-set-up]'))?.click();
    await page.waitForSelector('[data-need]');
    await open(`side-by-side/${ids.join()}`, '[data-row=questions]');
    await page.waitForSelector('[data-row=fills]');
    await page.emulateMediaType('print');
    const smallest = await page.$$eval('main *', (all) =>
      Math.min(...all.filter((one) => one.checkVisibility()).map((one) => Number.parseFloat(getComputedStyle(one).fontSize))),
    );
    await page.emulateMediaType();
    // 96 px are 72 points.
    expect(smallest * 0.75).toBeGreaterThanOrEqual(7.5);
    const path = `${OUT}/side-by-side-five-${format}.pdf`;
    const printed = await page.pdf({ format, path, preferCSSPageSize: true });
    expect(sheetsOf(printed)).toBe(1);
  },
);

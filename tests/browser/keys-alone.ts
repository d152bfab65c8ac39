/** Ways through the extension with nothing but keys, each begun at the top of its screen. */
import { writeFile } from 'node:fs/promises';
import type { KeyInput, Page } from 'puppeteer-core';
import type { Everything } from './every-screen.ts';

/** More than the controls of any screen. */
const MOST = 300;

/** Presses Tab, or Shift+Tab when it goes back, until the focus is where `selector` says. */
export async function tabTo(page: Page, selector: string, back = false): Promise<void> {
  const isThere = () => page.evaluate((one) => document.activeElement?.matches(one) ?? false, selector);
  if (back) await page.keyboard.down('Shift');
  let presses = 0;
  for (; presses < MOST && !(await isThere()); presses += 1) await page.keyboard.press('Tab');
  if (back) await page.keyboard.up('Shift');
  if (presses === MOST) throw new Error(`Tab never reached ${selector}`);
}

async function press(page: Page, selector: string, key: KeyInput = 'Enter', back = false): Promise<void> {
  await tabTo(page, selector, back);
  await page.keyboard.press(key);
}

const says = (page: Page, selector: string, words: string) =>
  page.waitForFunction(
    (one, text) => [...document.querySelectorAll(one)].some(({ textContent }) => textContent?.includes(text)),
    {},
    selector,
    words,
  );

/** Pressed buttons that go away leave the focus near by. */
const keepsFocus = (page: Page) => page.waitForFunction(() => document.activeElement !== document.body);

/** The buy list is worked out, and this is on it. */
const worked = (page: Page, selector: string) =>
  page.waitForFunction((one) => document.querySelector('[data-stage="done"]') && document.querySelector(one), {}, selector);

export interface Walk {
  /** Where it begins, by the name of every-screen.ts. */
  readonly from: string;
  readonly go: (given: Everything, file: string) => Promise<unknown>;
}

/** By name. `file` may be written to. */
export const WALKS: Readonly<Record<string, Walk>> = {
  'an ad is pasted, judged, and kept in place of the find that it is': {
    from: 'empty panel',
    go: async ({ page }) => {
      await tabTo(page, '[data-paste]');
      await page.keyboard.type('Olympic barbell, 7 ft, 32 mm shaft, slightly bent, $60');
      await page.keyboard.down('Control');
      await page.keyboard.press('Enter');
      await page.keyboard.up('Control');
      await page.waitForSelector('[data-state="answer"] [data-met]');
      await press(page, '[data-take]', 'Enter', true);
      await page.waitForSelector('[data-kept]');
      await keepsFocus(page);
    },
  },
  'ads of a page are ticked and kept': {
    from: 'swept panel',
    go: async ({ page }) => {
      await tabTo(page, '[data-choose="ad-1"]');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowDown');
      await press(page, '[data-tick="ad-3"]', 'Space', true);
      await press(page, '[data-tick="ad-1"]', 'Space', true);
      await press(page, '[data-keep]', 'Enter', true);
      await says(page, '.sweep-keep [role="status"]', '2 ');
      await keepsFocus(page);
    },
  },
  'finds are chosen and put side by side': {
    from: 'finds',
    go: async ({ page }) => {
      await press(page, '[data-find] a', 'Space');
      await page.keyboard.press('ArrowDown');
      await page.waitForFunction(() => document.activeElement?.closest('[aria-posinset="2"]'));
      await page.keyboard.press('Space');
      await page.waitForFunction(() => document.querySelectorAll('.find-chosen').length === 2);
      await press(page, 'a[href^="#side-by-side/"]', 'Enter', true);
      await page.waitForSelector('.compare-top');
      await press(page, 'main a[href^="#finds/"]');
      await page.waitForSelector('.one-find');
    },
  },
  'an ad is put on the buy list, left out, put back, and gone for': {
    from: 'buy list',
    go: async ({ page }) => {
      await worked(page, '[data-must]');
      const find = await page.$eval('[data-must]', (one) => one.getAttribute('data-must'));
      await press(page, `[data-must="${find}"]`);
      await worked(page, `[data-buy="${find}"]`);
      await keepsFocus(page);
      await press(page, `[data-out="${find}"]`);
      await worked(page, `[data-back="${find}"]`);
      await keepsFocus(page);
      await press(page, `[data-back="${find}"]`);
      await press(page, `[data-must="${find}"]`);
      await worked(page, `[data-buy="${find}"]`);
      await keepsFocus(page);
      await press(page, `[data-pickup="${find}"]`);
      await page.waitForSelector('.pickup-step');
    },
  },
  'plates that were weighed are paired and kept': {
    from: 'weigh',
    go: async ({ page }) => {
      await tabTo(page, '[data-path="weighings"]');
      await page.keyboard.type('46.2 44.8 45.1 45.9');
      await page.waitForFunction(() => document.querySelectorAll('[data-pair]').length === 2);
      await press(page, '[data-to-kit]');
      await says(page, '[role="status"]', '4 ');
    },
  },
  'a file is looked at and taken in': {
    from: 'settings',
    go: async ({ page, file }, path) => {
      await writeFile(path, file);
      // Asked for first: the browser takes a turn before it hands its dialog over, and opens it where the key is faster.
      const chooser = page.waitForFileChooser();
      await press(page, '[data-path="import"]');
      await (await chooser).accept([path]);
      await page.waitForSelector('[data-preview]');
      await press(page, '[data-take]');
      await page.waitForFunction(() => document.querySelector('[data-import] > [role="status"]:not([data-doing])'));
      await keepsFocus(page);
    },
  },
};

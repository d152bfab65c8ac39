/** Pictures of the whole browser on a screen: the demo's pages with the panel beside them, as a buyer sees them. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'puppeteer-core';
import {
  type Launched,
  launchChromium,
  panelOf,
  pressShortcut,
  pressSweepShortcut,
  selectText,
  startDisplay,
  typeInto,
} from '../browser/driver/index.ts';
import { milesTo } from './demo-finds.ts';
import { fileOf, type Language, type Name } from './picture-names.ts';

interface Ad {
  readonly id: string;
  readonly title: string;
  readonly place: string;
}

/** Nothing is chosen, focused or pointed at. */
async function atRest(page: Page, panel: Page): Promise<void> {
  await page.evaluate(() => getSelection()?.removeAllRanges());
  for (const one of [page, panel]) await one.mouse.move(0, 0);
  await panel.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    scrollTo(0, 0);
  });
  await wait(1500);
}

/** The answer to one ad, once the buyer has said how far it is. */
async function answer(launched: Launched, page: Page, url: string, ad: Ad): Promise<Page> {
  await page.goto(`${url}ad/${ad.id}`);
  await page.click('.cookies button');
  await selectText(page, 'main');
  await pressShortcut(launched, page);
  const panel = await panelOf(launched.browser);
  await panel.waitForFunction(
    (title) => document.querySelector('[data-state="answer"] .ad-title')?.textContent?.includes(title),
    {},
    ad.title,
  );
  await typeInto(panel, '[data-distance]', `${milesTo(ad.place)}`);
  return panel;
}

/** Every ad of the board, labelled and listed. */
async function everyAd(launched: Launched, page: Page, url: string): Promise<Page> {
  await page.goto(url);
  await page.click('.cookies button');
  const count = await page.$$eval('.card', (cards) => cards.length);
  await pressSweepShortcut(launched, page);
  const panel = await panelOf(launched.browser);
  await panel.waitForFunction((all) => document.querySelectorAll('[data-row]').length === all, {}, count);
  // What says enough to be given a price stands further down.
  await panel.select('[data-path="sweep.order"]', 'cost');
  await page.$eval('.card:has([href$="small-change"])', (card) => card.scrollIntoView());
  return panel;
}

/** `good` is an ad worth the drive, `bad` one to leave. */
export async function picturesBeside(folder: string, language: Language, url: string, good: Ad, bad: Ad): Promise<void> {
  const display = await startDisplay({ width: 1280, height: 800 });
  const launched = await launchChromium({ display, width: 1280, height: 800, withoutBar: true, language });
  const page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  const picture = async (name: Name, panel: Page) => {
    const file = fileOf(folder, language, name);
    if (file === null) return;
    await atRest(page, panel);
    await display.screenshot(file);
  };
  await picture('beside-the-page.png', await answer(launched, page, url, good));
  await picture('what-is-wrong.png', await answer(launched, page, url, bad));
  await picture('page-of-ads.png', await everyAd(launched, page, url));
  await launched.browser.close();
  await display.close();
}

/** What the buyer does on a page of the web, with real keys and a real mouse. */
import { expect } from 'vitest';
import { openOwn, pressKeys, pressShortcut, pressSweepShortcut, selectText, typeInto, waitForState } from '../driver/index.ts';
import { mouseOn } from '../mouse.ts';
import { coloured } from '../pixels.ts';
import type { Stage } from './stage.ts';

/** A tab that is not in front draws no frames, which are what is waited for otherwise. */
const IN_ANY_TAB = { polling: 100, timeout: 30_000 };

const titleOf = async (stage: Stage): Promise<string> => {
  const panel = await stage.panel();
  await waitForState(panel, 'answer');
  await panel.waitForSelector('[data-per-usable-pound]');
  return panel.$eval('.ad-title', (title) => title.textContent ?? '');
};
const markup = ({ page }: Stage): Promise<string> => page.evaluate(() => document.documentElement.outerHTML);

/** Selected and asked for by the shortcut; then the price turns out to be another, the ad is kept, and known when it is met again. */
export async function evening(stage: Stage): Promise<void> {
  const { launched, page } = stage;
  await stage.goTo('ad.html');
  const before = await markup(stage);
  const empty = await openOwn(launched, 'panel.html');
  // As the browser itself tells it.
  await empty.waitForFunction(() => document.querySelector('main')?.textContent?.includes('Alt+Shift+U'), IN_ANY_TAB);
  await empty.close();
  await page.bringToFront();
  await selectText(page, '#ad');
  await pressShortcut(launched, page);
  expect(await titleOf(stage)).toContain('Olympic plates');
  await stage.picture('judged');
  expect(await markup(stage)).toBe(before);

  const panel = await stage.panel();
  await panel.bringToFront();
  const call = () => panel.$eval('[data-call]', (one) => one.getAttribute('data-call'));
  const was = await call();
  await typeInto(panel, '[data-path="asking.amount"]', '2300\t');
  await panel.waitForFunction((old) => document.querySelector('[data-call]')?.getAttribute('data-call') !== old, {}, was);
  expect(await call()).toBe('leave');

  await panel.click('[data-keep]');
  await panel.waitForSelector('[data-kept]');
  const find = await panel.$eval('[data-kept]', (kept) => kept.getAttribute('data-kept'));
  const finds = await openOwn(launched, 'workshop.html#finds', 1200);
  await finds.waitForSelector(`[data-find="${find}"]`);
  await finds.close();

  // Another day, at the same address.
  await stage.goTo('ad.html');
  await selectText(page, '#ad');
  await pressShortcut(launched, page);
  // A panel that still stands from before says that the ad is kept.
  await panel.evaluate(() => location.reload());
  await panel.bringToFront();
  await panel.waitForSelector('[data-met]', { timeout: 30_000 });
  expect(await panel.$eval('[data-met]', (met) => met.getAttribute('data-met'))).not.toBe('maybe');
}

/** Arrow keys, Enter, and nothing stays in the page, which hears none of it. */
export async function picksByKeys(stage: Stage, name: string): Promise<void> {
  const { launched, page } = stage;
  await stage.goTo(name);
  await page.evaluate('window.seen &&= []');
  const before = await markup(stage);
  await pressShortcut(launched, page);
  await page.waitForFunction(() => document.documentElement.childElementCount === 3, { timeout: 30_000 });
  for (const key of ['Down', 'Up', 'Return']) await pressKeys(launched, page, key);
  expect(await titleOf(stage)).toContain('Olympic plates, 230 lb');
  expect(await markup(stage)).toBe(before);
  expect(await page.evaluate('window.seen ?? []')).toEqual([]);
}

/** What is selected, by the entry of the page's menu. */
export async function judgesByMenu(stage: Stage): Promise<void> {
  const { launched, page } = stage;
  await stage.goTo('ad-parts.html');
  const mouse = await mouseOn(launched, page);
  await selectText(page, '#struck');
  const { x, y } = await page.$eval('#struck', (line) => {
    const { left, top } = line.getBoundingClientRect();
    return { x: left + 12, y: top + 8 };
  });
  await mouse.moveTo(x, y);
  await mouse.click(3);
  await stage.picture('menu');
  await mouse.key('j'); // First letter of "Judge the selected ad"; no other entry begins with it.
  if (stage.name === 'chromium') await mouse.key('Return');
  const panel = await stage.panel();
  await panel.waitForFunction(() => document.querySelector('[data-path="asking.amount"]'), IN_ANY_TAB);
  await panel.waitForFunction(() => document.querySelector('.ad-title')?.textContent?.includes('$200'), IN_ANY_TAB);
}

/** Labels on every ad of a page, the list, and many kept at once. */
export async function sweepsAndKeeps(stage: Stage): Promise<void> {
  const { launched, page } = stage;
  await stage.goTo('results.html');
  const before = { markup: await markup(stage), dark: await coloured(page, '#1a1a1a') };
  await pressSweepShortcut(launched, page);
  const panel = await stage.panel();
  await waitForState(panel, 'list');
  await panel.waitForFunction(() => document.querySelectorAll('[data-row]').length === 8, IN_ANY_TAB);
  await page.bringToFront();
  await expect.poll(() => coloured(page, '#1a1a1a'), { timeout: 30_000 }).toBeGreaterThan(before.dark + 1500);
  await stage.picture('sweep');
  await pressKeys(launched, page, 'Escape');
  await panel.waitForSelector('[data-sweep="ended"]');
  expect(await markup(stage)).toBe(before.markup);

  await panel.bringToFront();
  await panel.click('[data-tick-all]');
  await panel.click('[data-keep]');
  await panel.waitForFunction(() => /\d/.test(document.querySelector('.sweep-keep [role="status"]')?.textContent ?? ''));
  const finds = await openOwn(launched, 'workshop.html#finds', 1200);
  await typeInto(finds, '[data-path="words"]', 'bumper');
  await finds.waitForFunction(() => document.querySelectorAll('[data-find]').length === 1);
  await finds.close();
}

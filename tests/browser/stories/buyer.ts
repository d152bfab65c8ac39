/** Three uses, from the buyer's side. */
import { expect } from 'vitest';
import { violations } from '../axe.ts';
import { openOwn, typeInto } from '../driver/index.ts';
import { sheetsOf } from '../sheets.ts';
import { judgeText, keepText, OUT, type Stage } from './stage.ts';

/** Two sellers' lots: which to take, how sure, and what to offer the other. */
export async function twoSellers(stage: Stage): Promise<void> {
  await keepText(stage, 'Seller one: 4 x 45 lb and 2 x 25 lb olympic plates, cast iron, $160 for all');
  await keepText(stage, 'Seller two: 6 x 45 lb olympic plates, cast iron, $330 for all');
  const page = await openOwn(stage.launched, 'workshop.html#finds', 1200);
  await typeInto(page, '[data-path="words"]', 'seller');
  await page.waitForFunction(() => document.querySelectorAll('[data-find]').length === 2);
  for (const box of await page.$$('[data-find] input')) await box.click();
  await (await page.waitForSelector('.bulk a'))?.click();
  await page.waitForSelector('.verdict-line');
  const verdict = await page.$eval('.verdict', (element) => element.textContent ?? '');
  // $160 / 230 lb = $0.70 against $330 / 270 lb = $1.22, so 43% less; equal at 270 × 160 / 230 = $187.
  expect(verdict).toMatch(/“Seller one.*” is the better buy: a usable pound costs 43% less/);
  expect(verdict).toMatch(/as good at \$187 \(asked \$330\)/);
  // Black is what a drawing has that no style sheet reaches.
  expect(await page.$eval('.compare-chart .chart-bar', (bar) => getComputedStyle(bar).fill)).not.toBe('rgb(0, 0, 0)');
  for (const width of [1200, 360]) {
    await page.setViewport({ width, height: 900 });
    await page.screenshot({ path: `${OUT}/side-by-side-${width}-${stage.name}.png`, fullPage: true });
    expect(await violations(page)).toEqual([]);
  }
  expect(sheetsOf(await page.pdf({ format: 'A4' }))).toBe(1);
  await page.close();
}

/** A cheap bar and a long drive: not worth it, near by it is. */
export async function longDrive(stage: Stage): Promise<void> {
  const near = await keepText(stage, 'Olympic barbell, 7 ft, 28.5 mm shaft, straight, sleeves spin, $120', 10);
  expect(near).toMatch(/Worth the drive/);
  const far = await keepText(stage, 'Olympic barbell, 7 ft, 28.5 mm shaft, dead straight, sleeves spin, asking $120 firm', 220);
  expect(far).not.toMatch(/Worth the drive/);
  const page = await openOwn(stage.launched, 'workshop.html#finds', 1200);
  await page.waitForSelector('[data-find]');
  await page.select('[data-path="order"]', 'distance');
  await page.waitForFunction(() => document.querySelector('[data-find]')?.textContent?.includes('10 mi'));
  await page.close();
}

/** An evening's ads, met again days later under another address and price. */
export async function metAgain(stage: Stage): Promise<void> {
  const words =
    'Selling my late uncle’s garage gym because we are moving: eight rusty 45 lb olympic plates, two 25s, one 7 ft bar that spins well';
  await keepText(stage, `${words}. $500`);
  const panel = await judgeText(stage, `${words}. Price dropped! $400`);
  await panel.waitForSelector('[data-met]');
  expect(await panel.$eval('[data-met]', (met) => met.textContent ?? '')).toMatch(/Asked \$500 then, \$400 now: 20% less/);
  expect(await violations(panel)).toEqual([]);
  await panel.close();
}

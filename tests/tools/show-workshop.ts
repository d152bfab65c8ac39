/** What the Workshop makes of the demo's ads, once they are kept: pictures of its screens. */
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { type Launched, panelOf } from '../browser/driver/index.ts';

/** Keeps the ad that the panel shows. */
export async function keepAd(panel: Page): Promise<void> {
  await panel.waitForSelector('[data-keep]');
  await panel.$eval('[data-keep]', (button) => (button as HTMLElement).click());
  await panel.waitForSelector('[data-kept]', { timeout: 15_000 });
}

const settled = async (page: Page, selector: string): Promise<void> => {
  await page.waitForSelector(selector, { timeout: 15_000 });
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
};

/** Opens the Workshop beside the panel, and takes a picture of each screen. Gives how many finds it lists. */
export async function showWorkshop({ browser }: Launched, out: string): Promise<number> {
  const address = new URL('workshop.html', (await panelOf(browser)).url()).href;
  const page = await browser.newPage();
  try {
    await page.setViewport({ width: 1200, height: 900 });
    await page.goto(`${address}#finds`);
    await settled(page, '[data-find]');
    const kept = Number(await page.$eval('[data-find]', (row) => row.getAttribute('aria-setsize')));
    await page.screenshot({ path: join(out, 'workshop-finds.png') });
    await page.select('[data-path="kind"]', 'plate');
    await page.select('[data-path="order"]', 'per-usable');
    await settled(page, '[data-find]');
    for (const box of (await page.$$('[data-find] input')).slice(0, 3)) await box.click();
    const link = await page.waitForSelector('.bulk a');
    await link?.click();
    await settled(page, '.compare');
    await page.screenshot({ path: join(out, 'workshop-side-by-side.png'), fullPage: true });
    const first = await page.waitForSelector('.compare thead a');
    await first?.click();
    await settled(page, '.one-find .call');
    await page.screenshot({ path: join(out, 'workshop-one-find.png') });
    return kept;
  } finally {
    await page.close();
  }
}

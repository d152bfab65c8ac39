/** Pictures for whoever changes a screen. Nobody looks at them on a CI machine, where they would take a tenth of the time. */
import type { Page } from 'puppeteer-core';

export const takesPictures = !process.env.CI;

export async function pictureOf(page: Page, path: string, fullPage = false): Promise<void> {
  if (takesPictures) await page.screenshot({ path: path.replaceAll(' ', '-') as `${string}.png`, fullPage });
}

/** From opening a page of the extension to what it shows, each time in a tab of its own. */
import type { Browser } from 'puppeteer-core';
import { extensionId } from '../../browser/driver/index.ts';
import { followFromStart, middle, sinceStart } from './painted.ts';

/** Middle time in ms until `selector` of `file` ("panel.html") is painted. */
export async function coldStart(browser: Browser, file: string, selector: string, goes = 9): Promise<number> {
  const address = `chrome-extension://${await extensionId(browser)}/${file}`;
  const times: number[] = [];
  for (let go = 0; go < goes; go += 1) {
    const page = await browser.newPage();
    await followFromStart(page, [selector]);
    await page.goto(address);
    times.push(await sinceStart(page, selector));
    await page.close();
  }
  return middle(times);
}

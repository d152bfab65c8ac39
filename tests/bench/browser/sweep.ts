/** What sweeping a page of 200 ads takes of the page's own main thread, until a second after the last row stands in the panel. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'puppeteer-core';
import { forget, inBackground } from '../../browser/captured.ts';
import { type Launched, panelOf, pressKeys } from '../../browser/driver/index.ts';
import { mainThread } from './main-thread.ts';

export interface SweepTimes {
  readonly thread: number;
  /** What our script itself counted, by the clock; 0 for an extension that counts nothing. */
  readonly script: number;
}

const SPENT = `chrome.storage.session.get(null).then((all) => Math.max(0, ...Object.values(all).map(({ spent }) => spent ?? 0)))`;

/** Least times in ms of some goes, from pressing `keys` until `done` in the panel and a second after; least, for whatever else is done adds. */
export async function timeSweep(launched: Launched, page: Page, keys: string, done: string, goes = 5): Promise<SweepTimes> {
  const times: SweepTimes[] = [];
  for (let go = 0; go < goes; go += 1) {
    await page.reload();
    await forget(launched.browser);
    const time = await mainThread(page);
    await wait(500);
    const before = await time();
    await pressKeys(launched, page, keys);
    const panel = await panelOf(launched.browser);
    await panel.waitForFunction(done);
    await wait(1000);
    times.push({ thread: (await time()) - before, script: Number(await inBackground(launched.browser, SPENT)) });
    await pressKeys(launched, page, 'Escape');
  }
  return { thread: Math.min(...times.map(({ thread }) => thread)), script: Math.min(...times.map(({ script }) => script)) };
}

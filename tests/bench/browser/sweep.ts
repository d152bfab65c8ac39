/** Every ad of a page of 200: from the key press to the last row in the panel, and what it takes of the page's main thread. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'puppeteer-core';
import { forget } from '../../browser/captured.ts';
import { type Launched, panelOf, pressKeys } from '../../browser/driver/index.ts';

export interface MainThread {
  /** Processor time, drawing included; what other programs do meanwhile does not count. */
  readonly whole: number;
  /** Time in scripts, by the clock. */
  readonly script: number;
}

/** The main thread of a page so far, in ms. */
async function mainThread(page: Page): Promise<() => Promise<MainThread>> {
  const session = await page.createCDPSession();
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    const of = (wanted: string): number => (metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN) * 1000;
    return { whole: of('ThreadTime'), script: of('ScriptDuration') };
  };
}

/** Least times in ms of some goes, from pressing `keys` until `done` in the panel and a second after; least, for whatever else is done adds. */
export async function mainThreadOf(launched: Launched, page: Page, keys: string, done: string, goes = 5): Promise<MainThread> {
  const times: MainThread[] = [];
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
    const after = await time();
    times.push({ whole: after.whole - before.whole, script: after.script - before.script });
    await pressKeys(launched, page, 'Escape');
  }
  return { whole: Math.min(...times.map(({ whole }) => whole)), script: Math.min(...times.map(({ script }) => script)) };
}

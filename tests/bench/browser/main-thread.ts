/** What is done on the main thread of a page: ours only, for what other programs do meanwhile does not count. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'puppeteer-core';

/** Processor time of the main thread of a page so far, in ms, drawing included. */
export async function mainThread(page: Page): Promise<() => Promise<number>> {
  const session = await page.createCDPSession();
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'ThreadTime')?.value ?? Number.NaN) * 1000;
  };
}

/**
 * Least time in ms of some goes that a page takes to load, be scrolled through and stand for a second while nobody asks the extension. Nothing
 * of it is in the page then, so that the ratio is 1 but for a tenth of noise.
 */
export async function unasked(page: Page, address: string, goes = 15): Promise<number> {
  const times: number[] = [];
  for (let go = 0; go < goes; go += 1) {
    const own = await page.browser().newPage();
    // The site has its process by then, and the page stays in it.
    await own.goto(new URL('/none', address).href);
    const time = await mainThread(own);
    const before = await time();
    await own.goto(address);
    await own.evaluate(async () => {
      for (let step = 1; step <= 10; step += 1) {
        scrollTo(0, (document.body.scrollHeight * step) / 10);
        await new Promise((resolve) => requestAnimationFrame(resolve));
      }
    });
    await wait(1000);
    times.push((await time()) - before);
    await own.close();
  }
  return Math.min(...times);
}

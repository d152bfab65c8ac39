/** What the panel holds after an hour of ads: one every half minute makes 120. */
import type { Browser } from 'puppeteer-core';
import { openPanelInTab } from '../../browser/driver/index.ts';

export interface Memory {
  /** Bytes in use in the panel's heap after the first ads, and after the last, each behind a collection. */
  readonly early: number;
  readonly late: number;
  /** Nodes of its document then. */
  readonly nodes: readonly [number, number];
}

export async function anHourOfAds(browser: Browser, texts: readonly string[], ads = 120, warm = 20): Promise<Memory> {
  const panel = await openPanelInTab(browser);
  const session = await panel.createCDPSession();
  await session.send('Performance.enable');
  const look = async (): Promise<[number, number]> => {
    await session.send('HeapProfiler.collectGarbage');
    const { usedSize } = await session.send('Runtime.getHeapUsage');
    const { metrics } = await session.send('Performance.getMetrics');
    return [usedSize, metrics.find(({ name }) => name === 'Nodes')?.value ?? Number.NaN];
  };
  let early: [number, number] = [0, 0];
  for (let ad = 0; ad < ads; ad += 1) {
    // The words differ each time, so that the panel has a new ad to tell from the last.
    const text = `Ad ${ad}. ${texts[ad % texts.length]}`;
    const box = await panel.waitForSelector('[data-paste]');
    await box?.evaluate((field, words) => {
      (field as HTMLTextAreaElement).value = words;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }, text);
    await panel.click('[data-judge]');
    await panel.waitForFunction((n) => document.querySelector('.ad-title, main')?.textContent?.includes(`Ad ${n}.`), {}, ad);
    await panel.waitForSelector('[data-state="answer"]');
    if (ad === warm - 1) early = await look();
  }
  const late = await look();
  await panel.close();
  return { early: early[0], late: late[0], nodes: [early[1], late[1]] };
}

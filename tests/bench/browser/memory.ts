/** What an extension holds after an hour of ads, with its panel open: one every half minute makes 120. */
import type { Browser, Page } from 'puppeteer-core';
import { openPanelInTab } from '../../browser/driver/index.ts';
import { extensionMemory } from './extension-memory.ts';

export interface Memory {
  /** Bytes in use in the panel's heap after the first ads, and after the last, each behind a collection. */
  readonly early: number;
  readonly late: number;
  /** Nodes of its document then. */
  readonly nodes: readonly [number, number];
  /** Bytes that nobody but the extension's processes holds, after the last ad. */
  readonly held: number;
}

/** Brings one ad into the panel and waits until it is shown. Its words differ from all before, so that there is a new ad to tell from the last. */
type Show = (panel: Page, text: string, nth: number) => Promise<unknown>;

export const showOurs: Show = async (panel, text, nth) => {
  const box = await panel.waitForSelector('[data-paste]');
  await box?.evaluate((field, words) => {
    (field as HTMLTextAreaElement).value = words;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }, text);
  await panel.click('[data-judge]');
  await panel.waitForFunction((n) => document.querySelector('.ad-title, main')?.textContent?.includes(`Ad ${n}.`), {}, nth);
  await panel.waitForSelector('[data-state="answer"]');
};

/** In the extension that does nothing: handed over as its background does it, and shown as it is. */
export const showEmpty: Show = async (panel, text, nth) => {
  await panel.evaluate(`chrome.storage.session.set(${JSON.stringify({ word: { result: text } })})`);
  await panel.waitForFunction((n) => document.querySelector('#word')?.textContent?.includes(`Ad ${n}.`), {}, nth);
};

export async function anHourOfAds(browser: Browser, texts: readonly string[], show: Show, ads = 120, warm = 20): Promise<Memory> {
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
    await show(panel, `Ad ${ad}. ${texts[ad % texts.length]}`, ad);
    if (ad === warm - 1) early = await look();
  }
  const late = await look();
  const held = await extensionMemory(browser);
  await panel.close();
  return { early: early[0], late: late[0], nodes: [early[1], late[1]], held };
}

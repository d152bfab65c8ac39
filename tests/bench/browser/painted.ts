/** When something is painted: noted in the page itself, so that what the driver takes to ask is not counted. */
import type { Page } from 'puppeteer-core';

declare global {
  interface Window {
    paintedAt: Record<string, number>;
  }
}

/** From now on a page notes when each selector first matches and the frame with it is drawn, in ms since 1970. Runs in the page: it must stand alone. */
export function follow(selectors: readonly string[]): void {
  window.paintedAt = {};
  const seen = new Set<string>();
  const look = () => {
    for (const selector of selectors) {
      if (seen.has(selector) || !document.querySelector(selector)) continue;
      seen.add(selector);
      // The task behind the next frame, before any that the page has put off until then: by then it is drawn.
      requestAnimationFrame(() => {
        const note = () => {
          window.paintedAt[selector] = performance.timeOrigin + performance.now();
        };
        void scheduler.postTask(note, { priority: 'user-blocking' });
      });
    }
  };
  new MutationObserver(look).observe(document, { childList: true, subtree: true, attributes: true });
  look();
}

/** For a page that is opened or loaded anew after this. */
export const followFromStart = async (page: Page, selectors: readonly string[]): Promise<void> => {
  await page.evaluateOnNewDocument(follow, selectors);
};

/** For a page that is open. */
export const followNow = (page: Page, selectors: readonly string[]): Promise<void> => page.evaluate(follow, selectors);

/** When `selector` was painted, in ms since 1970; waits for it. */
export async function paintedAt(page: Page, selector: string): Promise<number> {
  const handle = await page.waitForFunction((wanted) => window.paintedAt?.[wanted], { timeout: 30_000 }, selector);
  return Number(await handle.jsonValue());
}

/** From the page's own start to the painting of `selector`, in ms. */
export async function sinceStart(page: Page, selector: string): Promise<number> {
  return (await paintedAt(page, selector)) - (await page.evaluate(() => performance.timeOrigin));
}

export const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

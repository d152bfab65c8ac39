/** The list of finds with ten thousand in it: first rows, a letter typed, the far end. */
import type { Browser, Page } from 'puppeteer-core';
import { extensionId } from '../../browser/driver/index.ts';
import { storePage } from '../../browser/store/kill.ts';
import { followFromStart, middle, sinceStart } from './painted.ts';

export interface ListTimes {
  readonly brought: number;
  readonly first: number;
  readonly letter: number;
  readonly far: number;
}

/** ms from what `go` does until `done` holds and is drawn; both are scripts of the page. */
const timed = async (page: Page, go: string, done: string): Promise<number> =>
  Number(
    await page.evaluate(
      `new Promise((resolve) => {
        const from = performance.now();
        const look = () => ((${done}) ? setTimeout(() => resolve(performance.now() - from)) : requestAnimationFrame(look));
        ${go};
        requestAnimationFrame(look);
      })`,
    ),
  );

const type = (word: string): string => `{
  const box = document.querySelector('[data-path="words"]');
  box.value = ${JSON.stringify(word)};
  box.dispatchEvent(new Event('input', { bubbles: true }));
}`;

const TO_THE_END = `{ const box = document.querySelector('.find-box'); box.scrollTop = box.scrollHeight; }`;
const isInSight = (nth: unknown): string =>
  `[...document.querySelectorAll('[data-find]')].some((row) => row.getAttribute('aria-posinset') === ${JSON.stringify(nth)})`;

/** Times in ms. The browser's profile holds the finds afterwards. */
export async function tenThousand(browser: Browser, goes = 7): Promise<ListTimes> {
  const harness = await storePage(browser);
  const brought = await harness.evaluate(() => window.storeTest.fill(10_000));
  await harness.close();
  const address = `chrome-extension://${await extensionId(browser)}/workshop.html#finds`;
  const first: number[] = [];
  const letter: number[] = [];
  const far: number[] = [];
  for (let go = 0; go < goes; go += 1) {
    const page = await browser.newPage();
    await followFromStart(page, ['[data-find]']);
    await page.goto(address);
    first.push(await sinceStart(page, '[data-find]'));
    // What the buyer does next; by then all rows have been read.
    await new Promise((resolve) => setTimeout(resolve, 1500));
    const shown = 'document.querySelector("[data-find]")?.getAttribute("aria-setsize")';
    const all = await page.evaluate(shown);
    letter.push(await timed(page, type('plates z'), `${shown} !== ${JSON.stringify(all)}`));
    await timed(page, type(''), `${shown} === ${JSON.stringify(all)}`);
    far.push(await timed(page, TO_THE_END, isInSight(all)));
    await page.close();
  }
  return { brought, first: middle(first), letter: middle(letter), far: middle(far) };
}

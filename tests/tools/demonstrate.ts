import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'puppeteer-core';
import {
  isPanel,
  type Launched,
  launchChromium,
  panelOf,
  pressShortcut,
  selectText,
  startDisplay,
  waitForState,
} from '../browser/driver/index.ts';
import { answerLine, readAnswer } from './panel-answer.ts';
import { keepAd, showWorkshop } from './show-workshop.ts';

export interface DemoAd {
  readonly id: string;
  readonly url: string;
  readonly title: string;
}

/** Where an ad stands on a page; the first that is there is taken. */
const PLACES = ['.ad', 'article', 'main', 'body'];

const firstPlace = (page: Page): Promise<string> =>
  page.evaluate((places) => places.find((place) => document.querySelector(place) !== null) ?? 'body', PLACES);

/** A selection does not reach into a frame or a shadow root; such an ad is picked. */
const isSplit = (page: Page, place: string): Promise<boolean> =>
  page.evaluate(
    (wanted) =>
      [...(document.querySelector(wanted)?.querySelectorAll('*') ?? [])].some(
        (e) => e.localName === 'iframe' || e.shadowRoot !== null,
      ),
    place,
  );

/** Takes the ad as a buyer would: by selection and shortcut, or by shortcut and click. */
async function takeAd(launched: Launched, page: Page): Promise<void> {
  const place = await firstPlace(page);
  if (!(await isSplit(page, place))) {
    await selectText(page, place);
    return pressShortcut(launched, page);
  }
  await pressShortcut(launched, page);
  const panel = await panelOf(launched.browser);
  await panel.waitForSelector('[data-state="picking"]', { timeout: 15_000 });
  await page.hover(place);
  await page.click(place);
}

/** A panel that is open already must have let go of the ad before, or its answer would be read again. */
async function untilForgotten({ browser }: Launched): Promise<void> {
  if (browser.targets().some((target) => isPanel(target.url()))) await waitForState(await panelOf(browser), 'empty');
}

/** One ad in a tab of its own. Gives the line to print. */
async function judge(launched: Launched, ad: DemoAd, out: string): Promise<string> {
  const page = await launched.browser.newPage();
  try {
    await page.goto(ad.url, { waitUntil: 'load' });
    await untilForgotten(launched);
    await takeAd(launched, page);
    const panel = await panelOf(launched.browser);
    const answer = await readAnswer(panel);
    // The panel is repainted after the state has changed; a picture taken at once can still show the one before.
    await wait(300);
    await panel.screenshot({ path: join(out, `${ad.id}-panel.png`) });
    await launched.display.screenshot(join(out, `${ad.id}-window.png`));
    if (answer.state === 'refused' || answer.state === 'failed') throw new Error(`the panel says "${answer.says}"`);
    if (answer.kind !== null) await keepAd(panel);
    return answerLine(answer);
  } finally {
    await page.close();
  }
}

/** Drives the real extension over the ads on a virtual screen. Gives an exit code: 1 when an ad could not be judged. */
export async function demonstrate(ads: readonly DemoAd[], out: string): Promise<number> {
  await mkdir(out, { recursive: true });
  const display = await startDisplay();
  let failed = 0;
  try {
    const launched = await launchChromium({ display });
    try {
      for (const ad of ads) {
        const line = await judge(launched, ad, out).catch((error: unknown) => {
          failed += 1;
          return `not judged: ${error instanceof Error ? error.message : error}`;
        });
        console.log(`${ad.id}: ${line}`);
      }
      console.log(`workshop: ${await showWorkshop(launched, out)} finds kept`);
    } finally {
      await launched.browser.close();
    }
  } finally {
    await display.close();
  }
  console.log(`${ads.length - failed} of ${ads.length} ads judged; pictures are in ${out}`);
  return failed === 0 ? 0 : 1;
}

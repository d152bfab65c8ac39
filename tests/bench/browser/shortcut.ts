/** From the real key press to the answer on the screen, with the panel beside the page: what the buyer waits for, ad after ad. */
import { execFile } from 'node:child_process';
import { setTimeout as wait } from 'node:timers/promises';
import { promisify } from 'node:util';
import type { Page } from 'puppeteer-core';
import { forget } from '../../browser/captured.ts';
import { type Launched, panelOf, pressShortcut, selectText } from '../../browser/driver/index.ts';
import { followNow, middle, paintedAt } from './painted.ts';

const run = promisify(execFile);

export interface Waits {
  /** Until the call, its price and its reasons are painted, as far as they are in sight without scrolling. */
  readonly answer: number;
  /** Until all of it is. */
  readonly whole: number;
}

/** Middle times in ms of so many presses. The first one, which opens the panel, is not among them; xdotool's own start is. */
export async function shortcutToPaint(
  launched: Launched,
  page: Page,
  selector: { readonly idle: string; readonly answer: string; readonly whole: string },
  goes = 15,
): Promise<Waits> {
  const { browser, display } = launched;
  await selectText(page, 'main');
  await pressShortcut(launched, page);
  const panel = await panelOf(browser);
  await panel.waitForSelector(selector.whole);
  const answer: number[] = [];
  const whole: number[] = [];
  for (let go = 0; go < goes; go += 1) {
    await forget(browser);
    await panel.reload();
    await panel.waitForSelector(selector.idle);
    await followNow(panel, [selector.answer, selector.whole]);
    await page.bringToFront();
    await wait(300);
    const pressed = Date.now();
    await run('xdotool', ['key', '--clearmodifiers', 'alt+shift+u'], { env: display.env });
    whole.push((await paintedAt(panel, selector.whole)) - pressed);
    answer.push((await paintedAt(panel, selector.answer)) - pressed);
  }
  return { answer: middle(answer), whole: middle(whole) };
}

/** Middle time in ms that it takes to have a program press a key: in every figure of `shortcutToPaint`. */
export async function keyPress({ display }: Launched, goes = 7): Promise<number> {
  const times: number[] = [];
  for (let go = 0; go < goes; go += 1) {
    const pressed = performance.now();
    await run('xdotool', ['key', '--clearmodifiers', 'shift'], { env: display.env });
    times.push(performance.now() - pressed);
  }
  return middle(times);
}

import { execFile } from 'node:child_process';
import { setTimeout as wait } from 'node:timers/promises';
import { promisify } from 'node:util';
import type { Page } from 'puppeteer-core';
import type { Launched } from './launch.ts';

const run = promisify(execFile);

/** Gives the browser's last visible window the keyboard. Firefox has helper windows of the same class, hence the last. */
async function focusWindow({ name, display }: Launched): Promise<void> {
  const { stdout } = await run('xdotool', ['search', '--onlyvisible', '--class', name], { env: display.env });
  const window = stdout.trim().split('\n').at(-1);
  if (window === undefined || window === '') throw new Error(`no visible window of ${name} on display ${display.name}`);
  await run('xdotool', ['windowactivate', '--sync', window], { env: display.env });
}

const pressedLast = new WeakMap<Launched, Page>();

/** Whether keys reach it already; false where the page gives no answer. */
const hasKeyboard = (page: Page): Promise<boolean> =>
  Promise.race([page.evaluate(() => document.hasFocus()), wait(500, false)]).catch(() => false);

/**
 * Presses real keys ("alt+shift+u", "Escape") in the browser's window with `page` in front. Keys sent over the debugging protocol
 * reach the page but never the browser's own shortcuts.
 */
export async function pressKeys(launched: Launched, page: Page, keys: string): Promise<void> {
  await page.bringToFront();
  // A tab that has just come to the front says that it has the keyboard before the browser's own shortcuts are for it.
  if (pressedLast.get(launched) !== page || !(await hasKeyboard(page))) {
    await focusWindow(launched);
    await wait(150);
    pressedLast.set(launched, page);
  }
  await run('xdotool', ['key', '--clearmodifiers', keys], { env: launched.display.env });
}

/** The shortcut that asks Ironsift to take an ad. */
export const pressShortcut = (launched: Launched, page: Page): Promise<void> => pressKeys(launched, page, 'alt+shift+u');

/** The shortcut that asks Ironsift to read every ad of a page. */
export const pressSweepShortcut = (launched: Launched, page: Page): Promise<void> => pressKeys(launched, page, 'alt+shift+l');

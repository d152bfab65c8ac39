/** From the real key press to the answer on the screen where no panel is open yet: the press that opens it, loads it and has the ad judged. */
import { execFile } from 'node:child_process';
import { cp, mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { promisify } from 'node:util';
import type { Page } from 'puppeteer-core';
import { forget } from '../../browser/captured.ts';
import { isPanel, type Launched, panelOf, pressKeys, selectText } from '../../browser/driver/index.ts';
import { follow, middle, paintedAt } from './painted.ts';

const run = promisify(execFile);

/**
 * A copy of an extension whose panel notes by itself when `selector` is painted: whoever looks from outside at a page that the browser opens
 * comes too late. Gives its folder; whoever asked takes it away again.
 */
export async function notingPanel(extension: string, selector: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'ironsift-noting-'));
  await cp(extension, folder, { recursive: true });
  const file = join(folder, 'panel.html');
  const page = await readFile(file, 'utf8');
  await writeFile(join(folder, 'note.js'), `(${follow})(${JSON.stringify([selector])})`);
  await writeFile(file, page.replace(/<meta charset="utf-8"[^>]*>/, '$&<script src="note.js"></script>'));
  return folder;
}

export interface FirstPresses {
  /** The first of all since the browser was started: a single one, and so no more than a hint. */
  readonly first: number;
  /** Middle of the others. */
  readonly later: number;
}

/** Times in ms of so many presses, each with the panel closed before. The background runs, as it does when anything was asked just now. */
export async function firstPress(launched: Launched, page: Page, selector: string, goes = 14): Promise<FirstPresses> {
  const { browser, display } = launched;
  await selectText(page, 'main');
  const times: number[] = [];
  for (let go = 0; go < goes; go += 1) {
    // Gives the window the keyboard; no shortcut.
    await pressKeys(launched, page, 'shift');
    await forget(browser);
    await wait(500);
    const pressed = Date.now();
    await run('xdotool', ['key', '--clearmodifiers', 'alt+shift+u'], { env: display.env });
    const panel = await panelOf(browser);
    times.push((await paintedAt(panel, selector)) - pressed);
    await panel.evaluate('setTimeout(() => close())');
    await closed(launched);
  }
  const [first = Number.NaN, ...later] = times;
  return { first, later: middle(later) };
}

/** Throws where the panel stays open: the next press would not be one that opens it. */
async function closed({ browser }: Launched): Promise<void> {
  for (let tries = 0; tries < 200; tries += 1) {
    if (!browser.targets().some((target) => isPanel(target.url()))) return;
    await wait(25);
  }
  throw new Error('firstPress: the panel does not close');
}

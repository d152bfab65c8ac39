/** The real mouse, on elements of a page. */
import { execFile } from 'node:child_process';
import { setTimeout as wait } from 'node:timers/promises';
import { promisify } from 'node:util';
import type { Page } from 'puppeteer-core';
import type { Launched } from './driver/index.ts';

const run = promisify(execFile);
const xdotool = ({ display }: Launched, ...steps: readonly string[]) => run('xdotool', [...steps], { env: display.env });

const PROBE = [300, 420] as const;

/** Where the page's corner is on the screen, seen from a real move of the mouse over the page. */
async function corner(launched: Launched, page: Page): Promise<{ x: number; y: number }> {
  const arrived = page.evaluate(
    () =>
      new Promise<{ x: number; y: number }>((resolve) => {
        const listener = ({ screenX, screenY, clientX, clientY }: MouseEvent) =>
          resolve({ x: screenX - clientX, y: screenY - clientY });
        addEventListener('mousemove', listener, { capture: true, once: true });
      }),
  );
  await xdotool(launched, 'mousemove', String(PROBE[0] - 9), String(PROBE[1] - 9));
  await wait(100);
  await xdotool(launched, 'mousemove', String(PROBE[0]), String(PROBE[1]));
  return arrived;
}

export interface Mouse {
  /** Moves in two steps, as a hand does, to a point of the page in CSS pixels. */
  moveTo(x: number, y: number): Promise<void>;
  click(button?: 1 | 3): Promise<void>;
  /** A key for whatever has the keyboard, such as an open menu. */
  key(name: string): Promise<void>;
}

/** Must be called while the page itself still hears the mouse, and with the panel as it will be when the mouse is used. */
export async function mouseOn(launched: Launched, page: Page): Promise<Mouse> {
  await page.bringToFront();
  const { x: left, y: top } = await corner(launched, page);
  return {
    moveTo: async (x, y) => {
      await xdotool(launched, 'mousemove', String(Math.round(left + x) - 4), String(Math.round(top + y) - 2));
      await wait(100);
      await xdotool(launched, 'mousemove', String(Math.round(left + x)), String(Math.round(top + y)));
      await wait(150);
    },
    click: async (button = 1) => {
      await xdotool(launched, 'click', String(button));
      await wait(150);
    },
    key: async (name) => {
      await xdotool(launched, 'key', name);
      await wait(150);
    },
  };
}

/** Middle of an element, in CSS pixels of the page. */
export const middleOf = (page: Page, selector: string): Promise<{ x: number; y: number }> =>
  page.$eval(selector, (element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    return { x: left + width / 2, y: top + height / 2 };
  });

/** Clicks a point of the screen, wherever that is in the browser. */
export async function clickScreen(launched: Launched, x: number, y: number): Promise<void> {
  await xdotool(launched, 'mousemove', String(x), String(y), 'click', '1');
  await wait(200);
}

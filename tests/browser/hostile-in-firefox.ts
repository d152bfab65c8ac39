/**
 * Those of the hostile pages that another engine may take otherwise, in real Firefox, whose scripts see a page's objects without what the page
 * has changed in them. All of them are opened in Chromium (hostile/battery.ts). One tab, real keys, the real sidebar.
 */
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'puppeteer-core';
import { inSidebar, type Launched, pressKeys, pressShortcut, pressSweepShortcut, toolbarButton } from './driver/index.ts';
import { escaped, type HostileCase, listPage, MADE } from './hostile/case.ts';
import { clobbering } from './hostile/clobbering.ts';
import { documents } from './hostile/documents.ts';
import { frames } from './hostile/frames.ts';
import { huge } from './hostile/huge.ts';
import { interference } from './hostile/interference.ts';
import { markup } from './hostile/markup.ts';
import { overridden } from './hostile/overridden.ts';
import { policies } from './hostile/policies.ts';
import { type HostileServer, serveHostile } from './hostile/serve.ts';
import { signs } from './hostile/signs.ts';
import { clickScreen } from './mouse.ts';

const NAMES = [
  'markup in the heading',
  'a form around the ad with fields named after all of these',
  'every property of Element.prototype throws',
  "the browser's names are taken",
  'custom elements that run code when they are read',
  'a frame of another origin',
  'a closed shadow root around the ad',
  'shadow roots 1,500 deep',
  'a policy that allows nothing',
  'a sandboxed page',
  'swallows keys and takes the focus back all the time',
  'takes away what is put into it',
  'puts a dialog on top of everything',
  'a page that runs from right to left',
  'two million characters in one line without a blank',
  'a page that can be edited',
  'plain text',
  'a policy that allows nothing, on a list',
  'a list that takes the labels away',
] as const;

const ALL = [clobbering, documents, frames, huge, interference, markup, overridden, policies, signs].flat();
const named = (name: string): HostileCase => {
  const found = ALL.find((one) => one.name === name);
  if (!found) throw new Error(`no hostile page is named "${name}"`);
  return found;
};
const takeFrame = (page: Page) => page.evaluate(() => document.querySelector('iframe')?.remove());

const MORE = [1, 2, 3, 4]
  .map((n) => `<article><h3><a href="/more/${n}">Bumper plates, ${n} x 10 lb</a></h3><p><b>$${n}9</b></p></article>`)
  .join('');

/** In Firefox alone the window of a frame that was taken away is dead, and throws whatever it is asked. */
const DEAD: readonly HostileCase[] = [
  {
    ...named('the ad in a frame of its own markup'),
    name: 'takes away the frame in which the choice is',
    meanwhile: async (page) => {
      for (let steps = 0; steps < 3; steps += 1) await page.keyboard.press('ArrowDown');
      await takeFrame(page);
      // It dies a moment later.
      await wait(300);
    },
    reads: 'Olympic plates',
  },
  {
    name: 'a list in a frame that is taken away',
    by: 'sweep',
    body: `<!doctype html><title>Notices</title><h1>Notices</h1><iframe width="800" height="700" srcdoc="${escaped(listPage())}"></iframe>`,
    meanwhile: async (page) => {
      await takeFrame(page);
      await page.evaluate((more) => document.body.insertAdjacentHTML('beforeend', more), MORE);
    },
    reads: 'Bumper plates, 2 x 10 lb',
  },
];

export const CASES: readonly HostileCase[] = [...NAMES.map(named), ...DEAD].map((one) => {
  // Firefox looks for the page's icon, and reports that as a breach of the page's policy.
  const policy = one.headers?.['content-security-policy']?.replace("default-src 'none'", "default-src 'none'; img-src 'self'");
  return policy ? { ...one, headers: { 'content-security-policy': policy } } : one;
});

export interface Played {
  /** What the sidebar came to. */
  readonly state: string;
  /** What was taken from the page; of a list the words of its rows. */
  readonly words: string;
  /** Everything that should not have happened. */
  readonly wrong: readonly string[];
}

export interface Hostile {
  play(one: HostileCase): Promise<Played>;
  close(): Promise<void>;
}

/** Opens the sidebar where it is shut. */
export async function hostileInFirefox(launched: Launched, page: Page): Promise<Hostile> {
  const server: HostileServer = await serveHostile(CASES);
  const wrong: string[] = [];
  page.on('dialog', (dialog) => {
    wrong.push(`a dialog: ${dialog.message()}`);
    void dialog.accept().catch(() => null);
  });
  const button = await toolbarButton(launched);
  const state = () =>
    inSidebar(launched, "document.querySelector('[data-state]').dataset.state").catch((error: unknown) => String(error));
  /** Waits until the sidebar is in one of these states, or in none of these; gives the one that it is in at last. Each look keeps the browser busy. */
  async function until(fits: (state: string) => boolean, patience = 10_000): Promise<string> {
    for (const end = Date.now() + patience; ; await wait(100)) {
      const now = await state();
      if (fits(now) || Date.now() > end) return now;
    }
  }
  const isSettled = (now: string): boolean => !['empty', 'opening', 'picking', 'answering'].includes(now);
  // A new window has the keyboard in its address bar, which no page may take it from.
  await page.goto(server.normal);
  await clickScreen(launched, 900, 800);
  await clickScreen(launched, button.x, button.y);
  await until((now) => now === 'picking');

  async function pick(one: HostileCase): Promise<string> {
    // A page that swallows keys keeps the shortcut from Firefox too: there the button is what remains.
    if (one.name.startsWith('swallows keys')) await clickScreen(launched, button.x, button.y);
    else await pressShortcut(launched, page);
    const first = await until((now) => now !== 'empty');
    if (first !== 'picking') return first;
    await one.meanwhile?.(page);
    for (let presses = 0; presses < 3 && (await state()) === 'picking'; presses += 1) {
      // A page that takes the keyboard back every few milliseconds can keep a key from anybody; the mouse is ours.
      if (presses === 0) await page.keyboard.press('Enter');
      else if (presses === 1) await pressKeys(launched, page, 'Return');
      else await clickScreen(launched, 320, 220);
      await until((now) => now !== 'picking', 1500);
    }
    return until(isSettled);
  }
  const rows = () => inSidebar(launched, "document.querySelector('.sweep-rows')?.textContent");
  /** The capture's text, asked of the browser in the sidebar's own page. */
  async function taken(): Promise<string> {
    await inSidebar(
      launched,
      `content.taken = '', content.wrappedJSObject.browser.storage.session.get(null).then(Components.utils.exportFunction((all) => {
        content.taken = Object.values(all).map(({ listing }) => listing?.text ?? '-').join();
      }, content))`,
    );
    for (const end = Date.now() + 5000; Date.now() < end; await wait(20)) {
      const text = await inSidebar(launched, 'content.taken');
      if (text !== '') return text;
    }
    return '';
  }
  async function sweep(one: HostileCase): Promise<string> {
    await pressSweepShortcut(launched, page);
    const came = await until((now) => now === 'list');
    const shows = async (words: string): Promise<void> => {
      for (const end = Date.now() + 8000; !(await rows()).includes(words) && Date.now() < end; ) await wait(100);
    };
    await shows('Iron plates');
    await one.meanwhile?.(page);
    if (one.reads) await shows(one.reads);
    await page.keyboard.press('Escape');
    return came;
  }
  return {
    async play(one) {
      // What came after the page before was looked at is told with this one.
      await inSidebar(launched, 'content.wrappedJSObject.browser.storage.session.clear()');
      await until((now) => now === 'empty');
      await page.goto(server.address(one));
      const came = await (one.by === 'sweep' ? sweep(one) : pick(one));
      const words = one.by === 'sweep' ? await rows() : await taken();
      const asked = server.hits.splice(0);
      if (asked.length > 0) wrong.push(`asked for ${asked.join(', ')}`);
      if (await page.evaluate("typeof __hit !== 'undefined'").catch(() => false)) wrong.push('code ran in the page');
      if ((await inSidebar(launched, "'__hit' in content.wrappedJSObject")) !== 'false') wrong.push('code ran in the sidebar');
      if (page.url() !== server.address(one)) wrong.push(`the page went to ${page.url()}`);
      const made = await inSidebar(launched, `document.querySelectorAll(${JSON.stringify(MADE)}).length`);
      if (made !== '0') wrong.push(`the sidebar shows ${made} elements of the page's making`);
      return { state: came, words, wrong: wrong.splice(0) };
    },
    close: () => server.close(),
  };
}

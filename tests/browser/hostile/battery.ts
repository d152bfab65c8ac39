/** One browser for all hostile pages: opens a page, asks for its ad, and sees what became of page, panel and machine. */
import { setTimeout as wait } from 'node:timers/promises';
import type { CDPSession, Page } from 'puppeteer-core';
import type { CaptureState } from '../../../extension/platform/capture-state.ts';
import type { SweepHead } from '../../../extension/platform/sweep-state.ts';
import { forget, inBackground } from '../captured.ts';
import {
  type Display,
  launchChromium,
  type Outsider,
  panelOf,
  pressShortcut,
  startDisplay,
  startOutsideWatch,
} from '../driver/index.ts';
import { type HostileCase, MADE, type PanelEnd } from './case.ts';
import { type HostileServer, serveHostile } from './serve.ts';

/** How long one page may take until the panel has an answer or says why not, in milliseconds; a busy machine is allowed for. */
const PATIENCE = 20_000;

/** What one page led to. */
export interface Seen {
  readonly state: PanelEnd | 'none';
  /** Text of the capture, when there is one. */
  readonly text: string | null;
  /** Everything that should not have happened, in words. */
  readonly wrong: readonly string[];
}

export interface Battery {
  run(one: HostileCase): Promise<Seen>;
  /** What should not have happened and came only after the last page was looked at. */
  late(): Promise<readonly string[]>;
  /** Closes what a page has opened, and takes another tab where this one can't be used any more. */
  tidy(): Promise<void>;
  /** A normal ad in the same tab: the words of its title in the panel. */
  normalAfter(): Promise<string>;
  readonly outside: Outsider;
  close(): Promise<void>;
}

export async function startBattery(cases: readonly HostileCase[]): Promise<Battery> {
  const display: Display = await startDisplay();
  const outside = await startOutsideWatch();
  const server: HostileServer = await serveHostile(cases);
  const launched = await launchChromium({ display, proxy: outside.proxy });
  const { browser } = launched;
  const wrong: string[] = [];
  /** Chromium's grant holds for a tab until it leaves the origin: one real key press serves for all pages. */
  async function openTab(page: Page): Promise<{ page: Page; id: number; cdp: CDPSession }> {
    await page.goto(server.normal);
    // Right after the browser's start a key is lost now and then.
    for (let tries = 0; tries < 3; tries += 1) {
      await pressShortcut(launched, page);
      if (await panelOf(browser, 8000).catch(() => null)) break;
    }
    const query = 'chrome.tabs.query({ active: true, lastFocusedWindow: true }).then(([tab]) => tab.id)';
    listen('page', page);
    return { page, id: Number(await inBackground(browser, query)), cdp: await page.createCDPSession() };
  }
  function listen(where: string, one: Page): void {
    one.on('dialog', (dialog) => {
      if (dialog.type() !== 'beforeunload') wrong.push(`dialog in the ${where}: ${dialog.message()}`);
      void dialog.accept().catch(() => null);
    });
    one.on('console', (message) => {
      const text = message.text();
      if (text.startsWith('Ironsift:') || (where === 'panel' && message.type() === 'error'))
        wrong.push(`console of the ${where}: ${text}`);
    });
  }
  let tab = await openTab((await browser.pages())[0] ?? (await browser.newPage()));
  async function findPanel(): Promise<Page> {
    const found = await panelOf(browser);
    await found.waitForSelector('[data-state]');
    listen('panel', found);
    found.on('pageerror', (error) => wrong.push(`error in the panel: ${String(error)}`));
    return found;
  }
  let panel = await findPanel();
  const panelAddress = panel.url();
  let outsideSeen = 0;
  /** What code has done, or markup made, in the panel. */
  async function spoiled(): Promise<readonly string[]> {
    const [hit, made] = await panel.evaluate(
      (selector) =>
        ['__hit' in window, [...document.querySelectorAll(selector)].map((one) => one.outerHTML.slice(0, 100))] as const,
      MADE,
    );
    return [
      ...(hit ? ['code ran in the panel'] : []),
      ...(made.length > 0 ? [`the panel shows ${made.join(' ')}`] : []),
      ...(panel.url() === panelAddress ? [] : [`the panel went to ${panel.url()}`]),
    ];
  }
  /** All that has come since it was asked for last. */
  async function taken(): Promise<string[]> {
    const asked = server.hits.splice(0);
    const beyond = outside.asked.slice(outsideSeen);
    outsideSeen += beyond.length;
    return [
      ...wrong.splice(0),
      ...(asked.length > 0 ? [`asked for ${asked.join(', ')}`] : []),
      ...(beyond.length > 0 ? [`asked outside for ${beyond.join(', ')}`] : []),
      ...(await spoiled()),
    ];
  }
  /** A page that can't be left any more is closed, and the next one opened in another tab. */
  async function renew(): Promise<void> {
    const old = tab.page;
    const fresh = await browser.newPage();
    // With its panel, for Chromium opens one for each tab.
    await Promise.race([old.close().catch(() => null), wait(3000)]);
    tab = await openTab(fresh);
    panel = await findPanel();
  }

  /** As the background and the panel do it: the script is put in, then told what to do. */
  const tell = (file: string, message: object): Promise<unknown> =>
    inBackground(
      browser,
      `chrome.scripting.executeScript({ target: { tabId: ${tab.id} }, files: ['${file}'] }).then(() => chrome.tabs.sendMessage(${tab.id}, ${JSON.stringify(message)}, { frameId: 0 })).catch((error) => String(error))`,
    );
  /** As `tell`; where a page has an origin of its own making, and the grant is gone, the buyer asks by the shortcut once more. */
  let granted = true;
  async function ask(file: string, message: object): Promise<string> {
    const answer = JSON.stringify(await tell(file, message));
    if (!answer.includes('Cannot access')) return answer;
    granted = false;
    await pressShortcut(launched, tab.page);
    await holds('capture', '(now) => now !== null');
    return JSON.stringify(await tell(file, message));
  }
  /** In the extension's own world, which the page can't spoil. */
  const select = (): Promise<unknown> =>
    inBackground(
      browser,
      `chrome.scripting.executeScript({ target: { tabId: ${tab.id} }, func: () => {
        const get = (id) => Document.prototype.querySelector.call(document, '#' + id);
        const field = get('field');
        if (field) { field.focus(); field.select(); } else if (get('ad')) Window.prototype.getSelection?.call(window)?.selectAllChildren(get('ad')) ?? getSelection().selectAllChildren(get('ad'));
      } }).catch((error) => String(error))`,
    );
  const kept = async <T>(what: 'capture' | 'sweep'): Promise<T | null> => {
    const key = `${what}:${tab.id}`;
    return ((await inBackground(browser, `chrome.storage.session.get('${key}')`)) as Record<string, T>)[key] ?? null;
  };
  const capture = () => kept<CaptureState>('capture');
  const head = () => kept<SweepHead>('sweep');
  /** Waits in the background until what it holds fits, which is much less work than to ask for it again and again; false when it doesn't in time. */
  const holds = async (what: 'capture' | 'sweep', fits: string, patience = PATIENCE): Promise<boolean> =>
    (await inBackground(
      browser,
      `new Promise((tell) => {
        const { session } = chrome.storage;
        const key = '${what}:${tab.id}';
        const end = (fitted) => (session.onChanged.removeListener(look), clearTimeout(late), tell(fitted));
        const look = async () => (${fits})((await session.get(key))[key] ?? null) && end(true);
        const late = setTimeout(end, ${patience}, false);
        session.onChanged.addListener(look);
        look();
      })`,
    )) as boolean;
  const panelState = () => panel.$eval('[data-state]', (main) => main.getAttribute('data-state'));
  /** Waits until the panel has come to an end of its own; null when it doesn't in time. */
  const settled = async (): Promise<string | null> => {
    const ended = () => {
      const state = document.querySelector('[data-state]')?.getAttribute('data-state') ?? 'empty';
      return !['empty', 'opening', 'picking', 'answering'].includes(state) && state;
    };
    const handle = await panel.waitForFunction(ended, { polling: 'mutation', timeout: PATIENCE }).catch(() => null);
    return (await handle?.jsonValue()) || null;
  };

  /** In the page's own world, by the protocol alone: a page may have broken what scripts use. */
  const inPage = async (expression: string): Promise<unknown> =>
    (await tab.cdp.send('Runtime.evaluate', { expression, timeout: 2000 }).catch(() => null))?.result.value;

  async function pick(one: HostileCase): Promise<string | null> {
    const told = await ask('capture.js', { type: 'take', mode: one.by === 'selection' ? 'selection-or-pick' : 'pick' });
    // As the background takes it: see ask-for-ad.ts.
    if (told.includes('Receiving end does not exist')) return 'refused';
    if (!told.includes('"ok":true')) wrong.push(`the page answered ${told}`);
    if (told.includes('"pick"')) {
      await holds('capture', '(now) => now !== null');
      await one.meanwhile?.(tab.page);
      for (let presses = 0; presses < 3 && (await capture())?.state === 'picking'; presses += 1) {
        // A page that takes the keyboard back every few milliseconds can keep a key from anybody; the mouse is ours.
        if (presses < 2) await tab.page.keyboard.press('Enter');
        else await tab.page.mouse.click(60, 60);
        await holds('capture', "(now) => now?.state !== 'picking'", 1500);
      }
    }
    if (!(await holds('capture', "(now) => now?.state !== 'picking'"))) return null;
    return (await capture()) === null ? 'empty' : settled();
  }

  async function sweep(one: HostileCase): Promise<string | null> {
    const answer = await ask('sweep.js', { type: 'sweep' });
    if (!answer.includes('"ok":true')) {
      wrong.push(`the page answered ${answer}`);
      return null;
    }
    await one.meanwhile?.(tab.page);
    const over = await holds('sweep', "(now) => now !== null && (now.state !== 'reading' || now.batches >= 25)");
    if (!over) wrong.push(`the sweep stays "${(await head())?.state}"`);
    const state = await settled();
    await tell('sweep.js', { type: 'sweep-stop' });
    return state;
  }

  /** The page before was not done with: its test ran out of time. */
  let stuck = false;
  let before = 'the start';

  async function runOnce(one: HostileCase): Promise<Seen> {
    const open = () => tab.page.goto(server.address(one), { waitUntil: 'load', timeout: PATIENCE });
    // A tab in which Chromium showed its own viewer sometimes goes nowhere any more, which is no fault of the next page.
    await open()
      .catch(() => renew().then(open))
      .catch((error: unknown) => wrong.push(`did not open: ${String(error)}`));
    await forget(browser);
    if (one.by === 'selection') await select();
    const address = tab.page.url();
    const state = one.by === 'sweep' ? await sweep(one) : await pick(one);
    const found = await capture();
    if ((await inPage("typeof __hit !== 'undefined'")) === true) wrong.push('code ran in the page');
    if (!one.moves && tab.page.url() !== address) wrong.push(`the page went to ${tab.page.url()}`);
    return {
      state: (state ?? (await panelState()) ?? 'none') as Seen['state'],
      text: found?.state === 'ready' ? found.listing.text : null,
      wrong: await taken(),
    };
  }

  return {
    outside,
    async run(one) {
      if (stuck) await renew();
      stuck = true;
      // What the page before did only after it was looked at, while another took its place.
      const late = (await taken()).map((what) => `late, after "${before}": ${what}`);
      before = one.name;
      const seen = await runOnce(one);
      stuck = false;
      return { ...seen, wrong: [...late, ...seen.wrong] };
    },
    late: taken,
    async tidy() {
      for (const other of await browser.pages())
        if (other !== tab.page && /^http/.test(other.url())) await other.close().catch(() => null);
      if (!granted) await renew();
      granted = true;
    },
    async normalAfter() {
      await tab.page.goto(server.normal, { timeout: 3000 }).catch(renew);
      await forget(browser);
      await select();
      await ask('capture.js', { type: 'take', mode: 'selection-or-pick' });
      // The answer to a page before may still stand there.
      await panel
        .waitForFunction(
          () => document.querySelector('[data-state="answer"] .ad-title')?.textContent?.includes('Ordinary plates'),
          { polling: 'mutation', timeout: PATIENCE },
        )
        .catch(() => null);
      return (
        (await panel.$eval('.ad-title', (title) => title.textContent).catch(() => null)) ?? `no answer: ${await panelState()}`
      );
    },
    close: async () => {
      await browser.close();
      await server.close();
      await outside.close();
      await display.close();
    },
  };
}

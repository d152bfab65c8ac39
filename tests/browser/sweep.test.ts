/** Reading every ad of a results page in real Chromium: labels in the page, the list in the real side panel, nothing left at the end. */
import { mkdir } from 'node:fs/promises';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { SweepHead } from '../../extension/platform/sweep-state.ts';
import { OF_COLOURS, violations } from './axe.ts';
import { forget, inBackground, snapshot, waitForCapture } from './captured.ts';
import {
  type Display,
  type Launched,
  launchChromium,
  openPanelInTab,
  panelOf,
  pressKeys,
  pressSweepShortcut,
  startDisplay,
  waitForState,
} from './driver/index.ts';
import { pictureOf } from './picture.ts';
import { coloured } from './pixels.ts';
import { processorTasks } from './processor-tasks.ts';
import { type PageServer, servePages } from './serve-pages.ts';

const OUT = 'out/test';

let display: Display;
let server: PageServer;
let launched: Launched;
let page: Page;

type Heads = [tabId: number, head: SweepHead][];
const heads = async (): Promise<Heads> => {
  const all = (await inBackground(launched.browser, 'chrome.storage.session.get(null)')) as Record<string, SweepHead>;
  return Object.entries(all)
    .filter(([key]) => /^sweep:\d+$/.test(key))
    .map(([key, head]) => [Number(key.slice(6)), head]);
};
async function waitForHead(state: SweepHead['state']): Promise<{ tabId: number; head: SweepHead }> {
  const end = Date.now() + 10_000;
  for (;;) {
    const all = await heads();
    const found = all.find(([, head]) => head.state === state);
    if (found) return { tabId: found[0], head: found[1] };
    if (Date.now() > end) throw new Error(`no sweep is "${state}"; there is ${JSON.stringify(all)}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
const open = async (name: string): Promise<void> => {
  await page.goto(server.address(name));
  await forget(launched.browser);
};
const start = async (state: SweepHead['state'] = 'watching') => {
  await pressSweepShortcut(launched, page);
  return waitForHead(state);
};
const rowsIn = (panel: Page, count: number) =>
  panel.waitForFunction((wanted) => document.querySelectorAll('[data-row]').length === wanted, { timeout: 30_000 }, count);
const rootChildren = () => page.evaluate(() => document.documentElement.childElementCount);
/** Pixels of the labels' ground, which the pages themselves do not use. */
const labelled = () => coloured(page, '#1a1a1a');
const settle = () => new Promise((resolve) => setTimeout(resolve, 400));

/** What the extension's own world listens to on window and document of the page. */
async function listeners(): Promise<string[]> {
  const session = await page.createCDPSession();
  const worlds: number[] = [];
  session.on('Runtime.executionContextCreated', ({ context }) => {
    if (context.origin.startsWith('chrome-extension://')) worlds.push(context.id);
  });
  await session.send('Runtime.enable');
  const all: string[] = [];
  for (const contextId of worlds) {
    for (const expression of ['window', 'document', 'document.documentElement', 'document.body']) {
      const { result } = await session.send('Runtime.evaluate', { expression, contextId });
      const { listeners: found } = await session.send('DOMDebugger.getEventListeners', { objectId: result.objectId ?? '' });
      all.push(...found.map(({ type }) => type));
    }
  }
  await session.detach();
  return [...new Set(all)].sort();
}

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  display = await startDisplay();
  server = await servePages();
  launched = await launchChromium({ display });
  page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  // Opens the side panel once, so that the page has the width that it keeps.
  await open('results.html');
  await start();
  await panelOf(launched.browser);
  await pressKeys(launched, page, 'Escape');
  await waitForHead('ended');
});

afterAll(async () => {
  await launched?.browser.close();
  await server?.close();
  await display?.close();
});

describe('a sweep', () => {
  // The strict policy also forbids the page's own style, which hides three ads.
  it.each([
    ['results.html', 8],
    ['results.html?strict', 11],
  ])('labels every ad of %s, and leaves nothing behind', async (name, count) => {
    await open(name);
    const before = { markup: await snapshot(page), dark: await labelled() };
    expect(await listeners()).toEqual([]);
    await start();
    const panel = await panelOf(launched.browser);
    await waitForState(panel, 'list');
    await rowsIn(panel, count);
    await settle();
    expect(await labelled()).toBeGreaterThan(before.dark + 1500);
    expect(await snapshot(page)).not.toBe(before.markup);
    expect(await listeners()).toEqual(expect.arrayContaining(['keydown', 'pagehide', 'resize', 'scroll']));
    await display.screenshot(`${OUT}/sweep-${name.includes('strict') ? 'strict' : 'plain'}.png`);
    await pressKeys(launched, page, 'Escape');
    await waitForHead('ended');
    expect(await snapshot(page)).toBe(before.markup);
    expect(await listeners()).toEqual([]);
    expect(await labelled()).toBe(before.dark);
    // The list stays.
    expect(await panel.$$('[data-row]')).toHaveLength(count);
  });

  it('hears Esc in the page only while it lasts, and keeps it from nobody', async () => {
    await open('results.html');
    await page.evaluate("window.seen = []; addEventListener('keydown', ({ key }) => window.seen.push(key))");
    const before = await rootChildren();
    await start();
    expect(await rootChildren()).toBe(before + 1);
    await pressKeys(launched, page, 'Escape');
    await waitForHead('ended');
    expect(await page.evaluate('window.seen')).toContain('Escape');
    expect(await rootChildren()).toBe(before);
  });

  it('reads what the page adds while it is scrolled', async () => {
    await open('results.html');
    await start();
    const panel = await panelOf(launched.browser);
    await rowsIn(panel, 8);
    for (const count of [12, 16, 20]) {
      await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
      await rowsIn(panel, count);
    }
    await settle();
    await display.screenshot(`${OUT}/sweep-scrolled.png`);
    expect(await labelled()).toBeGreaterThan(500);
    await panel.click('[data-stop]');
    await waitForHead('ended');
    // Nobody watches any more.
    await page.evaluate(() => {
      const list = document.getElementById('list');
      if (list?.firstElementChild) list.append(list.firstElementChild.cloneNode(true));
    });
    await settle();
    expect(await panel.$$('[data-row]')).toHaveLength(20);
    expect(await rootChildren()).toBe(2);
  });

  it('takes hostile words as words', async () => {
    await open('results.html');
    await start();
    const panel = await panelOf(launched.browser);
    await rowsIn(panel, 8);
    expect(await panel.$eval('[data-choose="ad-5"]', (title) => title.textContent)).toContain('<img src=x onerror=');
    expect(await panel.$$('main img, main script')).toHaveLength(0);
    expect([await page.title(), await panel.title()].join()).not.toContain('pwned');
    await panel.click('[data-choose="ad-5"]');
    await waitForState(panel, 'answer');
    expect([await page.title(), await panel.title()].join()).not.toContain('pwned');
  });

  it('says what is not enough, and makes no number up', async () => {
    await open('results.html');
    await start();
    const panel = await panelOf(launched.browser);
    await rowsIn(panel, 8);
    const verdicts = await panel.$$eval('[data-row]', (rows) =>
      Object.fromEntries(rows.map((row) => [row.getAttribute('data-row'), row.getAttribute('data-verdict')])),
    );
    expect(verdicts).toMatchObject({ 'ad-2': 'unsaid', 'ad-4': 'unsaid', 'ad-6': 'other' });
    for (const id of ['ad-2', 'ad-4', 'ad-6'])
      expect(await panel.$eval(`[data-row="${id}"]`, (row) => row.textContent)).not.toContain('usable');
  });

  it('says when there is nothing, is over then, and gone when it is closed', async () => {
    await open('ad.html');
    const before = await snapshot(page);
    await start('nothing');
    const panel = await panelOf(launched.browser);
    await waitForState(panel, 'list');
    await panel.waitForSelector('[data-sweep="nothing"]');
    expect(await snapshot(page)).toBe(before);
    await panel.click('[data-close-list]');
    await waitForHead('closed');
    await waitForState(panel, 'empty');
  });

  it('ends with the page', async () => {
    await open('results.html');
    await start();
    await page.goto(server.address('ad.html'));
    await waitForHead('ended');
  });
});

describe('the list in the panel', () => {
  it('opens an ad and brings it into view, marks its words, and goes back', async () => {
    await open('results.html');
    await start();
    const panel = await panelOf(launched.browser);
    await rowsIn(panel, 8);
    await panel.select('[data-path="sweep.order"]', 'cost');
    await page.evaluate(() => scrollTo(0, 0));
    await panel.click('[data-choose="ad-8"]');
    expect((await waitForCapture(launched.browser, 'ready')).listing).toMatchObject({
      origin: 'sweep',
      title: 'Iron plates, 2 x 35 lb',
      priceText: '$200',
      address: server.address('ad/8'),
    });
    await waitForState(panel, 'answer');
    await page.waitForFunction(() => {
      const box = document.querySelector('a[href="/ad/8"]')?.getBoundingClientRect();
      return box && box.top >= 0 && box.bottom <= innerHeight;
    });
    await panel.hover('[data-line="plate-1"]');
    await page.waitForFunction(() => CSS.highlights.has('ironsift-evidence'), { timeout: 30_000 });
    await expect.poll(() => coloured(page, '#ffdf6b'), { timeout: 30_000 }).toBeGreaterThan(100);
    await display.screenshot(`${OUT}/sweep-opened.png`);
    await panel.click('[data-back]');
    await waitForState(panel, 'list');
    await expect.poll(() => panel.evaluate(() => document.activeElement?.getAttribute('data-choose'))).toBe('ad-8');
    await panel.keyboard.press('Escape');
    await waitForHead('ended');
    expect(await page.evaluate(() => CSS.highlights.size)).toBe(0);
  });

  it('fits every width, with nothing for axe to say in light and dark, and is large enough to press', async () => {
    await open('results.html');
    const { tabId } = await start();
    const panel = await openPanelInTab(launched.browser, `?tab=${tabId}`);
    const scheme = (value: 'light' | 'dark') => panel.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }]);
    try {
      await scheme('light');
      for (const width of [360, 240]) {
        await panel.setViewport({ width, height: 900 });
        await rowsIn(panel, 8);
        await pictureOf(panel, `${OUT}/sweep-list-${width}.png`);
        expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
      expect(await violations(panel)).toEqual([]);
      const small = await panel.$$eval('button, input, select, textarea', (all) =>
        all
          .map((one) => ({
            html: one.outerHTML.slice(0, 120),
            box: (one.closest('.sweep-tick') ?? one).getBoundingClientRect(),
          }))
          .filter(({ box }) => box.width < 24 || box.height < 24)
          .map(({ html }) => html),
      );
      expect(small).toEqual([]);
      await scheme('dark');
      expect(await violations(panel, [], OF_COLOURS)).toEqual([]);
    } finally {
      await panel.close();
    }
  });
});

describe('200 ads', () => {
  it('the watch for long tasks works', async () => {
    const busy = () =>
      page.evaluate(() => {
        // So much work and not so much time, of which a busy machine gives only a part.
        let sum = 0;
        for (let step = 0; step < 300_000_000; step += 1) sum += step % 7;
        return sum;
      });
    expect(await processorTasks(page, busy)).not.toEqual([]);
  });

  /** Processor time of the page's main thread so far, in milliseconds: what other programs do meanwhile does not count. */
  const processorTime = async (): Promise<() => Promise<number>> => {
    const session = await page.createCDPSession();
    await session.send('Performance.enable', { timeDomain: 'threadTicks' });
    return async () => {
      const { metrics } = await session.send('Performance.getMetrics');
      return (metrics.find(({ name }) => name === 'ThreadTime')?.value ?? Number.NaN) * 1000;
    };
  };

  // The aim is 100 ms of page script; `npm run bench:browser` gives it on a quiet machine. Here others work beside it: what is guarded is that no
  // work is done for all ads in one go, and that none grows with the square of them.
  it('are read and judged while page and panel stay alive', async () => {
    await open('many');
    await settle();
    const panel = await panelOf(launched.browser);
    const time = await processorTime();
    const before = await time();
    let spent = 0;
    const long = await processorTasks(
      page,
      async () => {
        spent = (await start()).head.spent;
        await rowsIn(panel, 200);
        await settle();
      },
      90,
    );
    const thread = Math.round((await time()) - before);
    await display.screenshot(`${OUT}/sweep-many.png`);
    console.log(
      `200 ads: script time in the page ${spent} ms, processor time ${thread} ms, long tasks ${JSON.stringify(long)} ms`,
    );
    expect(thread).toBeLessThan(1000);
    expect(long).toEqual([]);
  });
});

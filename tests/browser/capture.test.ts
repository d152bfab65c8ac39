/** Taking an ad in real Chromium, with real keys and a real mouse, into the real side panel. */
import { mkdir } from 'node:fs/promises';
import { setTimeout as wait } from 'node:timers/promises';
import type { CDPSession, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { captures, forget, snapshot, tellPage, waitForCapture } from './captured.ts';
import {
  type Display,
  type Launched,
  launchChromium,
  type Outsider,
  panelOf,
  pasteInto,
  pressKeys,
  pressShortcut,
  pressSweepShortcut,
  selectText,
  startDisplay,
  startOutsideWatch,
  waitForState,
} from './driver/index.ts';
import { middleOf, mouseOn } from './mouse.ts';
import { coloured } from './pixels.ts';
import { drawn, faults, openShadows, spoken, written } from './put-in.ts';
import { type PageServer, servePages } from './serve-pages.ts';

let display: Display;
let outside: Outsider;
let server: PageServer;
let launched: Launched;
let page: Page;

const AD =
  'Cast iron plates with 2 inch holes, stored indoors, no rust.\n• 4 x 45 lb\n• 2 x 25 lb\nPick up in Quillbrook. Price is $100 for all.';

const open = async (name: string): Promise<void> => {
  await page.goto(server.address(name));
  await forget(launched.browser);
};
const startPick = async (): Promise<void> => {
  await pressShortcut(launched, page);
  await waitForCapture(launched.browser, 'picking');
};

beforeAll(async () => {
  await mkdir('out/test', { recursive: true });
  display = await startDisplay();
  outside = await startOutsideWatch();
  server = await servePages();
  launched = await launchChromium({ display, proxy: outside.proxy });
  page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  // Opens the side panel once, so that the page has the width that it keeps.
  await open('ad.html');
  await selectText(page, '#ad');
  await pressShortcut(launched, page);
  await waitForCapture(launched.browser, 'ready');
  await panelOf(launched.browser);
});

afterAll(async () => {
  await launched?.browser.close();
  await server?.close();
  await outside?.close();
  await display?.close();
});

beforeEach(() => forget(launched.browser));

describe('a selection', () => {
  it.each([['ad.html'], ['ad.html?strict'], ['key-swallower.html']])('is taken by the shortcut on %s', async (name) => {
    await open(name);
    const before = await snapshot(page);
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    const { listing } = await waitForCapture(launched.browser, 'ready');
    expect(AD.startsWith(listing.text)).toBe(true);
    expect(listing).toMatchObject({ origin: 'selection', address: server.address(name), language: 'en' });
    await waitForState(await panelOf(launched.browser), 'answer');
    expect(await snapshot(page)).toBe(before);
  });
  it('inside a closed shadow root is taken', async () => {
    await open('ad-parts.html');
    await page.evaluate('selectShadowed()');
    await pressShortcut(launched, page);
    expect((await waitForCapture(launched.browser, 'ready')).listing.text).toBe('Two 10 lb plates, $12');
  });
  it('knows what a style strikes through', async () => {
    await open('ad-parts.html');
    await selectText(page, '#struck');
    await pressShortcut(launched, page);
    const { text, struck } = (await waitForCapture(launched.browser, 'ready')).listing;
    expect(struck.map(({ start, end }) => text.slice(start, end))).toEqual(['$200']);
  });
  it('inside a frame is taken', async () => {
    await open('ad-parts.html');
    await page.evaluate(() => {
      const inside = document.querySelector('iframe')?.contentDocument;
      const line = inside?.getElementById('framed');
      if (line) inside?.getSelection()?.selectAllChildren(line);
    });
    await pressShortcut(launched, page);
    expect((await waitForCapture(launched.browser, 'ready')).listing.text).toBe('Two 25 lb plates, $30');
  });
  it('inside a text field is taken, and only what is selected', async () => {
    await open('ad-parts.html');
    await page.$eval('#field', (field) => {
      (field as HTMLTextAreaElement).focus();
      (field as HTMLTextAreaElement).setSelectionRange(0, 23);
    });
    await pressShortcut(launched, page);
    expect((await waitForCapture(launched.browser, 'ready')).listing.text).toBe('Four 45 lb plates, $90.');
  });
});

describe('picking', () => {
  // On other pages it is told by the stories.
  it('works by keyboard alone, and the page sees none of it', async () => {
    await open('key-swallower.html');
    const before = await snapshot(page);
    await startPick();
    await pressKeys(launched, page, 'Down');
    await pressKeys(launched, page, 'Up');
    await pressKeys(launched, page, 'Return');
    const { listing } = await waitForCapture(launched.browser, 'ready');
    expect(listing).toMatchObject({ origin: 'pick', title: 'Olympic plates, 230 lb', priceText: '$100' });
    expect(listing.text.split('\n').slice(0, 5)).toEqual(['Olympic plates, 230 lb', '$100', ...AD.split('\n').slice(0, 3)]);
    expect(await snapshot(page)).toBe(before);
    expect(await page.evaluate('window.seen ?? []')).toEqual([]);
  });
  it('takes what is clicked, and the page does not see the click', async () => {
    await open('key-swallower.html');
    const mouse = await mouseOn(launched, page);
    const before = await snapshot(page);
    await startPick();
    const { x, y } = await middleOf(page, '#ad li');
    await mouse.moveTo(x, y);
    await display.screenshot('out/test/pick-chromium.png');
    await mouse.click();
    expect((await waitForCapture(launched.browser, 'ready')).listing.text).toBe('4 x 45 lb');
    expect(await page.evaluate('window.seen')).toEqual([]);
    expect(await snapshot(page)).toBe(before);
  });
  it.each([
    ['a frame', '#framed', 'Two 25 lb plates, $30'],
    ['a closed shadow root', '#closed', 'Two 10 lb plates, $12'],
  ])('reaches into %s with the mouse', async (_, selector, text) => {
    await open('ad-parts.html');
    const mouse = await mouseOn(launched, page);
    await startPick();
    const { x, y } =
      selector === '#framed'
        ? await page.$eval('iframe', (frame) => {
            const line = frame.contentDocument?.getElementById('framed')?.getBoundingClientRect();
            const { left, top } = frame.getBoundingClientRect();
            return { x: left + 3 + (line?.left ?? 0) + 40, y: top + 3 + (line?.top ?? 0) + 8 };
          })
        : await middleOf(page, selector);
    await mouse.moveTo(selector === '#framed' ? x : 60, y);
    await mouse.click();
    expect((await waitForCapture(launched.browser, 'ready')).listing.text).toBe(text);
  });
  it.each([['ad.html'], ['key-swallower.html']])(
    'is left by Esc: nothing stays on %s, and what was taken before comes back',
    async (name) => {
      await open(name);
      await selectText(page, '#ad');
      await pressShortcut(launched, page);
      await waitForCapture(launched.browser, 'ready');
      await page.evaluate(() => getSelection()?.removeAllRanges());
      const before = await snapshot(page);
      await startPick();
      expect(await snapshot(page)).not.toBe(before);
      await pressKeys(launched, page, 'Escape');
      expect((await waitForCapture(launched.browser, 'ready')).listing.origin).toBe('selection');
      await page.waitForFunction(
        (markup) => `${document.documentElement.outerHTML}\n${document.adoptedStyleSheets.length} adopted` === markup,
        { timeout: 30_000 },
        before,
      );
      expect(await page.evaluate('window.seen ?? []')).toEqual([]);
    },
  );
  it('ends with the page, and what was taken before comes back', async () => {
    await open('ad.html');
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    await waitForCapture(launched.browser, 'ready');
    await page.evaluate(() => getSelection()?.removeAllRanges());
    await startPick();
    await page.goto(server.address('key-swallower.html'));
    expect((await waitForCapture(launched.browser, 'ready')).listing.text).toBe(AD);
  });
  it('started twice shows one outline', async () => {
    await open('ad.html');
    const children = () => page.evaluate(() => document.documentElement.childElementCount);
    const before = await children();
    await startPick();
    await pressShortcut(launched, page);
    await page.waitForFunction((count) => document.documentElement.childElementCount === count, {}, before + 1);
    await pressKeys(launched, page, 'Escape');
    await page.waitForFunction((count) => document.documentElement.childElementCount === count, {}, before);
  });
});

describe('what is put into a page, for those who meet it otherwise', () => {
  let session: CDPSession;
  beforeEach(async () => {
    session = await page.createCDPSession();
  });
  afterEach(() => session.detach());

  /** Readable, told from a page of any brightness, and at rest; in the reader's own colours too. */
  const isSeen = async (): Promise<void> => {
    for (const [forced, ground] of [
      ['none', '#ffffff'],
      ['none', '#a3a3a3'],
      ['none', '#121212'],
      ['active', '#121212'],
    ] as const) {
      await session.send('Emulation.setEmulatedMedia', { features: [{ name: 'forced-colors', value: forced }] });
      const all = await drawn(page, ground);
      expect(all.length).toBeGreaterThan(1);
      expect(all.filter(({ words, edge }) => (words ?? 21) < 4.5 || edge < 3)).toEqual([]);
      expect(all.filter(({ moves }) => moves.length > 0)).toEqual([]);
      expect(all.filter(({ kind, covers }) => kind === 'frame' && covers > 0.1)).toEqual([]);
    }
  };
  /** Text follows the size that the reader has set in the browser, whatever the page gives its root, and on a narrow screen all of it is there. */
  const followsReader = async (shares: Readonly<Record<string, number>>): Promise<void> => {
    await session.send('Emulation.setDeviceMetricsOverride', { width: 360, height: 700, deviceScaleFactor: 1, mobile: false });
    for (const [reader, root] of [
      [16, '16px'],
      [16, '5px'],
      [32, '62.5%'],
      [32, '40px'],
    ] as const) {
      const all = await written(page, session, reader, root);
      const sizes = Object.fromEntries(all.map(([kind, text]) => [kind, text / reader]));
      expect(sizes).toEqual(shares);
      expect(all.filter(([, , , whole]) => !whole)).toEqual([]);
      expect(all.filter(([kind, , height]) => kind === 'touch' && height !== 3.5 * reader)).toEqual([]);
    }
    await session.send('Page.setFontSizes', { fontSizes: { standard: 16 } });
    await session.send('Emulation.clearDeviceMetricsOverride');
  };
  const hasGone = () => page.waitForFunction(() => !document.querySelector('[data-ironsift]'));

  it('picking, by mouse, keys and finger', async () => {
    await open('ad.html');
    await openShadows(launched.browser);
    await page.focus('header a');
    await startPick();
    const { x, y } = await middleOf(page, '#ad li');
    await page.touchscreen.tap(x, y);
    await page.waitForFunction(() => document.querySelector('[data-ironsift]')?.shadowRoot?.querySelector('.touch'));
    expect(await faults(page)).toEqual([]);
    expect(await spoken(session)).toEqual([
      expect.stringMatching(/^application "Picking an ad\. .*Enter takes, Escape leaves\."$/),
      'StaticText "Chosen: 4 x 45 lb"',
      ...['Wider', 'Narrower', 'Take it', 'Cancel'].map((name) => `button "${name}"`),
    ]);
    await isSeen();
    await followsReader({ label: 14 / 16, touch: 1 });
    await pressKeys(launched, page, 'Escape');
    await hasGone();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('All notices');
  });

  it('the labels of a sweep, with a frame about one of its ads', async () => {
    await open('results.html');
    await openShadows(launched.browser);
    await page.focus('a');
    await pressSweepShortcut(launched, page);
    await page.waitForFunction(() => document.querySelector('[data-ironsift]')?.shadowRoot?.querySelector('.faint'));
    const panel = await panelOf(launched.browser);
    await panel.click('[data-choose]');
    await page.waitForFunction(() => document.querySelector('[data-ironsift]')?.shadowRoot?.querySelector('.frame'));
    expect(await faults(page)).toEqual([]);
    // The list in the panel says it.
    expect(await spoken(session)).toEqual([]);
    await isSeen();
    await followsReader({ tag: 12 / 16, 'tag faint': 12 / 16 });
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('A');
    await pressKeys(launched, page, 'Escape');
    await hasGone();
  });
});

describe('words of the reading', () => {
  it('are marked in the page, also under a strict policy, without a change to its nodes', async () => {
    await open('ad.html?strict');
    const before = await page.evaluate(() => document.documentElement.outerHTML);
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    const { listing } = await waitForCapture(launched.browser, 'ready');
    await page.evaluate(() => getSelection()?.removeAllRanges());
    const start = listing.text.indexOf('4 x 45 lb');
    expect(await coloured(page, '#ffdf6b')).toBe(0);
    expect(await tellPage(launched.browser, { type: 'highlight', spans: [{ start, end: start + 9 }] })).toEqual({
      ok: true,
      value: 1,
    });
    await expect.poll(() => coloured(page, '#ffdf6b'), { timeout: 30_000 }).toBeGreaterThan(300);
    expect(await page.evaluate(() => document.documentElement.outerHTML)).toBe(before);
    await tellPage(launched.browser, { type: 'clear-highlight' });
    expect(await coloured(page, '#ffdf6b')).toBe(0);
  });
  it('say so when the page no longer has them, and when the tab went elsewhere', async () => {
    await open('ad.html');
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    await waitForCapture(launched.browser, 'ready');
    await page.evaluate(() => document.getElementById('ad')?.remove());
    expect(await tellPage(launched.browser, { type: 'highlight', spans: [{ start: 0, end: 9 }] })).toEqual({
      ok: false,
      code: 'gone',
    });
    await page.goto(server.address('ad.html'));
    expect(await tellPage(launched.browser, { type: 'highlight', spans: [{ start: 0, end: 9 }] })).toMatch(
      /Receiving end does not exist/,
    );
  });
});

describe('a page of the browser itself', () => {
  it('is refused with a paste box, and what is pasted is judged', async () => {
    const own = await launched.browser.newPage();
    await own.goto('chrome://version');
    await pressShortcut(launched, own);
    expect(await waitForCapture(launched.browser, 'refused')).toMatchObject({ reason: 'browser-page' });
    const panel = await panelOf(launched.browser);
    await waitForState(panel, 'refused');
    await pasteInto(panel, '[data-paste]', 'Four 45 lb olympic plates, 2 inch holes, $90');
    await panel.click('[data-judge]');
    expect((await waitForCapture(launched.browser, 'ready')).listing).toMatchObject({ origin: 'paste' });
    await waitForState(panel, 'answer');
    expect(await panel.$eval('[data-call]', (call) => call.getAttribute('data-call'))).toMatch(/^(go|haggle|ask|leave)$/);
    await own.close();
  });
});

describe('the panel', () => {
  const callOf = (panel: Page) => panel.$eval('[data-call]', (call) => call.getAttribute('data-call'));
  const costOf = (panel: Page) =>
    panel.$eval('[data-per-usable-pound]', (cost) => cost.getAttribute('data-per-usable-pound') || cost.textContent);
  const ready = async (): Promise<Page> => {
    await open('ad.html');
    await selectText(page, '#ad');
    await pressShortcut(launched, page);
    await waitForCapture(launched.browser, 'ready');
    const panel = await panelOf(launched.browser);
    await waitForState(panel, 'answer');
    await panel.waitForSelector('[data-per-usable-pound]');
    return panel;
  };

  it('changes its call when a value is edited', async () => {
    const panel = await ready();
    const [call, cost] = [await callOf(panel), await costOf(panel)];
    await panel.$eval('[data-path="asking.amount"]', (field) => {
      field.closest('details')?.setAttribute('open', '');
      (field as HTMLInputElement).select();
    });
    await panel.type('[data-path="asking.amount"]', '2300\t');
    await panel.waitForFunction(
      (before) => document.querySelector('[data-call]')?.getAttribute('data-call') !== before,
      { timeout: 30_000 },
      call,
    );
    expect(await callOf(panel)).toBe('leave');
    expect(await costOf(panel)).not.toBe(cost);
    await display.screenshot('out/test/panel-edited.png');
  });
  it('marks the words of a line in the page while the pointer is on the line', async () => {
    const panel = await ready();
    await page.evaluate(() => getSelection()?.removeAllRanges());
    // The panel may still draw itself anew, and a pointer that rests is told of nothing: moved as a hand would, until it is.
    const marks = async () => {
      await panel.mouse.move(2, 2);
      await panel.hover('[data-line]');
      await wait(200);
      return page.evaluate(() => CSS.highlights.has('ironsift-evidence'));
    };
    await expect.poll(marks, { timeout: 30_000 }).toBe(true);
    await expect.poll(() => coloured(page, '#ffdf6b'), { timeout: 30_000 }).toBeGreaterThan(100);
  });
});

describe('the context menu', () => {
  it('judges what is selected', async () => {
    await open('ad.html');
    const mouse = await mouseOn(launched, page);
    await selectText(page, '#ad');
    const { x, y } = await page.$eval('#ad li', (item) => {
      const { left, top } = item.getBoundingClientRect();
      return { x: left + 12, y: top + 12 };
    });
    await mouse.moveTo(x, y);
    await mouse.click(3);
    await display.screenshot('out/test/menu-chromium.png');
    await mouse.key('j'); // First letter of "Judge the selected ad"; no other entry begins with it.
    await mouse.key('Return');
    expect((await waitForCapture(launched.browser, 'ready')).listing).toMatchObject({ origin: 'selection', text: AD });
  });
});

// Towards the end, for the panel is busy with it for a while.
it('a selection of over a million characters is cut, and says so', async () => {
  await open('long');
  await selectText(page, 'p');
  await pressShortcut(launched, page);
  const { listing, cut } = await waitForCapture(launched.browser, 'ready', 20_000);
  expect([listing.text.length, cut]).toEqual([1_000_000, true]);
});

it('asked nothing of any other machine', async () => {
  expect(outside.asked).toEqual([]);
  // The watch itself works: a page that asks is written down.
  await open('ad.html');
  await page.evaluate(() => fetch('http://elsewhere.invalid/', { mode: 'no-cors' }).catch(() => null));
  expect(outside.asked.join()).toContain('elsewhere.invalid');
  expect(await captures(launched.browser)).toEqual([]);
});

/**
 * What goes wrong in the extension's own pages: no room, a solver that dies, tabs closed with the last key, two windows, a clock that was put
 * back, a file whose texts are markup.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, ElementHandle, Page, WebWorker } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildOf, goToOwn, launchHeadless, openOwn, pasteInto, typeInto, waitForState, waitUntilStored } from './driver/index.ts';
import { MADE } from './hostile/case.ts';
import { hostileFile, MARK } from './hostile-file.ts';

let profile: string;
let browser: Browser;

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'ironsift-faults-'));
  browser = await launchHeadless({ extension: buildOf('chrome'), profile });
});
afterAll(async () => {
  await browser?.close();
  if (profile) await rm(profile, { recursive: true, force: true });
});

let started: { readonly browser: Browser; readonly name: 'chromium' } | null = null;
/** One and the same, for it is known by it which address the extension has. */
const launched = () => {
  started ??= { browser, name: 'chromium' };
  return started;
};
const open = (path: string): Promise<Page> => openOwn(launched(), path);
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const shownIn = (page: Page, selector: string): Promise<string> =>
  page.waitForSelector(selector).then(() => page.$eval(selector, (field) => (field as HTMLInputElement).value));

async function judge(text: string): Promise<Page> {
  const panel = await open('panel.html');
  await pasteInto(panel, '[data-paste]', text);
  await panel.click('[data-judge]');
  await waitForState(panel, 'answer');
  return panel;
}

/** Keeps what is judged; gives the find's id. */
async function keepIn(panel: Page): Promise<string> {
  await panel.click('[data-keep]');
  await panel.waitForSelector('[data-kept]');
  return panel.$eval('[data-kept]', (part) => part.getAttribute('data-kept') ?? '');
}

async function keep(text: string): Promise<string> {
  const panel = await judge(text);
  const id = await keepIn(panel);
  await panel.close();
  return id;
}

// First, for Chromium goes by the room that it counted last for half a minute once it has written.
it('no room: the panel says so and keeps nothing, and keeps it once there is room again', async () => {
  const panel = await judge('Flat bench, sturdy, $40');
  const session = await panel.createCDPSession();
  const origin = `chrome-extension://${new URL(panel.url()).hostname}`;
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1000 });
  await panel.click('[data-keep]');
  await panel.waitForSelector('.keep [role="alert"]');
  expect(await panel.$('[data-kept]')).toBeNull();
  await session.send('Storage.overrideQuotaForOrigin', { origin });
  await keepIn(panel);
  expect(await panel.$('.keep [role="alert"]')).toBeNull();
  await panel.close();
});

describe('a tab that is closed with the field still being edited', () => {
  let find: string;
  beforeAll(async () => {
    find = await keep('4 x 45 lb olympic plates, cast iron, $160');
  });
  it.each([
    ['notes', 'finds/FIND', '[data-path="notes"]', 'ring after six', '"notes":"ring after six"'],
    ['what is said of the ad', 'finds/FIND', '[data-path="plate-1.count"]', '3', '"plate-1.count","value":3'],
    ['settings', 'settings', '[data-path="hourWorth"]', '37', '"hourWorth":37,'],
    ['kit', 'kit', '[data-path="best"]', '275', '"best":{"value":275,'],
  ])('has kept %s', async (_what, address, selector, text, json) => {
    const path = `workshop.html#${address.replace('FIND', find)}`;
    const page = await open(path);
    expect(await shownIn(page, selector)).not.toBe(text);
    await typeInto(page, selector, text);
    await waitUntilStored(page, json);
    await page.close();
    const again = await open(path);
    await expect.poll(() => shownIn(again, selector), { timeout: 30_000 }).toBe(text);
    await again.close();
  });
});

it('two windows edit one find: each shows what the other says, and nothing is lost, nor when the ad is met again', async () => {
  // Long enough to be known by its words.
  const ad = '2 x 35 lb olympic plates, iron, that stood dry in a garage for ten years without a spot of rust, $70';
  const find = await keep(ad);
  const path = `workshop.html#finds/${find}`;
  const [one, other] = [await open(path), await open(path)];
  await typeInto(one, '[data-path="plate-1.count"]', '4');
  await expect.poll(() => shownIn(other, '[data-path="plate-1.count"]')).toBe('4');
  await typeInto(other, '[data-path="notes"]', 'has a trailer');
  await expect.poll(() => shownIn(one, '[data-path="notes"]')).toBe('has a trailer');
  await typeInto(other, '[data-path="asking.amount"]', '65');
  await expect.poll(() => shownIn(one, '[data-path="asking.amount"]')).toBe('65');
  await typeInto(one, '[data-path="notes"]', 'has a trailer, and a friend');
  await expect.poll(() => shownIn(other, '[data-path="notes"]')).toBe('has a trailer, and a friend');
  await one.close();
  await other.close();
  const again = await open(path);
  const left = await Promise.all(
    ['plate-1.count', 'asking.amount', 'notes'].map((name) => shownIn(again, `[data-path="${name}"]`)),
  );
  expect(left).toEqual(['4', '65', 'has a trailer, and a friend']);
  await again.close();
  const panel = await judge(ad);
  await expect.poll(() => shownIn(panel, '[data-path="plate-1.count"]')).toBe('4');
  await panel.close();
});

describe('the solver dies', () => {
  let page: Page;
  const stage = () => page.$eval('[data-stage]', (part) => part.getAttribute('data-stage'));
  const isAt = (wanted: string) => page.waitForSelector(`[data-stage="${wanted}"]`, { timeout: 30_000 });
  const lines = () => page.$eval('.buy-answer', (part) => part.getAttribute('data-list'));
  const worker = async (): Promise<WebWorker> => {
    await expect.poll(() => page.workers().length).toBe(1);
    return page.workers()[0] as WebWorker;
  };
  beforeAll(async () => {
    await keep('2 x 10 lb and 2 x 2.5 lb olympic plates, $30');
    page = await open('workshop.html#buy-list');
    await isAt('done');
    // What is learned of the last find comes a moment later, and has the list worked out once more.
    await wait(600);
    await isAt('done');
  });
  afterAll(() => page?.close());

  it('in the midst of a program and without a word: it can be stopped, and begun anew', async () => {
    const solver = await worker();
    // The next answer is never given: the solver is at it until it is ended, as by a browser that is short of memory.
    await solver.evaluate('void (self.postMessage = () => { for (;;); })');
    await page.select('[data-path="paying"]', 'walk-away');
    await isAt('solving');
    await wait(300);
    await solver.client.send('Runtime.terminateExecution');
    await wait(300);
    expect(await stage()).toBe('solving');
    await page.click('[data-stop]');
    await isAt('stopped');
    await page.click('[data-again]');
    await isAt('done');
    expect(await lines()).toBe('kit');
  });

  it('with an error: the page says that it failed, and it can be begun anew', async () => {
    const solver = await worker();
    await solver.evaluate("void (self.postMessage = () => setTimeout(() => { throw new Error('out of memory'); }))");
    await page.select('[data-path="paying"]', 'asked');
    await isAt('failed');
    await page.click('[data-again]');
    await isAt('done');
    expect(await lines()).toBe('kit');
  });
});

it('the clock is moved back: what is said later counts, and nothing is from the future', async () => {
  const find = await keep('4 x 10 lb olympic plates, $40');
  const page = await browser.newPage();
  await page.evaluateOnNewDocument(() => {
    const late = Date.now;
    Date.now = () => late() - 3 * 24 * 3600 * 1000;
  });
  const path = `workshop.html#finds/${find}`;
  await goToOwn(launched(), page, path);
  await typeInto(page, '[data-path="asking.amount"]', '35');
  await typeInto(page, '[data-path="notes"]', 'came down');
  await waitUntilStored(page, '"notes":"came down"');
  await page.close();
  const again = await open(path);
  expect(await shownIn(again, '[data-path="asking.amount"]')).toBe('35');
  expect(await shownIn(again, '[data-path="notes"]')).toBe('came down');
  const days = await again.$$eval('.history li', (all) => all.map((one) => one.textContent?.split(':')[0]));
  expect(days.length).toBeGreaterThan(1);
  expect(new Set(days).size).toBe(1);
  await again.close();
});

// Last, for it stays in what is kept.
it('a file whose every text is markup: the words stand on the screens, and nothing is made or run of them', async () => {
  const file = await hostileFile();
  expect(file.places.length).toBeGreaterThan(20);
  const path = join(profile, 'hostile.json');
  await writeFile(path, file.text);
  const page = await open('workshop.html#settings');
  const wrong: string[] = [];
  page.on('dialog', (dialog) => {
    wrong.push(`a dialog: ${dialog.message()}`);
    void dialog.accept();
  });
  page.on('pageerror', (error) => wrong.push(String(error)));
  // What the policy of our pages keeps from running is told there.
  page.on('console', (line) => line.type() === 'error' && wrong.push(line.text()));
  page.on('request', (request) => /^https?:/.test(request.url()) && wrong.push(`asked for ${request.url()}`));
  const chooser = await page.waitForSelector('input[type="file"]');
  await (chooser as ElementHandle<HTMLInputElement>).uploadFile(path);
  await (await page.waitForSelector('[data-import] [data-take]'))?.click();
  await page.waitForSelector('[data-import] > [role="status"]:not([data-doing], [data-preview])');
  const silent: string[] = [];
  const { find, other } = file;
  // Those that show texts of what is kept.
  for (const screen of [
    'finds',
    'finds/removed',
    `finds/${find}`,
    `side-by-side/${find},${other}`,
    'kit',
    'buy-list',
    'pickup',
    `pickup/${find}`,
    'rates',
    'settings',
  ]) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, screen);
    const shown = await page
      .waitForFunction((mark) => document.querySelector('main')?.textContent?.includes(mark), { timeout: 6000 }, MARK)
      .catch(() => null);
    if (!shown) silent.push(screen);
    const made = await page.$$eval(MADE, (all) => all.map((one) => one.outerHTML.slice(0, 100)));
    wrong.push(...made.map((html) => `${screen} shows ${html}`));
  }
  expect(silent).toEqual([]);
  expect(await page.evaluate(() => '__hit' in globalThis)).toBe(false);
  expect(wrong).toEqual([]);
  await page.close();
});

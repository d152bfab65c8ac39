/** Every screen of the extension with something on it: three ads kept, a kit set up and begun. For tests that look at all of them in one way. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { batchKey, headKey } from '../../extension/platform/sweep-state.ts';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { anew, extensionId, launchHeadless } from './driver/index.ts';
import { extensionWithPage } from './store/extension-with-page.ts';
import { storePage } from './store/kill.ts';

export interface Everything {
  readonly browser: Browser;
  readonly page: Page;
  /** Opens a screen by its name, waits until something is on it, and unfolds what is folded. */
  readonly open: (name: string, width: number) => Promise<void>;
  /** The same screen in a window of another width, in px, once it is drawn so. */
  readonly narrow: (width: number) => Promise<void>;
  /** The address of a page of the extension, such as "panel.html". */
  readonly address: (page: string) => string;
  /** Puts this into session storage in place of all that is there, while no page of ours looks on. */
  readonly putInSession: (stored: object) => Promise<void>;
  /** Number of the page's tab. */
  readonly tab: number;
  /** All that is kept, as it is exported. */
  readonly file: string;
  readonly close: () => Promise<void>;
}

/** Addresses by name, with the ids of the finds that are shown. */
const ADDRESSES: Readonly<Record<string, (finds: readonly string[], tab: number) => string>> = {
  finds: () => 'workshop.html#finds',
  'one find': ([first]) => `workshop.html#finds/${first}`,
  'side by side': ([first, , third]) => `workshop.html#side-by-side/${first},${third}`,
  kit: () => 'workshop.html#kit',
  loads: () => 'workshop.html#kit/loads',
  platform: () => 'workshop.html#kit/platform',
  'buy list': () => 'workshop.html#buy-list',
  pickup: ([first]) => `workshop.html#pickup/${first}`,
  weigh: () => 'workshop.html#weigh',
  rates: () => 'workshop.html#rates',
  settings: () => 'workshop.html#settings',
  'empty panel': () => 'panel.html',
  panel: () => 'panel.html',
  'swept panel': (_, tab) => `panel.html?tab=${tab}`,
};
export const SCREENS: readonly string[] = Object.keys(ADDRESSES);

export interface How {
  /** Three ads; the first is also judged in the panel. */
  readonly ads: readonly string[];
  readonly language?: string;
  /** Changes the extension's folder before it is loaded. */
  readonly prepare?: (folder: string) => Promise<unknown>;
}

export async function everyScreen({ ads, prepare, ...how }: How): Promise<Everything> {
  const extension = await extensionWithPage();
  await prepare?.(extension);
  const profile = await mkdtemp(join(tmpdir(), 'ironsift-screens-'));
  const browser = await launchHeadless({ extension, profile, ...how });
  const root = `chrome-extension://${await extensionId(browser)}/`;
  const store = await storePage(browser);
  const { finds, file } = await store.evaluate(async (texts) => {
    const { adOf, must, open, saveFigures } = window.storeTest;
    const store = await open();
    const { finds: all, kit, exportAll } = store;
    const kept: string[] = [];
    for (const text of texts) kept.push((await must(all.keep(adOf(text), 1_700_000_000_000))).id);
    await must(saveFigures(store, { budget: 2000 }, 1));
    const weight = { value: 45, unit: 'lb' as const };
    const own = { weighed: [], boreMm: null, shaftMm: null, sleeveMm: null, lengthMm: null, note: '', paid: null };
    await must(kit.owned.put({ id: 'bar', kind: 'bar', weight, pieces: 1, ...own }, 1));
    await must(kit.owned.put({ id: 'plates', kind: 'plate', weight, pieces: 2, ...own }, 1));
    return { finds: kept, file: await must(exportAll(1)) };
  }, ads);
  await store.close();
  const page = await browser.newPage();
  const judge = async () => {
    const box = await page.waitForSelector('[data-paste]');
    await box?.evaluate((field, text) => {
      (field as HTMLTextAreaElement).value = text;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }, ads[0] ?? '');
    await page.click('[data-judge]');
    await page.waitForSelector('[data-state="answer"]');
  };
  const putInSession = async (stored: object): Promise<void> => {
    await page.goto(`${root}still-test.html`);
    await page.evaluate(`chrome.storage.session.clear().then(() => chrome.storage.session.set(${JSON.stringify(stored)}))`);
  };
  await putInSession({});
  const tab = (await page.evaluate('chrome.tabs.getCurrent().then(({ id }) => id)')) as number;
  /** Puts the three ads into session storage as a sweep of the page's own tab would leave them at its end. */
  const sweep = (): Promise<void> => {
    const swept = ads.map((text, place) => ({ id: `ad-${place + 1}`, listing: { ...listingFromText(text), origin: 'sweep' } }));
    const head = { run: 'swept', state: 'ended', spent: 9, batches: 1, at: Date.now() };
    return putInSession({ [headKey(tab)]: head, [batchKey(tab, 0)]: { run: head.run, ads: swept } });
  };
  return {
    browser,
    page,
    open: async (name, width) => {
      await page.setViewport({ width, height: 900 });
      if (name === 'swept panel') await sweep();
      await page.goto(anew(root + ADDRESSES[name]?.(finds, tab)));
      if (name === 'panel') await judge();
      else if (name === 'swept panel') await page.waitForSelector('[data-sweep="ended"] [data-row]');
      else await page.waitForSelector('button, main a, main input');
      await page.evaluate(async () => {
        for (const details of document.querySelectorAll('details')) details.open = true;
        // What is fetched or worked out behind the page changes it once more: until nothing has for a while.
        for (let [same, size, tries] = [0, 0, 0]; same < 3 && tries < 60; tries += 1) {
          await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 60)));
          const now = document.body.innerHTML.length;
          same = now === size ? same + 1 : 0;
          size = now;
        }
      });
    },
    narrow: async (width) => {
      await page.setViewport({ width, height: 900 });
      // What follows the width by script does so in the frame after the first.
      await page.evaluate(async () => {
        for (let frames = 0; frames < 3; frames += 1) await new Promise((resolve) => requestAnimationFrame(resolve));
      });
    },
    address: (name) => root + name,
    putInSession,
    tab,
    file,
    close: async () => {
      await browser.close();
      for (const folder of [extension, profile]) await rm(folder, { recursive: true, force: true });
    },
  };
}

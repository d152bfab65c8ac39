/** The store on a real browser's IndexedDB: shared by pages, quick with ten thousand finds, clear when full or outdated, and whole after every kill. */
import { appendFile, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../src/listing/settings.ts';
import { extensionId, launchHeadless } from './driver/index.ts';
import { extensionWithPage } from './store/extension-with-page.ts';
import { expected, killOften, storePage } from './store/kill.ts';
import { stateText } from './store/steps.ts';

let extension: string;
let profile: string;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  extension = await extensionWithPage();
  profile = await mkdtemp(join(tmpdir(), 'ironsift-store-'));
  browser = await launchHeadless({ extension, profile });
  page = await storePage(browser);
});

afterAll(async () => {
  await browser?.close();
  for (const folder of [extension, profile]) if (folder) await rm(folder, { recursive: true, force: true });
});

test('every write asks the browser for strict durability', async () => {
  const asked = await page.evaluate(async () => {
    const seen: unknown[] = [];
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (names, mode, options) {
      const made = transaction.call(this, names, mode, options);
      if (mode === 'readwrite') seen.push(made.durability);
      return made;
    };
    const store = await window.storeTest.open();
    const { id } = await window.storeTest.must(store.finds.keep(window.storeTest.adOf('4 x 45 lb plates $100'), 1));
    await window.storeTest.must(store.finds.setStatus(id, 'asked', 2));
    await window.storeTest.must(store.finds.remove(id, 3));
    await window.storeTest.must(store.finds.purge(10));
    IDBDatabase.prototype.transaction = transaction;
    return seen;
  });
  expect(asked.length).toBeGreaterThanOrEqual(4);
  expect(new Set(asked)).toEqual(new Set(['strict']));
});

test('what one page keeps another one sees at once', async () => {
  const other = await storePage(browser);
  const seen = other.evaluate(async () => {
    const store = await window.storeTest.open();
    return new Promise<number>((resolve) => {
      const query = { order: 'kept', descending: true, words: 'elsewhere', from: 0, count: 5 } as const;
      store.finds.watchList(query, (found) => {
        if (found.ok && found.value.total === 1) resolve(performance.timeOrigin + performance.now());
      });
    });
  });
  const kept = await page.evaluate(async () => {
    const store = await window.storeTest.open();
    await window.storeTest.must(store.finds.keep(window.storeTest.adOf('Rack from elsewhere $300'), 5));
    return performance.timeOrigin + performance.now();
  });
  expect((await seen) - kept).toBeLessThan(1000);
  await other.close();
});

test('settings of an older version are taken over from the plain storage, which is cleared when they are written', async () => {
  const [loaded, left] = await page.evaluate(async () => {
    const { storage } = (globalThis as unknown as { chrome: typeof import('webextension-polyfill') }).chrome;
    await storage.local.set({ settings: { unit: 'kg', margin: 0.3 } });
    const { must, pageStore } = window.storeTest;
    const { settings } = await must((await must(pageStore())).settings.load(1));
    return [settings, await storage.local.get(null)] as const;
  });
  expect(loaded).toEqual({ ...DEFAULT_SETTINGS, unit: 'kg', margin: 0.3 });
  expect(left).toEqual({});
});

/** Ten thousand are the bench's. */
describe('with two thousand finds', () => {
  beforeAll(async () => {
    console.log(`two thousand finds brought in: ${Math.round(await page.evaluate(() => window.storeTest.fill(2000)))} ms`);
  });

  test.each([
    ['the first fifty, cheapest pound first', { order: 'per-usable', descending: false, from: 0 }],
    ['fifty from the middle, by title', { order: 'title', descending: true, from: 1000 }],
    ['fifty of a status and kind', { order: 'kept', descending: true, statuses: ['new'], kinds: ['plate'], from: 0 }],
    ['those with a word', { order: 'changed', descending: true, words: 'plates 1a', from: 0 }],
  ] as const)('lists %s quickly', async (name, query) => {
    const [time, total, shown] = await page.evaluate(async (wanted) => {
      const store = await window.storeTest.open();
      const list = () => window.storeTest.must(store.finds.list({ ...wanted, count: 50 } as never));
      const { rows, total } = await list();
      return [await window.storeTest.timed(list), total, rows.length] as const;
    }, query);
    console.log(`${name}: ${time.toFixed(1)} ms, ${shown} of ${total}`);
    expect(shown).toBeGreaterThan(0);
    expect(time).toBeLessThan(200);
  });

  test('knows an ad again in well under 50 ms', async () => {
    const time = await page.evaluate(async () => {
      const store = await window.storeTest.open();
      const { listing } = await window.storeTest.must(store.finds.get('many-1777'));
      const again = async () => {
        const [first] = await window.storeTest.must(store.finds.again({ ...listing, text: `${listing.text}\nNow $90!` }));
        if (first?.find.id !== 'many-1777') throw new Error('not known again');
      };
      await again();
      return window.storeTest.timed(again);
    });
    console.log(`known again: ${time.toFixed(1)} ms`);
    expect(time).toBeLessThan(50);
  });
});

test('a full disk is told by its code, and nothing of the find is there', async () => {
  // Its own browser, started anew: one that has written before goes by the room that it counted then, for half a minute.
  const small = await mkdtemp(join(tmpdir(), 'ironsift-store-'));
  const before = await launchHeadless({ extension, profile: small });
  await (await storePage(before)).evaluate(async () => {
    const { adOf, must, open } = window.storeTest;
    await must((await open()).finds.keep(adOf('4 x 45 lb plates $100'), 1));
  });
  await before.close();
  const full = await launchHeadless({ extension, profile: small });
  const tab = await storePage(full);
  const origin = `chrome-extension://${new URL(tab.url()).hostname}`;
  await (await tab.createCDPSession()).send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1000 });
  const found = await tab.evaluate(async () => {
    const { adOf, must, open } = window.storeTest;
    const store = await open();
    const kept = await store.finds.keep(adOf('Flat bench $40'), 5);
    const { rows } = await must(store.finds.list({ order: 'kept', descending: true, from: 0, count: 5 }));
    return [kept.ok || kept.code, rows.map(({ title }) => title)];
  });
  await full.close();
  await rm(small, { recursive: true, force: true });
  expect(found).toEqual(['full', ['4 x 45 lb plates $100']]);
});

describe('what Chromium itself loses comes back from the second copy', () => {
  let own: string;
  beforeAll(async () => {
    own = await mkdtemp(join(tmpdir(), 'ironsift-store-'));
  });
  afterAll(() => rm(own, { recursive: true, force: true }));

  /** One start of the browser: so many steps on what is there, and what is there then. Null where it does not open its database. */
  async function run(seed: number, steps: number) {
    const other = await launchHeadless({ extension, profile: own });
    try {
      const tab = await storePage(other);
      await tab.exposeFunction('confirmed', () => undefined);
      const found = await tab.evaluate(() => window.storeTest.dump());
      await tab.evaluate((...args) => window.storeTest.run(...args), seed, found.model, steps);
      return { ...(await tab.evaluate(() => window.storeTest.dump())), before: stateText(found.model) };
    } catch (error) {
      if (String(error).includes('broken')) return null;
      throw error;
    } finally {
      await other.close();
    }
  }

  test('after its files are gone', async () => {
    const before = await run(17, 60);
    await rm(join(own, 'Default', 'IndexedDB'), { recursive: true });
    const after = await run(18, 0);
    expect([before?.restored, after?.restored, after?.odd]).toEqual([false, true, []]);
    expect(after?.before).toBe(before && stateText(before.model));
    expect(Object.keys(after?.model.finds ?? {}).length).toBeGreaterThan(10);
  });

  test('after a torn record in its log, which makes it delete them', async () => {
    const [folder = ''] = await readdir(join(own, 'Default', 'IndexedDB'));
    const files = join(own, 'Default', 'IndexedDB', folder);
    const [log = ''] = (await readdir(files)).filter((file) => file.endsWith('.log'));
    // A record of 12,288 bytes (LevelDB's log format: checksum, length, kind) of which a kill let only some be written.
    await appendFile(join(files, log), Buffer.from([1, 2, 3, 4, 0x00, 0x30, 1, ...Array(100).fill(7)]));
    // This start takes the torn end for the end, and writes on behind it; the one after finds it in the middle.
    const before = await run(19, 20);
    expect(before?.restored).toBe(false);
    let after = await run(20, 0);
    // It may open nothing in the session in which it finds the damage.
    for (let starts = 0; after === null && starts < 3; starts += 1) after = await run(20, 0);
    expect([after?.restored, after?.odd]).toEqual([true, []]);
    expect(after?.before).toBe(before && stateText(before.model));
  });
});

test('a page of an older version lets go at once, and says that it is outdated', async () => {
  const found = await page.evaluate(async () => {
    const { must, openStore } = window.storeTest;
    const store = await must(openStore({ name: 'versions' }));
    let told = 0;
    store.onOutdated(() => {
      told += 1;
    });
    const newer = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('versions', 990);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const kept = await store.finds.removals();
    const again = await openStore({ name: 'versions' });
    const version = newer.version;
    newer.close();
    return [told, kept.ok || kept.code, again.ok || again.code, version];
  });
  expect(found).toEqual([1, 'outdated', 'newer', 990]);
});

test('a tab that crashes while it writes loses nothing that was confirmed', async () => {
  const own = await mkdtemp(join(tmpdir(), 'ironsift-store-'));
  const crashing = await launchHeadless({ extension, profile: own });
  // The crash takes the extension's worker with it, which must not be waited for.
  const id = await extensionId(crashing);
  for (const seed of [71]) {
    const tab = await storePage(crashing, id);
    const from = await tab.evaluate(() => window.storeTest.dump());
    let count = 0;
    await tab.exposeFunction('confirmed', (steps: number) => {
      count = steps;
    });
    const running = tab.evaluate((...args) => window.storeTest.run(...args), seed, from.model).catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, 400));
    await Promise.race([tab.goto('chrome://crash').catch(() => undefined), new Promise((resolve) => setTimeout(resolve, 2000))]);
    await Promise.race([running, new Promise((resolve) => setTimeout(resolve, 500))]);
    const next = await storePage(crashing, id);
    const found = await next.evaluate(() => window.storeTest.dump());
    expect(count).toBeGreaterThan(0);
    expect(found.odd).toEqual([]);
    expect(expected(seed, from.model, count).map(stateText)).toContain(stateText(found.model));
    await next.close();
    await tab.close().catch(() => undefined);
  }
  await crashing.close();
  await rm(own, { recursive: true, force: true });
});

test('a browser that is killed while it writes loses nothing that was confirmed', async () => {
  const report = await killOften(2, 4000, undefined, 600);
  expect(report.faults).toEqual([]);
  expect(report.confirmed).toBeGreaterThan(3);
}, 120_000);

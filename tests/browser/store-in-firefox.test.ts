/**
 * The store on Firefox's IndexedDB, in a page of the extension itself: it has no second copy there (extension/store/copy.ts says why), so
 * kills are what it must stand without.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchHeadlessFirefox, openOwn } from './driver/index.ts';
import { extensionWithPage } from './store/extension-with-page.ts';
import { expected, killOften } from './store/kill.ts';
import { EMPTY, stateText } from './store/steps.ts';

let extension: string;
let profile: string;
let browser: Browser;

beforeAll(async () => {
  extension = await extensionWithPage('firefox');
  profile = await mkdtemp(join(tmpdir(), 'ironsift-firefox-'));
  browser = await launchHeadlessFirefox({ extension, profile });
});

afterAll(async () => {
  await browser?.close();
  for (const folder of [extension, profile]) if (folder) await rm(folder, { recursive: true, force: true });
});

test('a hundred steps leave in Firefox what they must, every write asks for strict durability, and there is no second copy', async () => {
  const page = await openOwn({ browser, name: 'firefox' }, 'store-test.html');
  const { found, asked, buckets } = await page.evaluate(async () => {
    const seen = new Set<string>();
    const { transaction } = IDBDatabase.prototype;
    IDBDatabase.prototype.transaction = function (names, mode, options) {
      const made = transaction.call(this, names, mode, options);
      if (mode === 'readwrite') seen.add(made.durability);
      return made;
    };
    window.confirmed = async () => undefined;
    const { dump, EMPTY: empty, run } = window.storeTest;
    await run(9, empty, 100);
    return { found: await dump(), asked: [...seen], buckets: 'storageBuckets' in navigator };
  });
  expect(found.odd).toEqual([]);
  expect(stateText(found.model)).toBe(stateText(expected(9, EMPTY, 100)[0]));
  expect(asked).toEqual(['strict']);
  expect(buckets).toBe(false);
});

test('what was confirmed is there after every kill of the process in the middle of writing', async () => {
  const report = await killOften(2, 11, undefined, 500, 'firefox');
  expect(report).toMatchObject({ faults: [], restored: 0, refusals: 0 });
  expect(report.confirmed).toBeGreaterThan(3);
});

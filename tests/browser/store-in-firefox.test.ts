/**
 * The store on Firefox's IndexedDB. Firefox lets no driver open an extension's page, so the same page is served on the loopback address:
 * the database is the same, its origin another.
 */
import { readFile, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import puppeteer, { type Browser } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findBrowser } from './driver/index.ts';
import { extensionWithPage } from './store/extension-with-page.ts';
import { expected } from './store/kill.ts';
import { EMPTY, stateText } from './store/steps.ts';

let folder: string;
let server: Server;
let browser: Browser;

beforeAll(async () => {
  folder = await extensionWithPage('firefox');
  server = createServer(async (request, response) => {
    const script = request.url === '/store-test.js';
    response.setHeader('content-type', script ? 'text/javascript' : 'text/html');
    response.end(await readFile(join(folder, script ? 'store-test.js' : 'store-test.html')));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const executablePath = findBrowser('firefox');
  if (executablePath === null) throw new Error('no Firefox was found on this machine');
  browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    extraPrefsFirefox: { 'services.settings.server': 'http://127.0.0.1:9/v1' },
  });
});

afterAll(async () => {
  await browser?.close();
  server?.close();
  if (folder) await rm(folder, { recursive: true, force: true });
});

test('a hundred steps leave in Firefox what they must, and every write asks for strict durability', async () => {
  const page = await browser.newPage();
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  const { found, asked } = await page.evaluate(async () => {
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
    return { found: await dump(), asked: [...seen] };
  });
  expect(found.odd).toEqual([]);
  expect(stateText(found.model)).toBe(stateText(expected(9, EMPTY, 100)[0]));
  expect(asked).toEqual(['strict']);
});

/** One browser for many test files: those of a worker share their modules, and each finds the extension as it is when just put in. */
import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { launchHeadless, rootOf, type Started } from './driver/index.ts';
import { extensionWithPage } from './store/extension-with-page.ts';

let started: Promise<Started> | null = null;

/** It ends with the worker: puppeteer sees to that. */
async function start(): Promise<Started> {
  const extension = await extensionWithPage();
  const profile = await mkdtemp(join(tmpdir(), 'ironsift-shared-'));
  const browser = await launchHeadless({ extension, profile, language: 'en-US' });
  process.once('exit', () => {
    for (const folder of [extension, profile]) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  });
  return { browser, name: 'chromium' };
}

/** Closes every page, ends the background, and forgets all that is stored. */
async function renew(browser: Browser, root: string): Promise<void> {
  const page = await browser.newPage();
  for (const other of await browser.pages()) if (other !== page) await other.close();
  await page.goto(`${root}still-test.html`);
  await page.evaluate('Promise.all([chrome.storage.local.clear(), chrome.storage.session.clear()])');
  const session = await page.createCDPSession();
  await session.send('ServiceWorker.enable');
  await session.send('ServiceWorker.stopAllWorkers');
  const storageTypes = 'indexeddb,local_storage,cache_storage,file_systems';
  await session.send('Storage.clearDataForOrigin', { origin: root.replace(/\/$/, ''), storageTypes });
  await session.detach();
  await page.goto('about:blank');
}

/** Chromium without a window, with the extension and the store's test page (`storePage`). Nobody closes it. */
export async function sharedChromium(): Promise<Started & { readonly root: string }> {
  started ??= start();
  const one = await started;
  const root = await rootOf(one);
  await renew(one.browser, root);
  return { ...one, root };
}

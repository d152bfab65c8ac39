/**
 * Firefox without what Firefox for Android lacks: no sidebar, no context menus, no shortcuts. The manifest is taken apart for it, so that the
 * browser itself gives no such API; it stays a desktop's Firefox otherwise, and is no proof for a phone.
 */
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import {
  buildOf,
  type Display,
  inFirefoxWindow,
  type Launched,
  launchFirefox,
  openOwn,
  startDisplay,
  toolbarButton,
} from './driver/index.ts';
import { clickScreen, middleOf } from './mouse.ts';
import { type PageServer, servePages } from './serve-pages.ts';

let extension: string;
let display: Display;
let server: PageServer;
let launched: Launched;
let page: Page;

async function withoutDesktop(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'ironsift-phone-'));
  await cp(buildOf('firefox'), folder, { recursive: true });
  const path = join(folder, 'manifest.json');
  const { sidebar_action: _sidebar, commands: _commands, ...manifest } = JSON.parse(await readFile(path, 'utf8'));
  manifest.permissions = manifest.permissions.filter((name: string) => name !== 'contextMenus');
  await writeFile(path, JSON.stringify(manifest));
  return folder;
}

beforeAll(async () => {
  await mkdir('out/test', { recursive: true });
  extension = await withoutDesktop();
  display = await startDisplay();
  server = await servePages();
  launched = await launchFirefox({ display, extension });
  page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
});

afterAll(async () => {
  await launched?.browser.close();
  await server?.close();
  await display?.close();
  if (extension) await rm(extension, { recursive: true, force: true });
});

const inFront = () => inFirefoxWindow(launched, 'gBrowser.selectedBrowser.currentURI.spec');
const tabCount = () => inFirefoxWindow(launched, 'gBrowser.tabs.length');

it('has none of those APIs', async () => {
  const own = await openOwn(launched, 'panel.html');
  expect(await own.evaluate('[typeof browser.sidebarAction, typeof browser.contextMenus, typeof browser.commands]')).toEqual([
    'undefined',
    'undefined',
    'undefined',
  ]);
  // Nor is a key named that nobody can press.
  await own.waitForFunction(() => document.querySelector('main')?.textContent?.includes('Ironsift in the toolbar'));
  expect(await own.$eval('main', (main) => main.textContent)).not.toMatch(/Alt\+|_key/);
  await own.close();
});

it('lets a finger pick on the page, and shows the answer in a tab when the ad is taken; the second ad comes into the same tab', async () => {
  await page.bringToFront();
  await page.goto(server.address('key-swallower.html'));
  const { x, y } = await toolbarButton(launched);
  const tabs = Number(await tabCount());
  for (const line of ['#ad li', '#ad li:nth-child(2)']) {
    await page.bringToFront();
    await page.evaluate('window.seen = []');
    await clickScreen(launched, x, y);
    await page.waitForFunction(() => document.documentElement.childElementCount === 3, { timeout: 30_000 });
    expect(await inFront()).toBe(server.address('key-swallower.html'));
    const at = await middleOf(page, line);
    await page.touchscreen.tap(at.x, at.y);
    await new Promise((resolve) => setTimeout(resolve, 400));
    await display.screenshot('out/test/phone-in-firefox.png');
    await page.touchscreen.tap(at.x, at.y);
    await expect.poll(inFront, { timeout: 30_000 }).toMatch(/^moz-extension:.*\/panel\.html\?tab=\d+$/);
    expect(Number(await tabCount())).toBe(tabs + 1);
    expect(await page.evaluate('window.seen')).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.childElementCount)).toBe(2);
  }
  await display.screenshot('out/test/phone-in-firefox-answer.png');
});

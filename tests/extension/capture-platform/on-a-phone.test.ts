/**
 * Where the browser has neither sidebar nor context menus, shortcuts and windows: Firefox for Android (MDN, "Browser support for JavaScript
 * APIs", from memory). The toolbar's entry is all there is, and the panel is a tab, which covers the page.
 */
import { beforeEach, expect, it, vi } from 'vitest';
import { loadCapture } from '../../../extension/platform/capture-state.ts';
import { openWorkshop } from '../../../extension/platform/open-workshop.ts';
import { startPick } from '../../../extension/platform/page.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { fakeBrowser, settled } from './fake-browser.ts';

const PANEL = 'extension://ironsift/panel.html?tab=1';
const tab = { id: 1 };
let fake: ReturnType<typeof fakeBrowser>;

const captured = () =>
  fake.events.onMessage.fire(
    { type: 'captured', listing: listingFromText('4 x 45 lb $100', 'pick'), cut: false },
    { id: 'ironsift', tab },
    () => undefined,
  );

beforeEach(async () => {
  fake = fakeBrowser();
  fake.world.panel = 'none';
  fake.without('contextMenus', 'commands', 'windows');
  vi.resetModules();
  await import('../../../extension/background/index.ts');
});

it('starts, is installed and hears the toolbar and the page', async () => {
  fake.events.onInstalled.fire();
  await settled();
  expect(fake.calls).toEqual([]);
  const { onAction, onMessage, onRemoved, onMenu, onCommand } = fake.events;
  expect([onAction, onMessage, onRemoved, onMenu, onCommand].map(({ count }) => count)).toEqual([1, 1, 1, 0, 0]);
});

it('leaves the page in sight while the buyer picks, and shows the answer when the ad is taken', async () => {
  fake.world.pageAnswers = () => ({ ok: true, value: 'pick' });
  fake.events.onAction.fire(tab);
  await settled();
  expect(fake.calls).toEqual(['inject capture.js into 1', 'to page 1: take selection-or-pick']);
  captured();
  await settled();
  expect(fake.calls.at(-1)).toBe(`tab ${PANEL}`);
  expect(await loadCapture(1)).toMatchObject({ state: 'ready' });
});

it('brings the panel of that tab back to the front instead of opening another', async () => {
  fake.world.ownTabs = [
    { id: 8, url: 'extension://ironsift/panel.html?tab=2' },
    { id: 9, url: PANEL },
  ];
  captured();
  await settled();
  expect(fake.calls).toEqual(['tab 9 {"active":true}']);
});

it('says in the panel why a page can not be read', async () => {
  fake.world.mayInject = false;
  fake.events.onAction.fire(tab);
  await vi.waitFor(() => expect(fake.calls.at(-1)).toBe(`tab ${PANEL}`));
  expect(await loadCapture(1)).toMatchObject({ state: 'refused' });
});

it('picks from the panel with the page in front', async () => {
  history.replaceState(null, '', '?tab=1');
  expect(await startPick()).toMatchObject({ ok: true });
  expect(fake.calls).toEqual(['inject capture.js into 1', 'tab 1 {"active":true}', 'to page 1: take pick']);
  history.replaceState(null, '', '/');
});

it('takes an open Workshop to the address without opening another', async () => {
  fake.world.ownTabs = [{ id: 9, windowId: 4, url: 'extension://ironsift/workshop.html#finds' }];
  await openWorkshop('rates');
  expect(fake.calls).toEqual(['tab 9 {"url":"extension://ironsift/workshop.html#rates","active":true}']);
});

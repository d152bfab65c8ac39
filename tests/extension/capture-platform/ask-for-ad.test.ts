import { beforeEach, describe, expect, it, vi } from 'vitest';
import { loadCapture } from '../../../extension/platform/capture-state.ts';
import { refusalOf } from '../../../extension/platform/inject.ts';
import { startPick } from '../../../extension/platform/page.ts';
import { fakeBrowser, settled } from './fake-browser.ts';

let fake: ReturnType<typeof fakeBrowser>;
const tab = { id: 1, windowId: 5 };

/** The background as the browser starts it: all its listeners must stand when its script has run. */
const startBackground = async (): Promise<void> => {
  vi.resetModules();
  await import('../../../extension/background/index.ts');
};

beforeEach(async () => {
  fake = fakeBrowser();
  await startBackground();
});

describe('asking for an ad', () => {
  it.each([
    ['the shortcut', () => fake.events.onCommand.fire('take-ad', tab), 'selection-or-pick'],
    ['the toolbar button', () => fake.events.onAction.fire(tab), 'selection-or-pick'],
    ['the menu on a selection', () => fake.events.onMenu.fire({ menuItemId: 'judge-selection' }, tab), 'selection'],
    ['the menu on the page', () => fake.events.onMenu.fire({ menuItemId: 'pick-on-page' }, tab), 'pick'],
  ])('by %s opens the panel before anything else, then reads the page', async (_, ask, mode) => {
    ask();
    expect(fake.calls[0]).toBe('side panel {"tabId":1}'); // In the same turn: later the browser would refuse.
    await settled();
    expect(fake.calls).toEqual(['side panel {"tabId":1}', 'inject capture.js into 1', `to page 1: take ${mode}`]);
    expect(await loadCapture(1)).toBeNull(); // The page reports by itself.
  });
  it('by another shortcut or menu does nothing', async () => {
    fake.events.onCommand.fire('other', tab);
    fake.events.onMenu.fire({ menuItemId: 'other' }, tab);
    await settled();
    expect(fake.calls).toEqual([]);
  });
  it('opens the sidebar where there is one', () => {
    fake.world.panel = 'sidebar';
    fake.events.onAction.fire(tab);
    expect(fake.calls[0]).toBe('sidebar');
  });
  it('opens a tab when the browser declines', async () => {
    vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    fake.world.panel = 'declines';
    fake.events.onAction.fire(tab);
    await settled();
    expect(fake.calls).toContain('tab extension://ironsift/panel.html?tab=1');
  });
});

/** The background tries again a few times before it takes a refusal for one. */
const refused = (): Promise<unknown> => vi.waitFor(async () => expect(await loadCapture(1)).not.toBeNull());

describe('where scripts may not run', () => {
  beforeEach(() => {
    fake.world.mayInject = false;
  });
  it('the panel is told why', async () => {
    fake.world.activeTab = { id: 1, url: 'chrome://settings/' };
    fake.events.onCommand.fire('take-ad', tab);
    await refused();
    expect(await loadCapture(1)).toMatchObject({ state: 'refused', reason: 'browser-page' });
  });
  it('the selection that the menu hands over is judged', async () => {
    fake.events.onMenu.fire({ menuItemId: 'judge-selection', selectionText: '4 x 45 lb $100' }, tab);
    await refused();
    expect(await loadCapture(1)).toMatchObject({ state: 'ready', listing: { text: '4 x 45 lb $100', origin: 'selection' } });
  });
  it('the panel can not start a pick', async () => expect(await startPick()).toEqual({ ok: false, code: 'no-page' }));
  it.each([
    ['chrome://extensions', 'browser-page'],
    ['about:addons', 'browser-page'],
    ['https://chromewebstore.google.com/detail/x', 'store'],
    ['https://addons.mozilla.org/en-US/', 'store'],
    ['https://quillbrook.example/ad.pdf?x=1', 'pdf'],
    ['https://quillbrook.example/', 'no-access'],
    [undefined, 'browser-page'],
  ])('%s: %s', (address, reason) => expect(refusalOf(address)).toBe(reason));
});

it('a page that could not be read, though a script may run there, is not said to give no access', async () => {
  fake.world.pageAnswers = () => ({ ok: false, code: 'unexpected' });
  fake.events.onAction.fire(tab);
  await settled();
  expect(await loadCapture(1)).toMatchObject({ state: 'failed', reason: 'unexpected' });
});

it('turns to picking when the menu was used on a selection that the page does not have', async () => {
  fake.world.pageAnswers = (message) => ({ ok: true, value: message.mode === 'selection' ? 'nothing' : 'pick' });
  fake.events.onMenu.fire({ menuItemId: 'judge-selection', selectionText: ' ' }, tab);
  await settled();
  expect(fake.calls.at(-1)).toBe('to page 1: take pick');
});

const MENUS_MADE = [
  'menus removed',
  'menu judge-selection on selection: [capture_menu_selection]',
  'menu pick-on-page on page,frame,link,image: Pick',
  'menu read-every-ad on page,frame,link,image: [sweep_menu]',
];

it.each(['onInstalled', 'onStartup'] as const)('makes the menus anew at %s', async (started) => {
  fake.events[started].fire();
  await settled();
  expect(fake.calls).toEqual(MENUS_MADE);
});

it('makes the menus one time after the other when the browser starts with an update', async () => {
  fake.events.onInstalled.fire();
  fake.events.onStartup.fire();
  await settled();
  expect(fake.calls).toEqual([...MENUS_MADE, ...MENUS_MADE]);
});

it('forgets a capture with its tab', async () => {
  fake.world.mayInject = false;
  fake.events.onAction.fire(tab);
  await refused();
  fake.events.onRemoved.fire(1);
  await settled();
  expect(await loadCapture(1)).toBeNull();
});

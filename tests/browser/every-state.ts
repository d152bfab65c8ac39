/** States that a screen can be in besides the filled one: what it says while it waits, when nothing came of it, after a slip. By few keys each. */
import type { Page } from 'puppeteer-core';
import { batchKey, headKey } from '../../extension/platform/sweep-state.ts';
import { listingFromText } from '../../src/listing/page-listing.ts';
import type { Everything } from './every-screen.ts';

type Reach = (given: Everything) => Promise<unknown>;

const workshop = async ({ page, address }: Everything, hash: string, shows: string): Promise<void> => {
  await page.goto('about:blank');
  await page.setViewport({ width: 1200, height: 900 });
  await page.goto(address(`workshop.html#${hash}`));
  await page.waitForSelector(shows);
};

/** The panel with something in session storage for its own tab, which the keys name. */
async function panel({ page, address }: Everything, stored: (tab: number) => object, shows: string): Promise<void> {
  await page.setViewport({ width: 360, height: 900 });
  await page.goto(address('panel.html'));
  const tab = (await page.evaluate('chrome.tabs.getCurrent().then(({ id }) => id)')) as number;
  await page.evaluate(`chrome.storage.session.clear().then(() => chrome.storage.session.set(${JSON.stringify(stored(tab))}))`);
  await page.goto('about:blank');
  await page.goto(address(`panel.html?tab=${tab}`));
  await page.waitForSelector(shows);
}

const captured =
  (state: object, shows: string): Reach =>
  (given) =>
    panel(given, (tab) => ({ [`capture:${tab}`]: { at: Date.now(), ...state } }), shows);

const ADS = ['Squat rack, $150', 'Iron plates 4 x 45 lb, $250', 'Sofa, blue, $50'];
const swept =
  (state: string): Reach =>
  (given) =>
    panel(
      given,
      (tab) => ({
        [headKey(tab)]: { run: 'swept', state, spent: 9, batches: 1, at: Date.now() },
        [batchKey(tab, 0)]: {
          run: 'swept',
          ads: ADS.map((text, place) => ({ id: `ad-${place + 1}`, listing: { ...listingFromText(text), origin: 'sweep' } })),
        },
      }),
      `[data-sweep="${state}"] [data-row]`,
    );

const click = async (page: Page, selector: string): Promise<void> => {
  const control = await page.waitForSelector(selector);
  await control?.focus();
  await page.keyboard.press(
    await page.evaluate((one) => (document.querySelector(one) instanceof HTMLInputElement ? 'Space' : 'Enter'), selector),
  );
};

const give = async (page: Page, text: string): Promise<void> => {
  await page.evaluate((words) => {
    const input = document.querySelector('[data-path=import]') as HTMLInputElement;
    const files = new DataTransfer();
    files.items.add(new File([words], 'a.json'));
    input.files = files.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
  }, text);
};

/** By name, in this order: the last ones spoil what is kept. */
export const STATES: Readonly<Record<string, Reach>> = {
  'picking in the panel': captured({ state: 'picking', before: null }, '[data-state="picking"]'),
  'a page that is refused': captured({ state: 'refused', reason: 'browser-page' }, '[data-state="refused"]'),
  'a page that failed': captured({ state: 'failed', reason: 'empty' }, '[data-state="failed"]'),
  'an ad about something else': captured(
    { state: 'ready', listing: listingFromText('Sofa, blue, $50'), cut: true },
    '[data-state="nothing"]',
  ),
  'nothing pasted': async (given) => {
    await panel(given, () => ({}), '[data-judge]');
    await click(given.page, '[data-judge]');
    await given.page.waitForSelector('[role="alert"]');
  },
  // A sweep that still goes on is ended by the background as soon as it sees that nothing of it is in the tab.
  'room for no more ads': swept('full'),
  'a list of places open': async (given) => {
    await workshop(given, 'settings', '[role="combobox"]');
    await given.page.type('[role="combobox"]', 'spring');
    await given.page.waitForSelector('[role="option"]');
    await given.page.keyboard.press('ArrowDown');
  },
  'a slip in a field': async (given) => {
    await workshop(given, 'settings', '[data-path="margin"]');
    await given.page.type('[data-path="margin"]', 'x');
    await given.page.keyboard.press('Tab');
    await given.page.waitForSelector('[aria-invalid="true"]');
  },
  'a file looked at': async (given) => {
    await workshop(given, 'settings', '[data-path="import"]');
    await give(given.page, given.file);
    await given.page.waitForSelector('[data-preview]');
  },
  'a file refused': async (given) => {
    await give(given.page, '{"format": "ironsift"');
    await given.page.waitForSelector('[data-import] [role="alert"]');
  },
  'something set aside': async (given) => {
    const aside = { id: 'x', table: 'finds', key: 'a', value: {}, why: 'bad', at: 1 };
    await give(given.page, JSON.stringify({ ...JSON.parse(given.file), setAside: [aside] }));
    await click(given.page, '[data-take]');
    await given.page.waitForSelector('[data-aside]');
  },
  'a rate being changed': async (given) => {
    await workshop(given, 'rates', '[data-change="rates.iron.used"]');
    await click(given.page, '[data-change="rates.iron.used"]');
    await given.page.waitForSelector('.rates-fields');
  },
  'a thing of the kit being changed': async (given) => {
    await workshop(given, 'kit', '[data-edit]');
    await click(given.page, '[data-edit]');
    await given.page.waitForSelector('[data-done="edit"]');
  },
  'a thing of the kit removed': async (given) => {
    await workshop(given, 'kit', '[data-owned] [data-remove]');
    await click(given.page, '[data-owned] [data-remove]');
    await given.page.waitForSelector('[data-undo]');
  },
  'no find like that': async (given) => {
    await workshop(given, 'finds', '[data-find]');
    await given.page.type('[data-path="words"]', 'zzz');
    await given.page.waitForFunction(() => document.querySelectorAll('[data-find]').length === 0);
  },
  'finds chosen': async (given) => {
    await workshop(given, 'finds', '[data-find]');
    await click(given.page, '[data-all]');
    await given.page.waitForSelector('[data-remove]');
  },
  'all finds removed': async (given) => {
    await click(given.page, '[data-remove]');
    await given.page.waitForSelector('[data-undo]');
    await given.page.waitForSelector('[data-example] .call');
  },
  'a store that a newer version opened': async (given) => {
    await given.page.evaluate(
      () =>
        new Promise((done) => {
          const asked = indexedDB.open('ironsift', 9_999);
          asked.onsuccess = done;
          asked.onerror = done;
        }),
    );
    await given.page.waitForSelector('[role="alert"]');
  },
  'a store of a newer version': (given) => workshop(given, 'finds', '[role="alert"]'),
};

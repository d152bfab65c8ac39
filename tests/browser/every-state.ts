/** States that a screen can be in besides the filled one: what it says while it waits, when nothing came of it, after a slip. By few keys each. */
import type { Page } from 'puppeteer-core';
import { batchKey, headKey } from '../../extension/platform/sweep-state.ts';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { click, held, keeps, panel, type Reach, workshop } from './reach-state.ts';

const captured =
  (state: object, shows: string): Reach =>
  (given) =>
    panel(given, (tab) => ({ [`capture:${tab}`]: { at: Date.now(), ...state } }), shows);

const SOFA = 'Sofa, blue, $50';
const BARBELL = 'Olympic barbell, 7 ft, 32 mm shaft, slightly bent, $70';
const PARTS = ['Olympic plates 4 x 45 lb $150', 'Flat bench $60', 'Power rack $200'];
const IN_SHOP = 'Pair of 45 lb olympic plates, cast iron';

/** A listing as readers of pages give it, with a price that a shop's page marks up. */
const SHOP = {
  ...listingFromText(`${IN_SHOP}\n$149.00`),
  origin: 'page',
  address: 'http://shop.invalid/plates',
  offers: [
    { name: null, price: '149.00', currency: 'USD', condition: null, availability: null, description: null, weight: null },
  ],
};
const ready = (listing: object, shows: string): Reach => captured({ state: 'ready', listing, cut: false }, shows);

const PLATES = 'Iron plates 4 x 45 lb, $250';
const ADS = ['Squat rack, $150', PLATES, SOFA];
/** All that ads say in these states, line by line. */
export const ADS_OF_STATES: readonly string[] = [...ADS, BARBELL, ...PARTS, IN_SHOP];
const sweeping =
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
/** A page that answers, as one in which the sweep goes on: without it the panel sees that nothing of it is in the tab, and ends it. */
const ANSWERS =
  'for (const { tabs } of [globalThis.browser ?? chrome, chrome]) tabs.sendMessage = () => Promise.resolve({ ok: true, value: null })';
/** The core is waited for together with the keys of the shortcuts. */
const NO_CORE =
  'for (const { commands } of [globalThis.browser ?? chrome, chrome]) commands.getAll = () => new Promise(() => {})';

/** In place of the solver's worker: one that says nothing, cannot be started, or finds no list. */
const worker = (answer: string): string => `globalThis.Worker = class extends EventTarget {
  postMessage({ id }) { ${answer} }
  terminate() {}
}`;
const buyList = (answer: string, shows: string): Reach => held(worker(answer), (given) => workshop(given, 'buy-list', shows));

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
  'an ad about something else': captured({ state: 'ready', listing: listingFromText(SOFA), cut: true }, '[data-state="nothing"]'),
  'nothing pasted': async (given) => {
    await panel(given, () => ({}), '[data-judge]');
    await click(given.page, '[data-judge]');
    await given.page.waitForSelector('[role="alert"]');
  },
  'an ad before it is judged': held(NO_CORE, ready(listingFromText(PLATES), '[data-state="opening"]')),
  'an ad met again': ready(listingFromText(BARBELL), '[data-state="answer"] [data-met]'),
  'an ad that is kept': async ({ page }) => {
    await click(page, '[data-keep]');
    await page.waitForSelector('[data-open-find]');
  },
  'a page of a shop': ready(SHOP, '[data-state="answer"] [data-keep-price]'),
  'a price of a shop that is kept': async ({ page }) => {
    await click(page, '[data-keep-price]');
    await page.waitForSelector('[data-open-rates]');
  },
  'ads being read': held(ANSWERS, sweeping('reading')),
  'a page of ads being watched': held(ANSWERS, sweeping('watching')),
  'room for no more ads': sweeping('full'),
  'a filter that no ad passes': async ({ page }) => {
    await page.type('[data-path="sweep.text"]', 'zzz');
    await page.waitForFunction(() => document.querySelectorAll('[data-row]').length === 0);
  },
  'a screen that does not open': async (given) => {
    const session = await given.page.createCDPSession();
    await session.send('Network.enable');
    await session.send('Network.setBlockedURLs', { urls: ['*/weigh-*.js'] });
    await workshop(given, 'weigh', '[role="alert"]').finally(() => session.detach());
  },
  'a list being solved': buyList('', '[data-stage="solving"]'),
  'a list that was stopped': async ({ page }) => {
    await click(page, '[data-stop]');
    await page.waitForSelector('[data-stage="stopped"]');
  },
  'a list that could not be worked out': buyList("throw new Error('held')", '[data-stage="failed"]'),
  'a kit that cannot be completed': buyList(
    "this.dispatchEvent(new MessageEvent('message', { data: { id, solution: { status: 'infeasible' } } }))",
    '[data-list="impossible"]',
  ),
  'a choice of pickups': async (given) => {
    await keeps(given, async ({ finds }) => {
      const found = await finds.list({ order: 'kept', descending: false, from: 0, count: 2 });
      if (found.ok)
        await finds.setStatusOf(
          found.value.rows.map(({ id }) => id),
          'going',
          1,
        );
    });
    await workshop(given, 'pickup', '[data-pickup]');
  },
  'asked what was paid': async (given) => {
    await click(given.page, '[data-pickup]');
    await click(given.page, '[data-bought]');
    await given.page.waitForSelector('[data-buy]');
    // What lies under the price, which stays in sight, the checker takes for too small.
    await given.page.evaluate(() => scrollTo(0, 0));
  },
  'only a part of an ad': async (given) => {
    const id = await keeps(
      given,
      async ({ finds }, text) => {
        const { adOf, must } = window.storeTest;
        return (await must(finds.keep(adOf(text), 1))).id;
      },
      PARTS.join('\n'),
    );
    await workshop(given, `finds/${id}`, '[data-take="all"]');
    await click(given.page, '[data-taking] [data-take]:not([data-take="all"])');
    await given.page.waitForSelector('[data-take="all"]:not(:checked)');
  },
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
  'asked for sure': async ({ page }) => {
    await click(page, '[data-drop]');
    await page.waitForSelector('[data-sure]');
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
  'a kit that is complete': async (given) => {
    await keeps(given, async ({ kit }) => {
      const needs = await kit.needs.all();
      // Two are owned. A list of nothing would be none.
      for (const need of needs.ok ? needs.value : [])
        await kit.needs.put({ ...need, pieces: need.id === 'default/plate/45lb' ? 2 : 0, own: true }, 2);
    });
    await workshop(given, 'buy-list', '[data-list="complete"]');
  },
  'a kit before it was set up': async (given) => {
    await workshop(given, 'kit', '[data-forget]');
    await click(given.page, '[data-forget]');
    await given.page.waitForSelector('[data-set-up]');
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
  'what was removed': (given) => workshop(given, 'finds/removed', '[data-removal]'),
  'what was removed and is back': async ({ page }) => {
    await click(page, '[data-removal] [data-undo]');
    await page.waitForFunction(
      () => document.querySelectorAll('[data-removal]').length > 0 && document.activeElement?.matches('h2'),
    );
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

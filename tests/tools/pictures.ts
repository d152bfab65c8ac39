/**
 * `npm run pictures`: the pictures of the README and the stores, made of the demo in the real extension: docs/pictures/. The command builds
 * first. In German the extension alone speaks German: the ads of the demo are in English.
 */
import { mkdir, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { DEFAULT_RATES } from '../../src/price/default-rates.ts';
import {
  buildOf,
  extensionId,
  launchChromium,
  launchHeadless,
  panelOf,
  pressShortcut,
  selectText,
  startDisplay,
  typeInto,
  waitForState,
} from '../browser/driver/index.ts';
import { extensionWithPage } from '../browser/store/extension-with-page.ts';
import { storePage } from '../browser/store/kill.ts';
import { serve } from '../demo/serve.mjs';
import { demoFind, milesTo } from './demo-finds.ts';
import { drawTile } from './draw-tile.ts';
import { GERMAN_PICTURES, PICTURES } from './picture-names.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const out = join(root, 'docs/pictures');
type Name = (typeof PICTURES)[number];
type Language = 'en' | 'de';
/** Null where there is no such picture in the language. */
const fileOf = (language: Language, name: Name): `${string}.png` | null => {
  const inGerman = GERMAN_PICTURES.find((german) => german === `de/${name}`);
  return language === 'en' ? `${out}/${name}` : inGerman === undefined ? null : `${out}/${inGerman}`;
};
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

interface Ad {
  readonly id: string;
  readonly place: string;
}
const { ads } = JSON.parse(await readFile(join(root, 'tests/demo/board.json'), 'utf8')) as { readonly ads: readonly Ad[] };
const SHOWN = 'mixed-lot';

/** An ad with the panel beside it, as a buyer sees it who has said how far it is. */
async function besideThePage(language: Language, url: string): Promise<void> {
  const file = fileOf(language, 'beside-the-page.png');
  if (file === null) return;
  const display = await startDisplay({ width: 1280, height: 800 });
  const launched = await launchChromium({ display, width: 1280, height: 800, withoutBar: true, language });
  const page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  await page.goto(`${url}ad/${SHOWN}`);
  await page.click('.cookies button');
  await selectText(page, 'main');
  await pressShortcut(launched, page);
  const panel = await panelOf(launched.browser);
  await waitForState(panel, 'answer');
  await page.evaluate(() => getSelection()?.removeAllRanges());
  await typeInto(panel, '[data-distance]', `${milesTo(ads.find(({ id }) => id === SHOWN)?.place ?? '')}`);
  await panel.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    scrollTo(0, 0);
  });
  await wait(1500);
  await display.screenshot(file);
  await launched.browser.close();
  await display.close();
}

/** The default used prices as the buyer's own: what finds teach would give an ad another price on each screen that judges it anew. */
const OWN_RATES = Object.fromEntries(
  Object.entries(DEFAULT_RATES).flatMap(([category, { used }]) =>
    used ? [[category, { used: { ...used, source: 'own' } }]] : [],
  ),
);

/** Keeps the demo's ads, the last of the board first; gives the id of each find by the ad's. */
async function keepAll(browser: Browser, url: string): Promise<ReadonlyMap<string, string>> {
  const store = await storePage(browser);
  await store.evaluate(
    async (rates, now) => {
      const { must, open } = window.storeTest;
      await must((await open()).settings.change(() => ({ rates }), now));
    },
    OWN_RATES,
    Date.now(),
  );
  const ids = new Map<string, string>();
  for (const [at, { id, place }] of [...ads].reverse().entries()) {
    const find = await demoFind(`${url}ad/${id}`, place);
    if (find === null) continue;
    const keptAt = Date.now() - 86_400_000 + at * 60_000;
    const kept = await store.evaluate(
      async (ad, now) => {
        const { must, open } = window.storeTest;
        return (await must((await open()).finds.keep(ad, now))).id;
      },
      find,
      keptAt,
    );
    ids.set(id, kept);
  }
  await store.close();
  return ids;
}

async function onFreshProfile(extension: string, language: Language, work: (browser: Browser) => Promise<void>): Promise<void> {
  const profile = await mkdtemp(join(tmpdir(), 'ironsift-pictures-'));
  const browser = await launchHeadless({ extension, profile, language });
  await work(browser);
  await browser.close();
  await rm(profile, { recursive: true, force: true });
}

async function ofTheWorkshop(browser: Browser, language: Language, url: string): Promise<void> {
  const ids = await keepAll(browser, url);
  const workshop = `chrome-extension://${await extensionId(browser)}/workshop.html`;
  const page = await browser.newPage();
  const picture = async (name: Name, part: string, seen: string, pause = 1500) => {
    const path = fileOf(language, name);
    if (path === null) return;
    await page.goto('about:blank');
    await page.goto(`${workshop}#${part}`);
    await page.waitForSelector(seen);
    await wait(pause);
    await page.screenshot({ path });
  };
  await page.setViewport({ width: 1280, height: 800 });
  await picture('finds.png', 'finds', '[data-find]');
  await picture('side-by-side.png', `side-by-side/${ids.get(SHOWN)},${ids.get('three-hundred-set')}`, 'table');
  await page.goto('about:blank');
  await page.goto(`${workshop}#kit`);
  await (await page.waitForSelector('[data-set-up]'))?.click();
  await page.waitForSelector('[data-need]');
  await picture('kit.png', 'kit', '[data-need]');
  await picture('buy-list.png', 'buy-list', '[data-stage=done]');
  await page.setViewport({ width: 360, height: 800 });
  await picture('pickup.png', `pickup/${ids.get('good-bar')}`, '.pickup-step');
}

/** The panel by itself, where nothing was kept yet. */
async function ofThePanel(page: Page, panel: string, text: string): Promise<void> {
  await page.setViewport({ width: 360, height: 800 });
  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
    await page.goto('about:blank');
    await page.goto(panel);
    const box = await page.waitForSelector('[data-paste]');
    await box?.evaluate((field, words) => {
      (field as HTMLTextAreaElement).value = words;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }, text);
    await page.click('[data-judge]');
    await page.waitForSelector('[data-state="answer"]');
    await page.evaluate(() => scrollTo(0, 0));
    await wait(500);
    await page.screenshot({ path: `${out}/panel-${scheme}.png` });
  }
}

await mkdir(join(out, 'de'), { recursive: true });
const board = await serve();
const extension = await extensionWithPage();
for (const language of ['en', 'de'] as const) {
  await besideThePage(language, board.url);
  await onFreshProfile(extension, language, (browser) => ofTheWorkshop(browser, language, board.url));
}
await onFreshProfile(buildOf('chrome'), 'en', async (browser) => {
  const bar = await demoFind(`${board.url}ad/heavy-duty-bar`, 'Mill Island');
  const panel = `chrome-extension://${await extensionId(browser)}/panel.html`;
  await ofThePanel(await browser.newPage(), panel, bar?.listing.text ?? '');
  await drawTile(browser, root);
});
await board.close();
await rm(extension, { recursive: true, force: true });
console.log(`${PICTURES.length} pictures, ${GERMAN_PICTURES.length} in German, and the tile in docs/pictures`);

/**
 * `npm run pictures`: the pictures of the README and the stores, made of the demo in the real extension: docs/pictures/. The command builds
 * first. In German the extension alone speaks German: the ads of the demo are in English.
 */
import { mkdir, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { DEFAULT_RATES } from '../../src/price/default-rates.ts';
import { buildOf, extensionId, launchHeadless } from '../browser/driver/index.ts';
import { extensionWithPage } from '../browser/store/extension-with-page.ts';
import { storePage } from '../browser/store/kill.ts';
import { serve } from '../demo/serve.mjs';
import { demoFind } from './demo-finds.ts';
import { drawTile } from './draw-tile.ts';
import { fileOf, GERMAN_PICTURES, type Language, type Name, PICTURES } from './picture-names.ts';
import { picturesBeside } from './pictures-beside.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const out = join(root, 'docs/pictures');
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

interface Ad {
  readonly id: string;
  readonly title: string;
  readonly place: string;
}
const { ads } = JSON.parse(await readFile(join(root, 'tests/demo/board.json'), 'utf8')) as { readonly ads: readonly Ad[] };
function adOf(id: string): Ad {
  const ad = ads.find((one) => one.id === id);
  if (ad === undefined) throw new Error(`the demo has no ad ${id}`);
  return ad;
}
const GOOD = adOf('mixed-lot');
const BAD = adOf('heavy-duty-bar');

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
  /** Of 1280 by 800 when it is for the stores too. */
  const picture = async (name: Name, part: string, seen: string, height: number, from: string | null = null) => {
    const path = fileOf(out, language, name);
    if (path === null) return;
    await page.setViewport({ width: 1280, height });
    await page.goto('about:blank');
    await page.goto(`${workshop}#${part}`);
    await page.waitForSelector(seen);
    await page.mouse.move(0, 0);
    // Close under what stays in sight.
    if (from !== null)
      await page.$eval(from, (one) => {
        one.scrollIntoView();
        scrollBy(0, 20);
      });
    await wait(1500);
    await page.screenshot({ path });
  };
  await picture('finds.png', 'finds', '[data-find]', 640);
  await picture('side-by-side.png', `side-by-side/${ids.get(GOOD.id)},${ids.get('three-hundred-set')}`, 'table', 640);
  await page.goto('about:blank');
  await page.goto(`${workshop}#kit`);
  await (await page.waitForSelector('[data-set-up]'))?.click();
  await page.waitForSelector('[data-need]');
  await picture('buy-list.png', 'buy-list', '[data-stage=done]', 800);
  await picture('pickup.png', `pickup/${ids.get('good-bar')}`, '.pickup-step', 800, '#check-heading');
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
    // What was clicked would stay tinted, or what has come to stand there.
    await page.mouse.move(0, 0);
    await wait(500);
    await page.screenshot({ path: `${out}/panel-${scheme}.png` });
  }
}

await mkdir(join(out, 'de'), { recursive: true });
const board = await serve();
const extension = await extensionWithPage();
for (const language of ['en', 'de'] as const) {
  await picturesBeside(out, language, board.url, GOOD, BAD);
  await onFreshProfile(extension, language, (browser) => ofTheWorkshop(browser, language, board.url));
}
await onFreshProfile(buildOf('chrome'), 'en', async (browser) => {
  const bar = await demoFind(`${board.url}ad/${BAD.id}`, BAD.place);
  const panel = `chrome-extension://${await extensionId(browser)}/panel.html`;
  await ofThePanel(await browser.newPage(), panel, bar?.listing.text ?? '');
  await drawTile(browser, root);
});
await board.close();
await rm(extension, { recursive: true, force: true });
console.log(`${PICTURES.length} pictures, ${GERMAN_PICTURES.length} in German, and the tile in docs/pictures`);

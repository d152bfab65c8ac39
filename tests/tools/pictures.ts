/** `npm run pictures`: the pictures of the README and the stores, made of the demo in the real extension: docs/pictures/. The command builds first. */
import { mkdir, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import {
  extensionId,
  launchChromium,
  launchHeadless,
  panelOf,
  pressShortcut,
  selectText,
  startDisplay,
  waitForState,
} from '../browser/driver/index.ts';
import { extensionWithPage } from '../browser/store/extension-with-page.ts';
import { storePage } from '../browser/store/kill.ts';
import { serve } from '../demo/serve.mjs';
import { drawTile } from './draw-tile.ts';
import { PICTURES } from './picture-names.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const out = join(root, 'docs/pictures');
const fileOf = (name: (typeof PICTURES)[number]) => join(out, name) as `${string}.png`;
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** An ad with the panel beside it, as a buyer sees it. */
async function besideThePage(): Promise<void> {
  const display = await startDisplay({ width: 1280, height: 800 });
  const board = await serve();
  const launched = await launchChromium({ display, width: 1280, height: 800 });
  const page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  await page.goto(board.ads.find(({ id }) => id === 'mixed-lot')?.url ?? board.url);
  await selectText(page, 'main');
  await pressShortcut(launched, page);
  await waitForState(await panelOf(launched.browser), 'answer');
  await wait(1000);
  await display.screenshot(fileOf('beside-the-page.png'));
  await launched.browser.close();
  await board.close();
  await display.close();
}

/** The text of a demo ad, as a selection gives it. */
const textOf = (page: Page, html: string): Promise<string> =>
  page.evaluate((source) => {
    const there = new DOMParser().parseFromString(source, 'text/html');
    document.body.replaceChildren(...there.body.childNodes);
    getSelection()?.selectAllChildren(document.body);
    return String(getSelection());
  }, html);

async function ofThePages(): Promise<void> {
  const [extension, profile] = [await extensionWithPage(), await mkdtemp(join(tmpdir(), 'ironsift-pictures-'))];
  const browser = await launchHeadless({ extension, profile });
  const address = `chrome-extension://${await extensionId(browser)}/`;
  const store = await storePage(browser);
  const blank = await browser.newPage();
  const board = JSON.parse(await readFile(join(root, 'tests/demo/board.json'), 'utf8')) as { ads: { id: string }[] };
  const texts = new Map<string, string>();
  for (const { id } of board.ads)
    texts.set(id, await textOf(blank, await readFile(join(root, `tests/demo/ads/${id}.html`), 'utf8')));
  await blank.close();
  const kept = await store.evaluate(
    async (ads, now) => {
      const { adOf, must, open } = window.storeTest;
      const { finds } = await open();
      const ids: [string, string][] = [];
      for (const [at, [name, text]] of ads.entries()) {
        const ad = adOf(text);
        if (ad.evaluation.reading.aboutThisTrade) ids.push([name, (await must(finds.keep(ad, now + at * 60_000))).id]);
      }
      return ids;
    },
    [...texts],
    Date.now() - 86_400_000,
  );
  await store.close();
  const ids = new Map(kept);
  const page = await browser.newPage();
  const picture = async (name: (typeof PICTURES)[number], path: string, seen: string, pause = 1500) => {
    await page.goto('about:blank');
    await page.goto(address + path);
    await page.waitForSelector(seen);
    await wait(pause);
    await page.screenshot({ path: fileOf(name) });
  };
  await page.setViewport({ width: 1280, height: 800 });
  await picture('finds.png', 'workshop.html#finds', '[data-find]');
  await picture('side-by-side.png', `workshop.html#side-by-side/${ids.get('mixed-lot')},${ids.get('school-plates')}`, 'table');
  await page.goto('about:blank');
  await page.goto(`${address}workshop.html#kit`);
  await (await page.waitForSelector('[data-set-up]'))?.click();
  await page.waitForSelector('[data-need]');
  await wait(1000);
  await page.screenshot({ path: fileOf('kit.png') });
  await picture('buy-list.png', 'workshop.html#buy-list', '[data-proof]', 3000);
  await page.setViewport({ width: 360, height: 800 });
  await picture('pickup.png', `workshop.html#pickup/${ids.get('good-bar')}`, '.pickup-step');
  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
    await page.goto('about:blank');
    await page.goto(`${address}panel.html`);
    const box = await page.waitForSelector('[data-paste]');
    await box?.evaluate((field, text) => {
      (field as HTMLTextAreaElement).value = text;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }, texts.get('heavy-duty-bar') ?? '');
    await page.click('[data-judge]');
    await page.waitForSelector('[data-state="answer"]');
    await page.evaluate(() => scrollTo(0, 0));
    await wait(500);
    await page.screenshot({ path: fileOf(`panel-${scheme}.png`) });
  }
  await drawTile(browser, root);
  await browser.close();
  for (const folder of [extension, profile]) await rm(folder, { recursive: true, force: true });
}

await mkdir(out, { recursive: true });
await besideThePage();
await ofThePages();
console.log(`${PICTURES.length} pictures and the tile in docs/pictures`);

/** `npm run bench:browser`: what the buyer waits for in a real Chromium, beside an extension that does nothing. Prints; never fails on a slow machine. */
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { launchChromium, launchHeadless, startDisplay } from '../../browser/driver/index.ts';
import { servePages } from '../../browser/serve-pages.ts';
import { extensionWithPage } from '../../browser/store/extension-with-page.ts';
import { serve } from '../../demo/serve.mjs';
import { coldStart } from './cold-start.ts';
import { emptyExtension } from './empty-extension.ts';
import { firstPress, notingPanel } from './first-press.ts';
import { unasked } from './main-thread.ts';
import { anHourOfAds, showEmpty, showOurs } from './memory.ts';
import { keyPress, shortcutToPaint } from './shortcut.ts';
import { timeSweep } from './sweep.ts';
import { tenThousand } from './ten-thousand.ts';

const root = process.env.IRONSIFT_ROOT ?? process.cwd();
const ms = (value: number): string => `${Math.round(value)} ms`;
const mb = (value: number): string => `${(value / 1e6).toFixed(1)} MB`;
const beside = (what: string, ours: number, empty: number, unit = ms): void =>
  console.log(
    `${what.padEnd(52)} ${unit(ours).padStart(8)}   empty extension ${unit(empty).padStart(7)}   ratio ${(ours / empty).toFixed(2)}`,
  );
const line = (what: string, value: string): void => console.log(`${what.padEnd(52)} ${value.padStart(8)}`);

const folders: string[] = [];
const made = async (folder: Promise<string>): Promise<string> => {
  folders.push(await folder);
  return folder;
};

const display = await startDisplay();
const server = await servePages();
const board = await serve();
try {
  const [ours, empty] = [await made(extensionWithPage()), await made(emptyExtension())];
  const adAddress = board.ads.find(({ id }) => id === 'mixed-lot')?.url ?? board.url;
  const measure = async (extension: string, idle: string, answer: string, whole = answer) => {
    const launched = await launchChromium({ display, extension });
    const page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
    await page.goto(adAddress);
    const figures = {
      panel: await coldStart(launched.browser, 'panel.html', '[data-state="empty"]'),
      shortcut: await shortcutToPaint(launched, page, { idle, answer, whole }),
      key: await keyPress(launched),
    };
    await page.goto(server.address('many'));
    const isOurs = extension === ours;
    const done = isOurs ? 'document.querySelectorAll("[data-row]").length === 200' : 'document.querySelector("#word")';
    const sweep = await timeSweep(launched, page, isOurs ? 'alt+shift+l' : 'alt+shift+u', done);
    // Last, for it takes longer than a background lives that nobody asks.
    const figure = await unasked(page, server.address('many'));
    await launched.browser.close();
    return { ...figures, sweep, unasked: figure };
  };
  const opening = async (extension: string, answer: string) => {
    const launched = await launchChromium({ display, extension: await made(notingPanel(extension, answer)) });
    const page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
    await page.goto(adAddress);
    const figures = await firstPress(launched, page, answer);
    await launched.browser.close();
    return figures;
  };
  const nothing = await measure(empty, '[data-state="empty"]', '#word');
  const us = await measure(ours, '[data-state="empty"]', '[data-call]', '[data-state="answer"]');
  beside('key pressed to answer painted, panel open and loaded', us.shortcut.answer, nothing.shortcut.answer);
  beside('   with all that is below what is in sight', us.shortcut.whole, nothing.shortcut.whole);
  line('   of that, to have a key pressed', ms(us.key));
  const [openedEmpty, opened] = [await opening(empty, '#word'), await opening(ours, '[data-call]')];
  beside('key pressed to answer painted, panel not open', opened.later, openedEmpty.later);
  beside('   the first of all since the browser started (one)', opened.first, openedEmpty.first);
  beside('panel opened to its first screen', us.panel, nothing.panel);
  beside('page of 200 ads loaded and scrolled, nobody asks', us.unasked, nothing.unasked);
  beside('200 ads swept: main thread of the page', us.sweep.thread, nothing.sweep.thread);
  line('   time in our script, by its own clock', ms(us.sweep.script));

  const profile = await made(mkdtemp(join(tmpdir(), 'ironsift-bench-')));
  const browser = await launchHeadless({ extension: ours, profile });
  const other = await launchHeadless({ extension: empty, profile: await made(mkdtemp(join(tmpdir(), 'ironsift-bench-'))) });
  const page = await coldStart(other, 'workshop.html', 'p');
  beside('Workshop opened to its first screen, nothing kept', await coldStart(browser, 'workshop.html', '[data-screen] p'), page);
  const ads = join(root, 'tests/corpus/ads/short');
  const names = (await readdir(ads)).filter((name) => name.endsWith('.txt')).slice(0, 60);
  const texts = await Promise.all(names.map(async (name) => (await readFile(join(ads, name), 'utf8')).split('\n=====')[0] ?? ''));
  const memory = await anHourOfAds(browser, texts, showOurs);
  const bare = await anHourOfAds(other, texts, showEmpty);
  beside('memory with the panel open, after 120 ads', memory.held, bare.held, mb);
  beside('   of that, what its scripts have in use', memory.late, bare.late, mb);
  line('   the same after 20 ads', `${mb(memory.early)} (nodes then and after 120: ${memory.nodes.join(', ')})`);
  const list = await tenThousand(browser);
  beside('10,000 finds: Workshop opened to first rows', list.first, page);
  line('   a word typed to its rows', ms(list.letter));
  line('   scrolled to the last row', ms(list.far));
  line('   brought in as a file', ms(list.brought));
  await other.close();
  await browser.close();
} finally {
  await server.close();
  await board.close();
  await display.close();
  for (const folder of folders) await rm(folder, { recursive: true, force: true });
}

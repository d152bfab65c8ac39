/** Where a story is played: one browser with the extension, and a page that the buyer looks at. The stories are the same in both browsers. */
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import {
  type BrowserName,
  type Display,
  type Launched,
  launchChromium,
  launchFirefox,
  type Outsider,
  openOwn,
  panelOf,
  pasteInto,
  pressKeys,
  startDisplay,
  startOutsideWatch,
  waitForState,
} from '../driver/index.ts';
import { clickScreen } from '../mouse.ts';
import { type PageServer, servePages } from '../serve-pages.ts';

export const OUT = 'out/test';

export interface Stage {
  readonly name: BrowserName;
  readonly launched: Launched;
  readonly server: PageServer;
  /** What asked to leave the machine, from the browser's start. */
  readonly outside: Outsider;
  /** The page in the web that the buyer looks at. */
  readonly page: Page;
  /** Where the browser puts what is downloaded. */
  readonly downloads: string;
  /** Goes to one of tests/browser/pages, and gives it the keyboard. */
  goTo(name: string): Promise<void>;
  /**
   * What the buyer's panel shows of that page. In Chromium the side panel itself; in Firefox, whose sidebar no story can click in, the same
   * page in a tab.
   */
  panel(): Promise<Page>;
  picture(name: string): Promise<void>;
  end(): Promise<void>;
}

/** Number that Firefox gave the tab in front. */
const tabInFront = async (own: Page, page: Page): Promise<number> => {
  await page.bringToFront();
  return (await own.evaluate('browser.tabs.query({ active: true }).then(([tab]) => tab.id)')) as number;
};

/** The first keys after Firefox's start are lost now and then: until the page hears one. */
async function untilKeysCome(launched: Launched, page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.evaluate("addEventListener('keydown', () => { window.heard = true })");
  await clickScreen(launched, 900, 860);
  for (let tries = 0; tries < 20 && !(await page.evaluate('window.heard')); tries += 1)
    await pressKeys(launched, page, 'Control_L');
}

/** `extension` is the folder of the unpacked extension; the build of this checkout when left out. */
export async function setStage(name: BrowserName, extension?: string): Promise<Stage> {
  await mkdir(OUT, { recursive: true });
  const display: Display = await startDisplay();
  const server = await servePages();
  const outside = await startOutsideWatch();
  const downloads = await mkdtemp(join(tmpdir(), 'ironsift-downloads-'));
  const launched = await (name === 'firefox' ? launchFirefox : launchChromium)({
    display,
    downloads,
    proxy: outside.proxy,
    ...(extension !== undefined && { extension }),
  });
  const page = (await launched.browser.pages())[0] ?? (await launched.browser.newPage());
  if (name === 'firefox') await untilKeysCome(launched, page, server.address('ad.html'));
  let inTab: Page | null = null;
  return {
    name,
    launched,
    server,
    outside,
    page,
    downloads,
    goTo: async (address) => {
      await page.bringToFront();
      await page.goto(server.address(address));
      // A new window has the keyboard in its address bar, which no page may take it from.
      if (name === 'firefox') await clickScreen(launched, 900, 860);
    },
    panel: async () => {
      if (name === 'chromium') return panelOf(launched.browser);
      if (inTab === null) {
        const own = await openOwn(launched, 'panel.html');
        const tab = await tabInFront(own, page);
        await own.close();
        inTab = await openOwn(launched, `panel.html?tab=${tab}`);
      }
      return inTab;
    },
    picture: (file) => display.screenshot(`${OUT}/${file}-${name}.png`),
    end: async () => {
      await launched.browser.close();
      await server.close();
      await outside.close();
      await display.close();
      await rm(downloads, { recursive: true, force: true });
    },
  };
}

/** Judges a pasted text in a panel of its own. */
export async function judgeText({ launched }: Stage, text: string): Promise<Page> {
  const panel = await openOwn(launched, 'panel.html', 360);
  await pasteInto(panel, '[data-paste]', text);
  await panel.click('[data-judge]');
  await waitForState(panel, 'answer');
  await panel.waitForSelector('[data-call] h1');
  return panel;
}

/** Judges a text and keeps it. Gives the call in words. */
export async function keepText(stage: Stage, text: string, miles: number | null = null): Promise<string> {
  const panel = await judgeText(stage, text);
  if (miles !== null) {
    await panel.type('[data-path="distance"]', `${miles}\t`);
    await panel.waitForFunction(() => (document.querySelector('[data-path="distance"]') as HTMLInputElement).value !== '');
  }
  await panel.click('[data-keep]');
  await panel.waitForSelector('[data-kept]');
  const call = await panel.$eval('[data-call] h1', (heading) => heading.textContent ?? '');
  await panel.close();
  return call;
}

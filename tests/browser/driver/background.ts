/** Ending the extension's background, as browsers do when it is idle or they are short of memory. */
import type { Page } from 'puppeteer-core';
import { inFirefoxWindow } from './firefox-window.ts';
import type { Launched } from './launch.ts';

export interface Background {
  readonly isRunning: () => Promise<boolean>;
  /** Ends it; comes back once it has ended. */
  readonly end: () => Promise<void>;
}

/** Tries until it has ended: one that is just starting passes an order to end over. What ended may be awake again at once. */
async function endBy(order: () => Promise<boolean>): Promise<void> {
  for (const end = Date.now() + 5000; !(await order()); ) if (Date.now() > end) throw new Error('the background does not end');
}

/** Firefox's own switch, which its idle timer uses too; what would put the timer off is passed over. */
function inFirefox(launched: Launched): Background {
  const ask = (what: string) =>
    inFirefoxWindow(
      launched,
      `(async () => { const { extension } = WebExtensionPolicy.getByID('ironsift@ironsift.invalid'); ${what}; return extension.backgroundState; })()`,
    );
  const isRunning = async () => (await ask('')) !== 'stopped';
  const terminate = `if (extension.backgroundState === 'running')
    await extension.terminateBackground({ ignoreDevToolsAttached: true, disableResetIdleForTest: true })`;
  return { isRunning, end: () => endBy(async () => (await ask(terminate)) === 'stopped') };
}

/**
 * Through a page of the extension, `own`: puppeteer's way of closing a worker loses it in half of the runs, and whoever attaches to a worker keeps it
 * alive.
 */
async function inChromium(own: Page): Promise<Background> {
  const session = await own.createCDPSession();
  let running = false;
  let ends = 0;
  session.on('ServiceWorker.workerVersionUpdated', ({ versions }) => {
    for (const { runningStatus } of versions) {
      running = runningStatus !== 'stopped';
      if (!running) ends += 1;
    }
  });
  await session.send('ServiceWorker.enable');
  return {
    isRunning: async () => running,
    end: () => {
      const before = ends;
      return endBy(async () => {
        if (!running) return true;
        await session.send('ServiceWorker.stopAllWorkers');
        for (let waits = 0; waits < 10 && ends === before; waits += 1) await new Promise((resolve) => setTimeout(resolve, 20));
        return ends > before;
      });
    },
  };
}

export const backgroundOf = (launched: Launched, own: Page): Background | Promise<Background> =>
  launched.name === 'firefox' ? inFirefox(launched) : inChromium(own);

/** Lets an unpacked extension be loaded anew: Chromium 156 switches off what loads itself anew unless developer mode is on. */
export async function allowReload({ browser, name }: Launched): Promise<void> {
  if (name === 'firefox') return;
  const page = await browser.newPage();
  await page.goto('chrome://extensions/');
  await page.evaluate('chrome.developerPrivate.updateProfileConfiguration({ inDeveloperMode: true })');
  await page.close();
}

/** What the extension holds, read from its own worker. */
import type { Browser, Page } from 'puppeteer-core';
import type { CaptureState } from '../../extension/platform/capture-state.ts';

const worker = async (browser: Browser) => {
  const target = await browser.waitForTarget(
    (candidate) => candidate.type() === 'service_worker' && candidate.url().endsWith('/background.js'),
  );
  const running = await target.worker();
  if (!running) throw new Error('the background does not run');
  return running;
};

/** Runs an expression in the background. */
export const inBackground = async (browser: Browser, expression: string): Promise<unknown> =>
  (await worker(browser)).evaluate(expression);

/** Captures of all tabs, latest last. */
export async function captures(browser: Browser): Promise<CaptureState[]> {
  const all = (await inBackground(browser, 'chrome.storage.session.get(null)')) as Record<string, CaptureState>;
  return Object.values(all).sort((a, b) => a.at - b.at);
}

export const forget = (browser: Browser): Promise<unknown> => inBackground(browser, 'chrome.storage.session.clear()');

/** Waits for a capture in this state; on time-out says what there is instead. */
export async function waitForCapture<S extends CaptureState['state']>(
  browser: Browser,
  state: S,
  timeout = 30_000,
): Promise<CaptureState & { state: S }> {
  const end = Date.now() + timeout;
  for (;;) {
    const all = await captures(browser);
    const found = all.findLast((capture): capture is CaptureState & { state: S } => capture.state === state);
    if (found) return found;
    if (Date.now() > end) throw new Error(`no capture is "${state}"; there is ${JSON.stringify(all).slice(0, 500)}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** Sends a message to the page in front, as the panel does. */
export const tellPage = (browser: Browser, message: object): Promise<unknown> =>
  inBackground(
    browser,
    `chrome.tabs.query({active: true, lastFocusedWindow: true}).then(([tab]) => chrome.tabs.sendMessage(tab.id, ${JSON.stringify(message)})).catch((error) => String(error))`,
  );

/** The page's markup, and the style sheets that it has adopted. */
export const snapshot = (page: Page): Promise<string> =>
  page.evaluate(() => `${document.documentElement.outerHTML}\n${document.adoptedStyleSheets.length} adopted`);

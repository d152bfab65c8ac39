/** Kills a browser in the middle of writing, opens its profile again, and holds what is there against what was confirmed. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { type BrowserName, extensionId, launchHeadless, launchHeadlessFirefox, openOwn } from '../driver/index.ts';
import { extensionWithPage } from './extension-with-page.ts';
import { after, EMPTY, type Model, nextStep, randomFrom, stateText } from './steps.ts';

export interface KillReport {
  readonly kills: number;
  /** Steps that the store had confirmed before a kill, all rounds together. */
  readonly confirmed: number;
  /** Kills after which the step under way was there in full, though not confirmed yet: allowed. */
  readonly underWay: number;
  /** Starts after which the browser had deleted its database, and the store brought everything back from its second copy. */
  readonly restored: number;
  /** Starts after which the browser did not open its database; it was then started again. */
  readonly refusals: number;
  /** In words; none when nothing was lost. */
  readonly faults: readonly string[];
  readonly finds: number;
}

/** The store's test page in a new tab. `id` of the extension where its worker may have ended. */
export async function storePage(browser: Browser, id?: string): Promise<Page> {
  const page = await browser.newPage();
  await page.goto(`chrome-extension://${id ?? (await extensionId(browser))}/store-test.html`);
  await page.waitForFunction(() => 'storeTest' in window);
  return page;
}

/** The whole group at once: no part of the browser lives on to finish what it was at. */
async function kill(browser: Browser): Promise<void> {
  const child = browser.process();
  if (child?.pid === undefined) throw new Error('the browser has no process');
  const ended = new Promise((resolve) => child.once('exit', resolve));
  process.kill(-child.pid, 'SIGKILL');
  await ended;
  for (let waits = 0; waits < 200 && isAlive(-child.pid); waits += 1) await pause(10);
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

const isAlive = (group: number): boolean => {
  try {
    return process.kill(group, 0);
  } catch {
    return false;
  }
};

/** Steps that are confirmed before every other kill. */
const CONFIRMED_FIRST = 4;

type Found = Awaited<ReturnType<Window['storeTest']['dump']>>;

interface Started {
  readonly browser: Browser;
  readonly page: Page;
  readonly found: Found;
  readonly refusals: number;
}

/**
 * Starts the browser and reads what is there. Chromium may open no database in the session in which it finds its files damaged, and on a
 * busy machine may not get as far as the page in time: it is started again, as a person would, and the data must then be there.
 */
async function start(name: BrowserName, extension: string, profile: string, told: (line: string) => void): Promise<Started> {
  for (let refusals = 0; ; refusals += 1) {
    let browser: Browser | null = null;
    try {
      browser = await (name === 'firefox' ? launchHeadlessFirefox : launchHeadless)({ extension, profile });
      const page = await openOwn({ browser, name }, 'store-test.html');
      await page.waitForFunction(() => 'storeTest' in window);
      page.on('console', (line) => told(`the page says: ${line.text()}`));
      return { browser, page, found: await page.evaluate(() => window.storeTest.dump()), refusals };
    } catch (error) {
      await browser?.close();
      if (refusals === 3 || !/broken|TimeoutError|Failed to launch/.test(String(error))) throw error;
    }
  }
}

/** What must be there after so many confirmed steps, and what may be there instead: the step under way done in full. */
export function expected(seed: number, from: Model, confirmed: number): readonly [Model, Model] {
  const random = randomFrom(seed);
  let model = from;
  for (let count = 1; count <= confirmed; count += 1) model = after(model, nextStep(model, random, `${seed}-${count}`));
  return [model, after(model, nextStep(model, random, `${seed}-${confirmed + 1}`))];
}

/** Does so many kills on one profile. `told` hears of each. `longest` is the longest time of writing before a kill, in ms. */
export async function killOften(
  kills: number,
  firstSeed: number,
  told: (line: string) => void = () => undefined,
  longest = 900,
  name: BrowserName = 'chromium',
): Promise<KillReport> {
  const extension = await extensionWithPage(name === 'firefox' ? 'firefox' : 'chrome');
  const profile = await mkdtemp(join(tmpdir(), 'ironsift-kills-'));
  const chance = randomFrom(firstSeed);
  const faults: string[] = [];
  let [confirmed, underWay, count, refusals, restored] = [0, 0, 0, 0, 0];
  let [must, may]: readonly [Model, Model] = [EMPTY, EMPTY];
  let model = EMPTY;
  try {
    for (let round = 0; round <= kills; round += 1) {
      const { browser, page, found, ...started } = await start(name, extension, profile, told);
      refusals += started.refusals;
      if (found.restored) restored += 1;
      model = found.model;
      const state = stateText(model);
      const asConfirmed = state === stateText(must);
      if (!asConfirmed && state === stateText(may)) underWay += 1;
      else if (!asConfirmed) faults.push(`kill ${round}: neither the ${count} confirmed steps nor one more are there`);
      for (const odd of found.odd) faults.push(`kill ${round}: ${odd}`);
      if (round === kills) {
        await browser.close();
        break;
      }
      const seed = firstSeed + round;
      count = 0;
      await page.exposeFunction('confirmed', (steps: number) => {
        count = steps;
      });
      let failure: unknown = null;
      const running = page
        .evaluate((...args) => window.storeTest.run(...args), seed, model)
        .catch((error: unknown) => {
          failure = error;
        });
      // Every other kill comes once some steps are confirmed, however slow the machine; the others at any moment, also during the first write.
      for (let waits = 0; round % 2 === 0 && count < CONFIRMED_FIRST && failure === null && waits < 1000; waits += 1)
        await pause(10);
      await pause(chance() * longest);
      // What went wrong before the kill is a fault of the store; what goes wrong by it is meant.
      if (failure !== null) faults.push(`before kill ${round + 1}: ${failure instanceof Error ? failure.message : failure}`);
      await kill(browser);
      await running;
      confirmed += count;
      [must, may] = expected(seed, model, count);
      told(`kill ${round + 1} after ${count} confirmed steps${faults.length > 0 ? `, ${faults.length} faults so far` : ''}`);
    }
  } finally {
    for (const folder of [extension, profile]) await rm(folder, { recursive: true, force: true });
  }
  return { kills, confirmed, underWay, refusals, restored, faults, finds: Object.keys(model.finds).length };
}

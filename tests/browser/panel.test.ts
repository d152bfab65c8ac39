/** The built panel, as it ships, in a real browser: what it shows for pasted ads in every width and both colour schemes. */
import { mkdir } from 'node:fs/promises';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { OF_COLOURS, violations } from './axe.ts';
import { openOwn, waitForState } from './driver/index.ts';
import { takesPictures } from './picture.ts';
import { sharedChromium } from './shared.ts';

const OUT = 'out/panel';
const NARROWEST = 240;
const WIDTHS = [NARROWEST, 360, 600];
const SCHEMES = ['light', 'dark'] as const;

const ADS = {
  bundle: `Home gym clear out
Four 45s, two 25s, 5 x 10 lb and a pair of 2.5s, iron, light rust. Holes are 53 mm.
Olympic bar 7 ft, shaft 32 mm, 45 lb. Flat bench.
$250 for everything, or best offer.`,
  metric: 'Cast iron plates 4 x 20 kg and 2 x 10 kg, 51 mm hole. £150 for the lot, collect only, 12 km out of town.',
  priceless: '300 lb Olympic weight set, bar included. Make me an offer. No text, call.',
  hostile: `<img src=x onerror="document.title='pwned'"> 4 x 45 lb plates $100 ${'W'.repeat(400)} {price}`,
} as const;

let panel: Page;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  panel = await openOwn(await sharedChromium(), 'panel.html');
});

/** Pastes an ad and waits for the panel's answer to it. */
async function judge(text: string): Promise<void> {
  await panel.reload();
  await panel.waitForSelector('[data-paste]');
  await panel.$eval(
    '[data-paste]',
    (box, words) => {
      (box as HTMLTextAreaElement).value = words;
      box.dispatchEvent(new Event('input', { bubbles: true }));
    },
    text,
  );
  await panel.click('[data-judge]');
  await panel.waitForFunction(
    (words) => document.querySelector('.ad-title')?.textContent?.includes(words),
    {},
    text.slice(0, 10),
  );
  await waitForState(panel, 'answer');
}

const openAll = () =>
  panel.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });

const closeAll = () =>
  panel.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = false;
  });

/** The whole panel, in a window that is as high as it is. */
async function picture(width: number, name: string): Promise<void> {
  if (!takesPictures) return;
  const height = await panel.evaluate(() => document.documentElement.scrollHeight);
  await panel.setViewport({ width, height });
  await panel.screenshot({ path: `${OUT}/${name}.png` });
}

const settle = (width: number, scheme: string) =>
  panel
    .setViewport({ width, height: 900 })
    .then(() => panel.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]));

describe.each(Object.entries(ADS))('pasted ad "%s"', (name, text) => {
  beforeAll(() => judge(text));

  test.each(WIDTHS.flatMap((width) => SCHEMES.map((scheme) => [width, scheme] as const)))(
    'at %d px, %s',
    async (width, scheme) => {
      await settle(width, scheme);
      await closeAll();
      await picture(width, `${name}-${width}-${scheme}`);
      await openAll();
      await picture(width, `${name}-${width}-${scheme}-open`);
      expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      // What the checker looks at is the same in every width, but for the size of what is pressed: smallest where least room is.
      if (width === NARROWEST && scheme === 'light') expect(await violations(panel)).toEqual([]);
      // Dark colours are the same for every ad.
      if (width === NARROWEST && scheme === 'dark' && name === 'bundle')
        expect(await violations(panel, [], OF_COLOURS)).toEqual([]);
    },
  );
});

describe('a bundle of which things are sold on', () => {
  beforeAll(async () => {
    await judge(ADS.bundle);
    await panel.select('[data-path="bar-1.plan"]', 'nothing');
    await panel.select('[data-path="bench-1.plan"]', 'sell');
    await panel.waitForSelector('[data-path="bench-1.resale"]');
  });

  test.each(WIDTHS.flatMap((width) => SCHEMES.map((scheme) => [width, scheme] as const)))(
    'at %d px, %s',
    async (width, scheme) => {
      await settle(width, scheme);
      await openAll();
      await picture(width, `sold-on-${width}-${scheme}-open`);
      expect(await panel.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      if (width === NARROWEST) expect(await violations(panel, [], scheme === 'dark' ? OF_COLOURS : [])).toEqual([]);
    },
  );
});

describe('on paper', () => {
  beforeAll(() => judge(`${ADS.bundle} 18 miles away.`));
  afterAll(() => panel.emulateMediaType());

  test('everything stands open, without what is there to be pressed, on two sides of A4 at most', async () => {
    await settle(360, 'dark');
    await closeAll();
    const printing = panel.evaluate(
      () =>
        new Promise<[number, number]>((resolve) => {
          addEventListener('beforeprint', () => resolve(count()), { once: true });
          const count = (): [number, number] => [
            document.querySelectorAll('details').length,
            document.querySelectorAll('details[open]').length,
          ];
        }),
    );
    const pdf = Buffer.from(await panel.pdf({ path: `${OUT}/print.pdf`, format: 'a4' })).toString('latin1');
    const [all, open] = await printing;
    expect(all).toBeGreaterThan(3);
    expect(open).toBe(all);
    // What was closed is closed again.
    expect(await panel.$$('details[open]')).toHaveLength(0);
    const pages = /\/Type\s*\/Pages\b[^>]*\/Count\s+(\d+)|\/Count\s+(\d+)[^>]*\/Type\s*\/Pages\b/.exec(pdf);
    expect(Number(pages?.[1] ?? pages?.[2])).toBeLessThanOrEqual(2);
  });

  test('black on white, even from a dark panel', async () => {
    await settle(700, 'dark');
    await panel.emulateMediaType('print');
    await openAll();
    await picture(700, 'print');
    const seen = await panel.evaluate(() => {
      const visible = (one: Element) => one.getClientRects().length > 0;
      return {
        ink: getComputedStyle(document.body).color,
        ground: getComputedStyle(document.documentElement).getPropertyValue('--ground').trim(),
        buttons: [...document.querySelectorAll('button:not([aria-pressed="true"])')].filter(visible).length,
        charts: [...document.querySelectorAll('.chart')].filter(visible).length,
      };
    });
    expect(seen).toEqual({ ink: 'rgb(0, 0, 0)', ground: '#ffffff', buttons: 0, charts: 3 });
  });
});

describe('in use', () => {
  test('the call stands above the fold of a small panel, before everything else', async () => {
    await judge(ADS.bundle);
    await settle(360, 'light');
    const box = await panel.$eval('[data-call]', (call) => call.getBoundingClientRect().toJSON());
    expect(box.bottom).toBeLessThan(200);
    expect(await panel.$eval('h1, h2', (first) => first.tagName)).toBe('H1');
  });

  test('hostile text stays text', async () => {
    await judge(ADS.hostile);
    expect(await panel.title()).not.toBe('pwned');
    expect(await panel.$$('main img, main script')).toHaveLength(0);
  });

  test('an edited price changes what is shown, by keyboard alone', async () => {
    await judge(ADS.bundle);
    await openAll();
    const before = await panel.$eval('[data-per-usable-pound]', (one) => one.getAttribute('data-per-usable-pound'));
    await panel.focus('[data-path="asking.amount"]');
    await panel.keyboard.down('Control');
    await panel.keyboard.press('a');
    await panel.keyboard.up('Control');
    await panel.keyboard.type('900');
    const after = await panel.$eval('[data-per-usable-pound]', (one) => one.getAttribute('data-per-usable-pound'));
    expect(after).not.toBe(before);
  });

  test('every control is at least 24 px in both directions (WCAG 2.2, 2.5.8)', async () => {
    await judge(ADS.bundle);
    await openAll();
    const small = await panel.$$eval('button, input, select, textarea, summary', (all) =>
      all
        .map((one) => ({ html: one.outerHTML.slice(0, 120), box: one.getBoundingClientRect() }))
        .filter(({ box }) => box.width < 24 || box.height < 24)
        .map(({ html, box }) => `${box.width} x ${box.height}: ${html}`),
    );
    expect(small).toEqual([]);
  });
});

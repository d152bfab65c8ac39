/**
 * Every screen in every way that a reader may have set: light, dark, forced colours, wide spacing, text twice as large, no mouse, a screen
 * reader (WCAG 2.2). axe-core is the outside check; what it can't see (overflow, words that are cut, drawings that keep their own colours,
 * a control that Tab misses, a focus that does not show or is covered, names that stand for two things) is looked at here. A screen is
 * opened once for each size of text.
 */
import { mkdir } from 'node:fs/promises';
import type { CDPSession, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { OF_COLOURS, violations } from './axe.ts';
import { type Everything, everyScreen, SCREENS } from './every-screen.ts';
import { STATES } from './every-state.ts';
import { cut, paints, pointsNowhere, spaced, staysSmall, tabThrough, told, wider } from './looks.ts';
import { pictureOf } from './picture.ts';

const OUT = 'out/test';
const ADS = [
  'Home gym: 4 x 45 lb olympic plates, 4 x 25 lb, 2 x 10 lb, cast iron, rusty, holes 52.5 mm, a power rack, a flat bench. $500 for all, pick up in Elmwick',
  'Olympic barbell, 7 ft, 32 mm shaft, slightly bent, $60',
  'Two pairs of 45 lb plates and a pair of 35s, $1.10 a pound, firm',
];

let everything: Everything;
let page: Page;
/** One for all: what an earlier session emulates would hold beside it. */
let session: CDPSession;

/** A browser whose reader set this size of text, in px. */
async function launch(textSize: number): Promise<void> {
  await mkdir(OUT, { recursive: true });
  everything = await everyScreen({ ads: ADS, textSize });
  page = everything.page;
  session = await page.createCDPSession();
}
const end = () => everything?.close();

const emulate = (scheme: string, forced: boolean) =>
  session.send('Emulation.setEmulatedMedia', {
    features: [
      { name: 'prefers-color-scheme', value: scheme },
      { name: 'forced-colors', value: forced ? 'active' : 'none' },
    ],
  });

/** The panel beside a page; a pickup is done with a phone. */
const widthOf = (name: string): number => (name.includes('panel') || name === 'pickup' ? 360 : 1200);

const picture = (name: string, way: string) => pictureOf(page, `${OUT}/accessible-${name}-${way}.png`);

async function cutsNothing(): Promise<void> {
  expect(await wider(page)).toBeLessThanOrEqual(0);
  expect(await cut(page)).toEqual([]);
}

describe('the usual size of text', () => {
  beforeAll(() => launch(16));
  afterAll(end);

  describe.each(SCREENS)('%s', (name) => {
    beforeAll(async () => {
      await emulate('light', false);
      await everything.open(name, widthOf(name));
    });

    test.each(['light', 'dark'])('in %s colours', async (scheme) => {
      await emulate(scheme, false);
      await picture(name, scheme);
      // The second time the page is the same but for its colours.
      expect(await violations(page, [], scheme === 'dark' ? OF_COLOURS : [])).toEqual([]);
    });

    test('in forced colours', async () => {
      for (const scheme of ['light', 'dark']) {
        await emulate(scheme, true);
        await picture(name, `forced-${scheme}`);
        await cutsNothing();
        // The reader's palette goes before a theme that the buyer chose: drawings do not follow it by themselves.
        expect(await paints(page, 'dark')).toEqual(await paints(page, 'light'));
      }
      await emulate('light', false);
    });

    test('with wide spacing, and in a narrow window', async () => {
      await spaced(page, cutsNothing);
      await everything.narrow(320);
      await cutsNothing();
      await everything.narrow(widthOf(name));
      expect(await staysSmall(page)).toEqual([]);
    });

    test('says what each control is, and no two the same', async () => {
      // How a string that is missing shows itself.
      expect(await page.evaluate(() => document.body.textContent?.match(/\[[a-z]+_\w+\]/g) ?? [])).toEqual([]);
      expect(await told(session)).toEqual({ nameless: [], twice: [] });
      expect(await pointsNowhere(page)).toEqual([]);
    });

    test.each([
      ['Tab', false],
      ['Shift+Tab', true],
    ])('%s alone reaches every control, and it shows where it is', async (_, back) => {
      const { stops, ...troubles } = await tabThrough(page, back);
      expect(stops).toBeGreaterThan(3);
      expect(troubles).toEqual({ missed: [], unseen: [], covered: [] });
    });
  });
});

describe('other states', () => {
  beforeAll(() => launch(16));
  afterAll(end);

  test.each(Object.keys(STATES))('%s', async (state) => {
    // Filled screens are looked at in both.
    await emulate('dark', false);
    await STATES[state]?.(everything);
    await picture('state', state);
    expect(await page.evaluate(() => document.body.textContent?.match(/\[[a-z]+_\w+\]/g) ?? [])).toEqual([]);
    expect(await violations(page)).toEqual([]);
    expect(await told(session)).toEqual({ nameless: [], twice: [] });
    expect(await pointsNowhere(page)).toEqual([]);
    await cutsNothing();
  });
});

describe('text twice as large', () => {
  beforeAll(() => launch(32));
  afterAll(end);

  test.each(SCREENS)('%s loses nothing', async (name) => {
    await everything.open(name, widthOf(name));
    await picture(name, 'large');
    // Contrast is the same as above.
    expect(await violations(page, OF_COLOURS)).toEqual([]);
    await cutsNothing();
  });
});

/**
 * Every screen in every way that a reader may have set: light, dark, forced colours, wide spacing, text twice as large, no mouse, a screen
 * reader (WCAG 2.2); and every other state in all of them but for the keys. axe-core is the outside check; what it can't see (overflow, words
 * that are cut, drawings that keep their own colours, a control that Tab misses, a focus that does not show or is covered, names that stand
 * for two things) is looked at here. One browser serves for all, and a screen is opened once, in a made language that is two fifths longer:
 * what is no string shows, and what has room in it has room in English.
 */
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CDPSession, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { OF_COLOURS, OF_SIZES, violations } from './axe.ts';
import { type Everything, everyScreen, SCREENS } from './every-screen.ts';
import { ADS_OF_STATES, STATES } from './every-state.ts';
import { WALKS } from './keys-alone.ts';
import { lost, pointsNowhere, readTwice, repainted, spaced, staysSmall, tabThrough, textSize, told } from './looks.ts';
import { pictureOf } from './picture.ts';
import { addPseudo } from './pseudo.ts';
import { bare, words } from './shown-words.ts';

const OUT = 'out/test';
const ADS = [
  'Home gym: 4 x 45 lb olympic plates, 4 x 25 lb, 2 x 10 lb, cast iron, rusty, holes 52.5 mm, a power rack, a flat bench. $500 for all, pick up in Elmwick',
  'Olympic barbell, 7 ft, 32 mm shaft, slightly bent, $60',
  // Long enough to be known again by its words alone.
  'Two pairs of 45 lb plates and a pair of 35s that stood dry in a garage for ten years without a spot of rust, $1.10 a pound, firm',
];

let everything: Everything;
let page: Page;
/** One for all: what an earlier session emulates would hold beside it. */
let session: CDPSession;

beforeAll(async () => {
  await mkdir(OUT, { recursive: true });
  everything = await everyScreen({ ads: ADS, language: 'fr', prepare: (folder) => addPseudo(folder, 'fr') });
  page = everything.page;
  session = await page.createCDPSession();
});
afterAll(() => everything?.close());

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

const losesNothing = async () => expect(await lost(page)).toEqual([]);

/** Everything in light colours, and what depends on colours in dark ones and in the reader's own. */
async function inAllColours(name: string): Promise<void> {
  await emulate('light', false);
  await picture(name, 'light');
  expect(await violations(page)).toEqual([]);
  await emulate('dark', false);
  await picture(name, 'dark');
  expect(await violations(page, [], OF_COLOURS)).toEqual([]);
  for (const scheme of ['light', 'dark']) {
    await emulate(scheme, true);
    await picture(name, `forced-${scheme}`);
    // The reader's palette goes before a theme that the buyer chose: drawings do not follow it by themselves.
    expect(await repainted(page)).toEqual([]);
  }
  // Of two palettes one will do: what keeps colours of its own keeps them in both, and what lies where does not depend on them.
  await losesNothing();
  expect(await violations(page, [], OF_COLOURS)).toEqual([]);
  await emulate('light', false);
}

/** With wide spacing, with text twice as large, and in windows of other widths. */
async function inAllSizes(name: string, widths: readonly number[]): Promise<void> {
  const width = page.viewport()?.width ?? 0;
  await losesNothing();
  await spaced(page, losesNothing);
  expect(await staysSmall(page)).toEqual([]);
  await textSize(session, 32);
  await picture(name, 'large');
  await losesNothing();
  expect(await violations(page, [], OF_SIZES)).toEqual([]);
  await textSize(session, 16);
  for (const other of widths) {
    await everything.narrow(other);
    await losesNothing();
  }
  await picture(name, 'narrow');
  await everything.narrow(width);
}

/** Whatever is no string, or joined of pieces, stands in no brackets. */
async function isAllStrings(): Promise<void> {
  const all = await words(page);
  expect(all.filter((text) => text.includes('[')).length).toBeGreaterThan(2);
  expect(all.filter((text) => bare(text, [...ADS, ...ADS_OF_STATES]).length > 0)).toEqual([]);
}

async function isTold(): Promise<void> {
  // How a string that is missing shows itself.
  expect(await page.evaluate(() => document.body.textContent?.match(/\[[a-z]+_\w+\]/g) ?? [])).toEqual([]);
  expect(await told(page, session)).toEqual({ nameless: [], twice: [], unsaid: [] });
  expect(await pointsNowhere(page)).toEqual([]);
  expect(await readTwice(page)).toBeNull();
}

describe.each(SCREENS)('%s', (name) => {
  beforeAll(async () => {
    await emulate('light', false);
    await everything.open(name, widthOf(name));
  });

  test('in light, dark and forced colours', () => inAllColours(name));

  test('with wide spacing, with large text, and in windows of every width', () => inAllSizes(name, [1200, 360, 320, 240]));

  test('says nothing but strings', isAllStrings);

  test('says what each control is, and no two the same', isTold);

  test.each([
    ['Tab', false],
    ['Shift+Tab', true],
  ])('%s alone reaches every control, and it shows where it is', async (_, back) => {
    const { stops, presses, ...troubles } = await tabThrough(page, session, back);
    expect(stops).toBeGreaterThan(3);
    expect(presses).toBe(stops + 5);
    expect(troubles).toEqual({ missed: [], unseen: [], covered: [] });
  });
});

describe('with keys alone', () => {
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'ironsift-keys-'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  test.each(Object.entries(WALKS))('%s', async (_, { from, go }) => {
    await everything.open(from, widthOf(from));
    await go(everything, join(folder, 'export.json'));
  });
});

// Last, for they spoil what is kept.
describe('other states', () => {
  test.each(Object.keys(STATES))('%s', async (state) => {
    await emulate('light', false);
    await STATES[state]?.(everything);
    await isAllStrings();
    await isTold();
    await inAllColours(`state-${state}`);
    await inAllSizes(`state-${state}`, [320]);
  });
});

/**
 * Screens in two more languages of a real browser: German, and a made one that is two fifths longer, written from right to left. Nothing may
 * overflow, be cut, or be in no language at all. From left to right the made one is looked at by accessible.test.ts.
 */
import { mkdir } from 'node:fs/promises';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Everything, everyScreen, SCREENS } from './every-screen.ts';
import { lost } from './looks.ts';
import { pictureOf } from './picture.ts';
import { addPseudo } from './pseudo.ts';
import { ours, words } from './shown-words.ts';

const OUT = 'out/test';
const TRICK = 'Plates \u202ethgirw\u202c 4 x 45 lb';
const ADS = [
  'Home gym: 4 x 45 lb olympic plates, 4 x 25 lb, 2 x 10 lb, cast iron, rusty, holes 52.5 mm, a power rack, a flat bench. $500 for all, pick up in Elmwick',
  'Olympic barbell, 7 ft, 32 mm shaft, slightly bent, $60',
  `${TRICK}, two pairs of 45 lb plates and a pair of 35s, $1.10 a pound, firm`,
];

let everything: Everything;
let page: Page;

async function launch(language: string, made: boolean): Promise<void> {
  await mkdir(OUT, { recursive: true });
  everything = await everyScreen({
    ads: ADS,
    language,
    ...(made && { prepare: (folder: string) => addPseudo(folder, language) }),
  });
  page = everything.page;
}
const end = () => everything?.close();

const WIDE = 1200;

/** A screen opened wide, then made narrower: what is lost at each width. */
async function lostAtEachWidth(name: string): Promise<Record<number, string[]>> {
  const found: Record<number, string[]> = {};
  for (const width of [WIDE, 360, 240]) {
    await everything.narrow(width);
    found[width] = await lost(page);
  }
  await pictureOf(page, `${OUT}/language-${await page.evaluate(() => document.documentElement.lang)}-${name}-240.png`, true);
  return found;
}
const NOTHING = { [WIDE]: [], 360: [], 240: [] };

/** Each screen's own layout once, both pages among them: what they share is mirrored by the same rules (tests/build/mirrored-styles.test.ts). */
const MIRRORED = ['finds', 'one find', 'side by side', 'kit', 'buy list', 'panel', 'swept panel'];

describe('written from right to left', () => {
  beforeAll(() => launch('ar', true));
  afterAll(end);

  test.each(MIRRORED)('%s', async (name) => {
    await everything.open(name, WIDE);
    expect(await page.evaluate(() => [document.documentElement.dir, getComputedStyle(document.body).direction])).toEqual([
      'rtl',
      'rtl',
    ]);
    expect(await lostAtEachWidth(name)).toEqual(NOTHING);
  });

  test('the frame is mirrored: the first screen stands at the right', async () => {
    await everything.open('finds', WIDE);
    const places = await page.$$eval('nav a', (links) => links.map((link) => link.getBoundingClientRect().right));
    expect(places.length).toBeGreaterThan(4);
    expect(places[0]).toBe(Math.max(...places));
  });
});

describe('German', () => {
  beforeAll(() => launch('de', false));
  afterAll(end);

  /** English words that are no German ones: a string in which two stand was not translated. */
  const ENGLISH = /\b(?:the|of|is|are|it|and|with|what|you|your|not|this|there|from|price|weight|plates?|bars?|asked|usable)\b/gi;

  test.each(SCREENS)('%s', async (name) => {
    await everything.open(name, WIDE);
    expect(await page.evaluate(() => document.documentElement.lang)).toMatch(/^de/);
    const texts = await words(page);
    // What orders the writing is the ad's alone, in an element that keeps it there.
    const beside = await words(page, 'bdi');
    expect(beside.filter((text) => /[\u202a-\u202e]/.test(text))).toEqual([]);
    expect(texts.join(' ')).toMatch(/[äöüß]/);
    const english = texts.filter((text) => (ours(text, ADS).match(ENGLISH) ?? []).length > 1);
    expect(english.filter((text) => !/IPF|IWF/.test(text))).toEqual([]);
    expect(await lostAtEachWidth(name)).toEqual(NOTHING);
  });
});

/** The buyer's stories, word for word the same in Chromium and in Firefox. A test file for each, so that they may run at the same time. */
import { mkdir } from 'node:fs/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { BrowserName } from '../driver/index.ts';
import { longDrive, metAgain, twoSellers } from './buyer.ts';
import { evening, judgesByMenu, picksByKeys, sweepsAndKeeps } from './page.ts';
import { distanceByPlace, SELLER } from './places.ts';
import { askedNothing, everyScreenOnce } from './private.ts';
import { type Stage, setStage } from './stage.ts';
import { outAndIn, throughTheScreens } from './workshop.ts';

export function playStories(name: BrowserName): void {
  let stage: Stage;
  beforeAll(async () => {
    await mkdir('out/panel', { recursive: true });
    stage = await setStage(name);
  });
  afterAll(() => stage?.end());

  test('an evening: selected, judged, corrected, kept, met again', () => evening(stage));
  test.each(['ad.html', 'ad.html?strict', 'key-swallower.html'])('picked by keys alone on %s', (page) =>
    picksByKeys(stage, page),
  );
  test('judged from the menu of the page', () => judgesByMenu(stage));
  test('a page of ads: swept, and many kept at once', () => sweepsAndKeeps(stage));
  test('two sellers’ lots: which to take, how sure, and what to offer the other', () => twoSellers(stage));
  test('a cheap bar and a long drive: not worth it, near by it is', () => longDrive(stage));
  test('an evening’s ads, met again days later under another address and price', () => metAgain(stage));
  test('pickup, weighing, rates and settings', () => throughTheScreens(stage));
  test('everything out as a file, and in again', () => outAndIn(stage));
  test('the distance by the places’ names', async () => {
    const panel = await distanceByPlace(stage, async (open) =>
      expect(await open.$$(`${SELLER}[aria-activedescendant]`)).toHaveLength(1),
    );
    await panel.close();
  });
  test('every screen opens, and the solver answers', () => everyScreenOnce(stage));
  // Last: it is about everything before.
  test('nothing of all this asked for another machine', () => askedNothing(stage));
}

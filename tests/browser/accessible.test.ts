/**
 * Every screen for those who set their browser otherwise: forced colours, text twice as large (WCAG 2.2, 1.4.4 and 1.4.12 want both to
 * lose nothing), no mouse. axe-core is the outside check; what it can't see (overflow, text that is cut, a control that Tab misses, a focus that does
 * not show) is looked at here.
 */
import { mkdir } from 'node:fs/promises';
import type { CDPSession, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './axe.ts';
import { type Everything, everyScreen, SCREENS } from './every-screen.ts';

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

type Features = readonly { readonly name: string; readonly value: string }[];
const FORCED: Readonly<Record<string, Features>> = {
  'forced colours': [{ name: 'forced-colors', value: 'active' }],
  'forced colours, dark': [
    { name: 'forced-colors', value: 'active' },
    { name: 'prefers-color-scheme', value: 'dark' },
  ],
};

async function open(name: string, features: Features, width: number): Promise<void> {
  await session.send('Emulation.setEmulatedMedia', { features: [...features] });
  await everything.open(name, width);
}

/** Elements whose words are cut off. An ad's own title is, in rows and above the answer, on purpose: the ad itself is a key away. */
const cut = (): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main *, header *')]
      .filter((one) => {
        const { overflowX, overflowY, clip } = getComputedStyle(one);
        const hides = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
        if (one.closest('.unseen, .find-row, .ad-title, svg') || clip !== 'auto' || one.clientWidth === 0) return false;
        return (
          (hides(overflowX) && one.scrollWidth > one.clientWidth + 1) ||
          (hides(overflowY) && one.scrollHeight > one.clientHeight + 1)
        );
      })
      .map((one) => one.outerHTML.slice(0, 120)),
  );

const wider = (): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

const widthOf = (name: string): number => (name.includes('panel') ? 360 : 1200);

async function losesNothing(name: string, what: string, except: readonly string[] = []): Promise<void> {
  await page.screenshot({ path: `${OUT}/accessible-${name}-${what}.png`.replaceAll(/[ ,]+/g, '-') as `${string}.png` });
  // How a string that is missing shows itself.
  expect(await page.evaluate(() => document.body.textContent?.match(/\[[a-z]+_\w+\]/g) ?? [])).toEqual([]);
  expect(await violations(page, except)).toEqual([]);
  expect(await wider()).toBeLessThanOrEqual(0);
  expect(await cut()).toEqual([]);
}

describe('the usual size of text', () => {
  beforeAll(() => launch(16));
  afterAll(end);

  test.each(SCREENS.flatMap((name) => Object.keys(FORCED).map((way) => [name, way] as const)))(
    '%s loses nothing in %s',
    async (name, way) => {
      await open(name, FORCED[way] ?? [], widthOf(name));
      // The reader's own palette is drawn, of which computed style, all that the checker sees, knows nothing.
      await losesNothing(name, way, ['color-contrast']);
    },
  );

  test.each(SCREENS)('%s: keys alone reach every control, and it shows where they are', async (name) => {
    await open(name, [], 1200);
    // Of a group of radio buttons Tab stops at one, of a long list at one row.
    const marked = await page.evaluate(() => {
      const all = [
        ...document.querySelectorAll<HTMLElement>(
          'a[href], button:enabled, input:enabled, select, textarea, summary, [tabindex="0"]',
        ),
      ];
      const stops = all.filter((one) => {
        if (!one.checkVisibility() || one.tabIndex < 0) return false;
        if (!(one instanceof HTMLInputElement) || one.type !== 'radio') return true;
        const group = document.querySelectorAll<HTMLInputElement>(`input[name="${CSS.escape(one.name)}"]`);
        return one.checked || ([...group].every(({ checked }) => !checked) && group[0] === one);
      });
      for (const [at, one] of stops.entries()) one.dataset.stop = String(at);
      return stops.length;
    });
    expect(marked).toBeGreaterThan(3);
    const reached = new Set<string>();
    const unseen: string[] = [];
    for (let press = 0; press < marked + 5; press += 1) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const one = document.activeElement as HTMLElement;
        const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
        const shows = (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0) || boxShadow !== 'none';
        return { stop: one.dataset.stop ?? null, shows, html: one.outerHTML.slice(0, 120) };
      });
      if (at.stop === null) continue;
      reached.add(at.stop);
      if (!at.shows) unseen.push(at.html);
    }
    const missed = await page.$$eval(
      '[data-stop]',
      (all, known) =>
        all.filter((one) => !known.includes((one as HTMLElement).dataset.stop ?? '')).map((one) => one.outerHTML.slice(0, 120)),
      [...reached],
    );
    expect(missed).toEqual([]);
    expect(unseen).toEqual([]);
  });
});

describe('text twice as large', () => {
  beforeAll(() => launch(32));
  afterAll(end);

  test.each(SCREENS)('%s loses nothing', async (name) => {
    await open(name, [], widthOf(name));
    await losesNothing(name, 'large');
  });
});

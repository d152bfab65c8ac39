/** Finding the ads of results pages by their structure alone: how many are found, and how many that are none. */
import { describe, expect, it } from 'vitest';
import { computedSight } from '../../../extension/capture/readers/index.ts';
import { findBlocks } from '../../../extension/capture/sweep/find-blocks.ts';
import { NO_ADS } from './no-ads.ts';
import { showPage } from './page.ts';
import { STRUCTURES } from './structures.ts';

/** Ads found, each as the numbers that its elements carry: "3" alone is right, "3,3" twice the same ad's two elements. */
const found = (html: string): string[] => {
  showPage(html);
  const steps = findBlocks(document.body, computedSight());
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value.map(({ elements }) => elements.map((element) => element.getAttribute('data-ad') ?? 'none').join());
  }
};
const wanted = (): string[] => {
  const byAd = new Map<string, string[]>();
  for (const element of document.querySelectorAll('[data-ad]')) {
    const n = element.getAttribute('data-ad') ?? '';
    byAd.set(n, [...(byAd.get(n) ?? []), n]);
  }
  return [...byAd.values()].map((all) => all.join());
};

describe('every ad of a page, in its order, and nothing else', () => {
  it.each(STRUCTURES)('$name', ({ html, count }) => {
    const blocks = found(html);
    expect(wanted()).toHaveLength(count);
    expect(blocks).toEqual(wanted());
  });
});

describe('nothing to sweep', () => {
  it.each(NO_ADS)('$name', ({ html }) => expect(found(html)).toEqual([]));
});

it('holds over all structures: precision and recall', () => {
  let [right, given, there] = [0, 0, 0];
  for (const { html } of [...STRUCTURES, ...NO_ADS]) {
    const blocks = found(html);
    const ads = new Set(wanted());
    right += blocks.filter((block) => ads.has(block)).length;
    given += blocks.length;
    there += ads.size;
  }
  expect(there).toBeGreaterThan(150);
  expect(right / given).toBeGreaterThanOrEqual(0.98);
  expect(right / there).toBeGreaterThanOrEqual(0.98);
});

it('lets the page go on while it walks a large one', () => {
  showPage(`<main>${'<div><p>Words</p></div>'.repeat(2000)}</main>`);
  const steps = findBlocks(document.body, computedSight());
  let stops = 0;
  while (!steps.next().done) stops += 1;
  expect(stops).toBeGreaterThan(15);
});

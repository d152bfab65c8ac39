// @vitest-environment node
import axe from 'axe-core';
import { JSDOM } from 'jsdom';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readElement } from '../../extension/capture/readers/index.ts';
import { composeText } from '../../src/listing/compose.ts';
import { readPlace } from '../../src/read/recognisers/place.ts';
import { type DemoBoard, serve } from '../demo/serve.mjs';

let board: DemoBoard;

beforeAll(async () => {
  board = await serve();
});

afterAll(() => board.close());

async function page(address: string): Promise<JSDOM> {
  const response = await fetch(address);
  expect(response.status, address).toBe(200);
  return new JSDOM(await response.text(), { url: address, runScripts: 'outside-only' });
}

const everyPage = (): string[] => [board.url, ...board.ads.map((ad) => ad.url)];

describe('demo board', () => {
  it('serves a card for each of at least fourteen notices, on the loopback address only', async () => {
    expect(new URL(board.url).hostname).toBe('127.0.0.1');
    expect(board.ads.length).toBeGreaterThanOrEqual(14);
    const cards = [...(await page(board.url)).window.document.querySelectorAll('.card')];
    expect(cards.map((card) => card.querySelector('a')?.href)).toEqual(board.ads.map((ad) => ad.url));
  });

  it('has no link that leads nowhere or off the board', async () => {
    const links = new Set<string>();
    for (const address of everyPage()) {
      const { document } = (await page(address)).window;
      for (const link of document.querySelectorAll('a')) links.add(link.href);
      for (const inner of document.querySelectorAll('iframe')) links.add(inner.src);
      for (const sheet of document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]')) links.add(sheet.href);
    }
    expect(links.size).toBeGreaterThan(board.ads.length);
    for (const link of links) {
      expect(link.startsWith(board.url), link).toBe(true);
      expect((await fetch(link)).status, link).toBe(200);
    }
  });

  it('says the same title, place and price on the card and on the notice, the place so that it is read', async () => {
    const cards = (await page(board.url)).window.document.querySelectorAll('.card');
    for (const [at, ad] of board.ads.entries()) {
      const response = await fetch(ad.url);
      const { document } = new JSDOM(await response.text(), { url: ad.url }).window;
      expect(document.querySelector('h1')?.textContent).toBe(ad.title);
      // Two ads of one place are fetched by one trip only where both are read.
      const words = document.querySelector('.ad') as HTMLElement;
      const { text } = composeText(readElement(words, { origin: 'pick', address: ad.url }).listing);
      expect(`${readPlace(text)?.value}`, ad.id).toBe(cards[at]?.querySelector('.place')?.textContent?.split(' · ')[0]);
      const asked = cards[at]?.querySelector('.price')?.textContent?.replace(/^\$/, '');
      const inner = document.querySelector('iframe')?.src;
      const whole = document.querySelector('.ad')?.innerHTML + (inner ? await (await fetch(inner)).text() : '');
      if (asked) expect(whole, ad.id).toContain(asked);
    }
  });

  it('answers 404 in words to an unknown address, and never a file from the disk', async () => {
    for (const path of ['ad/none', 'serve.mjs', '..%2f..%2fpackage.json', 'board.json']) {
      const response = await fetch(board.url + path);
      expect(response.status, path).toBe(404);
      expect(await response.text()).toContain('taken down');
    }
  });

  it('gives valid structured data where it has any', async () => {
    let offers = 0;
    for (const ad of board.ads) {
      const { document } = (await page(ad.url)).window;
      for (const data of document.querySelectorAll('script[type="application/ld+json"]')) {
        const parsed: unknown = JSON.parse(data.textContent ?? '');
        expect(JSON.stringify(parsed)).toMatch(/"price":"\d+(\.\d\d)?"/);
        offers += 1;
      }
    }
    expect(offers).toBe(2);
  });

  // WCAG 2.2 as axe-core 4 checks it; contrast needs a real browser and is left to the browser tests.
  it('has no accessibility violation that can be seen without a layout', async () => {
    for (const address of everyPage()) {
      const { window } = await page(address);
      window.eval(axe.source);
      const inner = (window as unknown as { axe: typeof axe }).axe;
      const { violations } = await inner.run(window.document.documentElement, {
        iframes: false,
        rules: { 'color-contrast': { enabled: false } },
      });
      expect(
        violations.map((violation) => `${address} ${violation.id}`),
        address,
      ).toEqual([]);
    }
  }, 60_000);
});

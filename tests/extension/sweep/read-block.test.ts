/** Each ad of a list as a listing of its own. */
import { beforeEach, describe, expect, it } from 'vitest';
import { computedSight } from '../../../extension/capture/readers/index.ts';
import { findBlocks } from '../../../extension/capture/sweep/find-blocks.ts';
import { offersOf, readBlock } from '../../../extension/capture/sweep/read-block.ts';
import type { PageListing } from '../../../src/listing/page-listing.ts';
import { pageListingSchema } from '../../../src/listing/page-listing.ts';
import { showPage } from './page.ts';
import { STRUCTURES } from './structures.ts';

const PAGE = 'http://board.invalid/list?q=plates';

function listings(html: string): PageListing[] {
  showPage(html);
  const sight = computedSight();
  const steps = findBlocks(document.body, sight);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value.map(({ elements }) => readBlock(elements, PAGE, offersOf(document), sight).listing);
  }
}

beforeEach(() => {
  const base = document.createElement('base');
  base.href = PAGE;
  document.head.replaceChildren(base);
});

describe('title, price and address are the ad’s own', () => {
  it.each(STRUCTURES.filter(({ name }) => name !== 'German words'))('$name', ({ html, count }) => {
    const all = listings(html);
    expect(all).toHaveLength(count);
    for (const [index, listing] of all.entries()) {
      expect(pageListingSchema.safeParse(listing).success).toBe(true);
      expect(listing).toMatchObject({ origin: 'sweep', address: expect.stringMatching(/\/ad\/\d+$/) });
      expect(listing.address).toMatch(new RegExp(`/ad/${index + 1}$`));
      expect(listing.title).toMatch(/plate|barbell|rack|bumper|bench|kettlebell|bar\b|dumbbell/i);
      expect(listing.text).toContain(listing.title.replace(/ \$\d+$/, ''));
    }
  });
});

it('the lines of a card stay lines, and prices that are struck through are told', () => {
  const card = (n: number) =>
    `<li><h3><a href="/ad/${n}">Iron plates, 4 x 45 lb</a></h3><div><del>$200</del> <span class="price">$150</span></div><p>No rust.<br>Two inch holes.</p></li>`;
  const [first] = listings(`<ul>${[1, 2, 3].map(card).join('')}</ul>`);
  expect(first).toMatchObject({
    title: 'Iron plates, 4 x 45 lb',
    text: 'Iron plates, 4 x 45 lb\n$200 $150\nNo rust.\nTwo inch holes.',
    priceText: '$150',
  });
  expect(first?.struck.map(({ start, end }) => first.text.slice(start, end))).toEqual(['$200']);
});

it.each([
  [
    'a length in feet is no price',
    '7ft bar',
    '<div>7ft bar</div><div>As new</div><div><b>$75</b> <a href="/ad/N">View ad</a></div>',
  ],
  [
    'a card that is one link, its prices side by side',
    'Flat bench',
    '<a href="/ad/N"><div><span>$60</span><s>$90</s></div><div>Flat bench</div><div>Quillbrook</div></a>',
  ],
  [
    'a card whose parts stand on one line',
    'Flat bench, steel',
    '<a href="/ad/N"><span>Flat bench, steel</span> <span>$60</span><span>Quillbrook</span></a>',
  ],
])('title: %s', (_, title, inside) => {
  const [first] = listings(`<div>${[1, 2, 3].map((n) => `<div>${inside.replace('N', String(n))}</div>`).join('')}</div>`);
  expect(first?.title).toBe(title);
});

it('structured offers go with the ad that they name', () => {
  const offer = (n: number) => ({
    '@type': 'Product',
    name: `Bar number ${n}`,
    offers: { '@type': 'Offer', price: `${n}0`, priceCurrency: 'USD' },
  });
  const all = listings(
    `<script type="application/ld+json">${JSON.stringify([1, 2, 3].map(offer))}</script><ul>${[1, 2, 3].map((n) => `<li><a href="/ad/${n}">Bar number ${n}</a> <b>$${n}0</b></li>`).join('')}</ul>`,
  );
  expect(all.map(({ offers }) => offers.map(({ price }) => price))).toEqual([['10'], ['20'], ['30']]);
});

it('an ad whose only link leads nowhere has the page’s address', () => {
  const [first] = listings(
    `<ul>${[1, 2, 3]
      .map(
        (n) =>
          `<li><a href="/ad/${n}"></a><h3>Flat bench, steel</h3><a href="javascript:alert(1)">Open</a> <a href="#top">$${n}5</a></li>`,
      )
      .join('')
      .replace('<a href="/ad/1"></a>', '')}</ul>`,
  );
  expect(first?.address).toBe(PAGE);
});

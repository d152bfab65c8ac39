/** Which block picking proposes for a page, and what a selection of the description takes along. Pages are invented, as sites build them. */
import { describe, expect, it } from 'vitest';
import { computedSight, findMainBlock, readDocument, readElement, readRanges } from '../../../extension/capture/readers/index.ts';
import { show } from './page.ts';

const WORDS = '4 x 45 lb, 2 x 25 lb, cast iron, two inch holes. Kept in a dry shed. Cash, pick up in Quillbrook.';
const OTHERS =
  '<div><a href="/ad/8">Rower, hardly used</a><span>$240</span></div><div><a href="/ad/9">Bench</a><span>$60</span></div>';
const HEAD = '<title>Iron plates - Quillbrook Notices</title>';

interface Page {
  readonly name: string;
  readonly body: string;
  readonly head?: string;
  readonly title?: string;
}

/** Each holds the ad, its words in `#d`, and other people's ads or the site's own words. */
const PAGES: readonly Page[] = [
  {
    name: 'other ads under a heading right in the wrapper of all',
    body: `<div id="all"><div class="top"><a href="/">Quillbrook Notices</a></div><div><h1>Iron plates</h1><div class="money"><b>$225</b></div><div id="d">${WORDS}</div></div><h3>You may also like</h3><div>${OTHERS}</div></div>`,
  },
  {
    name: 'a dialog over the list that it was opened from',
    head: '<title>Plates near you</title>',
    body: `<div aria-hidden="true" inert><h1>Plates near you</h1>${OTHERS}</div><div role="dialog" aria-modal="true"><button>×</button><div><h2>Iron plates</h2><div>$225</div><div id="d">${WORDS}</div></div><div><h3>More from this seller</h3>${OTHERS}</div></div>`,
  },
  {
    name: 'a dialog element',
    head: '<title>Plates near you</title>',
    body: `<main><h1>Plates near you</h1>${OTHERS}</main><dialog open><h2>Iron plates</h2><b>$225</b><p id="d">${WORDS}</p></dialog>`,
  },
  {
    name: 'a closed dialog and one about cookies',
    body: `<div style="display:none"><div role="dialog" aria-modal="true">Offer $99 for it?</div></div><main><h1>Iron plates</h1><b>$225</b><p id="d">${WORDS}</p></main><div role="dialog" aria-modal="true">We use cookies.</div>`,
  },
  {
    name: 'no first heading, the name in the page’s title',
    body: `<table><tr><td><a href="/">Quillbrook Notices</a> &gt; sport</td></tr></table><div><a href="/7">prev</a> <a href="/9">next</a></div><div><h2><span>Iron plates</span> - <span>$225</span></h2><div id="d">${WORDS}</div></div><hr><font><a href="/safe">never wire money</a></font>`,
  },
  {
    name: 'the masthead of the site as first heading',
    head: '<title>Notice 44 | Classifieds | Quillbrook Ledger</title>',
    body: `<div><h1>Quillbrook Ledger</h1><p>News, from $4.99 a month</p></div><div><div><h2>Iron plates</h2><p id="d">${WORDS} $225 firm.</p></div><div><h3>More in Sport</h3><p><a href="/45">CANOE</a>, $300.</p></div></div>`,
  },
  {
    name: 'the first message of a thread',
    body: `<div><a href="/">Porch</a> » Trade</div><table><tr><td><b>ann</b><br>Joined 2017</td><td><div><h3>Iron plates</h3></div><div id="d">${WORDS} $225</div></td></tr><tr><td><b>bo</b></td><td><div><h3>Re: Iron plates</h3></div><div id="r">Would you do $150 for the lot?</div></td></tr></table>`,
  },
  {
    name: 'no heading at all, fields and preformatted words',
    body: `<a href="/">Menu</a> : Message 20<hr><div><b>Subject:</b> <span>Iron plates</span><br><b>Price:</b> <span>$225</span><pre id="d">${WORDS}</pre></div><hr><a href="/19">Prev</a>`,
  },
  {
    name: 'the site’s name first in the page’s title',
    head: '<title>Quillbrook Notices | Iron plates</title>',
    body: `<div>Quillbrook Notices <a href="/in">Sign in</a></div><div><h1>Iron plates</h1><b>$225</b><div id="d">${WORDS}</div></div><div>Rules of the board</div>`,
  },
  {
    name: 'the price in a column of its own',
    body: `<div class="page"><div><div><h1>Iron plates</h1><div id="d">${WORDS}</div></div><div><div>$225 ono</div><button>Message</button></div></div><div>Rules of the board</div></div>`,
  },
  {
    name: 'long advice of the site beside a short ad',
    body: `<div><div><h1>Iron plates</h1><b>$225</b><div id="d">${WORDS}</div></div><div><h3>Safety tips</h3><p>${'Meet in daylight and never send money to a stranger. '.repeat(6)}</p></div></div>`,
  },
];

describe('what picking proposes', () => {
  it.each(PAGES)('$name', ({ body, head = HEAD }) => {
    const page = show(body, head);
    const block = findMainBlock(page, computedSight());
    const { text, title } = readElement(block ?? page.body, { origin: 'pick' }).listing;
    expect(title.replace(/ - \$225$/, '')).toBe('Iron plates');
    expect(text).toContain(WORDS);
    expect(text).toContain('$225');
    expect(text).not.toMatch(/Rower|Bench|Quillbrook (?:Notices|Ledger)|CANOE|next|never|Rules|cookies|would you/i);
  });
});

const selected = (page: Document, ...selectors: readonly string[]) => {
  const range = page.createRange();
  const [first, last = first] = selectors.map((selector) => page.querySelector(selector));
  if (!first || !last) throw new Error('nothing to select');
  range.setStart(first, 0);
  range.setEnd(last, last.childNodes.length);
  return readRanges([range], { origin: 'selection' })?.listing;
};

describe('a selected description', () => {
  it.each(PAGES)('has the ad’s title and price: $name', ({ body, head = HEAD }) => {
    const listing = selected(show(body, head), '#d');
    expect(listing?.text.startsWith(WORDS)).toBe(true);
    expect(listing?.title.replace(/ - \$225$/, '')).toBe('Iron plates');
    expect(`${listing?.priceText} ${listing?.text}`).toContain('$225');
  });

  const AD = `<main><h1>Iron plates</h1><s>$300</s> <p>Price: <b>$225</b> or best offer</p><div id="d"><p>${WORDS}</p><p id="bar">A bar too, $80.</p></div></main>`;
  it('has the price with the words about it, and not the former one', () =>
    expect(selected(show(AD), '#d')).toMatchObject({ title: 'Iron plates', priceText: 'Price: $225 or best offer' }));
  it('is a choice when it is one line of several: the ad’s title and price are not this line’s', () =>
    expect(selected(show(AD), '#bar')).toMatchObject({ title: '', priceText: null }));
  it('of a reply in a thread is not the ad', () => {
    const thread = PAGES.find(({ name }) => name.includes('thread'));
    expect(selected(show(thread?.body ?? '', HEAD), '#r')).toMatchObject({ title: '', priceText: null });
  });
  it('in a card of a list takes nothing from the page', () => {
    const card = (n: number) => `<li class="card"><p id="c${n}">${WORDS}</p><b>$${n}0</b></li>`;
    expect(selected(show(`<main><h1>Plates near you</h1><ul>${card(1)}${card(2)}${card(3)}</ul></main>`), '#c2')).toMatchObject({
      title: '',
      priceText: null,
    });
  });
  it('has no second title when it has one', () =>
    expect(selected(show(AD), 'h1', '#d')).toMatchObject({ title: 'Iron plates', priceText: 'Price: $225 or best offer' }));
});

describe('structured data of something else on the page', () => {
  const data = (name: string, price: string) =>
    `<script type="application/ld+json">{"@type":"Product","name":"${name}","offers":{"@type":"Offer","price":"${price}","priceCurrency":"USD"}}</script>`;
  const main = `<main><h1>Iron plates</h1><b>$225</b><p>${WORDS}</p></main>`;
  it.each([
    ['the only offer is a sponsor’s', data('Floor tiles', '59.99'), []],
    ['named as the ad', data('Iron plates', '225.00'), ['225.00']],
    ['named otherwise, at its price', data('Plates of iron', '225.00'), ['225.00']],
  ])('%s', (_, head, prices) => {
    const { offers } = readDocument(show(main, head), { origin: 'file' }).listing;
    expect(offers.map(({ price }) => price)).toEqual(prices);
  });
});

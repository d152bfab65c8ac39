import { describe, expect, it } from 'vitest';
import { pageAddress, readDocument } from '../../../extension/capture/readers/index.ts';
import { MAX_TEXT as LIMIT } from '../../../extension/capture/readers/limits.ts';
import { trimSiteName } from '../../../extension/capture/readers/title.ts';
import { MAX_TEXT, pageListingSchema } from '../../../src/listing/page-listing.ts';
import { pick, show } from './page.ts';

const read = (body: string, head = '') => {
  const { listing } = readDocument(show(body, head), { origin: 'file' });
  expect(pageListingSchema.safeParse(listing).error).toBeUndefined();
  return listing;
};

describe('a whole page', () => {
  const around = (main: string): string => `<nav>Home Sport</nav><header>Quillbrook Notices</header>${main}<footer>Rules</footer>
    <div class="cookie-banner">We use cookies. 4 x 99</div><aside>Bench $900</aside>`;
  const ad =
    '<h1>Plates, 230 lb</h1><div class="price">$100</div><div class="text"><p>Cast iron, 2 inch holes.</p><p>4 x 45, 2 x 25</p></div>';

  it.each([
    ['main', `<main>${ad}</main>`],
    ['one article', `<article>${ad}</article>`],
    ['bare divisions', `<div><div>${ad}</div></div>`],
    ['a section of other ads beside it', `<main>${ad}<section><h2>Similar ads</h2><p>8 x 100 lb, $5</p></section></main>`],
    ['a list named related', `<div>${ad}<div class="listing__relatedItems"><p>8 x 100 lb, $5</p></div></div>`],
    ['a heading "More from this seller"', `<main>${ad}<div><h3>More from this seller</h3><p>8 x 100 lb, $5</p></div></main>`],
  ])('gives the ad alone: %s', (_, main) => {
    const { text, title, priceText } = read(around(main));
    expect(text).toBe('Plates, 230 lb\n$100\nCast iron, 2 inch holes.\n4 x 45, 2 x 25');
    expect(title).toBe('Plates, 230 lb');
    expect(priceText).toBe('$100');
  });
  it('keeps everything of a bare fragment', () => expect(read('<p>4 x 45</p><p>$100</p>').text).toBe('4 x 45\n$100'));
  it('keeps the header of an article', () =>
    expect(read('<article><header><h1>Bar</h1></header><p>28 mm</p></article>').text).toBe('Bar\n28 mm'));
  it('is empty and not wrong for an empty page', () => expect(read('').text).toBe(''));
});

describe('title', () => {
  it('comes from the page when the block has no heading', () => {
    show('<h1>300 lb set</h1><div id="d"><p>A bar and plates</p></div>');
    expect(pick('#d').listing.title).toBe('300 lb set');
  });
  it('is not that of a results page', () => {
    const card = (id: string) => `<li class="card" id="${id}"><a href="#">Bar ${id}</a> <span>$90</span></li>`;
    show(`<h1>Barbells near you</h1><ul>${card('a')}${card('b')}${card('c')}</ul>`);
    expect(pick('#b').listing.title).toBe('');
  });
  it.each([
    ['Plates | Quillbrook Notices', null, 'Plates'],
    ['Plates - 300 lb', null, 'Plates - 300 lb'],
    ['Bar, 7 ft - Quillbrook Notices', 'Quillbrook Notices', 'Bar, 7 ft'],
    ['Plates', null, 'Plates'],
  ])('%s', (title, site, trimmed) => expect(trimSiteName(title, site)).toBe(trimmed));
});

describe('price', () => {
  it.each([
    ['microdata as shown', '<p class="price">$1</p><span itemprop="price" content="120">$120</span>', '$120'],
    [
      'microdata by content',
      '<div itemscope><meta itemprop="priceCurrency" content="USD"><meta itemprop="price" content="120"></div>',
      'USD 120',
    ],
    ['a class', '<div class="adPrice">$120 <del>$200</del></div>', '$120'],
    ['not the former price', '<div class="price--old">$200</div><div class="price--now">$120</div>', '$120'],
    ['not the shipping', '<div class="shipping-price">$20</div><b data-testid="listing-price">$120</b>', '$120'],
    ['not a struck one', '<s class="price">$200</s>', null],
    ['not a hidden one', '<p class="price" hidden>$200</p>', null],
    ['not a paragraph', `<p class="price">${'Many words about 45s. '.repeat(5)}</p>`, null],
    ['none', '<p>$120</p>', null],
  ])('%s', (_, body, price) => {
    show(`<main>${body}</main>`);
    expect(pick('main').listing.priceText).toBe(price);
  });
});

describe('language and address', () => {
  it('takes the nearest language', () => {
    show('<div lang="de"><p id="p">Hantel</p></div><p id="q">bar</p>');
    document.documentElement.lang = 'en-US';
    expect([pick('#p').listing.language, pick('#q').listing.language]).toEqual(['de', 'en-US']);
  });
  it('takes the declared one, or none', () => {
    show('<p id="p">x</p>', '<meta http-equiv="content-language" content="fr, en">');
    expect(pick('#p').listing.language).toBe('fr');
    show('<p id="p">x</p>');
    expect(pick('#p').listing.language).toBeNull();
  });
  it.each([
    ['https://quillbrook.example/ad?id=7#photos', 'https://quillbrook.example/ad?id=7'],
    ['about:blank', null],
    ['file:///home/a.html', null],
    ['nonsense', null],
  ])('%s', (address, kept) => expect(pageAddress(address)).toBe(kept));
});

it('has the limit of the schema', () => expect(LIMIT).toBe(MAX_TEXT));

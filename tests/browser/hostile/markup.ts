/** Markup, handlers, template strings and odd links in every field from which something is read. */
import { adPage, escaped, HIT, type HostileCase, listPage, MARKUP, SHOWN_MARKUP } from './case.ts';

const inScript = (value: unknown): string =>
  `<script type="application/ld+json">${JSON.stringify(value).replaceAll('</', '<\\/')}</script>`;
const product = (parts: object, offer: object = { price: '100', priceCurrency: 'USD' }): string =>
  inScript({ '@type': 'Product', name: 'Olympic plates, 230 lb', offers: { '@type': 'Offer', ...offer }, ...parts });
const attribute = MARKUP.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

export const markup: readonly HostileCase[] = [
  { name: 'markup in the heading', body: adPage().replace('230 lb', `230 lb ${SHOWN_MARKUP}`) },
  { name: 'markup in the words of the ad', body: adPage({ inside: `<p>${SHOWN_MARKUP}</p>` }) },
  { name: 'markup in the page title', body: adPage().replace('<title>', `<title>${SHOWN_MARKUP}`) },
  { name: 'markup in the price', body: adPage().replace('$100', `$100 ${SHOWN_MARKUP}`) },
  { name: 'short markup in the price', body: adPage().replace('$100', escaped('$100<svg onload=alert(1)>')) },
  { name: 'markup in a former price', body: adPage().replace('$100', `<del>$900 ${SHOWN_MARKUP}</del> $100`) },
  { name: 'markup in a list of goods', body: adPage().replace('4 x 45 lb', `4 x 45 lb ${SHOWN_MARKUP}`) },
  {
    name: 'markup in a table of goods',
    body: adPage({ inside: `<table><tr><td>2</td><td>10 lb ${SHOWN_MARKUP}</td></tr></table>` }),
  },
  { name: 'markup in the place', body: adPage({ inside: `<p>Pick up in Quillbrook ${SHOWN_MARKUP}</p>` }) },
  { name: 'markup in alternative text', body: adPage({ inside: `<img alt="${attribute}" src="data:,">` }) },
  {
    name: 'markup in labels and class names',
    body: adPage({ inside: `<p class="price ${attribute}" aria-label="${attribute}">$100</p>` }),
  },
  { name: 'markup for a language', body: adPage().replace('lang="en"', `lang="${attribute}"`) },
  { name: 'markup in the selected words', by: 'selection', body: adPage().replace('4 x 45 lb', `4 x 45 lb ${SHOWN_MARKUP}`) },
  {
    name: 'markup in a selected text field',
    by: 'selection',
    body: adPage()
      .replace('<div id="ad">', '<textarea id="field">4 x 45 lb plates $100 ')
      .replace('</div>', `${SHOWN_MARKUP}</textarea>`),
  },
  { name: 'markup as the name in JSON-LD', body: adPage({ head: product({ name: `Olympic plates, 230 lb ${MARKUP}` }) }) },
  { name: 'markup as the price in JSON-LD', body: adPage({ head: product({}, { price: `100 ${MARKUP}` }) }) },
  { name: 'markup as the currency in JSON-LD', body: adPage({ head: product({}, { price: '100', priceCurrency: MARKUP }) }) },
  { name: 'markup as the condition in JSON-LD', body: adPage({ head: product({ itemCondition: MARKUP }) }) },
  { name: 'markup as the description in JSON-LD', body: adPage({ head: product({ description: MARKUP }) }) },
  {
    name: 'a script inside JSON-LD that closes it early',
    body: adPage({ head: `<script type="application/ld+json">{"@type":"Product","name":"</script><b>x</b>"}` }),
  },
  {
    name: 'markup as the name in microdata',
    body: adPage({
      inside: `<div itemscope itemtype="https://schema.org/Offer"><meta itemprop="name" content="${attribute}"><span itemprop="offers" itemscope itemtype="https://schema.org/Offer"><meta itemprop="price" content="100"></span></div>`,
    }),
  },
  {
    name: 'markup as the price in microdata',
    body: adPage({
      inside: `<div itemscope itemtype="https://schema.org/Offer"><meta itemprop="price" content="${attribute}"></div>`,
    }),
  },
  {
    name: 'markup as the weight in microdata',
    body: adPage({
      inside: `<meta itemprop="weight" content="${attribute}">`,
    }),
  },
  {
    name: 'markup in Open Graph',
    body: adPage({
      head: `<meta property="og:title" content="${attribute}"><meta property="og:price:amount" content="100 ${attribute}"><meta property="og:description" content="${attribute}">`,
    }),
  },
  { name: 'markup in the address', body: adPage() },
  {
    name: 'markup in the titles of a list',
    by: 'sweep',
    reads: null,
    body: listPage().replaceAll('lb</a>', `lb ${SHOWN_MARKUP}</a>`),
  },
  {
    name: 'short markup in the titles of a list',
    by: 'sweep',
    reads: null,
    body: listPage().replaceAll('lb</a>', `lb ${escaped('<img src=x onerror=alert(1)>')}</a>`),
  },
  {
    name: 'markup in the prices of a list',
    by: 'sweep',
    reads: null,
    body: listPage().replaceAll('</b>', ` ${SHOWN_MARKUP}</b>`),
  },
  {
    name: 'links that are scripts in a list',
    by: 'sweep',
    reads: null,
    body: listPage().replaceAll(/"\/ad\/(\d+)"/g, `"javascript:void(new Image().src='${HIT}/link$1')"`),
    ends: ['list'],
  },
  {
    name: 'links that are data in a list',
    long: true,
    by: 'sweep',
    reads: null,
    body: listPage().replaceAll(/"\/ad\/(\d+)"/g, `"data:text/html,<script>new Image().src='${HIT}/data$1'</script>"`),
    ends: ['list'],
  },
  {
    name: 'script links beside each card',
    by: 'sweep',
    reads: null,
    body: listPage({ inCard: `<a href=" java&#9;script:alert(1)">more</a><a href="vbscript:x">more</a>` }),
  },
  {
    name: 'a base address that is a script',
    by: 'sweep',
    reads: null,
    body: listPage({ head: '<base href="javascript:alert(1)">' }),
  },
  {
    name: 'a base address elsewhere',
    by: 'sweep',
    reads: null,
    body: listPage({ head: '<base href="https://elsewhere.invalid/">' }),
  },
];

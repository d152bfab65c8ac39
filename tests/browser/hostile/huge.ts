/** Pages that are large, deep or endless. */
import { adPage, type HostileCase, LINES, listPage, script } from './case.ts';

const deep = (open: string, close: string, depth: number, middle = ''): string =>
  `${open.repeat(depth)}${middle}${close.repeat(depth)}`;
/** The parser nests no deeper than 512 elements; scripts do. Beyond some 2,500 Chromium itself gives up when it lays the page out. */
const nest = (tag: string, depth: number, attributes = ''): string =>
  script(`{ let at = document.querySelector('main'); const ad = document.getElementById('ad');
for (let n = 0; n < ${depth}; n += 1) { const one = document.createElement('${tag}'); ${attributes} at.append(one); at = one; } at.append(ad); }`);

/**
 * The largest are as large as Chromium itself still lays out in a few seconds; one page of ten million characters stands for what is larger, of
 * which it draws only what is in sight: most of the time goes into its own work.
 */
export const huge: readonly HostileCase[] = [
  { name: '60,000 nodes in one element', long: true, body: () => adPage({ inside: `<div>${'<i>x</i>'.repeat(30_000)}</div>` }) },
  {
    name: '200,000 nodes beside the ad, in one element',
    body: () => adPage({ after: `<div>${'<i>x</i>'.repeat(100_000)}</div>` }),
  },
  {
    name: '200,000 text nodes in one element',
    long: true,
    body: adPage({
      after: script(
        "const box = document.createElement('div'); for (let n = 0; n < 200000; n += 1) box.append(document.createTextNode('x ')); document.querySelector('main').append(box)",
      ),
    }),
  },
  { name: '20,000 nodes in a table', body: () => adPage({ inside: `<table>${'<tr><td>1<td>2<td>3'.repeat(2800)}</table>` }) },
  {
    name: '60,000 nodes, selected',
    long: true,
    by: 'selection',
    body: () => adPage().replace('<div id="ad">', `<div id="ad">${LINES}${'<i>x</i>'.repeat(30_000)}`),
  },
  { name: 'blocks 2,000 deep', body: adPage({ after: nest('div', 2000) }) },
  {
    name: 'blocks 2,000 deep with a long text inside',
    long: true,
    body: () =>
      adPage({
        inside: `<p>${'old iron. '.repeat(20_000)}</p>`,
        after: nest('div', 2000).replace(
          'at.append(ad)',
          "at.append(ad); ad.append(document.querySelector('main > p:last-of-type'))",
        ),
      }),
  },
  { name: 'spans 2,000 deep', long: true, body: adPage({ after: nest('span', 2000) }) },
  { name: 'prices 2,000 deep', body: adPage({ after: nest('div', 2000, "one.className = 'price';") }) },
  { name: 'headings 2,000 deep', long: true, body: adPage({ after: nest('div', 2000, "one.setAttribute('role', 'heading');") }) },
  {
    name: 'rows of boxes 1,000 deep',
    body: adPage({ after: nest('div', 1000, "one.style.display = 'flex'; at.append(document.createElement('b'));") }),
  },
  {
    name: 'sections with headings 1,000 deep',
    long: true,
    body: adPage({ after: nest('section', 1000, "one.append(document.createElement('h2'));") }),
  },
  {
    name: 'blocks 2,000 deep, widened and narrowed',
    body: adPage({ after: nest('div', 2000) }),
    meanwhile: async (page) => {
      for (const key of ['ArrowUp', 'ArrowDown', 'ArrowUp', 'ArrowLeft', 'ArrowRight'] as const) await page.keyboard.press(key);
    },
  },
  {
    name: '20,000 blocks beside each other, widened and narrowed',
    long: true,
    body: () => adPage({ after: `<div>${'<p>x</p>'.repeat(20_000)}</div>` }),
    reads: null,
    meanwhile: async (page) => {
      for (const key of ['ArrowUp', 'ArrowUp', 'ArrowDown', 'ArrowRight'] as const) await page.keyboard.press(key);
    },
  },
  { name: 'blocks 2,000 deep, selected', by: 'selection', body: adPage({ after: nest('div', 2000) }) },
  {
    name: 'a list 2,000 deep',
    by: 'sweep',
    reads: null,
    ends: ['list', 'empty'],
    body: listPage({
      after: script(
        "{ const list = document.getElementById('list'); let at = document.body; for (let n = 0; n < 2000; n += 1) { const one = document.createElement('div'); at.append(one); at = one; } at.append(list); }",
      ),
    }),
  },
  {
    name: 'ten million characters',
    body: () => adPage({ inside: `<p style="content-visibility: auto">${'old iron in a shed. '.repeat(500)}</p>`.repeat(1000) }),
  },
  {
    name: 'two million characters in one line without a blank',
    body: () => adPage({ inside: `<p>${'9'.repeat(2_000_000)}</p>` }),
  },
  {
    name: 'one line of a million characters',
    long: true,
    body: () => adPage({ inside: `<pre>${'4 x 45 lb, '.repeat(91_000)}</pre>` }),
  },
  { name: 'two million blanks', long: true, body: () => adPage({ inside: `<pre>${' '.repeat(2_000_000)}</pre>` }) },
  { name: '100,000 prices', body: () => adPage({ inside: `<p>${'$1 '.repeat(100_000)}</p>` }) },
  {
    name: '20,000 elements called a price',
    body: () =>
      adPage({ inside: '<b class="price">none</b>'.repeat(20_000) }).replace('<p class="price">$100</p>', '<p>$100</p>'),
  },
  { name: '20,000 headings', long: true, body: () => adPage({ inside: '<h2>x</h2>'.repeat(20_000) }) },
  {
    name: 'a name of a million letters',
    body: () => adPage().replace('class="price"', `class="price ${'a'.repeat(1_000_000)}"`),
  },
  {
    name: '10,000 attributes on one element',
    body: () => adPage().replace('id="ad"', `id="ad" ${Array.from({ length: 10_000 }, (_, n) => `a${n}="x"`).join(' ')}`),
  },
  { name: 'raised figures without end', long: true, body: () => adPage({ inside: `<p>1${'<sup>2</sup>'.repeat(20_000)}</p>` }) },
  {
    name: 'a list of 5,000 ads',
    long: true,
    by: 'sweep',
    reads: null,
    body: () =>
      listPage({
        after: `<div>${Array.from({ length: 5000 }, (_, n) => `<article><h3><a href="/more/${n}">Iron plates ${n} x 45 lb</a></h3><b>$${n}</b></article>`).join('')}</div>`,
      }),
  },
  {
    name: 'a list whose ads each hold 2,000 links',
    by: 'sweep',
    reads: null,
    ends: ['list'],
    body: () => listPage({ inCard: '<a href="/x">more</a>'.repeat(2000) }),
  },
  {
    name: 'a list whose ads have no end',
    by: 'sweep',
    reads: null,
    ends: ['list', 'empty'],
    body: () => listPage({ inCard: `<p>${'old iron. '.repeat(20_000)}</p>` }),
  },
  {
    name: 'boxes of one cell in a table 120 deep',
    body: () => adPage({ inside: deep('<table><tr><td>', '</td></tr></table>', 120, 'x') }),
  },
];

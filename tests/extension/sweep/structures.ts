/**
 * Results pages as sites build them, all invented. `data-ad` marks what belongs to an ad, with its number; what finds the ads does not
 * look at it. `data-not` would be a mistake.
 */
interface Ad {
  readonly n: number;
  readonly title: string;
  readonly price: string;
  readonly text: string;
}

const TITLES = [
  'Olympic plates, 4 x 45 lb',
  'Barbell, 7 ft, 45 lb',
  'Squat rack with pins',
  'Pair of 35 lb bumpers',
  'Flat bench, steel',
  'Kettlebell 53 lb',
  'Change plates, 2.5 and 5 lb',
  'Power rack, bolted',
  'Curl bar with collars',
  'Iron plates 300 lb set',
  'Trap bar, 2 inch sleeves',
  'Dumbbells 50 lb pair',
];
export const ad = (n: number): Ad => ({
  n,
  title: TITLES[(n - 1) % TITLES.length] ?? '',
  price: `$${40 + n * 15}`,
  text: `Kept in a dry shed, light rust. Pick up in Quillbrook, ${n} mi`,
});
export const ads = (count: number, from = 1): Ad[] => Array.from({ length: count }, (_, index) => ad(from + index));
const each = (of: readonly Ad[], write: (one: Ad) => string): string => of.map(write).join('\n');
const href = ({ n }: Ad): string => `/ad/${n}`;

const card = (one: Ad, tag = 'div', more = ''): string =>
  `<${tag} class="card k${one.n % 3}" data-ad="${one.n}"><a href="${href(one)}"><img src="" alt=""></a><h3><a href="${href(one)}">${one.title}</a></h3><p class="price">${one.price}</p><p>${one.text}</p>${more}</${tag}>`;

const NAV = `<nav><ul><li><a href="/gear">Gear from $1</a></li><li><a href="/bikes">Bikes from $5</a></li><li><a href="/sofas">Sofas from $9</a></li><li><a href="/post">Post an ad, $0</a></li></ul></nav>`;
const FOOTER = `<footer><div><a href="/fee">Listing fee $2</a></div><div><a href="/boost">Boost an ad $3</a></div><div><a href="/shop">Shop account $9</a></div></footer>`;
const FILTERS = `<div class="f"><h4>Price</h4><ul><li><a href="?max=50">Under $50</a></li><li><a href="?max=100">$50 to $100</a></li><li><a href="?max=200">$100 – $200 (12)</a></li><li><a href="?min=200">Over $200</a></li></ul></div>`;
const RELATED = `<section><h2>Related searches</h2><ul><li><a href="/s/1">olympic plates $100</a></li><li><a href="/s/2">weight bench $50</a></li><li><a href="/s/3">squat rack $200</a></li></ul></section>`;
const frame = (main: string): string =>
  `${NAV}<header><a href="/">Quillbrook Notices</a> <a href="/cart">Cart $0.00</a></header>${main}${FOOTER}`;

const component = (one: Ad): string =>
  `<ad-card data-ad="${one.n}"><template shadowrootmode="open"><div><a href="${href(one)}"><h3>${one.title}</h3></a><span class="price">${one.price}</span><p>${one.text}</p></div></template></ad-card>`;

export interface Structure {
  readonly name: string;
  readonly html: string;
  /** How many ads are on it. */
  readonly count: number;
}

export const STRUCTURES: readonly Structure[] = [
  { name: 'grid of divs', count: 9, html: frame(`<main><div class="grid">${each(ads(9), (one) => card(one))}</div></main>`) },
  { name: 'list items', count: 8, html: frame(`<ul>${each(ads(8), (one) => card(one, 'li'))}</ul>`) },
  {
    name: 'rows of a table',
    count: 7,
    html: frame(
      `<table><thead><tr><th>Item</th><th>Price</th><th>Place</th></tr></thead><tbody>${each(ads(7), (one) => `<tr data-ad="${one.n}"><td><a href="${href(one)}">${one.title}</a></td><td>${one.price}</td><td>Quillbrook</td></tr>`)}</tbody></table><p><a href="?p=2">Next page</a></p>`,
    ),
  },
  {
    name: 'two rows of a table for each ad',
    count: 6,
    html: frame(
      `<table><tbody>${each(ads(6), (one) => `<tr data-ad="${one.n}"><td><a href="${href(one)}">${one.title}</a></td><td>Quillbrook</td></tr><tr data-ad="${one.n}"><td>${one.text}</td><td>${one.price}</td></tr>`)}</tbody></table>`,
    ),
  },
  {
    name: 'rows with link and price, each with a row of words behind it',
    count: 5,
    html: frame(
      `<table><tbody>${each(ads(5), (one) => `<tr data-ad="${one.n}"><td><a href="${href(one)}">${one.title}</a></td><td>${one.price}</td></tr><tr data-ad="${one.n}"><td colspan="2">${one.text}</td></tr>`)}</tbody></table>`,
    ),
  },
  {
    name: 'cells of a table as a grid',
    count: 6,
    html: frame(
      `<table>${[0, 3].map((from) => `<tr>${each(ads(3, from + 1), (one) => `<td data-ad="${one.n}"><a href="${href(one)}"><img src="" alt=""><b>${one.title}</b></a><br>${one.price}</td>`)}</tr>`).join('')}</table>`,
    ),
  },
  { name: 'articles', count: 5, html: frame(`<main>${each(ads(5), (one) => card(one, 'article'))}</main>`) },
  {
    name: 'wrappers about wrappers',
    count: 6,
    html: frame(
      `<div><div><div>${each(ads(6), (one) => `<div data-ad="${one.n}"><div><section>${card(one).replace(/ data-ad="\d+"/, '')}</section></div></div>`)}</div></div></div>`,
    ),
  },
  {
    name: 'rows of cards, the last with one',
    count: 7,
    html: frame(
      `<main>${[1, 4].map((from) => `<div class="row">${each(ads(3, from), (one) => `<div class="col">${card(one)}</div>`.replace(/<div class="col">(<div class="card k\d") data-ad="(\d+)"/, '<div class="col" data-ad="$2">$1'))}</div>`).join('')}<div class="row"><div class="col" data-ad="7">${card(ad(7)).replace(/ data-ad="\d+"/, '')}</div></div></main>`,
    ),
  },
  {
    name: 'rows of two cards',
    count: 6,
    html: frame(
      `<main>${[1, 3, 5].map((from) => `<div class="row">${each(ads(2, from), (one) => card(one))}</div>`).join('')}</main>`,
    ),
  },
  {
    name: 'columns of different height',
    count: 11,
    html: frame(
      `<main><div class="masonry">${[
        [1, 4],
        [5, 2],
        [7, 5],
      ]
        .map(([from = 1, count = 1]) => `<div class="column">${each(ads(count, from), (one) => card(one))}</div>`)
        .join('')}</div></main>`,
    ),
  },
  { name: 'web components with open shadow roots', count: 6, html: frame(`<main>${each(ads(6), component)}</main>`) },
  {
    name: 'a list in a shadow root, cards in its slot',
    count: 5,
    html: frame(
      `<result-list><template shadowrootmode="open"><div class="wrap"><slot></slot></div></template>${each(ads(5), (one) => card(one))}</result-list>`,
    ),
  },
  {
    name: 'featured blocks among the others, and a newsletter',
    count: 8,
    html: frame(
      `<ul>${each(ads(3), (one) => card(one, 'li', '<em>Sponsored</em>'))}<li><h4>Get new ads by mail</h4><p><a href="/mail">Sign up</a></p></li>${each(ads(5, 4), (one) => card(one, 'li', one.n === 6 ? '<div class="badge"><span>Top ad</span></div>' : ''))}</ul>`,
    ),
  },
  {
    name: 'two lists on one page',
    count: 9,
    html: frame(
      `<main><section><h2>Featured</h2><div>${each(ads(3), (one) => card(one, 'article'))}</div></section><section><h2>All ads</h2><ul>${each(ads(6, 4), (one) => `<li data-ad="${one.n}"><a href="${href(one)}">${one.title}</a> <b>${one.price}</b> <small>${one.text}</small></li>`)}</ul></section></main>`,
    ),
  },
  {
    name: 'links about whole cards',
    count: 6,
    html: frame(
      `<div>${each(ads(6), (one) => `<a data-ad="${one.n}" href="${href(one)}"><div><span>${one.title}</span></div><div><span>${one.price}</span> <span>${one.text}</span></div></a>`)}</div>`,
    ),
  },
  {
    name: 'terms and definitions',
    count: 5,
    html: frame(
      `<dl>${each(ads(5), (one) => `<dt data-ad="${one.n}"><a href="${href(one)}">${one.title}</a></dt><dd data-ad="${one.n}">${one.price}. ${one.text}</dd>`)}</dl>`,
    ),
  },
  {
    name: 'headings with paragraphs behind, all in one element',
    count: 5,
    html: frame(
      `<div><h1>Weights in Quillbrook</h1>${each(ads(5), (one) => `<h3 data-ad="${one.n}"><a href="${href(one)}">${one.title}</a></h3><p data-ad="${one.n}">${one.price}</p><p data-ad="${one.n}">${one.text}</p>`)}<div><a href="?p=2">More</a></div></div>`,
    ),
  },
  {
    name: 'a line for each ad',
    count: 8,
    html: frame(
      `<div><h2>Sporting goods</h2>${each(ads(8), (one) => `<p data-ad="${one.n}"><a href="${href(one)}">${one.title}</a> - ${one.price} (Quillbrook)</p>`)}</div>`,
    ),
  },
  {
    name: 'lines by the day',
    count: 8,
    html: frame(
      `<main>${[1, 5].map((from) => `<section><h2>Day ${from}</h2><ul>${each(ads(4, from), (one) => `<li data-ad="${one.n}"><a href="${href(one)}">${one.title} ${one.price}</a></li>`)}</ul></section>`).join('')}</main>`,
    ),
  },
  {
    name: 'between filters and related searches',
    count: 6,
    html: frame(`<div class="side">${FILTERS}</div><div class="list">${each(ads(6), (one) => card(one))}</div>${RELATED}`),
  },
  {
    name: 'some without a price, some for free',
    count: 6,
    html: frame(
      `<ul>${each(ads(6), (one) => card({ ...one, price: one.n === 2 ? 'Free' : one.n === 4 ? 'see text' : one.price }, 'li'))}</ul>`,
    ),
  },
  {
    name: 'prices in pieces, or figures that only their name tells',
    count: 6,
    html: frame(
      `<div>${each(ads(6), (one) => `<div data-ad="${one.n}"><h3><a href="${href(one)}">${one.title}</a></h3><div class="price">${one.n % 2 ? `<span>${40 + one.n}</span><sup>00</sup>` : `<span>$</span><span>${40 + one.n}</span>`}</div></div>`)}</div>`,
    ),
  },
  {
    name: 'choices inside each card',
    count: 4,
    html: frame(
      `<ul>${each(ads(4), (one) => card(one, 'li', '<div><a href="/buy">Take it now for $90</a></div><div><a href="/bid">Make an offer from $60</a></div><div><a href="/rent">Rent it for a week $9</a></div>'))}</ul>`,
    ),
  },
  {
    name: 'a row of featured cards as one item of the list',
    count: 9,
    html: frame(
      `<ul>${each(ads(4), (one) => card(one, 'li'))}<li><h4>Featured</h4><div>${each(ads(3, 5), (one) => card(one))}</div></li>${each(ads(2, 8), (one) => card(one, 'li'))}</ul>`,
    ),
  },
  {
    name: 'similar ads in an aside',
    count: 5,
    html: frame(
      `<main>${each(ads(5), (one) => card(one))}</main><aside>${each(ads(3, 20), (one) => card(one).replace(/ data-ad="\d+"/, ''))}</aside>`,
    ),
  },
  {
    name: 'German words',
    count: 4,
    html: frame(
      `<main>${each(ads(4), (one) => `<article data-ad="${one.n}"><h2><a href="${href(one)}">Hantelscheiben ${one.n} x 20 kg</a></h2><p>${one.n === 3 ? 'Zu verschenken' : `${one.n * 30} € VB`}</p></article>`)}</main>`,
    ),
  },
  {
    name: 'cards without headings, the price first, with links to seller and place',
    count: 6,
    html: frame(
      `<div role="list">${each(ads(6), (one) => `<div role="listitem" data-ad="${one.n}"><a href="${href(one)}" aria-label="${one.title}"><img src="" alt=""></a><div><div>${one.price}</div><div><a href="${href(one)}">${one.title}</a></div><div><a href="/place/1">Quillbrook</a> · <a href="/user/${one.n}">seller ${one.n}</a> · <a href="/save">Save</a></div></div></div>`)}</div>`,
    ),
  },
  {
    name: 'tables in tables',
    count: 5,
    html: `<table><tr><td colspan="2"><a href="/">Quillbrook board</a></td></tr><tr><td><table><tr><td><a href="/c/1">Barbells</a></td></tr><tr><td><a href="/c/2">Benches</a></td></tr></table></td><td>${each(ads(5), (one) => `<table data-ad="${one.n}"><tr><td><a href="${href(one)}"><b>${one.title}</b></a></td><td>${one.price}</td></tr><tr><td colspan="2">${one.text}</td></tr></table>`)}</td></tr></table>`,
  },
  {
    name: 'advertising and rules between the ads, inside a form',
    count: 8,
    html: frame(
      `<form action="/compare"><div>${each(ads(8), (one) => `${card(one)}<hr>${one.n % 3 === 0 ? '<div class="slot"><iframe src="about:blank"></iframe></div>' : ''}`)}</div></form>`,
    ),
  },
  {
    name: 'menus and footer that are plain elements',
    count: 6,
    html: `<div class="menu"><div><a href="/d/1">Deals under $20</a></div><div><a href="/d/2">Deals under $50</a></div><div><a href="/d/3">Free stuff</a></div></div><div class="page"><div class="results">${each(ads(6), (one) => card(one))}</div></div><div class="foot"><div><a href="/fees">Fees from $2</a></div><div><a href="/help">Help</a></div></div>`,
  },
  {
    name: 'picture and words side by side, no wrapper about the price',
    count: 5,
    html: frame(
      `<section>${each(ads(5), (one) => `<div data-ad="${one.n}"><a href="${href(one)}"><img src="" alt=""></a><div><a href="${href(one)}"><span>${one.title}</span></a> <strong>${one.price}</strong> <del>$999</del> plus $10 delivery</div></div>`)}</section>`,
    ),
  },
  {
    name: 'links, prices and places in one row of elements without any wrapper',
    count: 5,
    html: frame(
      `<div class="flat">${each(ads(5), (one) => `<a data-ad="${one.n}" href="${href(one)}">${one.title}</a><span data-ad="${one.n}">${one.price}</span><span data-ad="${one.n}">Quillbrook</span>`)}</div>`,
    ),
  },
  {
    name: 'a strip of other ads above the list, of another make',
    count: 9,
    html: frame(
      `<div class="strip">${each(ads(3), (one) => `<a data-ad="${one.n}" href="${href(one)}"><img src="" alt=""><span>${one.title}</span><b>${one.price}</b></a>`)}</div><main><ol>${each(ads(6, 4), (one) => card(one, 'li'))}</ol></main>`,
    ),
  },
  {
    name: 'an ad with other ads of the seller below it',
    count: 3,
    html: frame(
      `<main><h1>Olympic plates</h1><p class="price">$120</p><p>Four 45s, 2 inch holes.</p><section><h2>More from this seller</h2><div>${each(ads(3), (one) => card(one))}</div></section></main>`,
    ),
  },
  {
    name: 'prices said by a word behind the figure',
    count: 5,
    html: frame(`<ul>${each(ads(5), (one) => card({ ...one, price: `${40 + one.n} USD or best offer` }, 'li'))}</ul>`),
  },
  {
    name: 'no heading, no picture, a link behind all that only leads on',
    count: 5,
    html: frame(
      `<div>${each(ads(5), (one) => `<div data-ad="${one.n}"><div><div>${one.title}</div><div>Hardly used, cost $500 new</div><div><b>${one.price}</b><span>3.4 miles</span><a href="${href(one)}">View</a></div></div></div>`)}</div>`,
    ),
  },
  {
    name: 'terms of one short word',
    count: 5,
    html: frame(
      `<dl>${each(ads(5), (one) => `<dt data-ad="${one.n}"><a href="${href(one)}">${one.n % 2 ? 'BENCH' : 'BAR'}</a></dt><dd data-ad="${one.n}">${one.title}. ${one.price}.</dd>`)}</dl>`,
    ),
  },
  {
    name: 'ads viewed before, under a heading that says so, above the list',
    count: 6,
    html: frame(
      `<section><h2>Recently viewed</h2><div>${each(ads(4), (one) => `<div><a href="/seen/${one.n}"><img src="" alt=""><span>${one.title}</span><span>${one.price}</span></a></div>`)}</div></section><h1>Results</h1><ul>${each(ads(6), (one) => card(one, 'li'))}</ul>`,
    ),
  },
  {
    name: 'topics of a forum below those that are pinned and moved',
    count: 6,
    html: frame(
      `<table><tr><th>Topics</th><th>Replies</th></tr><tr><td>Sticky: <a href="/rules">Rules for selling, $5 rule</a></td><td>0</td></tr>${each(ads(6), (one) => `<tr data-ad="${one.n}"><td><a href="${href(one)}">${one.title}${one.n % 3 ? ` ${one.price}` : ''}</a></td><td>${one.n}</td></tr>`)}<tr><td>Moved: <a href="/old">Anyone squat in boots?</a></td><td>29</td></tr></table>`,
    ),
  },
  { name: 'two ads alone', count: 2, html: frame(`<main>${each(ads(2), (one) => card(one))}</main>`) },
];

const only = (name: string, html: string): Structure => ({ name, html, count: 0 });

export const NO_ADS: readonly Structure[] = [
  only('nothing but a frame', frame('<main><h1>Nothing found</h1><p>Try <a href="/all">all ads</a>.</p></main>')),
  only(
    'one ad',
    frame(
      '<main><h1>Olympic plates</h1><p class="price">$120</p><p>Four 45s. <a href="/seller/1">Seller</a></p><p>Also <a href="/ad/2">a bar for $80</a>.</p></main>',
    ),
  ),
  only('filters alone', frame(`<main>${FILTERS}</main>`)),
  only('related searches alone', frame(`<main>${RELATED}</main>`)),
  only(
    'a table of prices without links',
    '<table><tr><th>Plate</th><th>Price</th></tr><tr><td>45 lb iron plate</td><td>$60</td></tr><tr><td>35 lb iron plate</td><td>$50</td></tr><tr><td>25 lb iron plate</td><td>$35</td></tr></table>',
  ),
  only(
    'threads of a forum',
    '<ul><li><a href="/t/1">How straight is straight?</a> 12 replies</li><li><a href="/t/2">Washers as micro plates</a> 8 replies</li><li><a href="/t/3">Rust and oil</a> 40 replies</li></ul>',
  ),
  only(
    'an article that names prices',
    '<article><h1>What iron costs</h1><p>New iron is $2 a pound, says <a href="/a">a dealer</a>, and used iron $1.</p><p>Bumpers are $3 a pound; see <a href="/b">this table</a> for more.</p><h2>Bars</h2><p>A bar for $100 is <a href="/c">rarely straight</a>.</p></article>',
  ),
  only(
    'a shop basket and plans to pay by',
    '<main><h1>Choose a plan</h1><ul><li><h3>Basic</h3><p>$5 a month</p></li><li><h3>Plus</h3><p>$9 a month</p></li></ul><table><tr><td>Basket</td><td>$14</td></tr></table></main>',
  ),
  only(
    'comments that name prices',
    '<section><div class="c"><b>ann</b><p>I paid $100 for mine, and the holes were 53 mm, see <a href="/p/1">here</a> for a picture.</p></div><div class="c"><b>bo</b><p>That is $1 a pound, a fair price for rusty iron if you ask <a href="/u/2">me</a>.</p></div><div class="c"><b>cy</b><p>Mine were $80 last year, from the same man in Quillbrook, <a href="/p/3">photo</a> here.</p></div></section>',
  ),
  only('an empty body', ''),
];

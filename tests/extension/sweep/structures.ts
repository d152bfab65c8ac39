/**
 * Results pages as sites build them, all invented. `data-ad` marks what belongs to an ad, with its number; what finds the ads does not
 * look at it. `data-not` would be a mistake.
 */
import { ad, ads, card, component, each, FILTERS, frame, href, RELATED, type Structure } from './page-parts.ts';

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

/** What results pages are made of: ads, and what stands around them. All invented. */
export interface Ad {
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
export const each = (of: readonly Ad[], write: (one: Ad) => string): string => of.map(write).join('\n');
export const href = ({ n }: Ad): string => `/ad/${n}`;

export const card = (one: Ad, tag = 'div', more = ''): string =>
  `<${tag} class="card k${one.n % 3}" data-ad="${one.n}"><a href="${href(one)}"><img src="" alt=""></a><h3><a href="${href(one)}">${one.title}</a></h3><p class="price">${one.price}</p><p>${one.text}</p>${more}</${tag}>`;

const NAV = `<nav><ul><li><a href="/gear">Gear from $1</a></li><li><a href="/bikes">Bikes from $5</a></li><li><a href="/sofas">Sofas from $9</a></li><li><a href="/post">Post an ad, $0</a></li></ul></nav>`;
const FOOTER = `<footer><div><a href="/fee">Listing fee $2</a></div><div><a href="/boost">Boost an ad $3</a></div><div><a href="/shop">Shop account $9</a></div></footer>`;
export const FILTERS = `<div class="f"><h4>Price</h4><ul><li><a href="?max=50">Under $50</a></li><li><a href="?max=100">$50 to $100</a></li><li><a href="?max=200">$100 – $200 (12)</a></li><li><a href="?min=200">Over $200</a></li></ul></div>`;
export const RELATED = `<section><h2>Related searches</h2><ul><li><a href="/s/1">olympic plates $100</a></li><li><a href="/s/2">weight bench $50</a></li><li><a href="/s/3">squat rack $200</a></li></ul></section>`;
export const frame = (main: string): string =>
  `${NAV}<header><a href="/">Quillbrook Notices</a> <a href="/cart">Cart $0.00</a></header>${main}${FOOTER}`;

export const component = (one: Ad): string =>
  `<ad-card data-ad="${one.n}"><template shadowrootmode="open"><div><a href="${href(one)}"><h3>${one.title}</h3></a><span class="price">${one.price}</span><p>${one.text}</p></div></template></ad-card>`;

export interface Structure {
  readonly name: string;
  readonly html: string;
  /** How many ads are on it. */
  readonly count: number;
}

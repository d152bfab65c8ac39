/** A results page of many ads, for measuring: cards of some twenty elements each, in a grid. All invented. */
const GOODS = [
  'Iron plates, 4 x 45 lb',
  'Bumper plates, 2 x 35 lb',
  'Barbell, 7 ft, 45 lb',
  'Squat rack',
  'Olympic plates',
  'Flat bench, steel',
  'Pair of 25 lb plates',
];

const card = (
  n: number,
): string => `<article class="card"><div class="photo"><a href="/ad/${n}"><img alt=""></a><span class="badge">New</span></div>
<div class="body"><h3><a href="/ad/${n}">${GOODS[n % GOODS.length]} (${n})</a></h3><div class="price"><span>$${40 + (n % 90) * 5}</span> <del>$${400 + n}</del></div>
<ul><li><span>Quillbrook</span></li><li><span>${n % 40} mi</span></li><li><span>2 inch holes</span></li></ul><p>Kept in a dry shed, light rust on the edges. <b>Pick up only.</b></p><div><button>Save</button><button>Share</button></div></div></article>`;

export const manyAds = (count: number): string =>
  `<!doctype html><html lang="en"><title>Many</title><style>.grid{display:grid;grid-template-columns:repeat(3,1fr);gap:8px}.card{border:1px solid #999;padding:6px}ul{display:flex;gap:6px}</style><body><nav><a href="/">Home</a></nav><main class="grid">${Array.from({ length: count }, (_, n) => card(n + 1)).join('\n')}</main></body></html>`;

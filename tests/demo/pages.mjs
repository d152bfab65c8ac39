/** Pages of the demo board: an invented notice board of an invented town. What stands around the ads is on purpose: navigation, neighbours, notices. */

const escapeHtml = (text) => text.replace(/[&<>"]/g, (sign) => `&#${sign.codePointAt(0)};`);

const PICTURES = {
  plate: '<circle cx="50" cy="30" r="24"/><circle cx="50" cy="30" r="5"/><circle cx="50" cy="30" r="17"/>',
  bar: '<path d="M8 30h84M22 22v16M26 22v16M74 22v16M78 22v16"/>',
  rack: '<path d="M34 56V6h32v50M28 56h44M34 24h32"/>',
  bench: '<path d="M14 30h72v6H14zM24 36v18M76 36v18"/>',
  other: '<path d="M30 20h40l8 34H22zM38 20c0-14 24-14 24 0"/>',
};

const picture = (kind) =>
  `<svg viewBox="0 0 100 60" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2">${PICTURES[kind]}</svg>`;

const price = (ad) => (ad.price === '' ? '' : `<p class="price">${escapeHtml(ad.price)}</p>`);

const frame = (board, title, body) => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${escapeHtml(title)}</title>
<link rel="stylesheet" href="/board.css">
<link rel="icon" href="data:,">
</head>
<body>
<header class="top">
<a class="board" href="/">${escapeHtml(board.name)}</a>
<nav aria-label="Sections"><ul><li><a href="/">Sport and iron</a></li><li><a href="/about">How the board works</a></li></ul></nav>
</header>
${body}
<footer class="foot">
<p>${escapeHtml(board.name)} of ${escapeHtml(board.town)}, an invented town. Nothing here is for sale. 20 ads a month are free, then $2 each.</p>
</footer>
<dialog class="cookies" open aria-label="About cookies">
<p>This board keeps one cookie, and would keep 45 if it were a real one.</p>
<form method="dialog"><button>Understood</button></form>
</dialog>
</body>
</html>
`;

/** The results page: one card for each ad. */
export const resultsPage = (board) =>
  frame(
    board,
    `Sport and iron, ${board.town}`,
    `<main class="wide">
<h1>Sport and iron in ${escapeHtml(board.town)}</h1>
<p>${board.ads.length} notices, newest first.</p>
<ul class="grid">
${board.ads
  .map(
    (ad) => `<li class="card">
${picture(ad.picture)}
<h2><a href="/ad/${ad.id}">${escapeHtml(ad.title)}</a></h2>
${price(ad)}
<p class="place">${escapeHtml(ad.place)} · ${escapeHtml(ad.posted)}</p>
</li>`,
  )
  .join('\n')}
</ul>
</main>`,
  );

/** One ad with its body as the seller's HTML, and three neighbours beside it, with prices of their own. */
export function adPage(board, ad, body) {
  const at = board.ads.indexOf(ad);
  const neighbours = [1, 4, 7].map((step) => board.ads[(at + step) % board.ads.length]);
  return frame(
    board,
    `${ad.title}, ${ad.place}`,
    `<div class="wide columns">
<main>
<div class="ad">
${body}
</div>
</main>
<aside aria-label="More notices">
<h2>More notices</h2>
<ul>
${neighbours.map((other) => `<li><a href="/ad/${other.id}">${escapeHtml(other.title)}</a> ${escapeHtml(other.price)}</li>`).join('\n')}
</ul>
<p>Meet in a public place, bring a tape and a friend, pay when you have seen it.</p>
</aside>
</div>`,
  );
}

export const aboutPage = (board) =>
  frame(
    board,
    'How the board works',
    `<main class="wide"><h1>How the board works</h1>
<p>Write your notice, name a price, leave a number. It stays up for four weeks.</p>
<p>This board is a demonstration: the town, the notices and the sellers are invented.</p></main>`,
  );

export const missingPage = (board) =>
  frame(
    board,
    'Not here',
    '<main class="wide"><h1>Not here</h1><p>That notice has been taken down. <a href="/">Back to the board</a></p></main>',
  );

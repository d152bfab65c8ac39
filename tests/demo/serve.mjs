/**
 * The demo board on the loopback address: `node tests/demo/serve.mjs [port]`, or `serve()` from a test.
 * Pages carry a strict content policy, as careful sites do, so that whatever runs beside them is tried under one.
 */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';
import { aboutPage, adPage, missingPage, resultsPage } from './pages.mjs';

const file = (path) => readFileSync(new URL(path, import.meta.url), 'utf8');

const HEADERS = {
  'content-security-policy':
    "default-src 'none'; style-src 'self'; img-src 'self' data:; frame-src 'self'; frame-ancestors 'self'; form-action 'self'; base-uri 'none'",
  'x-content-type-options': 'nosniff',
  'cache-control': 'no-store',
};

/** Every address of the board and what it answers. */
function contents() {
  const board = JSON.parse(file('board.json'));
  const html = (body) => ({ type: 'text/html; charset=utf-8', body });
  const answers = new Map([
    ['/', html(resultsPage(board))],
    ['/about', html(aboutPage(board))],
    ['/board.css', { type: 'text/css; charset=utf-8', body: file('board.css') }],
    ['/frames/school-plates', html(file('frames/school-plates.html'))],
  ]);
  for (const ad of board.ads) answers.set(`/ad/${ad.id}`, html(adPage(board, ad, file(`ads/${ad.id}.html`))));
  return { board, answers, missing: html(missingPage(board)) };
}

/** Serves on 127.0.0.1; port 0 takes a free one. `ads` are in the order of the results page. */
export async function serve({ port = 0 } = {}) {
  const { board, answers, missing } = contents();
  const server = createServer((request, response) => {
    const found = answers.get((request.url ?? '/').split(/[?#]/)[0]);
    const { type, body } = found ?? missing;
    response.writeHead(found ? 200 : 404, { ...HEADERS, 'content-type': type });
    response.end(request.method === 'HEAD' ? undefined : body);
  });
  await new Promise((done, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', done);
  });
  const url = `http://127.0.0.1:${server.address().port}/`;
  return {
    url,
    ads: board.ads.map(({ id, title }) => ({ id, title, url: `${url}ad/${id}` })),
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const board = await serve({ port: Number(process.argv[2] ?? 0) });
  console.log(`The demo board is at ${board.url} with ${board.ads.length} notices. Ctrl+C ends it.`);
}

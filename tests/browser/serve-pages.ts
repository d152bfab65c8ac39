/** Serves the fixtures of tests/browser/pages on loopback; `?strict` adds the strictest content security policy that still shows them. */
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { basename } from 'node:path';
import { manyAds } from './many-ads.ts';

const PAGES = new URL('pages/', import.meta.url);
const STRICT =
  "default-src 'none'; style-src 'sha256-none'; script-src 'none'; frame-src 'none'; base-uri 'none'; form-action 'none'";

export interface PageServer {
  address(page: string): string;
  /** What was asked for otherwise than by going to it. The pages want nothing more, so a script did; browsers ask for an icon by themselves. */
  readonly unasked: readonly string[];
  close(): Promise<void>;
}

export async function servePages(): Promise<PageServer> {
  const unasked: string[] = [];
  const server = createServer((request, response) => {
    const { pathname, searchParams } = new URL(request.url ?? '/', 'http://loopback');
    if (request.headers['sec-fetch-mode'] !== 'navigate' && pathname !== '/favicon.ico')
      unasked.push(`${request.method} ${request.url}`);
    void (async () => {
      const content =
        pathname === '/long'
          ? `<p>${'Nothing but words. '.repeat(60_000)}</p>`
          : pathname === '/many'
            ? manyAds(200)
            : await readFile(new URL(basename(pathname), PAGES), 'utf8').catch(() => null);
      response.setHeader('content-type', 'text/html; charset=utf-8');
      if (searchParams.has('strict')) response.setHeader('content-security-policy', STRICT);
      response.writeHead(content === null ? 404 : 200).end(content ?? '');
    })();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: (page) => `http://127.0.0.1:${port}/${page}`,
    unasked,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

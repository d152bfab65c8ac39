/** Serves the hostile pages on loopback, and writes down what should never have been asked for. */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { adPage, HIT, type HostileCase, MARKUP } from './case.ts';

export interface HostileServer {
  readonly normal: string;
  address(one: HostileCase): string;
  /** Requests that only code out of an ad's words could have made, and reports of breaches of policy. */
  readonly hits: string[];
  close(): Promise<void>;
}

const NORMAL = adPage().replaceAll('Olympic plates', 'Ordinary plates');

export async function serveHostile(cases: readonly HostileCase[]): Promise<HostileServer> {
  const hits: string[] = [];
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://loopback');
    const port = String((server.address() as AddressInfo).port);
    if (pathname.startsWith(HIT)) {
      hits.push(request.url ?? '');
      return void response.writeHead(204).end();
    }
    const one = cases[Number(/^\/case\/(\d+)/.exec(pathname)?.[1] ?? -1)];
    const found = one ? (typeof one.body === 'function' ? one.body() : one.body) : pathname === '/normal' ? NORMAL : null;
    response.setHeader('content-type', `${one?.type ?? 'text/html'}; charset=utf-8`);
    for (const [name, value] of Object.entries(one?.headers ?? {})) response.setHeader(name, value);
    response.writeHead(found === null ? 404 : 200).end(found?.replaceAll('PORT', port) ?? '');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  return {
    normal: `${base}/normal`,
    address: (one) =>
      `${base}/case/${cases.indexOf(one)}${one.name.includes('in the address') ? `?q=${encodeURIComponent(MARKUP)}&r=<script>#${MARKUP}` : ''}`,
    hits,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

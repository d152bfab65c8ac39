import { createServer } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';

export interface Outsider {
  /** Proxy address to hand to launchChromium or launchFirefox. */
  readonly proxy: string;
  /** Everything that asked to leave the machine so far: "GET http://…" or "CONNECT host:port". */
  readonly asked: readonly string[];
  close(): Promise<void>;
}

/**
 * A proxy on loopback that lets nothing through and writes down who asked. Browsers keep loopback addresses off a proxy,
 * so what shows up here is exactly what would have left the machine.
 */
export async function startOutsideWatch(): Promise<Outsider> {
  const asked: string[] = [];
  const sockets = new Set<Socket>();
  const server = createServer((request, response) => {
    asked.push(`${request.method} ${request.url}`);
    response.writeHead(502).end();
  });
  server.on('connect', (request, socket) => {
    asked.push(`CONNECT ${request.url}`);
    socket.end('HTTP/1.1 502 Bad Gateway\r\n\r\n');
  });
  server.on('connection', (socket) => {
    sockets.add(socket);
    socket.once('close', () => sockets.delete(socket));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    proxy: `http://127.0.0.1:${port}`,
    asked,
    close: () =>
      new Promise((resolve) => {
        for (const socket of sockets) socket.destroy();
        server.close(() => resolve());
      }),
  };
}

/** The solver's worker as built, in real browsers: it starts under the extension's content security policy, and gives the answer Node gives. */
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { buyProgram } from '../../src/kit/buy-list/program.ts';
import { madeMarket } from '../tools/buy-list/markets.ts';
import { highsSolver } from '../tools/buy-list/solvers.ts';
import { buildOf } from './driver/find.ts';
import { type Display, launchChromium, launchFirefox, openPanelInTab, startDisplay } from './driver/index.ts';

const { program } = buyProgram(madeMarket(7, { offers: 60 }), { least: 'cost' });
let display: Display;
beforeAll(async () => {
  display = await startDisplay();
});
afterAll(() => display.close());

/** Starts the worker in a page and has it solve the program; gives its answer, or what it says instead. */
const solvedIn = (page: Page): Promise<unknown> =>
  page.evaluate(
    (asked) =>
      new Promise((resolve) => {
        const worker = new Worker('solver-worker.js', { type: 'module' });
        worker.addEventListener('message', ({ data }) => resolve(data));
        worker.addEventListener('error', ({ message }) => resolve({ broken: message }));
        worker.postMessage({ id: 1, program: asked });
        setTimeout(() => resolve('no answer'), 20_000);
      }),
    program,
  );

async function expected() {
  const solution = await (await highsSolver())(program);
  if (solution.status !== 'optimal') throw new Error('the market has no list');
  return { id: 1, solution: { status: 'optimal', objective: expect.closeTo(solution.objective, 3) } };
}

it('solves in a page of the extension in Chromium', async () => {
  const { browser } = await launchChromium({ display });
  try {
    expect(await solvedIn(await openPanelInTab(browser))).toMatchObject(await expected());
  } finally {
    await browser.close();
  }
});

/** The debugging protocol does not reach Firefox's extension pages: the same file is served under the same policy instead. */
function serveWorker(): Promise<Server> {
  const folder = buildOf('firefox');
  const { content_security_policy: policy } = JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8'));
  const server = createServer(({ url }, response) => {
    response.setHeader('Content-Security-Policy', policy.extension_pages);
    const script = url === '/solver-worker.js';
    response.setHeader('Content-Type', script ? 'text/javascript' : 'text/html');
    response.end(script ? readFileSync(join(folder, 'solver-worker.js')) : '<!doctype html><title>Solver</title>');
  });
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}

it('solves under the extension policy in Firefox', async () => {
  const server = await serveWorker();
  const { browser } = await launchFirefox({ display });
  try {
    const page = await browser.newPage();
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    expect(await solvedIn(page)).toMatchObject(await expected());
  } finally {
    await browser.close();
    server.close();
  }
});

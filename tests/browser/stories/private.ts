/**
 * What could want something from outside and is not in the stories: each screen of the Workshop with its parts, the notices, the solver. What
 * asks for another machine is seen by the proxy (`outside`); what asks for this one by the server of the pages (`unasked`), and no other server
 * is there to be asked.
 */
import type { Page } from 'puppeteer-core';
import { expect } from 'vitest';
import { SCREENS } from '../../../extension/workshop/screens.ts';
import { buyProgram } from '../../../src/kit/buy-list/program.ts';
import { madeMarket } from '../../tools/buy-list/markets.ts';
import { highsSolver } from '../../tools/buy-list/solvers.ts';
import { goToOwn, openOwn } from '../driver/index.ts';
import type { Stage } from './stage.ts';

/** Screens that hold others, which no entry of the list names. */
const PARTS = ['kit/loads', 'kit/platform'];

const { program } = buyProgram(madeMarket(7, { offers: 60 }), { least: 'cost' });

/** Starts the solver's worker as built, under the extension's policy, and has it solve the program; gives its answer, or what it says instead. */
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

async function solvedInNode() {
  const solution = await (await highsSolver())(program);
  if (solution.status !== 'optimal') throw new Error('the market has no list');
  return { id: 1, solution: { status: 'optimal', objective: expect.closeTo(solution.objective, 3) } };
}

/** Opens every screen by its address, and has the solver's worker solve: it gives the answer that Node gives. */
export async function everyScreenOnce({ launched }: Stage): Promise<void> {
  const page = await openOwn(launched, 'workshop.html', 1200);
  expect(SCREENS.length).toBeGreaterThan(5);
  for (const id of [...SCREENS.map((screen) => screen.id), ...PARTS]) {
    await goToOwn(launched, page, `workshop.html#${id}`);
    await page.waitForFunction(() => (document.querySelector('main')?.textContent ?? '').length > 40);
    // What says that a screen could not be opened is longer than that too.
    expect(await page.$$eval('main [role="alert"]', (alerts) => alerts.map((alert) => alert.textContent)), id).toEqual([]);
  }
  expect(await solvedIn(page)).toMatchObject(await solvedInNode());
  await goToOwn(launched, page, 'NOTICES.txt');
  expect(await page.evaluate(() => document.body.textContent)).toContain('preact');
  await page.close();
}

/** Nothing has left the machine, and the extension's own pages could not have it leave; a page of the web can, so the watch works. */
export async function askedNothing({ launched, outside, page, server }: Stage): Promise<void> {
  expect(outside.asked).toEqual([]);
  expect(server.unasked).toEqual([]);
  const own = await openOwn(launched, 'workshop.html#settings', 1200);
  const reached = await own.evaluate(() =>
    fetch('http://from-the-extension.invalid/', { mode: 'no-cors' }).then(
      () => 'reached',
      () => 'refused',
    ),
  );
  await own.close();
  expect(reached).toBe('refused');
  expect(outside.asked).toEqual([]);
  await page.bringToFront();
  await page.goto(server.address('ad.html'));
  await page.evaluate(() =>
    Promise.all(['http://elsewhere.invalid/', 'ad.html'].map((address) => fetch(address, { mode: 'no-cors' }).catch(() => null))),
  );
  expect(outside.asked.join()).toContain('elsewhere.invalid');
  expect(server.unasked).toEqual(['GET /ad.html']);
}

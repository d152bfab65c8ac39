/** Everything that could want something from outside: each screen of the Workshop, a place list, the solver, the notices. */
import { expect } from 'vitest';
import { SCREENS } from '../../../extension/workshop/screens.ts';
import { goToOwn, openOwn } from '../driver/index.ts';
import type { Stage } from './stage.ts';

/** Opens every screen by its address, and starts the solver's worker. */
export async function everyScreenOnce({ launched }: Stage): Promise<void> {
  const page = await openOwn(launched, 'workshop.html', 1200);
  expect(SCREENS.length).toBeGreaterThan(5);
  for (const { id } of SCREENS) {
    await goToOwn(launched, page, `workshop.html#${id}`);
    await page.waitForFunction(() => (document.querySelector('main')?.textContent ?? '').length > 40);
  }
  const answered = await page.evaluate(
    () =>
      new Promise((resolve) => {
        const worker = new Worker('solver-worker.js', { type: 'module' });
        worker.onmessage = () => resolve(true);
        worker.onerror = ({ message }) => resolve(message);
        worker.postMessage({ id: 1, program: null });
        setTimeout(() => resolve('no answer'), 20_000);
      }),
  );
  expect(answered).not.toBe('no answer');
  await page.close();
}

/** Nothing has left the machine, and the extension's own pages could not have it leave; a page of the web can, so the watch works. */
export async function askedNothing({ launched, outside, page, server }: Stage): Promise<void> {
  expect(outside.asked).toEqual([]);
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
  await page.evaluate(() => fetch('http://elsewhere.invalid/', { mode: 'no-cors' }).catch(() => null));
  expect(outside.asked.join()).toContain('elsewhere.invalid');
}

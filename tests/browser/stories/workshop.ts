/** The Workshop's screens on the browser's own database. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect } from 'vitest';
import { goToOwn, openOwn, typeInto, waitUntilStored } from '../driver/index.ts';
import { keepText, OUT, type Stage } from './stage.ts';

/** Pickup: one hole measured turns the price. Weigh, Rates and Settings: what is typed is there after the page was left. */
export async function throughTheScreens(stage: Stage): Promise<void> {
  const { launched } = stage;
  await keepText(stage, 'Garage lot: 4 x 45 lb olympic plates, 2 x 25 lb, cast iron, $190 for all');
  const page = await openOwn(launched, 'workshop.html#finds', 1200);
  await typeInto(page, '[data-path="words"]', 'garage lot');
  await page.waitForFunction(() => document.querySelectorAll('[data-find]').length === 1);
  const find = await page.$eval('[data-find]', (row) => row.getAttribute('data-find'));

  await goToOwn(launched, page, `workshop.html#pickup/${find}`);
  await page.waitForSelector('.pickup-step');
  const before = await page.$eval('.price-now', ({ textContent }) => textContent);
  await typeInto(page, '[data-path="plate-1.boreMm"]', '54.5\t');
  await page.waitForFunction((was) => document.querySelector('.price-now')?.textContent !== was, {}, before);
  await page.screenshot({ path: `${OUT}/pickup-${stage.name}.png` });
  await waitUntilStored(page, '"value":54.5');

  await goToOwn(launched, page, 'workshop.html#weigh');
  await typeInto(page, '[data-path=weighings]', '46.2 44.8 45.1 45.9');
  await page.waitForSelector('[data-pair]');
  // 46.2 with 45.9 and 45.1 with 44.8: no other pairing leaves less between the two of a pair.
  expect(await page.$$('[data-pair]')).toHaveLength(2);

  await goToOwn(launched, page, 'workshop.html#rates');
  await (await page.waitForSelector('[data-change="rates.iron.used"]'))?.click();
  await typeInto(page, '[data-path="rates.iron.used.likely"]', '0.60\t');
  await page.waitForSelector('[data-put-back="rates.iron.used"]');
  await waitUntilStored(page, '"likely":0.6');

  await goToOwn(launched, page, 'workshop.html#settings');
  await typeInto(page, '[data-path="perMile"]', '0.33\t');
  await page.waitForFunction(() => /0\.33/.test((document.querySelector('[data-path="perMile"]') as HTMLInputElement).value));
  await waitUntilStored(page, '"perMile":0.33');

  // Everything again, from what was stored.
  await goToOwn(launched, page, 'workshop.html#settings');
  await page.waitForFunction(() =>
    /0\.33/.test((document.querySelector('[data-path="perMile"]') as HTMLInputElement | null)?.value ?? ''),
  );
  await goToOwn(launched, page, 'workshop.html#rates');
  await page.waitForFunction(() => document.querySelector('[data-cell="rates.iron.used"] strong')?.textContent === '$0.60');
  await page.click('[data-put-back="rates.iron.used"]');
  await page.waitForFunction(() => !document.querySelector('[data-put-back="rates.iron.used"]'));
  await goToOwn(launched, page, `workshop.html#pickup/${find}`);
  await page.waitForFunction(
    () => (document.querySelector('[data-path="plate-1.boreMm"]') as HTMLInputElement)?.value === '54.5',
  );
  await page.close();
}

/** The file that the browser put down, when it is whole. */
async function downloaded({ downloads }: Stage, name: RegExp): Promise<string> {
  for (let waits = 0; waits < 200; waits += 1) {
    const file = (await readdir(downloads)).find((one) => name.test(one));
    const text = file === undefined ? '' : await readFile(join(downloads, file), 'utf8');
    if (file !== undefined && text !== '') return join(downloads, file);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`nothing like ${name} was put down; there is ${(await readdir(downloads)).join()}`);
}

/** Everything out as a file of the browser's own making, and in again. */
export async function outAndIn(stage: Stage): Promise<void> {
  await keepText(stage, 'Before the export: 2 x 45 lb olympic plates, cast iron, $70');
  const page = await openOwn(stage.launched, 'workshop.html#settings', 1200);
  await (await page.waitForSelector('[data-export]'))?.click();
  const path = await downloaded(stage, /^ironsift-\d{4}-\d\d-\d\d\.json$/);
  const finds = JSON.parse(await readFile(path, 'utf8')).finds as { find: { title: string } }[];
  expect(finds.map(({ find }) => find.title).join('\n')).toContain('Before the export');
  await page.click('[data-export-csv]');
  expect(await readFile(await downloaded(stage, /\.csv$/), 'utf8')).toContain('Before the export');

  const field = (await page.$('[data-path="import"]')) as { uploadFile(file: string): Promise<void> } | null;
  await field?.uploadFile(path);
  await page.waitForSelector('[data-preview]');
  await page.click('[data-import] [data-take]');
  await page.waitForFunction(() => !document.querySelector('[data-preview]') && document.querySelector('[data-import] [role]'));
  expect(await page.$('[data-import] [role="alert"]')).toBeNull();
  await page.close();
}

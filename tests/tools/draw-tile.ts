/** Draws docs/pictures/tile.png, 440 by 280, of the icon's drawing. A part of `npm run pictures`. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { TILE } from './picture-names.ts';

export async function drawTile(browser: Browser, root: string): Promise<void> {
  const page = await browser.newPage();
  await page.setViewport({ width: 440, height: 280 });
  await page.setContent(`<!doctype html><style>
    body { margin: 0; height: 280px; display: grid; grid-template-columns: 150px 1fr; align-items: center; gap: 22px;
      box-sizing: border-box; padding: 0 34px; background: #fcfcfb; color: #1d1f20; font: 21px/1.3 sans-serif }
    svg { width: 150px } h1 { margin: 0 0 8px; font-size: 39px } p { margin: 0 }
  </style>${readFileSync(join(root, 'extension/icons/icon.svg'), 'utf8')}
  <div><h1>Ironsift</h1><p>What used iron really costs a pound</p></div>`);
  await page.screenshot({ path: join(root, 'docs/pictures', TILE) as `${string}.png` });
  await page.close();
}

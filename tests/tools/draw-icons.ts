/** Draws extension/icons/icon-*.png from icon.svg with the browser. Run by hand when the drawing changes: `node tests/tools/run.mjs tests/tools/draw-icons.ts`. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import puppeteer from 'puppeteer-core';
import { findBrowser } from '../browser/driver/find.ts';

const folder = resolve('extension/icons');
const drawing = readFileSync(join(folder, 'icon.svg'), 'utf8');
const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
const browser = await puppeteer.launch({ executablePath: findBrowser('chromium') ?? '', args });
const page = await browser.newPage();
for (const size of [16, 32, 48, 128]) {
  await page.setViewport({ width: size, height: size });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${drawing}`);
  await page.screenshot({ path: `${folder}/icon-${size}.png`, omitBackground: true });
}
await browser.close();

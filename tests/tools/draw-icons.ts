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
/** The edge around the drawing: the largest is shown in stores, and Chrome's asks for 96 px of picture within it (from memory). */
const EDGES = { 16: 0, 32: 0, 48: 0, 128: 16 };
for (const [name, edge] of Object.entries(EDGES)) {
  const size = Number(name);
  await page.setViewport({ width: size, height: size });
  await page.setContent(`<style>body{margin:${edge}px}svg{display:block}</style>${drawing}`);
  await page.$eval('svg', (svg, side) => svg.setAttribute('width', `${side}`), size - 2 * edge);
  await page.screenshot({ path: `${folder}/icon-${size}.png`, omitBackground: true });
}
await browser.close();

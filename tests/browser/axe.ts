/** What the accessibility checker axe-core finds on a page, each with where it stands. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'puppeteer-core';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

export async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(await readFile(AXE, 'utf8'));
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
    const found = await axe.run(document);
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' | ')}`);
  });
}

/** What the accessibility checker axe-core finds on a page, each with where it stands. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'puppeteer-core';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** `except` names rules that mean nothing where the page is shown. */
export async function violations(page: Page, except: readonly string[] = []): Promise<readonly string[]> {
  await page.evaluate(await readFile(AXE, 'utf8'));
  return page.evaluate(async (disabled) => {
    const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
    const found = await axe.run(document, { rules: Object.fromEntries(disabled.map((id) => [id, { enabled: false }])) });
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' | ')}`);
  }, except);
}

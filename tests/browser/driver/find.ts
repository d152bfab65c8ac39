import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export { findBrowser } from '../../tools/find-browser.mjs';

export type BrowserName = import('../../tools/find-browser.mjs').BrowserName;

const ROOT = resolve(fileURLToPath(new URL('../../..', import.meta.url)));

/** Folder of the built extension. Throws when it has not been built. */
export function buildOf(target: 'chrome' | 'firefox'): string {
  const folder = join(ROOT, 'dist', target);
  if (!existsSync(join(folder, 'manifest.json'))) throw new Error(`${folder} is missing: run \`npm run build\` first`);
  return folder;
}

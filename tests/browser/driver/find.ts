import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export type BrowserName = 'chromium' | 'firefox';

const ROOT = resolve(fileURLToPath(new URL('../../..', import.meta.url)));

/** Builds that load an extension from the command line come first; branded ones that may refuse it come last. */
const NAMES: Record<BrowserName, readonly string[]> = {
  chromium: [
    'chromium',
    'chromium-browser',
    'google-chrome-for-testing',
    'google-chrome',
    'google-chrome-stable',
    'microsoft-edge',
    'chrome',
  ],
  firefox: ['firefox-esr', 'firefox', 'firefox-developer-edition'],
};
const PLACES: Record<BrowserName, readonly string[]> = {
  chromium: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:\\Program Files\\Chromium\\Application\\chrome.exe',
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
  firefox: ['/Applications/Firefox.app/Contents/MacOS/firefox', 'C:\\Program Files\\Mozilla Firefox\\firefox.exe'],
};

const runs = (path: string): boolean => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** Path of an installed browser, or null. IRONSIFT_CHROMIUM and IRONSIFT_FIREFOX name one outright. */
export function findBrowser(name: BrowserName): string | null {
  const named = process.env[`IRONSIFT_${name.toUpperCase()}`];
  if (named !== undefined && named !== '') return runs(named) ? named : null;
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = NAMES[name].flatMap((file) => folders.map((folder) => join(folder, file)));
  return [...onPath, ...PLACES[name]].find(runs) ?? null;
}

/** Folder of the built extension. Throws when it has not been built. */
export function buildOf(target: 'chrome' | 'firefox'): string {
  const folder = join(ROOT, 'dist', target);
  if (!existsSync(join(folder, 'manifest.json'))) throw new Error(`${folder} is missing: run \`npm run build\` first`);
  return folder;
}

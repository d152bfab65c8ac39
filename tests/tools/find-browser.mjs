// @ts-check
/** Where a browser is on this machine. Plain Node: `needs.mjs` asks before any package is installed. */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** @typedef {'chromium' | 'firefox'} BrowserName */

/**
 * Builds that load an extension from the command line come first; branded ones that may refuse it come last.
 * @type {Record<BrowserName, readonly string[]>}
 */
const NAMES = {
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
/** @type {Record<BrowserName, readonly string[]>} */
const PLACES = {
  chromium: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:\\Program Files\\Chromium\\Application\\chrome.exe',
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
  firefox: ['/Applications/Firefox.app/Contents/MacOS/firefox', 'C:\\Program Files\\Mozilla Firefox\\firefox.exe'],
};

const runs = (/** @type {string} */ path) => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/**
 * Where these programs are on the path, in the order in which they are named.
 * @param {readonly string[]} commands
 */
export function onPath(commands) {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return commands.flatMap((command) => folders.map((folder) => join(folder, command))).filter(runs);
}

/**
 * Path of an installed browser, or null. IRONSIFT_CHROMIUM and IRONSIFT_FIREFOX name one outright; one that is not there is not made up for.
 * @param {BrowserName} name
 * @returns {string | null}
 */
export function findBrowser(name) {
  const named = process.env[`IRONSIFT_${name.toUpperCase()}`];
  if (named !== undefined && named !== '') return runs(named) ? named : null;
  return [...onPath(NAMES[name]), ...PLACES[name].filter(runs)][0] ?? null;
}

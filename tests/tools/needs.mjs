// @ts-check
/** What the browser tests and the demo need from the machine, and whether it is there. Plain Node: runs before any package is installed. */
import { accessSync, constants, existsSync, readdirSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** @typedef {{ what: string, commands: string[], debian: string }} Need any one of `commands` will do */

/** @type {Need} */
const CHROMIUM = {
  what: 'Chromium',
  commands: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'],
  debian: 'chromium',
};
/** @type {Need[]} */
const SCREEN = [
  { what: 'Xvfb (a virtual screen)', commands: ['Xvfb'], debian: 'xvfb' },
  { what: 'openbox (a window manager)', commands: ['openbox'], debian: 'openbox' },
  { what: 'xdotool (real key presses)', commands: ['xdotool'], debian: 'xdotool' },
  { what: 'ImageMagick (pictures of the screen)', commands: ['import'], debian: 'imagemagick' },
];
/** @type {Need[]} */
const FIREFOX = [{ what: 'Firefox', commands: ['firefox-esr', 'firefox'], debian: 'firefox-esr' }];

const onPath = (/** @type {string} */ command) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, command), constants.X_OK);
      return folder !== '';
    } catch {
      return false;
    }
  });

const outsidePath = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

const there = (/** @type {Need} */ need) =>
  need.commands.some(onPath) ||
  (need === CHROMIUM && [process.env.IRONSIFT_CHROMIUM ?? '', ...outsidePath].some((path) => path !== '' && existsSync(path)));

export const onDebian = () => existsSync('/etc/os-release') && /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'));

/** A machine without any font shows boxes in every screenshot. */
const hasFonts = () =>
  ['/usr/share/fonts/truetype', '/usr/share/fonts/opentype'].some((f) => existsSync(f) && readdirSync(f).length > 0);

/**
 * What is missing here for the tests ("test") or the demo ("start").
 * @param {'test' | 'start'} purpose
 * @returns {Need[]}
 */
export function missingNeeds(purpose) {
  const seen = purpose === 'start' && process.env.DISPLAY;
  const wanted =
    process.platform === 'linux' && !seen ? [CHROMIUM, ...SCREEN, ...(purpose === 'test' ? FIREFOX : [])] : [CHROMIUM];
  const missing = wanted.filter((need) => !there(need));
  const fonts = onDebian() && !hasFonts() ? [{ what: 'a font', commands: [], debian: 'fonts-liberation' }] : [];
  return [...missing, ...fonts];
}

/** Why the browser tests can't run on this machine; null when they can. */
export function whyNoBrowserTests() {
  if (process.platform !== 'linux') return 'they need Linux, for the virtual screen and the real key presses';
  const missing = missingNeeds('test');
  return missing.length === 0 ? null : `missing: ${missing.map(({ what }) => what).join(', ')}`;
}

// @ts-check
/** What the browser tests and the demo need from the machine, and whether it is there. Plain Node: runs before any package is installed. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { findBrowser, onPath } from './find-browser.mjs';

/** @typedef {{ what: string, there: () => boolean, debian: string }} Need */

/** @type {Need} */
const CHROMIUM = { what: 'Chromium', there: () => findBrowser('chromium') !== null, debian: 'chromium' };
/** @type {Need} */
const FIREFOX = { what: 'Firefox', there: () => findBrowser('firefox') !== null, debian: 'firefox-esr' };
/** The demo on a display is shown in either. @type {Need} */
const EITHER = { what: 'Chromium or Firefox', there: () => CHROMIUM.there() || FIREFOX.there(), debian: 'chromium' };

const program = (/** @type {string} */ what, /** @type {string} */ command, /** @type {string} */ debian) => ({
  what,
  there: () => onPath([command]).length > 0,
  debian,
});
/** @type {Need[]} */
const SCREEN = [
  program('Xvfb (a virtual screen)', 'Xvfb', 'xvfb'),
  program('openbox (a window manager)', 'openbox', 'openbox'),
  program('xdotool (real key presses)', 'xdotool', 'xdotool'),
  program('ImageMagick (pictures of the screen)', 'import', 'imagemagick'),
];

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
  const elsewhere = process.platform !== 'linux';
  // Elsewhere the tests in browsers don't run, whatever is there.
  const shown = purpose === 'test' ? [] : [EITHER];
  const driven = [CHROMIUM, ...SCREEN, ...(purpose === 'test' ? [FIREFOX] : [])];
  const seen = purpose === 'start' && process.env.DISPLAY;
  const missing = (elsewhere || seen ? shown : driven).filter((need) => !need.there());
  const fonts = onDebian() && !hasFonts() ? [{ what: 'a font', there: () => false, debian: 'fonts-liberation' }] : [];
  return [...missing, ...fonts];
}

/** Why the browser tests can't run on this machine; null when they can. */
export function whyNoBrowserTests() {
  if (process.platform !== 'linux') return 'they need Linux, for the virtual screen and the real key presses';
  const missing = missingNeeds('test');
  return missing.length === 0 ? null : `missing: ${missing.map(({ what }) => what).join(', ')}`;
}

import puppeteer, { type Browser } from 'puppeteer-core';
import { findBrowser } from './find.ts';
import { FIREFOX_QUIET, FIREFOX_SYSTEM, QUIET } from './launch.ts';
import { quieten } from './profile.ts';

/** Chromium without a window, with the extension, on a profile that outlives it. In a process group of its own, so that it can be killed whole. */
export async function launchHeadless(options: {
  readonly extension: string;
  readonly profile: string;
  /** BCP 47 tag for the browser's own language. */
  readonly language?: string;
}): Promise<Browser> {
  const executablePath = findBrowser('chromium');
  if (executablePath === null) throw new Error('no Chromium was found on this machine');
  await quieten(options.profile);
  return puppeteer.launch({
    executablePath,
    headless: true,
    pipe: true,
    userDataDir: options.profile,
    enableExtensions: [options.extension],
    ...(options.language !== undefined && { env: { ...process.env, LANGUAGE: options.language.replace('-', '_') } }),
    args: [...QUIET, ...(options.language === undefined ? [] : [`--lang=${options.language}`])],
  });
}

/** Firefox likewise. What it puts in at its start it takes out again with all its data, but for the two preferences. */
export async function launchHeadlessFirefox(options: { readonly extension: string; readonly profile: string }): Promise<Browser> {
  const executablePath = findBrowser('firefox');
  if (executablePath === null) throw new Error('no Firefox was found on this machine');
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    enableExtensions: true,
    userDataDir: options.profile,
    env: { ...process.env, MOZ_REMOTE_SETTINGS_DEVTOOLS: '1' },
    args: [FIREFOX_SYSTEM],
    extraPrefsFirefox: {
      ...FIREFOX_QUIET,
      'extensions.webextensions.keepStorageOnUninstall': true,
      'extensions.webextensions.keepUuidOnUninstall': true,
    },
  });
  await browser.installExtension(options.extension);
  return browser;
}

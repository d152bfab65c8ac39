import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';

/**
 * Chromium fetches a dictionary from its maker once words are typed, and no switch of the command line stops that. Seen in Chromium
 * 156: 4 of 4 fresh profiles asked within 11 s, none of 8 with these; one of the three alone does not do.
 */
const NO_SPELLING = {
  browser: { enable_spellchecking: false },
  spellcheck: { dictionaries: [], dictionary: '', use_spelling_service: false },
};

/** Makes `folder` a profile of Chromium that runs no errand of its own for what is typed; a profile that is there already stays as it is. */
export async function quieten(folder: string): Promise<void> {
  const preferences = join(folder, 'Default/Preferences');
  if (existsSync(preferences)) return;
  await mkdir(join(folder, 'Default'), { recursive: true });
  await writeFile(preferences, JSON.stringify(NO_SPELLING));
}

/** Launches a browser on such a profile, which is deleted when the browser has ended. */
export async function onFreshProfile(launch: (profile: string) => Promise<Browser>): Promise<Browser> {
  const profile = await mkdtemp(join(tmpdir(), 'ironsift-profile-'));
  const remove = () => rm(profile, { recursive: true, force: true, maxRetries: 10 });
  try {
    await quieten(profile);
    const browser = await launch(profile);
    browser.process()?.once('exit', () => void remove().catch(() => null));
    return browser;
  } catch (error) {
    await remove().catch(() => null);
    throw error;
  }
}

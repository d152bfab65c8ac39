/** The strings of _locales, by the language of the browser. */
import type { Strings } from '../../src/words/say.ts';
import { api } from './browser.ts';

/** One string; its key in brackets when it is missing, so that it is seen. */
export const getMessage = (key: string): string => api().i18n.getMessage(key) || `[${key}]`;

/** Keys of the commands in the buyer's browser, as it writes them; empty or missing where there are none, as on a phone. */
let keys: Readonly<Record<string, string>> = { 'take-ad': 'Alt+Shift+U', 'read-every-ad': 'Alt+Shift+L' };

/**
 * Learns them: the buyer may have changed them, or another extension have them. Until then, and where the browser does not say, the suggested
 * ones are told. Never fails, for the panel waits for it with its core.
 */
export async function learnKeys(): Promise<void> {
  const all = await Promise.resolve(api().commands?.getAll() ?? []).catch(() => null);
  if (all) keys = Object.fromEntries(all.map(({ name, shortcut }) => [name, shortcut ?? '']));
}

/** A string with its key in place of `{ask_key}` or `{sweep_key}`: without one the button in the toolbar is named, and a bare hint says nothing. */
function withKey(name: string): string | undefined {
  const text = api().i18n.getMessage(name);
  const place = /{\w+_key}/.exec(text)?.[0];
  if (!place) return text || undefined;
  const key = keys[place === '{ask_key}' ? 'take-ad' : 'read-every-ad']?.replace('Shift', getMessage('shift_key'));
  return key || !name.endsWith('_shortcut') ? text.replace(place, key || getMessage('toolbar_key')) : '';
}

/** All strings, looked up as they are asked for: what `speaker` takes. A missing key is undefined. */
export const strings = (): Strings =>
  new Proxy<Record<string, string>>(
    {},
    { get: (_, key) => (typeof key === 'string' && /^\w+$/.test(key) ? withKey(key) : undefined) },
  );

/** Tag for numbers and dates: the browser's language when the strings are in it too ("en-GB"), else the strings' own ("en"). */
export function locale(): string {
  const ours = getMessage('locale_tag');
  const theirs = api().i18n.getUILanguage();
  return theirs.split(/[-_]/)[0] === ours ? theirs.replace('_', '-') : ours;
}

/** The strings of _locales, by the language of the browser. */
import type { Strings } from '../../src/words/say.ts';
import { api } from './browser.ts';

/** One string; its key in brackets when it is missing, so that it is seen. */
export const getMessage = (key: string): string => api().i18n.getMessage(key) || `[${key}]`;

/** All strings, looked up as they are asked for: what `speaker` takes. A missing key is undefined. */
export const strings = (): Strings =>
  new Proxy<Record<string, string>>(
    {},
    { get: (_, key) => (typeof key === 'string' && /^\w+$/.test(key) ? api().i18n.getMessage(key) || undefined : undefined) },
  );

/** Tag for numbers and dates: the browser's language when the strings are in it too ("en-GB"), else the strings' own ("en"). */
export function locale(): string {
  const ours = getMessage('locale_tag');
  const theirs = api().i18n.getUILanguage();
  return theirs.split(/[-_]/)[0] === ours ? theirs.replace('_', '-') : ours;
}

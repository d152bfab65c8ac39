// @ts-check
/**
 * What every language is held against the default one for: the same strings, the same places in them, and the plural forms of its own.
 * Called by build.mjs through checks.mjs' list, and by the tests over the folders.
 */

/** @typedef {Record<string, {message: string}>} Messages */

const FORM = /^(\w+)_(zero|one|two|few|many)$/;
const placesIn = (/** @type {string} */ message) => [...message.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name);
const counts = (/** @type {Messages} */ messages, /** @type {string} */ key) =>
  /\{n\}/.test(messages[key]?.message ?? '') || /\{n\}/.test(messages[`${key}_one`]?.message ?? '');

/**
 * The string that a key is a plural form of: "finds_count" of "finds_count_one". Undefined where the key is no form: its base is not there, or
 * counts nothing.
 * @param {Messages} messages of the default language
 */
export function baseOf(messages, /** @type {string} */ key) {
  const base = FORM.exec(key)?.[1];
  return base !== undefined && messages[base] !== undefined && counts(messages, base) ? base : undefined;
}

/** Keys that have forms, by the default language. */
export const plurals = (/** @type {Messages} */ messages) =>
  [...new Set(Object.keys(messages).flatMap((key) => baseOf(messages, key) ?? []))].sort();

/**
 * What one language lacks or has too much against the default one, in words; empty when it is whole. A plural needs a form for each category
 * that the language has (CLDR, by Intl.PluralRules), "other" being the key itself; a form may leave {n} out ("one find").
 * @param {Messages} own @param {Messages} messages of the default language
 */
export function gaps(/** @type {string} */ language, own, messages) {
  /** @type {string[]} */
  const wrong = [];
  const categories = new Intl.PluralRules(language).resolvedOptions().pluralCategories.filter((name) => name !== 'other');
  const plain = Object.keys(messages).filter((key) => baseOf(messages, key) === undefined);
  const forms = plurals(messages).flatMap((base) => categories.map((category) => `${base}_${category}`));
  const wanted = new Set([...plain, ...forms]);
  for (const key of wanted) if (own[key] === undefined) wrong.push(`_locales/${language} lacks "${key}"`);
  /** Another language may need forms where the default one does without. */
  const mayHave = (/** @type {string} */ key) =>
    baseOf(messages, key) !== undefined && categories.some((category) => key.endsWith(`_${category}`));
  for (const key of Object.keys(own)) {
    if (!wanted.has(key) && !mayHave(key))
      wrong.push(`_locales/${language} has "${key}", which _locales of the default language has not`);
    const base = FORM.exec(key)?.[1] ?? '';
    const model = messages[key] ?? messages[base];
    if (model === undefined) continue;
    const here = new Set(placesIn(own[key]?.message ?? ''));
    const there = new Set([...placesIn(model.message), ...placesIn(messages[base]?.message ?? '')]);
    const missing = [...placesIn(model.message)].filter((name) => !here.has(name) && name !== 'n');
    const unknown = [...here].filter((name) => !there.has(name));
    if (missing.length > 0) wrong.push(`_locales/${language}: "${key}" lacks {${missing.join('}, {')}}`);
    if (unknown.length > 0) wrong.push(`_locales/${language}: "${key}" has {${unknown.join('}, {')}}, which nothing fills`);
  }
  return wrong;
}

/** Limits of the stores: a longer name or description is refused on upload (Chrome: 75 and 132 characters; Firefox shows 45 of the name). */
const STORE = { extName: 45, extDescription: 132 };

/** Everything that is wrong with the languages of a build. */
export function brokenLanguages(/** @type {import('./checks.mjs').Files} */ files) {
  const read = (/** @type {string} */ path) =>
    JSON.parse(new TextDecoder().decode(files[path] ?? new TextEncoder().encode('{}')));
  const main = `_locales/${read('manifest.json').default_locale}/messages.json`;
  const messages = read(main);
  return Object.keys(files).flatMap((path) => {
    const language = /^_locales\/([^/]+)\/messages\.json$/.exec(path)?.[1];
    if (language === undefined) return [];
    const own = read(path);
    const long = Object.entries(STORE)
      .filter(([key, most]) => (own[key]?.message.length ?? 0) > most)
      .map(([key, most]) => `_locales/${language}: "${key}" is longer than the ${most} characters that stores take`);
    return [...gaps(language.replace('_', '-'), own, messages), ...long];
  });
}

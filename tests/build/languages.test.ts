/** The languages beside the default one: whole, with the same places, in words of their own. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mergeMessages } from '../../build.mjs';
import { bytes } from './checks.mjs';
import { baseOf, brokenLanguages, gaps, plurals } from './languages.mjs';

const LOCALES = 'extension/_locales';
const stringsOf = (language: string): Record<string, { message: string }> =>
  mergeMessages(
    Object.fromEntries(
      readdirSync(join(LOCALES, language)).map((part) => [part, JSON.parse(readFileSync(join(LOCALES, language, part), 'utf8'))]),
    ),
  );
const english = stringsOf('en');
const others = readdirSync(LOCALES).filter((language) => language !== 'en');

/** Words that are the same in both, and why. A string of places and signs alone needs no entry. */
const SAME: Record<string, readonly (readonly [RegExp, string])[]> = {
  de: [
    [/^extName$/, 'the name'],
    [/^source_(?:iwf|ipf)$/, 'titles of the rule books, which are published in English'],
    [/^mileage_/, 'names of the publishers'],
    [/^panel_kind_(?:rack|kettlebell)$|^category_(?:rack|kettlebell)$|^panel_add_rack$/, 'the trade says it in English'],
  ],
};
/** Signs of units, which no language translates; "mi" and "lb" as Intl writes them in German. */
const UNIT = /^(?:lb|kg|mm|cm|km|km\/h|mph|mi|in|ft|psi|MPa)$/;
const wordsIn = (message: string): string[] =>
  (message.replace(/\{\w+\}/g, ' ').match(/[\p{L}/]{2,}/gu) ?? []).filter((word) => !UNIT.test(word));

describe.each(others)('%s', (language) => {
  const own = stringsOf(language);

  it('has every string, every place and every plural form, and none too many', () => {
    expect(Object.keys(own).length).toBeGreaterThan(1000);
    expect(gaps(language, own, english)).toEqual([]);
  });

  it('has the same part files', () => {
    const partsOf = (of: string): Record<string, string[]> =>
      Object.fromEntries(
        readdirSync(join(LOCALES, of)).map((part) => [
          part,
          Object.keys(JSON.parse(readFileSync(join(LOCALES, of, part), 'utf8'))).filter((key) => !baseOf(english, key)),
        ]),
      );
    const sorted = (parts: Record<string, string[]>) => Object.entries(parts).map(([part, keys]) => [part, [...keys].sort()]);
    expect(sorted(partsOf(language))).toEqual(sorted(partsOf('en')));
  });

  it('leaves no English standing', () => {
    const same = Object.keys(own).filter((key) => own[key]?.message === english[key]?.message);
    const untold = same.filter(
      (key) => wordsIn(english[key]?.message ?? '').length > 0 && !(SAME[language] ?? []).some(([known]) => known.test(key)),
    );
    expect(untold).toEqual([]);
    const unused = (SAME[language] ?? []).filter(([known]) => !same.some((key) => known.test(key)));
    expect(unused).toEqual([]);
  });

  it('says its own tag', () => expect(own.locale_tag?.message).toBe(language));
});

it.each(readdirSync(LOCALES))('%s has one apostrophe, the curved one', (language) => {
  const straight = Object.entries(stringsOf(language)).filter(([, { message }]) => message.includes("'"));
  expect(straight.map(([key]) => key)).toEqual([]);
});

it('German quotes, separates and addresses as German does', () => {
  /** Numbers of sections and standards. */
  const numbered = /^(?:source_iwf|weigh_washer_source_asme|weigh_washer_source_memory)$/;
  for (const [key, { message }] of Object.entries(stringsOf('de'))) {
    expect(message, key).not.toMatch(/[“"'](?=\p{L})/u);
    if (!numbered.test(key)) expect(message, key).not.toMatch(/\d\.\d/);
    expect(message, key).not.toMatch(/\b(?:du|dir|dich|dein\w*)\b/i);
  }
});

/** Strings that count and say the same of one, and why that is right. */
const WITHOUT_ONE: Record<string, string> = {
  buy_one_trip: 'two ads and more share a trip',
  caution_show_again: 'a number in brackets',
  choice_pieces_of: 'no noun follows',
  doubt_several_ads: 'two and more',
  drive_refuse_of_ten: 'three and more',
  drive_refuse_one_in: 'three and more',
  finds_chosen: 'no noun follows',
  finds_purge_all: 'two and more',
  finds_purge_all_sure: 'two and more',
  kit_lacking: 'no noun follows',
  rates_use_all: 'two and more',
  step_driving_times: 'two and more',
  store_file_number: 'a place in a list',
  trip_several: 'two and more',
  trip_van_heavy: 'two and more',
  weigh_misread_more: 'no noun follows',
  weigh_stack_both: 'one on each side',
};

it('English says one of a thing in the singular', () => {
  const counting = Object.keys(english).filter((key) => !baseOf(english, key) && /\{n\}/.test(english[key]?.message ?? ''));
  expect(counting.length).toBeGreaterThan(30);
  const without = counting.filter((key) => english[`${key}_one`] === undefined);
  expect(without.sort()).toEqual(Object.keys(WITHOUT_ONE));
  // A form that says the same is none.
  const forms = Object.keys(english).filter((key) => baseOf(english, key));
  expect(forms.filter((key) => english[key]?.message === english[baseOf(english, key) ?? '']?.message)).toEqual([]);
});

it('English counts a thing by {n} alone, for no other place has forms', () => {
  const all = Object.entries(english).filter(([, { message }]) => /\{(?:all|total|seen|count)\} \p{Ll}+s\b/u.test(message));
  expect(all.map(([key]) => key)).toEqual([]);
});

describe('the check of the build', () => {
  const files = (
    de: object,
    en: object = { a: { message: '{n} of {b}' }, a_one: { message: 'one of {b}' }, c: { message: 'C' } },
  ) => ({
    'manifest.json': bytes('{"default_locale":"en"}'),
    '_locales/en/messages.json': bytes(JSON.stringify(en)),
    '_locales/de/messages.json': bytes(JSON.stringify(de)),
  });
  const whole = { a: { message: '{n} von {b}' }, a_one: { message: 'eines von {b}' }, c: { message: 'Z' } };

  it('passes a whole language', () => expect(brokenLanguages(files(whole))).toEqual([]));

  it.each([
    [{ ...whole, c: undefined }, 'lacks "c"'],
    [{ ...whole, a_one: undefined }, 'lacks "a_one"'],
    [{ ...whole, a_few: { message: 'x' } }, 'has "a_few"'],
    [{ ...whole, d: { message: 'x' } }, 'has "d"'],
    [{ ...whole, a: { message: '{n} von' } }, 'lacks {b}'],
    [{ ...whole, c: { message: '{b}' } }, 'has {b}'],
    [{ ...whole, extName: { message: 'x'.repeat(46) } }, 'longer than the 45'],
  ])('refuses %j', (de, why) => expect(brokenLanguages(files(de)).join('\n')).toContain(why));

  it('asks a language for the forms that it has: Polish for three, Japanese for none', () => {
    expect(gaps('pl', whole, JSON.parse(JSON.stringify({ a: whole.a, a_one: whole.a_one, c: whole.c })))).toEqual([
      '_locales/pl lacks "a_few"',
      '_locales/pl lacks "a_many"',
    ]);
    expect(gaps('ja', { a: whole.a, c: whole.c }, whole)).toEqual([]);
  });
});

it('knows a plural form from a key that only ends like one', () => {
  expect(plurals(english)).toContain('finds_count');
  expect(plurals(english)).not.toContain('settings_exchange');
  expect(baseOf(english, 'rates_behind_each_one')).toBe('rates_behind_each');
});

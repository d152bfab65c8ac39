/**
 * Turns a message into a sentence with a locale's strings. Strings hold `{name}` places. A message that counts has its number as `n`: then
 * `key_zero`, `key_one`, `key_two`, `key_few`, `key_many` are its forms in the categories that the strings' language has (CLDR, by
 * Intl.PluralRules), and `key` is "other" and what stands in for a form that is missing.
 */
import type { Message, Param } from './message.ts';
import { directionOf, type Figures, figuresOf } from './write-figures.ts';

export type Strings = Readonly<Record<string, string>>;
export type { MoneyDigits } from './write-figures.ts';

export interface Speaker extends Figures {
  (message: Message): string;
}

/** Characters that turn the writing about, and those that order it outright: an ad could reorder our own words with them. */
const TURNS = /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufeff]/;
const ORDERS = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/** An ad's words where nothing can keep their order to themselves, as in a drawing. */
export const withoutOrders = (text: string): string => text.replace(ORDERS, '');

/** A speaker for one locale: a BCP 47 tag of the language that the strings are in. A missing key comes back in brackets, so that it is seen. */
export function speaker(strings: Strings, locale: string): Speaker {
  const plural = new Intl.PluralRules(locale);
  const figures = figuresOf(locale);
  const mirrored = directionOf(locale) === 'rtl';
  const apart = (text: string): string => (mirrored || TURNS.test(text) ? `\u2068${withoutOrders(text)}\u2069` : text);
  const param = (value: Param): string => {
    if (typeof value === 'string') return apart(value);
    if (typeof value === 'object' && 'message' in value) return say(value.message);
    return mirrored ? apart(figures.figure(value)) : figures.figure(value);
  };
  const pattern = ({ key, params }: Message): string | undefined => {
    const n = params?.n;
    const form = typeof n === 'number' ? strings[`${key}_${plural.select(n)}`] : undefined;
    return form ?? strings[key];
  };
  const say = (message: Message): string => {
    const found = pattern(message);
    if (found === undefined) return `[${message.key}]`;
    return found.replace(/\{(\w+)\}/g, (whole, name: string) => {
      const value = message.params?.[name];
      return value === undefined ? whole : param(value);
    });
  };
  return Object.assign(say, figures);
}

/**
 * Turns a message into a sentence with a locale's strings. Strings hold `{name}` places, and for counts
 * `{n|one book|{n} books}`-style plurals are kept as separate keys: `key` for other, `key_one` for one (Intl.PluralRules on `params.n`).
 * Numbers, money, weights and lengths are written by Intl for the locale.
 */
import { millimetresToInches } from '../units/length.ts';
import { inMajor, type Money } from '../units/money.ts';
import type { Message, Param } from './message.ts';

export type Strings = Readonly<Record<string, string>>;

/** Money in whole units, to the cent, or, of what is cheap by the mile, to the hundredth of a cent where it has any. */
export type MoneyDigits = 'whole' | 'cents' | 'fine' | 'auto';

export interface Speaker {
  (message: Message): string;
  readonly number: (value: number, digits?: number) => string;
  readonly money: (value: Money, digits?: MoneyDigits) => string;
}

/** A speaker for one locale. A missing key comes back as the key in brackets, so that it is seen. */
export function speaker(strings: Strings, locale: string): Speaker {
  const plural = new Intl.PluralRules(locale);
  const number = (value: number, digits = 2): string =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: digits }).format(value);
  const money = (value: Money, digits: MoneyDigits = 'auto'): string => {
    const amount = inMajor(value);
    const whole = digits === 'whole' || (digits === 'auto' && (Number.isInteger(amount) || Math.abs(amount) >= 100));
    const fraction = whole ? 0 : 2;
    return new Intl.NumberFormat(locale, {
      style: 'currency',
      currency: value.currency,
      currencyDisplay: 'narrowSymbol',
      minimumFractionDigits: fraction,
      maximumFractionDigits: digits === 'fine' ? 4 : fraction,
    }).format(amount);
  };
  const param = (value: Param): string => {
    if (typeof value === 'string') return value;
    if (typeof value === 'number') return number(value);
    if ('money' in value) return money(value.money);
    if ('rate' in value) return `${money(value.rate, 'cents')}/${value.per}`;
    if ('weight' in value) return `${number(value.weight.value)} ${value.weight.unit}`;
    if ('mm' in value) {
      // A bar's length needs no tenths, a hole does.
      const long = value.mm >= 300;
      return `${number(value.mm, long ? 0 : 1)} mm (${number(millimetresToInches(value.mm), long ? 1 : 2)} in)`;
    }
    if ('degrees' in value) return `${number(value.degrees, 1)}°`;
    if ('distance' in value) return `${number(value.distance.value, 0)} ${value.distance.unit}`;
    if ('percent' in value) return `${number(value.percent, 0)} %`;
    return say(value.message);
  };
  const say = (message: Message): string => {
    const n = message.params?.n;
    const one = typeof n === 'number' && plural.select(n) === 'one' ? strings[`${message.key}_one`] : undefined;
    const pattern = one ?? strings[message.key];
    if (pattern === undefined) return `[${message.key}]`;
    return pattern.replace(/\{(\w+)\}/g, (whole, name: string) => {
      const value = message.params?.[name];
      return value === undefined ? whole : param(value);
    });
  };
  return Object.assign(say, { number, money });
}

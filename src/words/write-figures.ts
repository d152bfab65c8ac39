/** Figures as a locale writes them: numbers, money, units, per cents, days and lists, all by Intl. A formatter is made once and kept: making one costs 35 µs. */
import { millimetresToInches } from '../units/length.ts';
import type { Weight } from '../units/mass.ts';
import { inMajor, type Money, money as moneyOf } from '../units/money.ts';
import type { Figure } from './message.ts';

/** Money in whole units, to the cent, or, of what is cheap by the mile, to the hundredth of a cent where it has any. */
export type MoneyDigits = 'whole' | 'cents' | 'fine' | 'auto';

/** Whether money that nothing more is said of is written without cents. */
const isWhole = (amount: number): boolean => Number.isInteger(amount) || Math.abs(amount) >= 100;

/** Money as it reads once it is written: what is shown as its sum or difference is made of this, or the reader counts another. */
export function asWritten(value: Money): Money {
  const amount = inMajor(value);
  return isWhole(amount) ? moneyOf(Math.sign(amount) * Math.round(Math.abs(amount)), value.currency) : value;
}

/** Units by their names in CLDR. */
const UNITS = {
  lb: 'pound',
  kg: 'kilogram',
  mm: 'millimeter',
  in: 'inch',
  mi: 'mile',
  km: 'kilometer',
  mph: 'mile-per-hour',
  kmh: 'kilometer-per-hour',
  degrees: 'degree',
  days: 'day',
} as const;
export type UnitName = keyof typeof UNITS;
const DISPLAY: Partial<Record<UnitName, 'narrow' | 'long'>> = { degrees: 'narrow', days: 'long' };

export interface Figures {
  /** BCP 47 tag, for what is written by Intl elsewhere. */
  readonly locale: string;
  /** What stands before the decimals where a number is typed. */
  readonly decimal: '.' | ',';
  readonly number: (value: number, digits?: number) => string;
  readonly money: (value: Money, digits?: MoneyDigits) => string;
  /** A number with its unit: "45 lb". */
  readonly unit: (value: number, unit: UnitName, digits?: number) => string;
  readonly weight: (value: Weight, digits?: number) => string;
  /** Of 100: 35 is "35%". */
  readonly percent: (value: number, digits?: number) => string;
  /** "31 May 2026" of "2026-05-31", "May 2026" of "2026-05", or of a moment in milliseconds, which is a day where the reader is; other text stays as it is. */
  readonly day: (at: string | number, time?: boolean) => string;
  /** "iron, straight, 28 mm": things in a row, without an "and". */
  readonly list: (parts: readonly string[]) => string;
  readonly figure: (value: Figure) => string;
}

const RIGHT_TO_LEFT = new Set(['Arab', 'Hebr', 'Thaa', 'Syrc', 'Nkoo', 'Adlm', 'Rohg']);

/** Which way a locale's script runs; the likely script of the language where the tag names none (CLDR, by Intl.Locale). */
export const directionOf = (locale: string): 'ltr' | 'rtl' =>
  RIGHT_TO_LEFT.has(new Intl.Locale(locale).maximize().script ?? '') ? 'rtl' : 'ltr';

/** Figures for a locale, in the digits 0 to 9 whatever the locale's own: fields must read again what they show. */
export function figuresOf(locale: string): Figures {
  const tag = new Intl.Locale(locale, { numberingSystem: 'latn' }).toString();
  const made = new Map<string, Intl.NumberFormat>();
  const write = (value: number, options: Intl.NumberFormatOptions): string => {
    const key = JSON.stringify(options);
    const known = made.get(key) ?? new Intl.NumberFormat(tag, options);
    made.set(key, known);
    return known.format(value);
  };
  const dates: Partial<Record<'day' | 'month', Intl.DateTimeFormat>> = {};
  const datesOf = (exact: 'day' | 'month'): Intl.DateTimeFormat => {
    const parts: Intl.DateTimeFormatOptions = exact === 'month' ? { year: 'numeric', month: 'short' } : { dateStyle: 'medium' };
    dates[exact] ??= new Intl.DateTimeFormat(tag, { ...parts, timeZone: 'UTC' });
    return dates[exact];
  };
  const number = (value: number, digits = 2): string => write(value, { maximumFractionDigits: digits });
  const money = (value: Money, digits: MoneyDigits = 'auto'): string => {
    const amount = inMajor(value);
    const whole = digits === 'whole' || (digits === 'auto' && isWhole(amount));
    const fraction = whole ? 0 : 2;
    return write(amount, {
      style: 'currency',
      currency: value.currency,
      currencyDisplay: 'narrowSymbol',
      minimumFractionDigits: fraction,
      maximumFractionDigits: digits === 'fine' ? 4 : fraction,
    });
  };
  const unit = (value: number, name: UnitName, digits = 2): string =>
    write(value, {
      style: 'unit',
      unit: UNITS[name],
      unitDisplay: DISPLAY[name] ?? 'short',
      maximumFractionDigits: digits,
    });
  const percent = (value: number, digits = 0): string => write(value / 100, { style: 'percent', maximumFractionDigits: digits });
  const figure = (value: Figure): string => {
    if (typeof value === 'number') return number(value);
    if ('number' in value) return number(value.number, value.digits);
    if ('money' in value) return money(value.money);
    if ('rate' in value) return `${money(value.rate, 'cents')}/${value.per}`;
    if ('weight' in value) return unit(value.weight.value, value.weight.unit);
    if ('mm' in value) {
      // A bar's length needs no tenths, a hole does.
      const long = value.mm >= 300;
      return `${unit(value.mm, 'mm', long ? 0 : 1)} (${unit(millimetresToInches(value.mm), 'in', long ? 1 : 2)})`;
    }
    if ('degrees' in value) return unit(value.degrees, 'degrees', 1);
    if ('distance' in value) return unit(value.distance.value, value.distance.unit, 0);
    if ('day' in value) return day(value.day);
    return percent(value.percent, value.digits);
  };
  const day = (at: string | number, time = false): string => {
    if (typeof at === 'number') {
      const options: Intl.DateTimeFormatOptions = { dateStyle: 'medium', ...(time && { timeStyle: 'short' }) };
      return new Intl.DateTimeFormat(tag, options).format(at);
    }
    const [, day] = /^\d{4}-\d\d(-\d\d)?$/.exec(at) ?? [at, null];
    const moment = day === null ? Number.NaN : Date.parse(at);
    return Number.isNaN(moment) ? at : datesOf(day === undefined ? 'month' : 'day').format(moment);
  };
  const comma = new Intl.ListFormat(tag, { type: 'unit', style: 'short' }).formatToParts(['a', 'b', 'c', 'd']);
  const between = comma.find(({ type }) => type === 'literal')?.value ?? ', ';
  return {
    locale: tag.replace(/-u-nu-latn$/, ''),
    decimal: number(1.5).includes(',') ? ',' : '.',
    number,
    money,
    unit,
    weight: (value, digits) => unit(value.value, value.unit, digits),
    percent,
    day,
    list: (parts) => parts.join(between),
    figure,
  };
}

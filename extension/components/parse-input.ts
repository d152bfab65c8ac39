/** Numbers as people type them into a field. Failure is a value: null. */
import { feetToMillimetres, inchesToMillimetres } from '../../src/units/length.ts';
import type { Figures } from '../../src/words/write-figures.ts';

const FRACTION = /^(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)$/;

/** What a lone sign before three digits means is the reader's: "1.200" is 1.2 where the point is the decimal sign, 1200 where the comma is. */
export type Decimal = Figures['decimal'];

/** "1,200", "1.200,50", "2.5", "2,5", "2 1/2". Never negative. */
export function parseNumber(text: string, decimal: Decimal = '.'): number | null {
  const trimmed = text.trim();
  const fraction = FRACTION.exec(trimmed);
  if (fraction) {
    const below = Number(fraction[3]);
    return below === 0 ? null : Number(fraction[1] ?? 0) + Number(fraction[2]) / below;
  }
  const plain = trimmed.replace(/(?<=\d)[\s'’\u00a0\u202f](?=\d{3}\b)/g, '');
  if (!/^\d[\d.,]*$|^[.,]\d+$/.test(plain)) return null;
  const normal = withDecimalPoint(plain, decimal);
  return normal === null ? null : Number(normal);
}

/** The last separator is the decimal sign, unless it parts a group of three, no other kind of separator is there, and it is not the reader's decimal sign. */
function withDecimalPoint(plain: string, decimal: Decimal): string | null {
  const last = Math.max(plain.lastIndexOf('.'), plain.lastIndexOf(','));
  if (last < 0) return plain;
  const sign = plain.charAt(last);
  const other = sign === '.' ? ',' : '.';
  const groups = plain.split(sign);
  if (groups.length > 2) return plain.includes(other) || !grouped(groups) ? null : groups.join('');
  if (plain.includes(other)) {
    const whole = plain.slice(0, last).split(other);
    return grouped(whole) ? `${whole.join('')}.${plain.slice(last + 1)}` : null;
  }
  if (sign !== decimal && grouped(groups)) return groups.join('');
  return `${plain.slice(0, last)}.${plain.slice(last + 1)}`;
}

/** Threes, and before the last of them twos, as India groups: "1,00,000". */
const grouped = (groups: readonly string[]): boolean =>
  /^[1-9]\d{0,2}$/.test(groups[0] ?? '') &&
  groups.slice(1, -1).every((group) => /^\d{2,3}$/.test(group)) &&
  (groups.length < 2 || /^\d{3}$/.test(groups.at(-1) ?? ''));

/** A whole number of pieces. */
export function parseCount(text: string, decimal: Decimal = '.'): number | null {
  const value = parseNumber(text, decimal);
  return value !== null && Number.isInteger(value) ? value : null;
}

/** An amount of money, with or without a currency sign or code around it. */
export const parseAmount = (text: string, decimal: Decimal = '.'): number | null =>
  parseNumber(text.trim().replace(/^[\p{Sc}]\s*|^[A-Za-z]{3}\s+|\s*[\p{Sc}]$|\s+[A-Za-z]{3}$/gu, ''), decimal);

const FEET = /^(.+?)\s*(?:'|′|ft|feet|foot|fuß)\s*(?:(.+?)\s*(?:"|″|''|in|inch|inches|zoll)?)?$/i;
const UNITS: readonly (readonly [RegExp, number])[] = [
  [/\s*mm$/i, 1],
  [/\s*cm$/i, 10],
  [/\s*m$/i, 1000],
  [/\s*(?:"|″|''|in|inch|inches|zoll)$/i, inchesToMillimetres(1)],
];

/** A length in millimetres: "28.5", "28.5 mm", "1 1/8 in", "7 ft 2 in", "2.2 m". A bare number is millimetres. */
export function parseMillimetres(text: string, decimal: Decimal = '.'): number | null {
  const trimmed = text.trim();
  const bare = parseNumber(trimmed, decimal);
  if (bare !== null) return bare;
  for (const [unit, millimetres] of UNITS) {
    const value = unit.test(trimmed) ? parseNumber(trimmed.replace(unit, ''), decimal) : null;
    if (value !== null) return value * millimetres;
  }
  const feet = FEET.exec(trimmed);
  const whole = feet ? parseNumber(feet[1] ?? '', decimal) : null;
  const inches = feet?.[2] === undefined ? 0 : parseNumber(feet[2], decimal);
  return whole === null || inches === null ? null : feetToMillimetres(whole) + inchesToMillimetres(inches);
}

/** Pieces of notation that the recognisers of quantities share, as sources of regular expressions over token letters. */
import type { MassUnit } from '../../units/mass.ts';
import { type Scan, unitBetween, valueAt } from '../text/scan.ts';

/** A unit behind a number: "45 lb", "45-lb", "45#", "45 lb's", "45 pounder", "45s". */
export const UNIT = '(?:[-.U]?[uh]q?s?|-?q|s)';
/** A weight: a number with or without a unit, or a word such as "tens". */
export const WEIGHT = `(?:n${UNIT}?|v|i${UNIT}?|d${UNIT})`;
/** A weight that shows it is one: by unit or plural. */
export const SURE_WEIGHT = `(?:[nid]${UNIT}|v)`;
export const COUNT = '[nd]';
/** Adjectives between count, weight and noun. */
export const MODIFIERS = '[mC]{0,4}';

const POUND_SIZES = [
  0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10, 12, 12.5, 15, 17.5, 20, 22, 22.5, 25, 27.5, 30, 33, 35, 40, 44,
  45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 110, 120,
];
const COMMON_PLATES = [1.25, 2.5, 5, 7.5, 10, 12.5, 15, 20, 25, 35, 45, 50, 55, 100];
const KILOGRAM_SIZES = [
  0.125, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 8, 10, 11, 12, 12.5, 14, 15, 16, 17.5, 18, 20, 22, 22.5, 24, 25,
  28, 30, 32, 35, 36, 40, 48, 50,
];

/** Whether pieces of this weight are made: plates, dumbbells, kettlebells, bars. */
export function isSize(value: number, unit: MassUnit | null): boolean {
  if (unit === 'kg') return KILOGRAM_SIZES.includes(value) || (value > 0 && value <= 60);
  if (unit === 'lb') return value > 0 && value <= 150;
  return POUND_SIZES.includes(value);
}

/** Whether a bare number is likely a plate's weight. */
export const isPlateSize = (value: number): boolean => COMMON_PLATES.includes(value);

export const isCount = (value: number | null): value is number =>
  value !== null && Number.isInteger(value) && value >= 1 && value <= 60;

/** Pieces of a stock list, where a word says that they are pieces. */
export const isStock = (value: number | null): value is number =>
  value !== null && Number.isInteger(value) && value >= 1 && value <= 999;

/** Value and unit of the weight between two tokens. */
export function weightAt(scan: Scan, from: number, to: number): { value: number; unit: MassUnit | null } | null {
  const value = valueAt(scan, from);
  return value === null ? null : { value, unit: unitBetween(scan, from, to) };
}

/** First token between two that has a letter, or null. */
export function findLetter(scan: Scan, from: number, to: number, letter: string): number | null {
  for (let i = from; i <= to; i += 1) if (scan.plain[i] === letter) return i;
  return null;
}

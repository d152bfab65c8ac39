/**
 * Bare numbers that end the lines of a price list or the goods of a row, also where other prices of the ad have signs of money: "Adjustable bench 80",
 * "$475 for everything, or: stands 80, dumbbells 60". What speaks for prices is the list: several such ends, goods that have no count and weight to
 * mix them up with, and a price for all that they add up to.
 */
import type { Kind } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { lettersOf, type Scan, valueAt } from '../text/scan.ts';
import { isPlateSize } from './notation.ts';
import { isForTheLot } from './price-roles.ts';

const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
const WEIGHED: readonly Kind[] = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell', ...BARS];
/** Bars weigh as much. */
const BAR_WEIGHTS = [10, 15, 20, 25, 33, 35, 44, 45];
const WEIGHT = /n[-.]?[uhqs]|v|nxn|po?n/;
const COUNT = /[pt]|[nd]x|xn|j[:]?n|nj|[nd]n[uhqs]|[(]n[)]/;
/** The end of a line or part: a number, "25 for the box", "10 each". */
const END = /n(?:[ra]?e|wa?z{1,2})?[.!)]{0,2}$/;
/** What a number right behind it is no price by. */
const BEFORE = /(?:[nxUFGNJ$%BSTKPIVDH@]|[GKBSTIPXL][^,.;:)]{0,3}|(?<!j)n[,/&c-]|j)$/;
/** "Rug 5x7 25": words that have a size. */
const SIZED = /^[^kn]*znxn$/;
const LEAST = 5;
const LEAST_LARGE = 15;
const LEAST_AMONG = 30;
const MOST = 5000;
/** How far the parts together may lie below and above the price for all. */
const LEAST_OF_ALL = 0.95;
const MOST_OF_ALL = 1.6;

interface End {
  readonly at: number;
  readonly value: number;
  readonly line: number;
  /** Its goods have neither weight nor count that the number could be. */
  readonly sure: boolean;
  /** Of one rack, bench or the like. */
  readonly single: boolean;
  readonly goods: boolean;
  /** Their weight and count are both told before. */
  readonly counted: boolean;
}

/** Amounts that the ad asks for all of it. */
export function amountsForAll(scan: Scan, found: readonly Price[]): number[] {
  return found.flatMap((price) => {
    const { from, to, amount } = price;
    const beside =
      /^[£,(w]?a?L/.test(scan.plain.slice(to + 1, to + 5)) ||
      /L[^M.;]{0,4}$/.test(scan.letters.slice(Math.max(0, from - 6), from).join('')) ||
      says(scan, from - 1, 'together') ||
      says(scan, to + 1, 'together') ||
      isForTheLot(scan, price);
    return beside && amount >= 20 ? [amount] : [];
  });
}

const addUp = (values: readonly number[], lots: readonly number[]): boolean => {
  const sum = values.reduce((total, value) => total + value, 0);
  return (
    values.length >= 2 &&
    lots.some((lot) => sum >= LEAST_OF_ALL * lot && sum <= MOST_OF_ALL * lot && values.every((value) => value < lot))
  );
};

function endAt(scan: Scan, from: number, letters: string): End | null {
  const match = END.exec(letters);
  if (!match) return null;
  const at = from + match.index;
  const value = valueAt(scan, at) ?? 0;
  const before = scan.plain.slice(from, at);
  if (
    value < LEAST ||
    value > MOST ||
    /[MA]/.test(before) ||
    letters.slice(0, match.index).includes('M') ||
    !/[zkns]/.test(before) ||
    (BEFORE.test(before) && !SIZED.test(before))
  )
    return null;
  const kinds = scan.tokens.slice(from, at).flatMap(({ term }) => (term?.kind ? [term] : []));
  const named = kinds.length > 0 || /z/.test(before);
  if (!named && !WEIGHT.test(before)) return null;
  const bars = kinds.length > 0 && kinds.every(({ kind }) => kind && BARS.includes(kind));
  const weighed = kinds.some(({ kind }) => kind && WEIGHED.includes(kind));
  const told = WEIGHT.test(before);
  const apart = /[zC)][,.-]$/.test(before);
  const bar = bars && (!BAR_WEIGHTS.includes(value) || apart) && value >= LEAST_LARGE;
  const single = kinds.length > 0 && !weighed && kinds.every(({ plural }) => !plural);
  return {
    at,
    value,
    line: scan.tokens[at]?.line ?? 0,
    sure: told || bar || !weighed,
    single,
    goods: kinds.length > 0 || told,
    counted: told && COUNT.test(before),
  };
}

/** Whether any number has a sign of money beside it; "all USD" and "prices in dollars" are words alone. */
export const hasSums = (scan: Scan): boolean => /\$[ni]|[ni]¤?\$|[ni]¢/.test(scan.plain);

/** Number tokens at the ends of lines that are prices. `lots` is what is asked for all. */
export function listEnds(scan: Scan, lots: readonly number[]): number[] {
  const letters = lettersOf(scan);
  const ends: End[] = [];
  const titled: End[] = [];
  let signed = 0;
  let from = 0;
  for (const part of letters.split('l')) {
    const line = scan.tokens[from]?.line ?? 0;
    if (/M_{0,3}[.!)e]{0,2}$/.test(part) && !/[LA]/.test(part)) signed += 1;
    const end = endAt(scan, from, part);
    if (end) (line > 0 ? ends : titled).push(end);
    from += part.length + 1;
  }
  for (const some of [ends, [...titled, ...ends]]) {
    const values = some.map(({ value }) => value);
    if (addUp(values, lots)) return some.map(({ at }) => at);
  }
  // One or two without a sign in a list that has them: none that could be a count.
  const among = ends.filter((end) => end.sure && end.goods && end.value >= (end.single ? LEAST_LARGE : LEAST_AMONG));
  if (signed >= 2 && among.length > 0) return among.map(({ at }) => at);
  if (ends.length < 2) return [];
  const sure = ends.filter((end) => end.sure);
  const large = sure.filter(({ value }) => value >= LEAST_LARGE);
  const goods = sure.filter((end) => end.goods);
  const sums = hasSums(scan);
  const single = sure.some((end) => end.single && end.value >= 20);
  const counted = sure.filter((end) => end.counted).length;
  const enough = single
    ? sure.length + (sums ? Math.min(signed, 1) : 0) >= 3 && goods.length >= 2
    : sure.length >= 4 && (!sums || counted >= 2);
  const list = enough && goods.length > 0 && 2 * large.length >= sure.length && sure.some(({ value }) => value >= 40);
  if (!list) return [];
  // In a list the rest are prices too, where no weight is as large.
  return ends.filter(({ sure: clear, value }) => clear || (value > 55 && !isPlateSize(value))).map(({ at }) => at);
}

/** "Platform 150 bumpers 240 collars 15", "bench 60 / dumbbells 70": words and numbers in turn. */
const IN_TURN = /(?:a?[mCkz]{1,4}|[mC]{0,2}n[uhs]{1,2}[mk]{0,2})[-=:]?n(?=[,/c;.l()zkma]|$)/g;

/** Number tokens of goods in a row that together cost about what is asked for all. */
export function rowEnds(scan: Scan, lots: readonly number[]): number[] {
  if (lots.length === 0) return [];
  const letters = lettersOf(scan);
  const rows: { from: number; end: number; ends: number[] }[] = [];
  for (const { index, 0: part } of letters.matchAll(IN_TURN)) {
    const end = index + part.length;
    const row = rows.at(-1);
    const joined =
      row &&
      /^[,/c]{0,2}(?:z|[nd]?x?a?d?p?o?)$/.test(letters.slice(row.end, index)) &&
      scan.clause[row.end - 1] === scan.clause[index];
    if (joined) {
      row.ends.push(end - 1);
      row.end = end;
    } else rows.push({ from: index, end, ends: [end - 1] });
  }
  return rows.flatMap(({ from, end, ends }) => {
    const values = ends.map((at) => valueAt(scan, at) ?? 0);
    const kinds = scan.tokens.slice(from, end).flatMap(({ term }) => term?.kind ?? []);
    const named = kinds.length > 0 || WEIGHT.test(letters.slice(from, end));
    if (!named || values.some((value) => value < LEAST)) return [];
    return addUp(values, lots) ? ends : [];
  });
}

/**
 * Goods told with their weight or count, each with a bare number behind, in a row: "EZ curl bar 25, pair of 40 lb dumbbells 70, pair of 25s 40".
 * A number is a price where weight and count of its goods are told before it; a bar's own number, which may be a weight, where others of the row are.
 */
import type { Kind } from '../../listing/reading.ts';
import { lettersOf, type Scan, valueAt } from '../text/scan.ts';
import { hasSums } from './list-ends.ts';

const PARTS = /[^,;.l•|/c!?]{1,24}/g;
const PRICED = /(?<=[ksuhqmC)v]w?|^nxn|[ks][-:=@])([nM])(?:[ra]?[pe])?$/;
const WEIGHT = /n[-.]?[uhqs]|v|[nd]xn|nxn/;
const COUNT = /p|t|[nd]xn?|xn|^[a%]?[nd](?=[mC]{0,3}k|n)|[nd]n[-.]?[uhqs]|n[uhqs]{1,2}[(]n[)]/;
const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
const WEIGHED: readonly Kind[] = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell', ...BARS];
/** Without a count told before it a number below this is a count. */
const LEAST_UNCOUNTED = 25;
const LEAST = 5;

interface Part {
  readonly at: number;
  readonly value: number;
  readonly sure: boolean;
  /** Weight and count are both told before. */
  readonly counted: boolean;
  /** A price already. */
  readonly known: boolean;
  /** Neither, but where the ad asks for all and another of the row is sure. */
  readonly perhaps: boolean;
}

/** Price of one part of the row: null where it names no goods, `undefined` where it names goods and no price. */
function partAt(scan: Scan, from: number, letters: string): Part | null | undefined {
  const kinds = scan.tokens.slice(from, from + letters.length).flatMap(({ term }) => term?.kind ?? []);
  if (kinds.length === 0 && !WEIGHT.test(letters)) return null;
  const priced = PRICED.exec(letters);
  if (!priced) return undefined;
  const at = from + priced.index;
  const value = valueAt(scan, at) ?? 0;
  const told = letters.slice(0, priced.index);
  const unweighed = kinds.length > 0 && kinds.every((kind) => !WEIGHED.includes(kind));
  const counted = COUNT.test(told);
  const sure = unweighed ? value >= 20 : WEIGHT.test(told) && value >= (counted ? 5 : LEAST_UNCOUNTED);
  const known = letters[priced.index] === 'M';
  const bar = kinds.some((kind) => BARS.includes(kind)) && value >= 15;
  // "Pair of 45s 80, 10s 15, all for 180": beside others.
  const perhaps = priced && WEIGHT.test(told) && value >= LEAST;
  return sure || bar || perhaps
    ? { at, value, sure, counted: counted && WEIGHT.test(told), known, perhaps: !sure && !bar }
    : undefined;
}

/** Number tokens that are prices of goods in a row; where other sums have a sign of money, only of goods with weight and count, beside a price for all. */
export function listedPrices(scan: Scan, lots: readonly number[]): number[] {
  const strict = hasSums(scan);
  if (strict && lots.length === 0) return [];
  const letters = lettersOf(scan);
  const rows: { clause: number; parts: (Part | undefined)[] }[] = [];
  for (const { index, 0: part } of letters.matchAll(PARTS)) {
    const said = partAt(scan, index, part);
    if (said === null) continue;
    const clause = scan.clause[index] ?? 0;
    const row = rows.at(-1);
    // "Two 45s 80. Two 35s 60": sentences of one part each.
    const goesOn = row && (row.clause === clause || (clause - row.clause <= 1 && said && row.parts.every((one) => one)));
    if (goesOn) row.parts.push(said);
    if (goesOn) row.clause = clause;
    else rows.push({ clause, parts: [said] });
  }
  return rows.flatMap(({ parts: row }) => {
    const parts = row.flatMap((part) => part ?? []);
    const sure = parts.filter((part) => part.sure).length;
    const sum = parts.reduce((total, { value }) => total + value, 0);
    const told = strict ? parts.every((part) => part.known || part.counted) : parts.every((part) => !part.perhaps);
    const beside = parts.some((part) => part.counted) && lots.some((lot) => parts.every(({ value }) => value < lot));
    const list = parts.length >= 2 && sure >= 1 && parts.length === row.length && sum >= 40 && (told || (beside && !strict));
    return list ? parts.flatMap(({ at, known }) => (known ? [] : [at])) : [];
  });
}

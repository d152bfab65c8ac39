/**
 * Numbers without a sign of money that can only be prices by what stands around them: what one piece or a pair costs ("45 lb x 6 ... 65 each",
 * "90 a pair"), goods that have no weight and a number ("flat bench 60"), a price that was lowered ("reduced from 400 to 325").
 */
import type { Kind } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { endsIn } from '../text/says.ts';
import { lettersOf, type Scan, valueAt } from '../text/scan.ts';

const UNIT_BEHIND = /([ni])(?=[ra/]{1,2}p(?![on])|a?e(?![oEn]))/g;
/** A weight that is told: "45 lb", "45s", "tens". */
const WEIGHT = /[ndi][-.]?[uhqs]|v|nxn/;
/** A count that is told: "14 available", "x 6", "4x", "4 45 lb", "45 lb, 4", "two benches". */
const COUNT = /n&|xn|nx|[nd][ndi][uhqs]|[uhqsk)][-,:]?[(]?n(?![uhqsf])|[nd]j|j[:]?n|[nd][mC]{0,3}k/;
/** Goods whose price and weight can't be mixed up. */
const UNWEIGHED: readonly Kind[] = ['rack', 'stands', 'bench', 'storage', 'collars', 'other'];
const BARS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar'];
const HEAVIEST_BAR = 60;
/** From here on a number behind a bar is what it costs, where the ad tells a price otherwise (common practice, no source). */
const NO_WEIGHT_OF: Partial<Record<Kind, number>> = { bar: 60, 'curl-bar': 40, 'hex-bar': 80 };
/** Nobody sells iron below this, in units of money per pound of a single piece (common practice, no source). */
const LEAST_PER_POUND = 0.3;
/** Below this a number before "each" is a count just as well. */
const SURE = 12;

const lineStart = (scan: Scan, at: number): number => {
  let from = at;
  while (from > Math.max(0, at - 60) && scan.tokens[from - 1]?.line === scan.tokens[at]?.line && scan.plain[from - 1] !== 'l')
    from -= 1;
  return from;
};

/** The heaviest number of the line before a token that has a unit. */
function heaviest(scan: Scan, from: number, at: number): number {
  let most = 0;
  for (let i = from; i < at - 1; i += 1)
    if (scan.plain[i] === 'n' && 'uhqs'.includes(scan.plain[i + 1] ?? '_')) most = Math.max(most, valueAt(scan, i) ?? 0);
  return most;
}

/** Number tokens before "each" and "a pair" that are prices. */
export function unitPrices(scan: Scan): number[] {
  const letters = lettersOf(scan);
  const found: number[] = [];
  const likely: number[] = [];
  for (const { index: at } of letters.matchAll(UNIT_BEHIND)) {
    const value = valueAt(scan, at) ?? 0;
    const start = lineStart(scan, at);
    // "6 x 45 lb plates" and "60 each" below it.
    const from = start === at && at > 1 ? lineStart(scan, at - 2) : start;
    const before = letters.slice(from, at);
    const pair = /^[ra/]{1,2}p/.test(letters.slice(at + 1, at + 4));
    if (value < 2 || 'x$N'.includes(scan.plain[at - 1] ?? '_')) continue;
    if (pair && value >= 5) {
      found.push(at);
      continue;
    }
    const nouns = scan.tokens.slice(from, at).flatMap(({ term }) => term?.kind ?? []);
    const unweighed = nouns.length > 0 && nouns.every((kind) => UNWEIGHED.includes(kind));
    const counted = COUNT.test(before);
    // "4 bars, 80 each": no bar weighs so much.
    const bars = nouns.length > 0 && nouns.every((kind) => BARS.includes(kind)) && counted && value > HEAVIEST_BAR;
    const told = WEIGHT.test(before) || unweighed || bars || (start === at && nouns.length > 0);
    if (told && (value >= SURE || (counted && value >= 5)) && value >= LEAST_PER_POUND * heaviest(scan, from, at)) found.push(at);
    else if (counted || /^e,?%n/.test(letters.slice(at + 1, at + 5))) likely.push(at);
  }
  // Small ones are prices in a list of such.
  return found.some((at) => (valueAt(scan, at) ?? 0) >= SURE) ? [...found, ...likely] : found;
}

/** "EZ curl bar, 15, have 1": in a list of such. */
const HAVE_BEHIND = /(?<=[,:-])(n)(?=,?%n[.]?(?:l|$))/g;

export function stockPrices(scan: Scan, found: readonly Price[]): number[] {
  const listed = found.filter(({ rule }) => rule === 'price-per-piece').length;
  return listed > 1 ? [...lettersOf(scan).matchAll(HAVE_BEHIND)].map(({ index }) => index) : [];
}

/** "Flat bench 60": goods that have no weight, a number, the end of the clause. */
const GOODS = /(?<=[l.,;c•(:A%-]|^|w[az])[mC]{0,3}(k)(?:[-=:]|z)?(n)(?=[.,;l)]|$|c|[(]?F)/g;

/** "Flat bench to go with it 60": some words between. */
const GOODS_TO_GO = /(?<=[.,;c])[mC]{0,3}(k)[zca]{1,4}(n)(?=[.,;l)]|$)/g;

export function goodsPrices(scan: Scan, found: readonly Price[]): number[] {
  const letters = lettersOf(scan);
  const ends: number[] = [];
  for (const match of letters.matchAll(GOODS)) {
    const at = match.index + match[0].length - 1;
    const kind = scan.tokens[match.index + match[0].lastIndexOf('k')]?.term?.kind;
    const value = valueAt(scan, at) ?? 0;
    if (scan.plain[at - 1] === 'z' && scan.tokens[at - 1]?.term?.sense !== 'is') continue;
    const goods = kind && kind !== 'other' && kind !== 'collars' && UNWEIGHED.includes(kind) && value >= 20;
    if (goods || (found.length > 0 && value >= (NO_WEIGHT_OF[kind ?? 'other'] ?? Number.POSITIVE_INFINITY))) ends.push(at);
  }
  if (found.length > 0)
    for (const match of letters.matchAll(GOODS_TO_GO)) {
      const at = match.index + match[0].length - 1;
      const { kind, plural } = scan.tokens[match.index + match[0].indexOf('k')]?.term ?? {};
      const value = valueAt(scan, at) ?? 0;
      const single = kind && kind !== 'other' && kind !== 'collars' && UNWEIGHED.includes(kind) && !plural;
      if (single && value >= 20 && value % 5 === 0 && !endsIn(scan, at, 'numbered')) ends.push(at);
    }
  const asked = found.some(({ currency }) => currency !== null) || found.length > 0;
  return asked || ends.length === 1 ? ends : [];
}

/** "Dumbbells 50s, two of them, 75": the only number at the end of a line that tells its goods with their weight. */
const LINE_END = /(?<![nxUNFGK])(?:(?<=[,-])|(?<=[uhs]|[mC]k))n(?=[.]?(?:l|$))/g;

export function endPrices(scan: Scan): number[] {
  const letters = lettersOf(scan);
  const ends: number[] = [];
  for (const { index: at } of letters.matchAll(LINE_END)) {
    const before = letters.slice(lineStart(scan, at), at);
    const value = valueAt(scan, at) ?? 0;
    const weights = before.match(/n[-.]?[uhqs]|v|nxn/g)?.length ?? 0;
    const counts = COUNT.test(before) || before.includes('k');
    // "25 lb 4" is a count, "10 lb, 25 lb, 35" a list.
    if (weights === 1 && counts && value >= 20 && !/n[uhs]x?$/.test(before.slice(0, -1)) && before.length >= 3) ends.push(at);
  }
  return ends.length === 1 ? ends : [];
}

/** "Reduced from 400 to 325". */
const LOWERED = /F[a:U]?([ni])z([ni])(?![uhqsfxJ])/g;

/** Pairs of number tokens: the former price and the one now. */
export function loweredPrices(scan: Scan): (readonly [former: number, now: number])[] {
  if (!scan.plain.includes('F')) return [];
  return [...lettersOf(scan).matchAll(LOWERED)].flatMap(({ index, 0: whole }) => {
    const now = index + whole.length - 1;
    const former = now - 2;
    const lower = (valueAt(scan, now) ?? 0) < (valueAt(scan, former) ?? 0) && (valueAt(scan, now) ?? 0) >= 10;
    return scan.tokens[now - 1]?.term?.sense === 'to' && lower ? [[former, now] as const] : [];
  });
}

/**
 * Whether the ad is about this trade at all. Every word and quantity adds to one sum, each kind of goods and each word once:
 *
 * - goods of the trade: 3 under a name of their own ("barbell", "squat rack"), 1 1/2 for collars and storage, 1 under an everyday name ("bar")
 * - a weight that plates come in: 1 as a plural ("45s"), else 1/2; a word of the gym: 1; at most 2 of each; a stated total: 1/2
 * - goods and words of another trade: -1; of a household: -1/2 from the second on; a service or a borrowed name: -3
 * - two more against it when another trade's goods are the first that the ad names, two more for it when goods of ours are, by a name of their own
 *
 * Goods that are denied or only spoken of, and what the seller would take in trade, do not count. At 1 and more the ad is of the trade.
 */
import type { Kind } from '../../listing/reading.ts';
import type { Quantity, Total } from '../mention.ts';
import { isAside } from '../recognisers/nouns.ts';
import type { Scan } from '../text/scan.ts';
import { joinTerms } from '../text/terms.ts';
import type { Token } from '../text/tokens.ts';

const AGAINST = { foreign: 1, 'very-foreign': 3 } as const;

/** Kinds whose names other trades use too ("spring clip", "storage rack"). */
const HARDWARE: readonly Kind[] = ['collars', 'storage'];

/** Weights that plates are cast in, lb and kg together. */
const PLATE_SIZES = [1.25, 2.5, 5, 10, 15, 20, 25, 35, 45, 50, 55, 100];

/** One mention of any goods: for the trade or against it, and where it starts. */
interface Evidence {
  readonly word: string;
  readonly points: number;
  readonly start: number;
}

const sum = (values: Iterable<number>): number => [...values].reduce((total, value) => total + value, 0);

/** Each word's points once, the highest. */
function once(evidence: readonly Evidence[]): number {
  const best = new Map<string, number>();
  for (const { word, points } of evidence) best.set(word, Math.max(best.get(word) ?? 0, points));
  return sum(best.values());
}

/** Place of the first goods told. */
const first = (evidence: readonly Evidence[], worth: number): number =>
  evidence.reduce((least, { points, start }) => (points >= worth ? Math.min(least, start) : least), Number.POSITIVE_INFINITY);

function goodsOf(scan: Scan, wanted: boolean): Evidence[] {
  return scan.tokens.flatMap(({ term, start }, at): Evidence[] => {
    if (!term?.kind || (term.kind === 'other' && term.weak) || (!wanted && isAside(scan, at))) return [];
    return [{ word: term.kind, points: term.weak ? 1 : HARDWARE.includes(term.kind) ? 1.5 : 3, start }];
  });
}

/** Clauses that name a trade; the offsets at which they begin and end. */
function swapsOf(scan: Scan, words: readonly Token[]): (start: number) => boolean {
  const starts = new Set(words.filter(({ term }) => term?.sense === 'swap').map(({ start }) => start));
  const clauses = new Set(scan.tokens.flatMap(({ start }, at) => (starts.has(start) ? [scan.clause[at]] : [])));
  const inside = new Set(scan.tokens.flatMap(({ start }, at) => (clauses.has(scan.clause[at]) ? [start] : [])));
  return (start) => inside.has(start);
}

export function isOfTrade(scan: Scan, quantities: readonly Quantity[], totals: readonly Total[], wanted: boolean): boolean {
  const { topics } = scan.language;
  const words = topics ? joinTerms(scan.tokens, topics) : scan.tokens;
  const swapped = swapsOf(scan, words);
  const told = [...scan.tokens, ...words].filter(({ term, start }) => term?.sense !== undefined && !swapped(start));
  const evidence = (worth: Readonly<Record<string, number>>): Evidence[] =>
    told.flatMap(({ term, text, start }) => {
      const points = worth[term?.sense ?? ''];
      return points === undefined ? [] : [{ word: text.replace(/s$/, ''), points, start }];
    });
  const goods = [...goodsOf(scan, wanted), ...evidence({ 'weights-set': 3 })];
  const against = evidence(AGAINST);
  const household = evidence({ household: 0.5 });
  const gym = evidence({ gym: 1 });
  if (scan.tokens.some(({ term }) => term?.fits === '50mm')) gym.push({ word: 'olympic', points: 1, start: 0 });
  const hints = evidence({ hint: 0.5 });
  const sizes = quantities.flatMap(({ weight, from, to }): Evidence[] => {
    if (weight === null || !PLATE_SIZES.includes(weight)) return [];
    return [{ word: `${weight}`, points: /[sv]/.test(scan.plain.slice(from, to + 1)) ? 1 : 0.5, start: from }];
  });
  const opening = first(against, 1) < first(goods, 1) ? -2 : first(goods, 3) < first(against, 1) ? 2 : 0;
  const unknown = new Set(words.filter(({ type, term, text }) => type === 'word' && !term && text.length > 3).map(({ text }) => text));
  const strange = unknown.size >= 3 ? 0.5 : 0;
  const total = totals.length > 0 ? 0.5 : 0;
  return (
    once(goods) +
      Math.min(2, once(gym)) +
      Math.min(2, once(sizes)) +
      total +
      opening -
      once(against) -
      Math.max(0, once(household) - 0.5) >=
    1
  );
}

/**
 * Whether the ad is about this trade at all. Every word and quantity adds to one sum, each kind of goods and each word once; at 1 the ad is.
 *
 * For it:
 * - goods of the trade: 3 under a name of their own ("barbell", "squat rack"), 1 1/2 for collars and storage, 1 under an everyday name ("bar"),
 *   1/2 where a strange word narrows that ("ballast weights")
 * - a weight that plates come in: 1 as a plural ("45s") or counted ("4x45"), else 1/2, at most 2; a word of the gym: 1, at most 2; a word that goes with equipment,
 *   elsewhere too ("flat", "hole"): 1/2, at most 1; a stated total: 1/2
 * - 1 when goods of ours by a name of their own come before any of another trade
 *
 * Against it:
 * - goods and words of another trade: 1; of a household: 1/2 from the second on; a service or a borrowed name ("piercing"): 4
 * - 2 when another trade's goods come first
 * - 1/2 when three words or more are in no dictionary: such an ad speaks of something else
 *
 * Goods that are denied or only spoken of, and what the seller would take in trade, do not count. The points are common sense, set on the
 * corpus and measured on ads written afterwards (tests/unit/read/trade.test.ts).
 */
import type { Kind } from '../../listing/reading.ts';
import type { Quantity, Total } from '../mention.ts';
import { isAside } from '../recognisers/nouns.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import type { Token } from '../text/tokens.ts';

/** Kinds whose names other trades use too ("spring clip", "storage rack"). */
const HARDWARE: readonly Kind[] = ['collars', 'storage'];

/** Weights that plates are cast in, lb and kg together. */
const PLATE_SIZES = [1.25, 2.5, 5, 10, 15, 20, 25, 35, 45, 50, 55, 100];

/** Notations in which the count stands at its weight: "4x45", "(4) 45", "4 45 lb". */
const COUNTED = /times|^bracketed|behind-in-brackets$|^count-weight$/;

/** One mention of any goods: for the trade or against it, and where it starts. */
interface Evidence {
  readonly word: string;
  readonly points: number;
  readonly start: number;
}

/** Each word's points once, the highest. */
function once(evidence: readonly Evidence[]): number {
  const best = new Map<string, number>();
  for (const { word, points } of evidence) best.set(word, Math.max(best.get(word) ?? 0, points));
  return [...best.values()].reduce((sum, points) => sum + points, 0);
}

/** Place of the first goods told. */
const first = (evidence: readonly Evidence[], worth: number): number =>
  evidence.reduce((least, { points, start }) => (points >= worth ? Math.min(least, start) : least), Number.POSITIVE_INFINITY);

/** Senses of everyday words that the dictionary only holds because conditions and materials are said with them. */
const EVERYDAY: readonly (string | undefined)[] = [
  'thing',
  'thing apart',
  'faintly',
  'badly',
  'stays',
  'unknown',
  'turn',
  'rest',
  'upon',
];

/** A word of some length that no dictionary of the language knows, or that may be of any trade. */
const isStranger = ({ type, term, text }: Token): boolean =>
  type === 'word' &&
  text.length > 3 &&
  (term === null || (term.code === 'z' && (EVERYDAY.includes(term.sense) || !!term.part || !!term.condition)));

/** Whether goods are said to be for, from or off a thing of another trade. */
function isOfForeign(scan: Scan, at: number, abroad: ReadonlySet<number>): boolean {
  if (abroad.size === 0 || scan.tokens[at]?.term?.kind !== 'plate') return false;
  if (scan.plain[at + 1] !== 'w' && !says(scan, at + 1, 'belongs-to')) return false;
  for (let i = at + 2; i < at + 6 && scan.clause[i] === scan.clause[at] && !',.;:l'.includes(scan.plain[i] ?? 'l'); i += 1)
    if (abroad.has(scan.tokens[i]?.start ?? -1)) return true;
  return false;
}

/** Goods of the trade. An everyday name that a strange word makes narrower ("ballast weights", "racks for beehives") says half as much. */
function goodsOf(scan: Scan, strangers: ReadonlySet<number>, wanted: boolean, abroad: ReadonlySet<number>): Evidence[] {
  const strange = (at: number): boolean => strangers.has(scan.tokens[at]?.start ?? -1);
  return scan.tokens.flatMap(({ term, start }, at): Evidence[] => {
    if (!term?.kind || term.sense === 'verb-too' || (term.kind === 'other' && term.weak) || (!wanted && isAside(scan, at, false)))
      return [];
    // "Weight plates for a lawn tractor", "weights off a boat".
    if (isOfForeign(scan, at, abroad)) return [{ word: term.kind, points: 0.5, start }];
    const narrowed =
      strange(at - 1) || (scan.plain[at + 1] === 'w' && (strange(at + 2) || (scan.plain[at + 2] === 'a' && strange(at + 3))));
    const everyday = narrowed ? 0.5 : 1;
    return [{ word: term.kind, points: term.weak ? everyday : HARDWARE.includes(term.kind) ? 1.5 : 3, start }];
  });
}

/** "300 lb olympic set": a set by its size and its sleeve is one of weights. */
const namedSets = (scan: Scan, totals: readonly Total[]): Evidence[] =>
  totals.flatMap(({ set, from, to }) =>
    set && scan.tokens.slice(from, to + 3).some(({ term }) => term?.fits === '50mm')
      ? [{ word: 'set', points: 3, start: scan.tokens[from]?.start ?? 0 }]
      : [],
  );

/** Clauses that name a trade; the offsets at which they begin and end. */
function swapsOf(scan: Scan, words: readonly Token[]): (start: number) => boolean {
  const starts = new Set(words.filter(({ term }) => term?.sense === 'swap').map(({ start }) => start));
  if (starts.size === 0) return () => false;
  const clauses = new Set(scan.tokens.flatMap(({ start }, at) => (starts.has(start) ? [scan.clause[at]] : [])));
  const inside = new Set(scan.tokens.flatMap(({ start }, at) => (clauses.has(scan.clause[at]) ? [start] : [])));
  return (start) => inside.has(start);
}

export function isOfTrade(scan: Scan, quantities: readonly Quantity[], totals: readonly Total[], wanted: boolean): boolean {
  const { words } = scan;
  const swapped = swapsOf(scan, words);
  const told = [scan.tokens, words].flatMap((tokens) =>
    tokens.filter(({ term, start }) => term?.sense !== undefined && !swapped(start)),
  );
  const evidence = (worth: Readonly<Record<string, number>>): Evidence[] =>
    told.flatMap(({ term, text, start }) => {
      const points = worth[term?.sense ?? ''];
      return points === undefined ? [] : [{ word: text.replace(/s$/, ''), points, start }];
    });
  const strangers = new Set(words.filter(isStranger).map(({ start }) => start));
  const others = evidence({ foreign: 1, 'very-foreign': 4 });
  const abroad = new Set(others.map(({ start }) => start));
  const goods = [...goodsOf(scan, strangers, wanted, abroad), ...evidence({ 'weights-set': 3 }), ...namedSets(scan, totals)];
  const sizes = quantities.flatMap(({ weight, count, rule, from, to }): Evidence[] => {
    if (weight === null || !PLATE_SIZES.includes(weight)) return [];
    return [
      {
        word: `${weight}`,
        points: ((count ?? 1) > 1 && COUNTED.test(rule)) || /[sv]/.test(scan.plain.slice(from, to + 1)) ? 1 : 0.5,
        start: from,
      },
    ];
  });
  const olympic = scan.tokens.some(({ term }) => term?.fits === '50mm') ? 1 : 0;
  const signs =
    Math.min(2, once(sizes)) +
    Math.min(2, once(evidence({ gym: 1 })) + olympic) +
    Math.min(1, once(evidence({ hint: 0.5 }))) +
    (totals.length > 0 ? 0.5 : 0);
  if (goods.length + sizes.length === 0) return false;
  const opening = first(others, 1) < first(goods, 1) ? -2 : first(goods, 3) < first(others, 1) ? 1 : 0;
  const household = Math.max(0, once(evidence({ household: 0.5 })) - 0.5);
  const strange = strangers.size >= 3 ? 0.5 : 0;
  return once(goods) + signs + opening - once(others) - household - strange >= 1;
}

/**
 * Whether the ad is about this trade at all. Every word and quantity adds to one sum, each kind of goods and each word once:
 *
 * - goods of the trade: 3 under a name of their own ("barbell", "squat rack"), 1 under an everyday one ("bar", "rack")
 * - a weight that plates come in: 1 as a plural ("45s"), else 1/2; a word of the gym: 1; at most 2 of each
 * - goods and words of another trade: -1; of a household: -1/2; a service or a borrowed name: -3
 * - two more against it when another trade's goods are the first that the ad names, two more for it when goods of ours are, by a name of their own
 *
 * Goods that are denied or only spoken of, and what the seller would take in trade, do not count. At 1 and more the ad is of the trade.
 */
import type { Quantity, Total } from '../mention.ts';
import { isAside } from '../recognisers/nouns.ts';
import type { Scan } from '../text/scan.ts';
import { joinTerms } from '../text/terms.ts';

const AGAINST: Readonly<Record<string, number>> = { foreign: 1, household: 0.5, 'very-foreign': 3 };

/** Weights that plates are cast in, lb and kg together. */
const PLATE_SIZES = [1.25, 2.5, 5, 10, 15, 20, 25, 35, 45, 50, 55, 100];

export function isOfTrade(scan: Scan, quantities: readonly Quantity[], totals: readonly Total[]): boolean {
  return tradeScore(scan, quantities, totals) >= 1;
}

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

function goodsOf(scan: Scan): Evidence[] {
  return scan.tokens.flatMap(({ term, start }, at): Evidence[] => {
    if (!term?.kind || (term.kind === 'other' && term.weak) || isAside(scan, at)) return [];
    return [{ word: term.kind, points: term.weak ? 1 : 3, start }];
  });
}

export function tradeScore(scan: Scan, quantities: readonly Quantity[], totals: readonly Total[]): number {
  const { topics } = scan.language;
  const words = topics ? joinTerms(scan.tokens, topics) : scan.tokens;
  const swaps = new Set(words.flatMap(({ term, start }) => (term?.sense === 'swap' ? [clauseAt(scan, start)] : [])));
  const told = [...scan.tokens, ...words].filter(({ start }) => swaps.size === 0 || !swaps.has(clauseAt(scan, start)));
  const evidence = (points: (sense: string) => number | undefined): Evidence[] =>
    told.flatMap(({ term, text, start }) => {
      const worth = points(term?.sense ?? '');
      return worth === undefined ? [] : [{ word: text.replace(/s$/, ''), points: worth, start }];
    });
  const goods = [...goodsOf(scan), ...evidence((sense) => (sense === 'weights-set' ? 3 : undefined))];
  const against = evidence((sense) => AGAINST[sense]);
  const gym = evidence((sense) => (sense === 'gym' ? 1 : undefined));
  if (scan.tokens.some(({ term }) => term?.fits === '50mm')) gym.push({ word: 'olympic', points: 1, start: 0 });
  const sizes = quantities.flatMap(({ weight, from, to }): Evidence[] => {
    if (weight === null || !PLATE_SIZES.includes(weight)) return [];
    return [{ word: `${weight}`, points: /[sv]/.test(scan.plain.slice(from, to + 1)) ? 1 : 0.5, start: from }];
  });
  return (
    once(goods) +
    Math.min(2, once(gym)) +
    Math.min(2, once(sizes)) +
    (totals.length > 0 ? 0.5 : 0) -
    once(against) -
    (first(against, 1) < first(goods, 1) ? 2 : 0) +
    (first(goods, 3) < first(against, 1) ? 2 : 0)
  );
}

function clauseAt(scan: Scan, start: number): number {
  return scan.clause[scan.tokens.findLastIndex((token) => token.start <= start)] ?? 0;
}

/** Wanted when the ad opens with a word of seeking, or has one and no price. */
export function isWanted(scan: Scan, hasPrice: boolean): boolean {
  const at = scan.plain.indexOf('W');
  if (at === -1) return false;
  const token = scan.tokens[at];
  const head = scan.plain.slice(0, at).replace(/[^a-zA-Z]/g, '').length;
  const early = head <= 3 || (token?.line === 0 && head <= 8);
  const strong =
    /wtb|want to buy|wanting to buy|looking to buy|wanted|iso|in search|seeking|anyone|anybody|suche|gesucht|kaufe/.test(
      token?.text ?? '',
    );
  return early || (strong && !hasPrice);
}

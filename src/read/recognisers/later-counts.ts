/** A count that comes later: "45s. Four of them.", "25 lb plates $20 each, 6 available": it belongs to the last weight that has none. */
import { isPlate } from '../../listing/reading.ts';
import type { Quantity } from '../mention.ts';
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';
import { isCount } from './notation.ts';
import { OWN } from './noun-counts.ts';
import { countBefore, isAside } from './nouns.ts';

const LATER =
  /([nd])(p?)k?&|[%j]([nd])(p?)(?![uhqsnxmvik_Jf$-])|(?<=M_{0,3}e?)\([%U]?([nd])(p?)y?[,)]|([nd])(p)(?![oEn]|[mC]{0,4}k)|(?<=_[,:-]z?)([nd])(?=[.;l)]|,M|$)()|(?<=[z_],)a?(p)(?=[,.l]|$)|(?<=[_:,(])[yU]a?([nd])(?=[,.;l)]|$)|(?<=_,)(d)(?=,c?_)/dg;
/** "25 lb $25, 35 lb $35, two of each": for all weights of the clause that have no count. */
const OF_EACH =
  /([nd])(p?)(?:o?E|oe)(?![nvUuhx:-])|e([nd])(p?)[&jx](?=[.,;!)l]|$)|([nd])(p)e(?=[.,;!)l]|$)|(z)z?(p)(?=[.,;!)l$]|M|$)/dg;
/** How far back the weight may stand, in tokens. */
const REACH = 30;
/** How far back goods without a weight may stand. */
const NOUN_REACH = 12;

/** The bar, rack, bench or the like that stands between the last weight and a count, on this line or the one above, and has no count yet. */
function nounBefore(scan: Scan, last: number, from: number): number | null {
  const line = scan.tokens[from]?.line ?? 0;
  for (let i = from - 1; i > last && from - i <= NOUN_REACH && line - (scan.tokens[i]?.line ?? 0) <= 1; i -= 1) {
    if (scan.plain[i] !== 'k' || isAside(scan, i)) continue;
    const own = OWN.includes(scan.tokens[i]?.term?.kind ?? 'plate') && !scan.nounCounts.has(i);
    return own && scan.letters[i] === 'k' && countBefore(scan, i).count === null ? i : null;
  }
  return null;
}

/** "15 kg, das Paar 60 €, zwei Paar da": nothing but a price between. */
const isPriceBetween = (scan: Scan, last: number, from: number): boolean =>
  /^[,:(=-]?M_{0,3}[e]?[,.;(]?%?$/.test(scan.letters.slice(last + 1, from).join(''));

/** "Won it, have three already", "I already own two of them", "have two kids": not of what is for sale. */
const isOfOwn = (scan: Scan, from: number, to: number): boolean =>
  (scan.senses.has('own-ones') || scan.senses.has('rest')) &&
  ((scan.plain[from] === '%' && scan.tokens[to + 1]?.term?.sense === 'rest') ||
    [from - 1, from + 1, to + 1, to + 2, to + 3].some(
      (at) => scan.tokens[at]?.term?.sense === 'own-ones' && scan.clause[at] === scan.clause[to],
    ));

export function readLaterCounts(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  const counted = [...quantities];
  findAll(scan, OF_EACH, ({ from, to, group }) => {
    // "5s, 10s, 15s, all pairs".
    const all = group(7) !== null;
    if (all && !/^(?:whole|definite|every)$/.test(scan.tokens[from]?.term?.sense ?? '')) return false;
    const pieces = all ? 1 : valueAt(scan, (group(1) ?? group(3) ?? group(5))?.[0] ?? from);
    const count = pieces !== null && (group(2) || group(4) || group(6) || all) ? pieces * 2 : pieces;
    // In its own clause, or in the last that names any: "45s $50, 25s $30. I have 4 of each."
    const last = counted.findLast((quantity) => quantity.to < from);
    const near = last !== undefined && (scan.clause[from] ?? 0) - (scan.clause[last.to] ?? 0) <= 2;
    const clause = scan.clause[near ? last.to : from];
    const open = counted.flatMap((quantity, index) => {
      const same = scan.clause[quantity.to] === clause && quantity.to < from && from - quantity.to < 2 * REACH;
      return same && (quantity.count === null || quantity.countImplied) && quantity.weight !== null ? [index] : [];
    });
    if (open.length < 2 || !isCount(count)) return false;
    for (const index of open) {
      const quantity = counted[index];
      if (quantity) counted[index] = { ...quantity, count, countImplied: false, rule: `${quantity.rule}-of-each` };
    }
    for (let i = from; i <= to; i += 1) blank(scan, i);
    return 'claimed';
  });
  findAll(scan, LATER, ({ from, to, group }) => {
    if (isOfOwn(scan, from, to)) return false;
    const number = group(1) ?? group(3) ?? group(5) ?? group(7) ?? group(9) ?? group(12) ?? group(13);
    const pairs = group(2) !== null || group(4) !== null || group(6) !== null || group(8) !== null || group(11) !== null;
    const pieces = group(11) ? 1 : valueAt(scan, number?.[0] ?? from);
    const count = pieces !== null && pairs ? pieces * 2 : pieces;
    const before = counted.findLastIndex((quantity) => quantity.to < from && from - quantity.to < REACH);
    const behind = counted.findIndex((quantity) => quantity.from > from && quantity.from - from < 6);
    const at = before === -1 ? behind : before;
    const last = counted[at];
    const morePairs =
      last?.count === 2 &&
      last.rule.includes('pair') &&
      pairs &&
      (pieces ?? 0) > 1 &&
      (from - last.to <= 3 || scan.plain[to] === '&' || isPriceBetween(scan, last.to, from));
    const ends = /[,.;l)(]/.test(scan.plain[to + 1] ?? 'l');
    // "Barbells, I have 3."
    const had = group(3) !== null && /^k[,.]$/.test(scan.plain.slice(Math.max(0, from - 2), from));
    const noun = ends && (group(1) || had || group(7)) ? nounBefore(scan, counted[before]?.to ?? -1, from) : null;
    if (noun !== null && isCount(count)) {
      scan.nounCounts.set(noun, count);
      return true;
    }
    // "35 lb kettlebell, 40": of one piece by its name a bare number behind a comma is what it costs.
    const piece = last?.noun === null || last?.noun === undefined ? undefined : scan.tokens[last.noun]?.term;
    if (group(9) && piece && piece.plural !== true && piece.kind && !isPlate(piece.kind) && scan.plain[from - 1] === ',')
      return false;
    if (!last || !isCount(count) || (last.count !== null && !last.countImplied && !morePairs)) return false;
    counted[at] = { ...last, count, countImplied: false, rule: `${last.rule}-counted-later` };
    return true;
  });
  return counted;
}

/** Whom a word speaks of: the goods of its clause, the noun of its clause, what "it" stands for, else the whole lot. */
import { isPlate, type Kind } from '../../listing/reading.ts';
import { OWN } from '../recognisers/noun-counts.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

const family = (kind: Kind): string => (isPlate(kind) ? 'plate' : kind);
export const holds = (item: Draft, at: number): boolean =>
  item.kindAt === at || item.places.some((place) => at >= place.from && at <= place.to);

/** Words of make right before a noun or within the words of an item ("rubber grip plates"); what all goods of a lot are called tells nothing. */
function madeOf(scan: Scan, from: number, to: number): Set<string> {
  const words = new Set<string>();
  for (let i = to; i >= 0 && (i >= from || 'mk'.includes(scan.plain[i] ?? '_')) && to - i < 12; i -= 1) {
    const token = scan.tokens[i];
    if (scan.plain[i] === 'm' && !token?.term?.fits && !token?.term?.condition) words.add(token?.text ?? '');
  }
  return words;
}

/** Words of make of an item, of the noun beside it too: the noun that tells its kind may stand over a list. */
const makesOf = (scan: Scan, item: Draft): string[] =>
  item.places.flatMap(({ from, to }) => {
    const own = item.kindAt > to && item.kindAt <= to + 4 && scan.clause[item.kindAt] === scan.clause[to];
    return [...madeOf(scan, from, own ? item.kindAt : to)];
  });

/** "Grip plates have the 2 inch opening" beside iron ones: all but those that are called otherwise, where some are called so. */
export function calledAlike(scan: Scan, list: readonly Draft[], at: number): readonly Draft[] {
  if (list.length < 2 || scan.plain[at - 1] !== 'm') return list;
  const words = madeOf(scan, at, at);
  if (words.size === 0) return list;
  const shares = (makes: readonly string[]): boolean => makes.some((word) => words.has(word));
  const told = list.map((item) => ({ item, makes: makesOf(scan, item) }));
  if (!told.some(({ makes }) => shares(makes))) return list;
  return told.filter(({ makes }) => makes.length === 0 || shares(makes)).map(({ item }) => item);
}

/** Drafts named by a noun: its own, and with a plural noun all of its kind. */
export function namedBy(scan: Scan, drafts: readonly Draft[], at: number): Draft[] {
  const term = scan.tokens[at]?.term;
  // "The curl bar": its first words tell of the bar.
  const part = scan.tokens[at - 1]?.term?.part;
  const called = part?.endsWith('-bar') ? drafts.filter((item) => item.kind === part) : [];
  if (called.length > 0) return called;
  const kind = term?.kind;
  if (!kind) return [];
  const own = drafts.filter((item) => holds(item, at));
  const alike = calledAlike(
    scan,
    drafts.filter((item) => family(item.kind) === family(kind)),
    at,
  );
  return own.length > 0 &&
    (!term.plural || own.some((item) => item.weight !== null || (item.count?.implied === false && OWN.includes(item.kind))))
    ? own
    : alike.length > 0
      ? [...alike]
      : own;
}

/** First and last token of the clause around a place. */
export function clauseAround(scan: Scan, at: number): readonly [number, number] {
  let from = at;
  let to = at;
  while (from > 0 && scan.clause[from - 1] === scan.clause[at]) from -= 1;
  while (to + 1 < scan.tokens.length && scan.clause[to + 1] === scan.clause[at]) to += 1;
  return [from, to];
}

export function subjectOf(scan: Scan, drafts: readonly Draft[], at: number, fitting: (kind: Kind) => boolean): Draft[] {
  const apt = (list: readonly Draft[]): Draft[] => list.filter((item) => fitting(item.kind));
  const [from, to] = clauseAround(scan, at);
  // An adjective right before its noun, or in a list of adjectives before it.
  for (let i = at + 1; i <= Math.min(to, at + 4); i += 1) {
    const holding = apt(drafts.filter((item) => item.places.some((place) => i >= place.from && i <= place.to)));
    if (holding.length > 0) return sameList(drafts, holding, apt);
    if (scan.plain[i] === 'k') {
      const named = apt(namedBy(scan, drafts, i));
      if (named.length > 0) return named;
    }
    if (!'mCnduhs-x(p'.includes(scan.plain[i] ?? '_')) break;
  }
  const inClause = apt(drafts.filter((item) => item.places.some((place) => place.from >= from && place.from <= to)));
  // The nearest goods or noun before the word in its clause.
  for (let i = at - 1; i >= from; i -= 1) {
    const holding = inClause.filter((item) => item.places.some((place) => place.to === i));
    if (holding.length > 0)
      return scan.plain.slice(i + 1, at).match(/^[(:-]|^z?[mC]$/) || inClause.length === 1 || i >= at - 2
        ? sameList(drafts, holding, apt)
        : inClause;
    if (scan.plain[i] === 'k') {
      const named = apt(namedBy(scan, drafts, i));
      if (named.length > 0) return named;
    }
  }
  if (inClause.length > 0) return inClause;
  for (let i = at + 1; i <= to; i += 1) {
    const named = scan.plain[i] === 'k' ? apt(namedBy(scan, drafts, i)) : [];
    if (named.length > 0) return named;
  }
  const pronoun = scan.tokens.slice(from, to + 1).some(({ text }) => /^(it|it's|its|one|this|that|he|she)$/.test(text));
  if (pronoun) {
    for (let i = from - 1; i >= 0 && from - i < 60; i -= 1) {
      const holding = apt(drafts.filter((item) => holds(item, i)));
      if (holding.length > 0) return holding;
    }
  }
  return apt(drafts);
}

/** Members of one list share what is said of any of them ("rubber coated 45, 35 and 25 lb plates"). */
export function sameList(drafts: readonly Draft[], found: readonly Draft[], apt: (list: readonly Draft[]) => Draft[]): Draft[] {
  const lists = new Set(found.flatMap(({ list }) => (list === null ? [] : [list])));
  return apt(drafts.filter((item) => found.includes(item) || (item.list !== null && lists.has(item.list))));
}

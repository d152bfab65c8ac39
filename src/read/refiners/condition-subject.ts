/**
 * Whom a condition speaks of: the goods it stands beside, those whose part it names, the rest of them, what "it" or "they" stands for,
 * the goods told before it in a list's line; else the lot.
 */
import type { Condition, Kind } from '../../listing/reading.ts';
import type { Finding } from '../mention.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { isAttribute, isOfAbsent, isOfOthers, isOfThingsApart, isOtherLine } from './condition-apart.ts';
import { BARS, PIECES, SCOPES } from './condition-scopes.ts';
import { type Draft, firstToken } from './draft.ts';
import { excepted, isOver, isWhole, saysWholeBefore } from './left-out-goods.ts';
import { clauseAround, holds, namedBy } from './subject.ts';
import {
  type Apt,
  bracketed,
  goodsAhead,
  goodsOfLine,
  isVague,
  ownersOfPart,
  recalled,
  type Speech,
  spanned,
} from './subject-clues.ts';

export interface Subject {
  readonly drafts: readonly Draft[];
  /** Said of these goods, and not of the lot. */
  readonly told: boolean;
  /** Said of all but those that the word before spoke of. */
  readonly rest?: boolean;
}

/** Kinds that a condition of any goods can be said of, at least. */
const ANYTHING = 10;

export function subjectOfCondition(scan: Scan, drafts: readonly Draft[], finding: Finding, goodsLines: number): Subject {
  const { condition, from, to, rule } = finding;
  const fault = scan.tokens[to]?.term?.sense?.startsWith('fault') === true;
  const near = condition === 'odd' || condition === 'split-hub';
  const { told, lot } = SCOPES[condition];
  // "Rusty on the bar" speaks as "rust on the bar" does.
  const upon = scan.tokens[to + 1]?.term?.sense === 'upon';
  const joined = !fault && !upon && rule !== 'kept-at';
  const subject = subjectOfWord(scan, drafts, { told, lot, from, to, joined, near }, goodsLines);
  const turning = isOfTurning(scan, drafts, finding, subject);
  if (turning.length > 0) return { drafts: turning, told: true };
  const frames = OF_FRAMES.includes(condition) ? ofFrame(scan, drafts, subject, from) : [];
  if (frames.length > 0) return { drafts: frames, told: true };
  const pieces = condition === 'cracked' ? subject.drafts.filter(({ kind }) => PIECES.includes(kind)) : [];
  // "A bar and a pair of 45s, cracked": of a list the iron, for that is what cracks.
  return pieces.length > 0 ? { ...subject, drafts: pieces } : subject;
}

/** Conditions of frames, which things fitted to them do not have. */
const OF_FRAMES: readonly Condition[] = ['missing-parts', 'wobbly', 'welded', 'bolted'];

/** "Collars spin fine": what turns on a bar, where there is but one. */
function isOfTurning(scan: Scan, drafts: readonly Draft[], { condition, from }: Finding, subject: Subject): Draft[] {
  if ((condition !== 'spins' && condition !== 'seized-sleeves') || subject.drafts.length > 0) return [];
  const bars = drafts.filter(({ kind }) => BARS.includes(kind));
  return bars.length === 1 && scan.tokens[from - 1]?.term?.kind === 'collars' ? bars : [];
}

/** "Bench with leg extension and preacher pad, missing the pin": of the bench that these are fitted to. */
function ofFrame(scan: Scan, drafts: readonly Draft[], subject: Subject, at: number): Draft[] {
  if (!subject.told || subject.drafts.length === 0 || !subject.drafts.every(({ kind }) => kind === 'other' || kind === 'storage'))
    return [];
  return drafts.filter(
    ({ kind, kindAt }) =>
      (kind === 'bench' || kind === 'rack') &&
      kindAt < at &&
      scan.clause[kindAt] === scan.clause[at] &&
      (says(scan, kindAt + 1, 'with') || says(scan, kindAt + 2, 'with')),
  );
}

export function subjectOfWord(scan: Scan, drafts: readonly Draft[], speech: Speech, goodsLines: number): Subject {
  const { told, lot } = speech;
  const apt = (list: readonly Draft[]): Draft[] =>
    list.filter((item) => told.includes(item.kind) && (item.kind !== 'other' || !scan.tokens[item.kindAt]?.term?.part));
  const of = (list: readonly Draft[]): Subject => ({ drafts: list, told: true });
  const sense = (at: number): string | undefined => scan.tokens[at]?.term?.sense;
  const [from, to] = clauseAround(scan, speech.from);
  const ends = (at: number): boolean => scan.plain[at] === ',' || sense(at) === 'turn';
  let start = speech.from;
  while (start > from && !ends(start - 1)) start -= 1;
  let stop = speech.to;
  while (stop < to && !ends(stop + 1)) stop += 1;
  const some = (test: (at: number) => boolean): boolean => {
    for (let i = start; i <= stop; i += 1) if (test(i)) return true;
    return false;
  };

  const { left, at: exception } = excepted(scan, drafts, from, to);
  // "All great except the bench, which has a torn pad": what stands behind the exception is said of it.
  if (left.length > 0 && exception < speech.from && saysWholeBefore(scan, from, exception)) return of(apt(left));
  if (left.length > 0)
    return {
      drafts: apt(drafts).filter((item) => !left.includes(item) && lot.includes(item.kind) && !isOver(item, left)),
      told: true,
    };
  const said = drafts.filter((item) => item.places.some((place) => place.to >= from && place.from <= to));
  const inClause = apt(said.filter((item) => item.places.some((place) => place.from >= from && place.from <= to)));
  const ahead = goodsAhead(scan, drafts, said, speech, stop, to, apt);
  if (ahead.length > 0) return of(ahead);
  if (isOfAbsent(scan, drafts, speech, stop)) return of([]);
  for (let i = start; i < speech.from; i += 1) if (sense(i) === 'rest') return { drafts: apt(drafts), told: true, rest: true };
  const called = calledOnes(scan, drafts, start, speech.from);
  if (called.length > 0) return of(apt(called));
  const inBracket = bracketed(scan, inClause, speech);
  if (inBracket.length > 0) return of(inBracket);
  const owned = ownersOfPart(scan, drafts, speech, start, stop, apt);
  // "One 25 has a chunk missing from the rim": of the plates whose part it names those of that size.
  const sized = owned.length > 1 ? ofSize(scan, owned, start, speech.from) : [];
  if (owned.length > 0) return of(sized.length > 0 ? sized : owned);

  const grouped = groupedBefore(scan, drafts, inClause, start, speech.from, apt);
  if (grouped.length > 0) return of(grouped);
  const ofOne = ofSize(scan, apt(drafts), start, speech.from);
  if (ofOne.length > 0) return of(ofOne);
  for (let i = speech.from - 1; i >= from; i -= 1) {
    const near = inClause.length === 0 ? [] : inClause.filter((item) => item.places.some((place) => place.to === i));
    if (near.length > 0 && !(scan.plain[i] === 'k' && isVague(near)))
      return of(spanned(scan, near, inClause, drafts, from, i, speech, apt));
    const named = scan.plain[i] === 'k' ? apt(namedBy(scan, drafts, i)) : [];
    if (named.length > 0) return of([...named, ...joinedTo(scan, drafts, i, from, apt).filter((item) => !named.includes(item))]);
  }
  if (isAttribute(scan, speech)) return of([]);
  const whole = some((at) => isWhole(scan, at));
  // "All stored in the shop", "no rust on any of it": of the small things too.
  const small = whole && lot.length >= ANYTHING;
  if (whole) return { drafts: drafts.filter(({ kind }) => lot.includes(kind) || (small && kind === 'collars')), told: false };
  // Goods behind the word: under it as a heading, or with nothing between.
  const behind = start === from || /[:-]/.test(scan.plain.slice(speech.to + 1, stop + 1)) ? to : stop;
  const after = inClause.filter(
    (item) => item.kind !== 'collars' && item.places.some((place) => place.from >= from && place.from <= behind),
  );
  if (after.length > 0) return of(after);
  for (let i = speech.to + 1; i <= behind; i += 1) {
    const named = scan.plain[i] === 'k' ? apt(namedBy(scan, drafts, i)).filter(({ kind }) => kind !== 'collars') : [];
    if (named.length > 0) return of(named);
  }
  // Said of goods that cannot be so: of nothing else then.
  if (some((at) => at < speech.from && (scan.plain[at] === 'k' ? drafts : said).some((item) => holds(item, at)))) return of([]);
  if (told.length < ANYTHING && isOfOthers(scan, said, told, from, speech.from, goodsLines)) return of([]);
  if (isOfThingsApart(scan, speech, said.length > 0 ? start : from) || isOtherLine(scan, drafts, speech.from, goodsLines))
    return of([]);
  const meant = recalled(
    scan,
    drafts,
    from,
    some((at) => sense(at) === 'it'),
    some((at) => sense(at) === 'they'),
    (list) => apt(list).filter(({ kind }) => kind !== 'collars'),
  );
  if (meant.length > 0) return of(meant);
  const listed = goodsOfLine(scan, drafts, from, goodsLines, apt);
  if (listed.length > 0) return of(listed);
  const all = lotOf(drafts, lot, apt);
  return { drafts: toldSoFar(scan, all, speech.from), told: false };
}

/** "Power rack. Four bolts missing.", and "Also a bench" in a later line: of the goods that its own line has told, where all others come later. */
function toldSoFar(scan: Scan, all: readonly Draft[], at: number): readonly Draft[] {
  const line = scan.tokens[at]?.line ?? 0;
  const lineOf = (item: Draft): number => scan.tokens[firstToken(item)]?.line ?? 0;
  const here = all.filter((item) => lineOf(item) === line && firstToken(item) < at);
  return here.length > 0 && all.every((item) => here.includes(item) || lineOf(item) > line) ? here : all;
}

/** "Bar and plates have surface rust": the goods that "and" joins to a noun with a verb of several behind it. */
function joinedTo(
  scan: Scan,
  drafts: readonly Draft[],
  at: number,
  from: number,
  apt: (list: readonly Draft[]) => Draft[],
): Draft[] {
  if (!says(scan, at + 1, 'plural') && !says(scan, at + 2, 'plural')) return [];
  const joined: Draft[] = [];
  let noun = at;
  for (let joints = 0; joints < 4; joints += 1) {
    let i = noun - 1;
    while (i > from && noun - i < 4 && 'amC'.includes(scan.plain[i] ?? '_')) i -= 1;
    // "Neither bar nor plates have any rust."
    if (!(joints === 0 ? 'cN' : ',').includes(scan.plain[i] ?? '_') || scan.plain[i - 1] !== 'k') break;
    noun = i - 1;
    joined.push(...apt(namedBy(scan, drafts, noun)));
  }
  return joined;
}

/** "Rack and bench, both rusty", "bar and plates are all rusty": the goods before the word that takes them together. */
function groupedBefore(
  scan: Scan,
  drafts: readonly Draft[],
  inClause: readonly Draft[],
  start: number,
  at: number,
  apt: (list: readonly Draft[]) => Draft[],
): Draft[] {
  for (let i = at - 1; i >= start; i -= 1) {
    if (scan.plain[i] === 'k' || scan.plain[i + 1] === 'k') return [];
    if (!'dz'.includes(scan.plain[i] ?? '_')) continue;
    const both = says(scan, i, 'both-goods');
    const sense = scan.plain[i] === 'z' ? scan.tokens[i]?.term?.sense : undefined;
    if (!both && sense !== 'whole' && sense !== 'definite') continue;
    const before = inClause.filter((item) => item.places.some((place) => place.to < i));
    if (before.length > 1) return both ? before.slice(-2) : before;
    // "Two bars, both bent."
    const [last] = before;
    if (both && last?.count?.value === 2 && !PIECES.includes(last.kind)) return before;
    const all = both && before.length === 0 ? apt(drafts) : [];
    return all.length === 2 ? all : [];
  }
  return [];
}

/** "One 25 is cracked": goods by their size alone. */
function ofSize(scan: Scan, drafts: readonly Draft[], from: number, to: number): Draft[] {
  for (let i = from; i < to; i += 1) {
    const value = scan.plain[i] === 'n' && 'sz%C'.includes(scan.plain[i + 1] ?? 'z') ? scan.tokens[i]?.value : null;
    // "Bar and 4x45 have been in the garage" says it of both.
    const told =
      says(scan, i + 1, 'plural') &&
      drafts.some(({ places }) => places.some((place) => place.to === i && scan.plain[place.from - 1] === 'c'));
    const sized = value == null || told ? [] : drafts.filter(({ weight }) => weight?.value === value);
    if (sized.length > 0) return sized;
  }
  return [];
}

/** "The deep dish ones have no rust": those that the same word of make stands beside elsewhere. */
function calledOnes(scan: Scan, drafts: readonly Draft[], start: number, to: number): Draft[] {
  for (let i = start; i < to - 1; i += 1) {
    if (scan.plain[i] !== 'm' || !says(scan, i + 1, 'ones')) continue;
    if (i > start && (!says(scan, i - 1, 'the') || i - 1 > start + 1)) continue;
    const { text } = scan.tokens[i] ?? {};
    const clauses = new Set(
      scan.tokens.flatMap((token, at) => (`${token.text} `.startsWith(`${text} `) && at !== i ? [scan.clause[at]] : [])),
    );
    const beside = drafts.filter(({ places }) => places.some(({ from }) => clauses.has(scan.clause[from])));
    if (beside.length === drafts.length) return [];
    const weighed = beside.filter(({ weight }) => weight !== null);
    return weighed.length > 0 ? weighed : beside;
  }
  return [];
}

/** Goods of the lot that the word can speak of, or the only goods there are. */
function lotOf(drafts: readonly Draft[], lot: readonly Kind[], apt: Apt): Draft[] {
  const found = drafts.filter((item) => lot.includes(item.kind));
  const only = found.length > 0 ? [] : apt(drafts).filter(({ kind }) => kind !== 'other');
  const kinds = new Set(only.map(({ kind }) => kind));
  return kinds.size === 1 ? only : found;
}

/** Whether a condition speaks of something else than goods on offer. */
import type { Kind } from '../../listing/reading.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { namedBy } from './subject.ts';
import type { Speech } from './subject-clues.ts';

/** How far before a word the head of its line may stand, in tokens. */
const LINE = 40;
/** Goods that head no line of their own. */
const SMALL: readonly Kind[] = ['collars', 'storage', 'other'];
/** How far behind a fault the goods that it is on may stand, in tokens. */
const ABSENT_REACH = 8;

const isOfStoring = (scan: Scan, at: number): boolean => scan.tokens[at]?.term?.condition?.startsWith('stored') === true;

/** "Adjustable bench, goes up to almost straight", "Barbells, 8. Various makers.": the goods of its clause, or of its line in a list, cannot be so. */
export function isOfOthers(
  scan: Scan,
  said: readonly Draft[],
  told: readonly Kind[],
  from: number,
  at: number,
  goodsLines: number,
): boolean {
  const before = said.filter((item) => item.places.some((place) => place.from >= from && place.to < at));
  if (before.length > 0) return before.every(({ kind }) => !told.includes(kind));
  if (goodsLines < 2) return false;
  const line = scan.tokens[at]?.line;
  let others = false;
  let head = from;
  while (head > 0 && from - head < LINE && scan.tokens[head - 1]?.line === line) head -= 1;
  for (let i = head; i < from; i += 1) {
    const kind = scan.plain[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
    if (/[svC]/.test(scan.plain[i] ?? '_') || (kind && told.includes(kind))) return false;
    if (kind && !SMALL.includes(kind)) others = true;
  }
  return others;
}

/** "The rust in the picture is on my old bar, which is not for sale": of goods by their name that are none of those on offer. */
export function isOfAbsent(scan: Scan, drafts: readonly Draft[], speech: Speech, stop: number): boolean {
  let on = false;
  for (let i = speech.to + 1; i <= Math.min(stop, speech.to + ABSENT_REACH); i += 1) {
    if (scan.tokens[i]?.term?.part || scan.tokens[i]?.term?.sense === 'place') return false;
    if (scan.tokens[i]?.term?.sense === 'upon') on = true;
    const kind = scan.plain[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
    if (kind) return on && kind !== 'other' && namedBy(scan, drafts, i).length === 0;
    if ('.;,cM'.includes(scan.plain[i] ?? 'l')) return false;
  }
  return false;
}

/** "A rusty old wheelbarrow": said of a noun that no dictionary knows. */
export function isAttribute(scan: Scan, speech: Speech): boolean {
  if (!speech.joined || scan.plain[speech.from - 1] !== 'a' || isOfStoring(scan, speech.from)) return false;
  let at = speech.to + 1;
  while ('mC'.includes(scan.plain[at] ?? '_')) at += 1;
  const noun = scan.tokens[at];
  return (
    scan.plain[at] === 'z' &&
    noun?.type === 'word' &&
    (noun.term === null || noun.term.sense === 'thing apart') &&
    scan.clause[at] === scan.clause[speech.to]
  );
}

/** Senses of things that are no goods of the trade. */
const APART: readonly (string | undefined)[] = ['thing apart', 'household', 'foreign'];

/** "Platform: homemade", "the couch has a rip": a thing that is no goods of the trade opens what is said, and is not stood or lain on. */
export function isOfThingsApart(scan: Scan, speech: Speech, start: number): boolean {
  for (let i = start; i < speech.from; i += 1) {
    if (!APART.includes(scan.tokens[i]?.term?.sense)) continue;
    return !scan.tokens.slice(Math.max(start, i - 3), i).some(({ term }) => term?.sense === 'upon' || term?.code === 'o');
  }
  return false;
}

/** In a list that gives goods lines of their own, a line with a price and none of the goods speaks of something else: "Ping pong table $25, paddles are lost". */
export function isOtherLine(scan: Scan, drafts: readonly Draft[], at: number, goodsLines: number): boolean {
  if (goodsLines < 3) return false;
  const line = scan.tokens[at]?.line;
  let from = at;
  while (from > 0 && at - from < 60 && scan.tokens[from - 1]?.line === line) from -= 1;
  let to = at;
  while (to + 1 < scan.tokens.length && to - at < 60 && scan.tokens[to + 1]?.line === line && scan.plain[to + 1] !== 'l') to += 1;
  const letters = scan.plain.slice(from, to + 1);
  const sense = (word: string): boolean =>
    scan.tokens.slice(from, to + 1).some(({ term }) => term?.sense === word || (word === 'part' && !!term?.part));
  if (!/\$|,n$|-n$/.test(letters) || /[kLA]/.test(letters)) return false;
  return (
    !['it', 'they', 'whole', 'rest', 'part', 'definite'].some(sense) &&
    !drafts.some((item) => item.places.some((place) => place.from >= from && place.from <= to))
  );
}

/**
 * Whom a condition speaks of: the goods it stands beside, those whose part it names, the rest of them, what "it" or "they" stands for,
 * the goods told before it in a list's line; else the lot.
 */
import type { Kind } from '../../listing/reading.ts';
import type { Finding } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import { BARS, PLATES, SCOPES, type Scope } from './condition-scopes.ts';
import { type Draft, firstToken } from './draft.ts';
import { clauseAround, holds, namedBy, sameList } from './subject.ts';

export interface Subject {
  readonly drafts: readonly Draft[];
  /** Said of these goods, and not of the lot. */
  readonly told: boolean;
  /** Said of all but those that the word before spoke of. */
  readonly rest?: boolean;
}

/** Kinds that a part may belong to, likeliest first. */
const OWNERS: Partial<Record<Kind, readonly (readonly Kind[])[]>> = {
  bar: [BARS],
  rack: [['rack', 'stands'], ['bench']],
  bench: [['bench']],
  plate: [PLATES],
};
const AHEAD = 8;
const NEAR_PART = 5;
const RECALL = 80;

/** A word that says something of goods. */
export interface Speech extends Scope {
  readonly from: number;
  readonly to: number;
  /** It stands before its noun as an adjective does; other words need a preposition between. */
  readonly joined: boolean;
  /** It is said of one piece: of the nearest goods alone. */
  readonly near: boolean;
}

export function subjectOfCondition(scan: Scan, drafts: readonly Draft[], finding: Finding, goodsLines: number): Subject {
  const { condition, from, to, rule } = finding;
  const fault = scan.tokens[to]?.term?.sense?.startsWith('fault') === true;
  const near = condition === 'odd' || condition === 'split-hub';
  return subjectOfWord(scan, drafts, { ...SCOPES[condition], from, to, joined: !fault && rule !== 'kept-at', near }, goodsLines);
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

  const ahead = goodsAhead(scan, drafts, speech, stop, to, apt);
  if (ahead.length > 0) return of(ahead);
  for (let i = start; i < speech.from; i += 1) if (sense(i) === 'rest') return { drafts: apt(drafts), told: true, rest: true };
  const owned = ownersOfPart(scan, drafts, speech, start, stop, apt);
  if (owned.length > 0) return of(owned);

  const inClause = apt(drafts.filter((item) => item.places.some((place) => place.from >= from && place.from <= to)));
  for (let i = speech.from - 1; i >= from; i -= 1) {
    const near = inClause.filter((item) => item.places.some((place) => place.to === i));
    if (near.length > 0 && !(scan.plain[i] === 'k' && isVague(near)))
      return of(spanned(scan, near, inClause, drafts, from, i, speech, apt));
    const named = scan.plain[i] === 'k' ? apt(namedBy(scan, drafts, i)) : [];
    if (named.length > 0) return of(named);
  }
  const whole = some((at) => isWhole(scan, at));
  if (whole) return { drafts: drafts.filter((item) => lot.includes(item.kind)), told: false };
  // Goods behind the word: under it as a heading, or with nothing between.
  const behind = start === from || /[:-]/.test(scan.plain.slice(speech.to + 1, stop + 1)) ? to : stop;
  const after = inClause.filter((item) => item.places.some((place) => place.from >= from && place.from <= behind));
  if (after.length > 0) return of(after);
  for (let i = speech.to + 1; i <= behind; i += 1) {
    const named = scan.plain[i] === 'k' ? apt(namedBy(scan, drafts, i)) : [];
    if (named.length > 0) return of(named);
  }
  // Said of goods that cannot be so: of nothing else then.
  if (some((at) => at < speech.from && drafts.some((item) => holds(item, at)))) return of([]);
  const meant = recalled(
    scan,
    drafts,
    from,
    some((at) => sense(at) === 'it'),
    some((at) => sense(at) === 'they'),
    apt,
  );
  if (meant.length > 0) return of(meant);
  const listed = goodsOfLine(scan, drafts, from, goodsLines, apt);
  if (listed.length > 0) return of(listed);
  return { drafts: lotOf(drafts, lot, apt), told: false };
}

/** Goods of the lot that the word can speak of, or the only goods there are. */
function lotOf(drafts: readonly Draft[], lot: readonly Kind[], apt: Apt): Draft[] {
  const found = drafts.filter((item) => lot.includes(item.kind));
  const only = found.length > 0 ? [] : apt(drafts).filter(({ kind }) => kind !== 'other');
  const kinds = new Set(only.map(({ kind }) => kind));
  return kinds.size === 1 ? only : found;
}

/** "All of it", "everything", "none of them". */
const isWhole = (scan: Scan, at: number): boolean => {
  const sense = scan.tokens[at]?.term?.sense;
  const letter = scan.plain[at];
  return (
    sense === 'whole' ||
    (sense === 'definite' && letter === 'z') ||
    letter === 'L' ||
    (letter === 'N' && scan.plain[at + 1] === 'o')
  );
};

/** A noun whose pieces may be told elsewhere. */
const isVague = (list: readonly Draft[]): boolean => list.every(({ weight }) => weight === null);

type Apt = (list: readonly Draft[]) => Draft[];

/** "Rusty 45s", "bent bar", "surface rust on the 35s", "chips on the edges of the 25s". */
function goodsAhead(scan: Scan, drafts: readonly Draft[], speech: Speech, stop: number, to: number, apt: Apt): Draft[] {
  const fault = !speech.joined;
  let joined = speech.joined;
  const last = Math.min(fault ? stop : to, speech.to + (fault ? AHEAD : 4));
  for (let i = speech.to + 1; i <= last; i += 1) {
    const token = scan.tokens[i];
    const letter = scan.plain[i] ?? '_';
    if (letter === 'o' || token?.term?.sense === 'upon') joined = true;
    else if (joined) {
      const holding = apt(drafts.filter((item) => item.places.some((place) => i >= place.from && i <= place.to)));
      const named = letter === 'k' ? apt(namedBy(scan, drafts, i)) : [];
      if (named.length > 0 && isVague(holding)) return named;
      if (holding.length > 0) return fault ? holding : sameList(drafts, holding, apt);
    }
    if (fault ? '.;cMk'.includes(letter) : !'mCnduhs-x(p'.includes(letter)) break;
  }
  return [];
}

/** Owners of the part named beside the condition: the one told last before it, where there are several. */
function ownersOfPart(scan: Scan, drafts: readonly Draft[], speech: Speech, start: number, stop: number, apt: Apt): Draft[] {
  let part: Kind | undefined;
  for (let i = start; i <= stop; i += 1) {
    const token = scan.tokens[i]?.term;
    if (token?.part && Math.abs(i - speech.from) <= NEAR_PART) part ??= token.part;
  }
  for (const kinds of (part && OWNERS[part]) ?? []) {
    const owners = apt(drafts).filter((item) => kinds.includes(item.kind));
    if (owners.length === 0) continue;
    if (part === 'plate') {
      const near = owners.filter((item) => item.places.some((place) => scan.clause[place.from] === scan.clause[speech.from]));
      return near.length > 0 ? near : owners;
    }
    const before = owners.filter((item) => firstToken(item) < speech.from);
    return before.length > 0 ? before.slice(-1) : owners;
  }
  return [];
}

/** Of goods in a list before the word: the nearest when the word stands right behind it or speaks of one, else all of them. */
function spanned(
  scan: Scan,
  near: readonly Draft[],
  inClause: readonly Draft[],
  drafts: readonly Draft[],
  from: number,
  at: number,
  speech: Speech,
  apt: Apt,
): Draft[] {
  const between = scan.plain.slice(at + 1, speech.from);
  const one = scan.tokens.slice(at + 1, speech.from).some(({ term }) => term?.code === 'd' && term.value === 1);
  if (one || speech.near) return [...near];
  const before = inClause.filter((item) => item.places.some((place) => place.from >= from && place.from < speech.from));
  const dashed = /^[:-]/.test(between) && scan.plain.slice(from, at).includes(between[0] ?? '-');
  const beside = dashed || /^\(|^z?[mC]?$|^[zFa]{1,3}$/.test(between) || before.length === 1;
  return beside ? sameList(drafts, near, apt) : before;
}

/** What "it" or "they" stands for: the goods told last before the clause. */
function recalled(scan: Scan, drafts: readonly Draft[], from: number, it: boolean, they: boolean, apt: Apt): Draft[] {
  if (!it && !they) return [];
  for (let i = from - 1; i >= 0 && from - i < RECALL; i -= 1) {
    const holding = apt(drafts.filter((item) => holds(item, i)));
    const [first] = holding;
    if (!first) continue;
    if (it) return holding;
    if (first.count?.value === 1 || first.kind === 'other') continue;
    return apt(drafts).filter((item) => (PLATES.includes(first.kind) ? PLATES.includes(item.kind) : item.kind === first.kind));
  }
  return [];
}

/** In an ad that gives goods lines of their own, a clause without goods speaks of those told before it in its line. */
function goodsOfLine(scan: Scan, drafts: readonly Draft[], from: number, goodsLines: number, apt: Apt): Draft[] {
  if (goodsLines < 3) return [];
  const line = scan.tokens[from]?.line;
  for (let i = from - 1; i >= 0 && scan.tokens[i]?.line === line; i -= 1) {
    const found = apt(drafts.filter((item) => holds(item, i)));
    if (found.length === 0) continue;
    const clause = scan.clause[i];
    return apt(drafts.filter((item) => item.places.some((place) => scan.clause[place.from] === clause)));
  }
  return [];
}

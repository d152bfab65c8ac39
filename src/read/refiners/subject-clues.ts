/** Clues to whom a word speaks of: goods right ahead, owners of a part, a list before it, what a pronoun stands for, the line of a list. */
import type { Kind } from '../../listing/reading.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { BARS, PLATES, type Scope } from './condition-scopes.ts';
import { type Draft, firstToken } from './draft.ts';
import { holds, namedBy, sameList } from './subject.ts';

/** A word that says something of goods. */
export interface Speech extends Scope {
  readonly from: number;
  readonly to: number;
  /** It stands before its noun as an adjective does; other words need a preposition between. */
  readonly joined: boolean;
  /** It is said of one piece: of the nearest goods alone. */
  readonly near: boolean;
}

/** Keeps the drafts that the word can speak of. */
export type Apt = (list: readonly Draft[]) => Draft[];

/** Kinds that a part may belong to, likeliest first. */
const OWNERS: Partial<Record<Kind, readonly (readonly Kind[])[]>> = {
  bar: [BARS],
  rack: [['rack', 'stands'], ['bench']],
  'curl-bar': [['curl-bar']],
  'hex-bar': [['hex-bar']],
  bench: [['bench']],
  plate: [PLATES],
};
const AHEAD = 8;
const NEAR_PART = 5;
const RECALL = 80;

/** A noun whose pieces may be told elsewhere. */
export const isVague = (list: readonly Draft[]): boolean => list.every(({ weight }) => weight === null);

/** "A crack in one 25": goods by a bare size. */
const sizedAs = (scan: Scan, drafts: readonly Draft[], at: number): Draft[] =>
  'sz,.;l)c'.includes(scan.plain[at + 1] ?? 'l') && scan.plain[at - 1] !== '$'
    ? drafts.filter(({ weight }) => weight !== null && weight.value === scan.tokens[at]?.value)
    : [];

/** "Rust on the bar and the 25s": goods that "and" joins to those at a token, unless something else is said of them. */
function joinedBehind(scan: Scan, drafts: readonly Draft[], at: number, stop: number, apt: Apt): Draft[] {
  const joined: Draft[] = [];
  let end = at;
  for (let joints = 0; joints < 4; joints += 1) {
    while (end < stop && 'su'.includes(scan.plain[end + 1] ?? '_')) end += 1;
    const next = /^,?c?[am]{0,2}([kn])s?/.exec(scan.plain.slice(end + 1, stop + 1));
    if (!next || next[0].length < 2 || !/^[,c]/.test(next[0])) break;
    const goods = end + next[0].replace(/s$/, '').length;
    if (says(scan, end + next[0].length + 1, 'has') || scan.tokens[end + next[0].length + 1]?.term?.sense === 'is') break;
    joined.push(...apt(next[1] === 'k' ? namedBy(scan, drafts, goods) : sizedAs(scan, drafts, goods)));
    end += next[0].length;
  }
  return joined;
}

/** "Rusty 45s", "bent bar", "surface rust on the 35s", "chips on the edges of the 25s". */
export function goodsAhead(
  scan: Scan,
  drafts: readonly Draft[],
  said: readonly Draft[],
  speech: Speech,
  stop: number,
  to: number,
  apt: Apt,
): Draft[] {
  const fault = !speech.joined;
  let joined = speech.joined;
  let upon = false;
  const last = Math.min(fault ? stop : to, speech.to + (fault ? AHEAD : 4));
  for (let i = speech.to + 1; i <= last; i += 1) {
    const token = scan.tokens[i];
    const letter = scan.plain[i] ?? '_';
    if (letter === 'o' || token?.term?.sense === 'upon') {
      joined = true;
      upon = true;
    } else if (joined) {
      // "One bent one straight": a pronoun takes what is behind it.
      const holding = apt(
        said.filter((item) => item.places.some((place) => i >= place.from && i <= place.to && place.rule !== 'told-apart')),
      );
      const named = letter === 'k' ? apt(namedBy(scan, drafts, i)) : [];
      const sized = letter === 'n' ? apt(sizedAs(scan, drafts, i)) : [];
      const found = (named.length > 0 && isVague(holding)) || holding.length === 0 ? [...named, ...sized] : holding;
      if (found.length > 0 && upon) return [...new Set([...found, ...joinedBehind(scan, drafts, i, stop, apt)])];
      if (found.length > 0) return fault || found !== holding ? found : sameList(drafts, holding, apt);
    }
    if (fault ? '.;cMk'.includes(letter) : !"mCnduhs-x(pf'".includes(letter)) break;
  }
  return [];
}

/** Owners of the part named beside the condition: the one told last before it, where there are several. */
export function ownersOfPart(
  scan: Scan,
  drafts: readonly Draft[],
  speech: Speech,
  start: number,
  stop: number,
  apt: Apt,
): Draft[] {
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
    // "The first has rust and one sleeve is stuck": the one that its sentence is about.
    const here = owners.filter((item) =>
      item.places.some((place) => scan.clause[place.from] === scan.clause[speech.from] && place.from < speech.from),
    );
    if (here.length === 1) return here;
    const before = owners.filter((item) => firstToken(item) < speech.from);
    return before.length > 0 ? before.slice(-1) : owners;
  }
  return [];
}

/** "2 x 45, 1 x 25 (has a crack), 2 x 10": said in a bracket behind goods, of those alone, for the list goes on behind it. */
export function bracketed(scan: Scan, inClause: readonly Draft[], speech: Speech): Draft[] {
  let open = speech.from - 1;
  while (open > 0 && speech.from - open < 12 && !'()'.includes(scan.plain[open] ?? ')')) open -= 1;
  let close = speech.to + 1;
  while (close - speech.to < 12 && !'()l'.includes(scan.plain[close] ?? 'l')) close += 1;
  if (scan.tokens[open]?.text !== '(' || scan.tokens[close]?.text !== ')') return [];
  const near = inClause.filter((item) => item.places.some(({ to }) => to === open - 1));
  const behind = inClause.some((item) => !near.includes(item) && item.places.some(({ from }) => from > close));
  return behind ? near : [];
}

/** "Bar and 4x45": nothing but "and" and words of make stand between them. */
function isJoined(scan: Scan, item: Draft, near: readonly Draft[]): boolean {
  const starts = near.flatMap(({ places }) => places.map(({ from }) => from));
  return item.places.some(({ to }) =>
    starts.some((from) => from > to && from - to < 6 && /^k?[,c][am]{0,3}$/.test(scan.plain.slice(to + 1, from))),
  );
}

/** Of goods in a list before the word: the nearest when the word stands right behind it or speaks of one, else all of them. */
export function spanned(
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
  const pronoun = near.some(({ places }) => places.some((place) => place.to === at && place.rule === 'told-apart'));
  // "2 x 50, 2 x 45, one of the fifties has a chip".
  const ofTold = near.some(
    ({ partitive, weight }) => partitive && drafts.some((item) => !item.partitive && item.weight?.value === weight?.value),
  );
  if (one || pronoun || speech.near || ofTold) return [...near];
  const before = inClause.filter((item) => item.places.some((place) => place.from >= from && place.from < speech.from));
  const dashed = /^[:-]/.test(between) && scan.plain.slice(from, at).includes(between[0] ?? '-');
  // "Olympic bar and 4x45 have been in the garage": a verb of several is said of both.
  const several = says(scan, at + 1, 'plural') && before.some((item) => !near.includes(item) && isJoined(scan, item, near));
  if (several) return before;
  const beside = dashed || /^\(|^z?[mC]?$|^[zFa]{1,3}$/.test(between) || before.length === 1;
  return beside ? sameList(drafts, near, apt) : before;
}

/** Goods told at a token or behind it. */
const toldSince = (drafts: readonly Draft[], since: number): Draft[] =>
  drafts.filter((item) => item.kindAt >= since || item.places.some((place) => place.to >= since));

/** Of goods told with their weights those before a token; all of them where none is. */
function toldBefore(drafts: readonly Draft[], at: number): readonly Draft[] {
  const before = drafts.filter((item) => firstToken(item) < at);
  return before.some(({ weight }) => weight !== null) ? before : drafts;
}

/** What "it" or "they" stands for: the goods told last before the clause. */
export function recalled(scan: Scan, drafts: readonly Draft[], from: number, it: boolean, they: boolean, apt: Apt): Draft[] {
  if (!it && !they) return [];
  const lately = toldSince(apt(drafts), from - RECALL);
  for (let i = from - 1; lately.length > 0 && i >= 0 && from - i < RECALL; i -= 1) {
    const holding = lately.filter((item) => holds(item, i));
    const [first] = holding;
    if (!first) continue;
    // "Rack, pull up bar, two straps. It lived on the patio": of the frame that such things are fitted to.
    if (it && holding.every(({ kind, kindAt }) => kind === 'other' && scan.tokens[kindAt]?.term?.weak)) {
      const frames = lately.filter(
        ({ kind, kindAt }) =>
          (kind === 'rack' || kind === 'bench') && kindAt < i && scan.tokens[kindAt]?.line === scan.tokens[i]?.line,
      );
      if (frames.length === 1) return frames;
    }
    // "4x45, 2x25, bar and bench. It was in a barn.": all that the list names.
    if (it && lately.length > 2) {
      const listed = lately.filter(({ places }) => places.some((place) => scan.clause[place.from] === scan.clause[i]));
      if (listed.length > 2) return listed;
    }
    if (it) return holding;
    if (first.count?.value === 1 || first.kind === 'other') continue;
    return toldBefore(apt(drafts), from).filter((item) =>
      PLATES.includes(first.kind) ? PLATES.includes(item.kind) : item.kind === first.kind,
    );
  }
  return [];
}

/** In an ad that gives goods lines of their own, a clause without goods speaks of those told before it in its line. */
export function goodsOfLine(scan: Scan, drafts: readonly Draft[], from: number, goodsLines: number, apt: Apt): Draft[] {
  if (goodsLines < 3) return [];
  const line = scan.tokens[from]?.line;
  const lately = toldSince(apt(drafts), from - RECALL);
  for (let i = from - 1; lately.length > 0 && from - i < RECALL && scan.tokens[i]?.line === line; i -= 1) {
    if (!lately.some((item) => holds(item, i))) continue;
    const clause = scan.clause[i];
    return apt(drafts.filter((item) => item.places.some((place) => scan.clause[place.from] === clause)));
  }
  return [];
}

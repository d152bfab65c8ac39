/**
 * Goods that a sentence only speaks of: "took his bar and his bumpers with him", "room for the bar", "dropped it across a bench", "plates don't
 * slide on that side". They are none of those on offer where the ad names no such goods otherwise.
 */
import type { Kind } from '../../listing/reading.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';

const SPOKEN_OF: readonly Kind[] = ['bar', 'curl-bar', 'rack', 'bench', 'stands', 'collars', 'plate', 'bumper', 'dumbbell'];
/** Kinds that others slide on or fit. */
const SLID: readonly Kind[] = ['plate', 'bumper', 'collars'];
const REACH = 8;

/** Drafts without those. */
export function dropMentioned(scan: Scan, drafts: readonly Draft[]): Draft[] {
  const sure = new Set(drafts.flatMap((item) => (item.sold || isVague(item) ? [] : [item.kind])));
  const spoken = new Set<Draft>();
  for (const item of drafts)
    if (
      isVague(item) &&
      (!sure.has(item.kind) || item.kind === 'rack' || item.kind === 'collars') &&
      (isPartOf(scan, item, drafts) || item.places.every(({ from, to }) => isSpokenOf(scan, from, to, item.kind)))
    )
      spoken.add(item);
  if (spoken.size === 0) return [...drafts];
  const told = drafts.filter((item) => !spoken.has(item) && !item.sold);
  // "The bar is 45 lb" elsewhere: the sentence adds to what is known of it.
  return told.length === 0
    ? [...drafts]
    : drafts.filter((item) => !spoken.has(item) || told.some(({ kind }) => kind === item.kind));
}

const isVague = (item: Draft): boolean =>
  SPOKEN_OF.includes(item.kind) &&
  item.weight === null &&
  item.total === null &&
  item.label === undefined &&
  (item.count === null || item.count.implied === true || item.count.value === 1) &&
  item.places.every(({ rule }) => rule === 'noun');

/** The word right before, over articles, adjectives and "with". */
function withBefore(scan: Scan, from: number): number | null {
  let at = from - 1;
  let joined = false;
  while (from - at < 6 && scan.clause[at] === scan.clause[from] && 'amC/cz'.includes(scan.plain[at] ?? '_')) {
    if (says(scan, at, 'with')) joined = true;
    else if (scan.plain[at] === 'z' && scan.tokens[at]?.term?.sense === 'handle') break;
    else if (scan.plain[at] === 'z' && joined) break;
    at -= 1;
  }
  return joined && scan.clause[at] === scan.clause[from] ? at : null;
}

/** "Two short handles with the star nuts", "weight bench w/ rack attached": a part of the goods before it. "Adjustable dumbbells: 2 handles, 16 discs" are those. */
function isPartOf(scan: Scan, item: Draft, drafts: readonly Draft[]): boolean {
  const [place] = item.places;
  if (!place) return false;
  const isHandle = (at: number): boolean => scan.tokens[at]?.term?.sense === 'handle';
  if (item.kind === 'dumbbell')
    return (
      item.count === null &&
      scan.senses.has('handle') &&
      drafts.some(({ kind, weight }) => kind === 'plate' && weight !== null) &&
      handlesCounted(scan)
    );
  const before = withBefore(scan, place.from);
  if (before === null) return false;
  // "The" star nuts are those of the handles; "w/ star collars" may be told as goods.
  if (item.kind === 'collars')
    return item.count?.implied === true && isHandle(before) && scan.plain.slice(before, place.from + 1).includes('a');
  return item.kind === 'rack' && scan.tokens[before]?.term?.kind === 'bench' && says(scan, place.to + 1, 'attached');
}

/** "2 chrome handles". */
const handlesCounted = (scan: Scan): boolean =>
  scan.tokens.some(
    (token, at) =>
      token.term?.sense === 'handle' &&
      (scan.nounCounts.has(at) || /[nd][mz]{0,2}$/.test(scan.plain.slice(Math.max(0, at - 3), at))),
  );

/** Whether a price, or what may be one, stands right behind. */
const isPriced = (scan: Scan, at: number): boolean =>
  /^[-:=,(]?(?:[$A]|n(?![fuhs'"])|[ZR])/.test(scan.plain.slice(at + 1, at + 4)) || scan.letters[at + 1] === 'M';

function isSpokenOf(scan: Scan, from: number, noun: number, kind: Kind): boolean {
  if (isPriced(scan, noun)) return false;
  const within = (at: number): boolean => at >= 0 && scan.clause[at] === scan.clause[noun];
  if (within(noun + 1) && says(scan, noun + 1, 'zone')) return true;
  if (SLID.includes(kind) && isSlid(scan, noun)) return true;
  let at = from - 1;
  let named = false;
  while (within(at) && from - at < REACH && ('amCGf"'.includes(scan.plain[at] ?? '_') || says(scan, at, 'ordinary'))) {
    if (scan.plain[at] === 'a') named = true;
    if (says(scan, at, 'wrong')) return true;
    at -= 1;
  }
  if (!within(at)) return false;
  if (says(scan, at, 'beside-goods') || (named && scan.plain[at] === 'X')) return true;
  if (SLID.includes(kind) && saysWithin(scan, at - 3, at, 'uses')) return true;
  // "Took his bar and his bumpers."
  if (scan.plain[at] === 'c' && scan.plain[at - 1] === 'k' && within(at - 1)) {
    const other = scan.tokens[at - 1]?.term?.kind ?? 'other';
    return named && isSpokenOf(scan, at - 1, at - 1, other);
  }
  // "I'm selling off the bar", "dazu gebe ich die Stange".
  if (!named || says(scan, at, 'offers') || (within(at - 1) && says(scan, at - 1, 'sells'))) return false;
  const { type, term } = scan.tokens[at] ?? {};
  // "No room for the bar", but "75 for the bar".
  if (scan.plain[at] === 'w') return within(at - 1) && !/[n$M)]/.test(scan.plain[at - 1] ?? '$') && scan.letters[at - 1] !== '_';
  return scan.plain[at] === 'z' && type === 'word' && term?.kind === undefined;
}

/** "Olympic plates slide right on", "so plates don't go on". */
function isSlid(scan: Scan, noun: number): boolean {
  // "The clips that go on the end" are told by what they are for.
  if (scan.tokens[noun + 1]?.term?.sense === 'which') return false;
  for (let at = noun + 1; at < noun + 4 && scan.clause[at] === scan.clause[noun]; at += 1) {
    if (says(scan, at, 'slides')) return true;
    if (!'Nz'.includes(scan.plain[at] ?? '_')) return false;
  }
  return false;
}

/**
 * Words of condition, with degree ("a few specks of rust"), denial ("not bent", "no rust, cracks or chips"), hearsay and what only
 * might be so ("some may be bent"). Places speak of the goods behind a verb of keeping ("kept in the basement").
 */
import type { Condition } from '../../listing/reading.ts';
import type { Finding } from '../mention.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import type { Term } from '../text/terms.ts';
import { isNewness } from './newness.ts';
import { readPartedConditions } from './parted-conditions.ts';
import { readWordedConditions } from './worded-conditions.ts';

/** How many tokens before a word a denial still reaches it ("no sign of rust", "has never been left outside"). */
const REACH = 5;
/** How far a word of degree stands from the rust that it grades, before and behind. */
const DEGREE_BEFORE = 5;
const DEGREE_BEHIND = 3;
/** How far a place stands behind its verb ("kept everything in a dry heated basement"). */
const KEEPING = 7;
const MOST_FINDINGS = 500;

const senseAt = (scan: Scan, at: number): string | undefined => scan.tokens[at]?.term?.sense;
const isFault = (term: Term | null | undefined): boolean => term?.sense?.startsWith('fault') === true;

/** "I think it's straight but can't promise." */
function isNotPromised(scan: Scan, at: number): boolean {
  let end = at + 1;
  while (end < at + 8 && scan.clause[end] === scan.clause[at]) end += 1;
  return saysWithin(scan, at + 1, end, 'no-promise');
}

interface Denial {
  readonly denied: boolean;
  readonly hearsay: boolean;
  readonly unsure: boolean;
}

/** Whether the list of words before a place leads back to a denial: "no rust, cracks or" before "chips"; "not chipped or" before "cracked". */
function listGoesOn(scan: Scan, at: number, separator: number): boolean {
  const term = scan.tokens[at]?.term;
  const before = scan.tokens[separator - 1]?.term;
  if (senseAt(scan, separator) === 'or' || scan.plain[separator] === '/') return before?.condition !== undefined;
  return isFault(term) && isFault(before);
}

/** A denial behind a heading: "rust: none", "cracks? no". */
function deniedBehind(scan: Scan, at: number): boolean {
  // "Rost ist keiner dran."
  if (says(scan, at + 1, 'is-now') && scan.tokens[at + 2]?.text.startsWith('kein') && 'z.,'.includes(scan.plain[at + 3] ?? '.'))
    return true;
  return /^[:?=-]N/.test(scan.plain.slice(at + 1, at + 3)) && !/^[:?=-]N[amC]*C/.test(scan.plain.slice(at + 1, at + 6));
}

function denialOf(scan: Scan, at: number): Denial {
  let denied = deniedBehind(scan, at);
  let hearsay = false;
  let unsure = scan.plain[at + 1] === '?' || isNotPromised(scan, at);
  let listed = false;
  for (let i = at - 1; i >= Math.max(0, at - REACH) && scan.clause[i] === scan.clause[at]; i -= 1) {
    const letter = scan.plain[i] ?? 'l';
    const sense = senseAt(scan, i);
    if (sense === 'unknown') unsure = true;
    if (letter === 'N') {
      // "No, they don't match."
      denied = !/^(?:they|it)$/.test(senseAt(scan, i + 1) ?? '');
      break;
    }
    // "They don't have any cracks" leaves out nothing of the goods.
    if (letter === 'Q' && /^do(?:n'?t| not) have$/.test(scan.tokens[i]?.text ?? '')) {
      denied = true;
      break;
    }
    if (letter === 'y') hearsay = true;
    if (sense === 'turn' || letter === ';' || letter === 'M') break;
    const separates = letter === ',' || letter === 'c' || letter === '/' || sense === 'or';
    if (separates) {
      // "Nothing has been wet or left outside".
      if (
        sense === 'or' &&
        /N[^NC,;.kM]{1,4}$/.test(scan.plain.slice(Math.max(0, i - 5), i)) &&
        scan.clause[i - 1] === scan.clause[at]
      ) {
        denied = true;
        break;
      }
      if (!listGoesOn(scan, at, i)) break;
      listed = true;
    } else if (letter === 'C') {
      // In "no bends spins smooth" the denial ends with the first word it denies.
      if (!listed) break;
    } else if (listed && (letter === 'a' || sense === 'faintly')) break;
  }
  return { denied, hearsay, unsure: unsure || isOfSome(scan, at) };
}

/** "Some plates repainted": which of them is not said. */
const isOfSome = (scan: Scan, at: number): boolean =>
  senseAt(scan, at - 2) === 'some' && scan.tokens[at - 1]?.term?.plural === true && scan.clause[at - 2] === scan.clause[at];

/** Whether a word of such a degree stands between the denial and the rust. */
function hasDegree(scan: Scan, at: number, degree: string): boolean {
  for (let i = at - 1; i >= Math.max(0, at - DEGREE_BEFORE) && !'N,l'.includes(scan.plain[i] ?? 'l'); i -= 1)
    if (senseAt(scan, i) === degree) return true;
  return false;
}

/** Rust with the words of degree around it. */
function gradeRust(scan: Scan, at: number): Condition {
  let faint = false;
  for (let i = at - 1; i >= Math.max(0, at - DEGREE_BEFORE) && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (',;c(NC'.includes(scan.plain[i] ?? 'l')) break;
    // "Very light rust" is light.
    if (senseAt(scan, i) === 'badly' && senseAt(scan, i + 1) !== 'faintly') return 'rust-heavy';
    if (senseAt(scan, i) === 'faintly') faint = true;
  }
  for (let i = at + 1; i <= at + DEGREE_BEHIND && scan.clause[i] === scan.clause[at]; i += 1) {
    if (',;c(kn'.includes(scan.plain[i] ?? 'l')) break;
    if (senseAt(scan, i) === 'badly') return faint ? 'rust-light' : 'rust-heavy';
    if (senseAt(scan, i) === 'faintly') faint = true;
  }
  return faint ? 'rust-light' : 'rust';
}

/** The verb of keeping before a place in its clause, or null. */
function keptBefore(scan: Scan, at: number): number | null {
  for (let i = at - 1; i >= Math.max(0, at - KEEPING) && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (senseAt(scan, i) === 'stays') return i;
    if (',;M('.includes(scan.plain[i] ?? 'l')) return null;
  }
  if (scan.language.code === 'de')
    for (let i = at + 1; i <= at + 3 && scan.clause[i] === scan.clause[at] && !',;M('.includes(scan.plain[i] ?? 'l'); i += 1)
      if (senseAt(scan, i) === 'stays') return at;
  return null;
}

/** "Straight" before "bar" tells the kind of bar. */
const namesKind = (scan: Scan, at: number, condition: Condition): boolean =>
  condition === 'straight' &&
  scan.language.code === 'en' &&
  /^(?:(?:[mC]|n[uh]){0,3}k|d)/.test(scan.plain.slice(at + 1, at + 6)) &&
  (scan.plain[at + 1] !== 'd' || says(scan, at + 1, 'ones')) &&
  scan.plain[at - 1] !== 'C';

/** How far a part of the body stands from what befell it, before and behind. */
const BODY_BEFORE = 5;
const BODY_BEHIND = 3;

/** "My back is broken", "broke my wrist": of the seller, and of no goods. */
function isOfBody(scan: Scan, at: number): boolean {
  if (!scan.senses.has('body')) return false;
  for (
    let i = at - 1;
    i >= at - BODY_BEFORE && scan.clause[i] === scan.clause[at] && !',;kM'.includes(scan.plain[i] ?? 'l');
    i -= 1
  )
    if (senseAt(scan, i) === 'body') return true;
  for (
    let i = at + 1;
    i <= at + BODY_BEHIND && scan.clause[i] === scan.clause[at] && !',;kM'.includes(scan.plain[i] ?? 'l');
    i += 1
  )
    if (senseAt(scan, i) === 'body') return true;
  return false;
}

/** How far from rust it may say that it has been taken off. */
const REMOVED = 4;

/** "The rust has been removed", "treated for rust"; what "can be removed" is there. */
function isRemoved(scan: Scan, at: number): boolean {
  if (scan.tokens[at]?.term?.sense !== 'fault rust') return false;
  for (let i = at - REMOVED; i <= at + REMOVED; i += 1)
    if (
      scan.clause[i] === scan.clause[at] &&
      says(scan, i, 'removed') &&
      !says(scan, i - 1, 'removable') &&
      !/[,NC]/.test(scan.plain.slice(Math.min(i, at) + 1, Math.max(i, at)))
    )
      return true;
  return false;
}

/** How far behind "bent" it may say that it was made so. */
const DESIGN_REACH = 8;

/** "Bent curl bar (made that way)": bent as such bars are made. */
function isByDesign(scan: Scan, at: number, condition: Condition): boolean {
  if (condition !== 'bent' || !scan.senses.has('by-design')) return false;
  for (let i = at + 1; i <= at + DESIGN_REACH && scan.clause[i] === scan.clause[at]; i += 1)
    // "I did not do it on purpose."
    if (senseAt(scan, i) === 'by-design') return !scan.plain.slice(at + 1, i).includes('N');
  return false;
}

/** How far behind a condition other goods may be likened to its own, in tokens. */
const ECHO = 30;
/** Most words that say so. */
const SAYS = 5;

/** What the words behind goods, up to the next mark, say of them: that they are not so, that they are so after all, or that they are so too. */
function likened(scan: Scan, at: number, clause: number | undefined): 'not-so' | 'is-so' | 'so-too' | null {
  // "45s: light rust. 25s: none."
  if (':-'.includes(scan.plain[at + 1] ?? 'l')) at += 1;
  let end = at + 1;
  while (end - at <= SAYS && !',.;:()!lcM'.includes(scan.plain[end] ?? 'l') && senseAt(scan, end) !== 'turn') end += 1;
  if (end === at + 1 || end - at > SAYS) return null;
  const said = scan.tokens
    .slice(at + 1, end)
    .map(({ text }) => text)
    .join(' ');
  // "Bench is good" in a sentence of its own tells nothing of the rust before it.
  if (scan.clause[at] === clause && scan.language.cues['is-fine'].is(said)) return 'not-so';
  return (['not-so', 'is-so', 'so-too'] as const).find((cue) => scan.language.cues[cue].is(said)) ?? null;
}

/** The same by the words right before the goods: "as does the bar", "nothing on the bar", "but not the bar". */
function likenedBefore(scan: Scan, at: number): 'not-so' | 'so-too' | null {
  let end = at;
  while ('amC'.includes(scan.plain[end - 1] ?? 'l')) end -= 1;
  for (
    let from = end - 1;
    from >= end - SAYS && scan.clause[from] === scan.clause[at] && !',;.(M'.includes(scan.plain[from] ?? 'l');
    from -= 1
  ) {
    if (senseAt(scan, from) === 'turn') break;
    const before = scan.plain[from - 1] ?? 'l';
    if (!',;.c(-l'.includes(before) && senseAt(scan, from - 1) !== 'turn' && scan.clause[from - 1] === scan.clause[at]) continue;
    const said = scan.tokens
      .slice(from, end)
      .map(({ text }) => text)
      .join(' ');
    if (scan.language.cues['so-too-of'].is(said)) return 'so-too';
    if (scan.language.cues['not-so-of'].is(said)) return 'not-so';
  }
  return null;
}

/** "Bar has light rust, plates don't", "no rust on the bar but the plates have some": said of other goods by how they differ from the last. */
function readEchoes(scan: Scan, found: readonly Finding[]): Finding[] {
  const echoes: Finding[] = [];
  for (const [index, last] of found.entries()) {
    const term = scan.tokens[last.to]?.term;
    if (!term?.condition) continue;
    const next = found[index + 1]?.from ?? scan.tokens.length;
    let parted = false;
    for (let at = last.to + 1; at < Math.min(next, last.to + ECHO); at += 1) {
      const letter = scan.plain[at] ?? '_';
      if (',.;c(-l'.includes(letter) || senseAt(scan, at) === 'turn') parted = true;
      if (!parted || !'ks'.includes(letter) || (scan.clause[at] ?? 0) - (scan.clause[last.to] ?? 0) > 1) continue;
      const said = likened(scan, at, scan.clause[last.to]) ?? likenedBefore(scan, at);
      if (said === null) continue;
      const denied = last.rule === 'condition-denied';
      const condition =
        said === 'so-too' || (said === 'not-so') === denied ? last.condition : denied ? term.condition : term.denied;
      const rule = condition === last.condition ? last.rule : denied ? 'condition' : 'condition-denied';
      const faint = condition === 'rust' && saysWithin(scan, at + 1, at + 1 + SAYS, 'a-little');
      if (condition) echoes.push({ rule, condition: faint ? 'rust-light' : condition, from: at + 1, to: at + 1 });
    }
  }
  return echoes;
}

export function readConditions(scan: Scan): Finding[] {
  const found: Finding[] = [];
  scan.tokens.forEach((token, at) => {
    const term = token.term;
    if (!term?.condition || found.length >= MOST_FINDINGS) return;
    const place = term.code === 'z';
    const kept = place ? keptBefore(scan, at) : null;
    if (place && kept === null) return;
    if (namesKind(scan, at, term.condition) || !isNewness(scan, at) || isByDesign(scan, at, term.condition)) return;
    if (isOfBody(scan, at) || isRemoved(scan, at)) return;
    const { denied, hearsay, unsure } = denialOf(scan, kept ?? at);
    if (unsure) return;
    const rust = term.sense?.endsWith('rust') === true;
    // "Not much rust" is a little.
    const little = rust && denied && hasDegree(scan, at, 'badly');
    const condition = little ? 'rust-light' : denied ? term.denied : rust ? gradeRust(scan, at) : term.condition;
    if (!condition) return;
    // "Welded by my mate": home-made, and welded.
    if (term.sense === 'welded-too' && !denied) found.push({ rule: 'condition', condition: 'welded', from: at, to: at });
    const rule = denied ? 'condition-denied' : place ? 'kept-at' : 'condition';
    found.push({ rule, condition, from: at, to: at, ...(kept === null ? {} : { from: kept }), ...(hearsay ? { hearsay } : {}) });
  });
  const worded = readWordedConditions(scan).filter(({ from, to }) => {
    const { denied, unsure } = denialOf(scan, from);
    const within = scan.tokens
      .slice(from, to + 1)
      .some(({ term }, index) => (term?.code === 'N' && index > 0) || term?.sense === 'unknown');
    return !denied && !unsure && !within;
  });
  return [...found, ...readEchoes(scan, found), ...readPartedConditions(scan), ...worded].sort((a, b) => a.to - b.to);
}

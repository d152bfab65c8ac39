/**
 * Conditions told by a part of the goods and what it does, with other words between: "the paint on the plates is flaking off", "sleeves on this
 * bar don't really turn", "the padding is starting to come apart", "one has a hub that came loose".
 */
import type { Condition } from '../../listing/reading.ts';
import type { CueName } from '../language/cues.ts';
import type { Language } from '../language/language.ts';
import type { Finding } from '../mention.ts';
import { begins, says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';

/** How far behind the part its state is told, in tokens. */
const REACH = 9;

interface Way {
  readonly part: CueName;
  readonly state: CueName;
  readonly condition: Condition;
  /** What it is when denied: "sleeves don't turn". */
  readonly denied?: Condition;
}

const WAYS: readonly Way[] = [
  { part: 'coat', state: 'comes-off', condition: 'chipped' },
  { part: 'cover', state: 'comes-apart', condition: 'torn' },
  { part: 'hub', state: 'comes-loose', condition: 'split-hub' },
  { part: 'turning', state: 'sticks', condition: 'seized-sleeves' },
  { part: 'turning', state: 'turns', condition: 'spins', denied: 'seized-sleeves' },
];

/** The last token of what is said of a part: up to a mark, a price, other goods' faults or a word that turns to something else. */
function endOfSaying(scan: Scan, at: number): number {
  let end = at;
  while (end < at + REACH && scan.clause[end + 1] === scan.clause[at] && !',;.:()!?M_$'.includes(scan.plain[end + 1] ?? 'l')) {
    const term = scan.tokens[end + 1]?.term;
    if (term?.condition && term.code === 'C') break;
    if (term?.sense === 'turn' || term?.sense === 'unknown') break;
    end += 1;
  }
  return end;
}

/** The first token in a stretch that is one of the words, or null. */
function first(scan: Scan, from: number, to: number, cue: CueName): number | null {
  for (let at = from; at <= to; at += 1) if (begins(scan, at, cue)) return at;
  return null;
}

/** The state right before a part, with a preposition and an article between at most. */
function stateBefore(scan: Scan, at: number, state: CueName): number | null {
  for (let i = at - 1; i >= at - 4 && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (says(scan, i, state)) return i;
    if (!'azomd'.includes(scan.plain[i] ?? '_')) return null;
  }
  return null;
}

const waysOf = new WeakMap<Language, ReadonlyMap<string, readonly Way[]>>();

/** The ways of each word for a part, put together once for a language, so that a token is looked up once. */
function partsOf(language: Language): ReadonlyMap<string, readonly Way[]> {
  const known = waysOf.get(language);
  if (known) return known;
  const parts = new Map<string, Way[]>();
  for (const way of WAYS) for (const word of language.cues[way.part].words) parts.set(word, [...(parts.get(word) ?? []), way]);
  waysOf.set(language, parts);
  return parts;
}

/** What is said of the parts that tokens name, where no word of condition says it. */
export function readPartedConditions(scan: Scan): Finding[] {
  const found: Finding[] = [];
  const parts = partsOf(scan.language);
  for (let at = 0; at < scan.tokens.length; at += 1) {
    const ways = parts.get(scan.tokens[at]?.text ?? '');
    if (!ways) continue;
    const end = endOfSaying(scan, at);
    for (const { state, condition, denied } of ways) {
      // "Peeling vinyl", "a rip in the seat".
      const before = denied === undefined ? stateBefore(scan, at, state) : null;
      const told = before ?? first(scan, at + 1, end, state);
      if (told === null) continue;
      const not =
        scan.plain.slice(Math.max(0, Math.min(at, told) - 1), told).includes('N') || first(scan, at + 1, told, 'hardly') !== null;
      const value = not ? denied : condition;
      if (value)
        found.push({
          rule: not ? 'condition-denied' : 'condition',
          condition: value,
          from: Math.min(at, told),
          to: Math.max(at, told),
        });
      break;
    }
  }
  return found;
}

/** Words that stand for one of several goods: "2 barbells. One is 45 lb, … the other is 35 lb". */
import type { Kind } from '../../listing/reading.ts';
import { says } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import { countBefore } from './nouns.ts';

/** Kinds that are told of one by one. */
export const TOLD_APART: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar', 'rack', 'bench'];
/** How far behind the goods their pronouns may stand, in tokens. */
export const PRONOUN_REACH = 150;

/** Whether a token stands for one of the goods: it opens a clause or a part of one, and a verb, a mark or an adjective follows it. */
export function isPronoun(scan: Scan, at: number): boolean {
  const token = scan.tokens[at];
  const one = scan.plain[at] === 'd' && token?.text === 'one' && valueAt(scan, at) === 1;
  const oneIs = says(scan, at, 'one-is');
  if (!one && !oneIs && token?.term?.sense !== 'ordinal') return false;
  // "The 7 ft one straight, the 5 ft one bent".
  const sized = /nf$/.test(scan.plain.slice(Math.max(0, at - 2), at)) ? at - 2 : at;
  const before = scan.plain[sized - 1] === 'a' ? sized - 2 : sized - 1;
  // "2 bars one bent one straight" needs no comma.
  const told = scan.plain[at + 1] === 'C' && 'kC'.includes(scan.plain[before] ?? '_');
  const opens = before < 0 || scan.clause[before] !== scan.clause[at] || ',c;:('.includes(scan.plain[before] ?? '_') || told;
  // "One has a bow in it the other is straight."
  const other = token?.term?.sense === 'ordinal' && before === at - 2 && scan.plain[at + 1] === 'C';
  // "The other one is", "first one:".
  const end = scan.plain[at + 1] === 'd' && scan.tokens[at + 1]?.text === 'one' ? at + 2 : at + 1;
  return (
    (opens || other) &&
    (oneIs || scan.tokens[end]?.term?.sense === 'is' || /^[:mC%-]|^nf|^c[am]{0,2}C/.test(scan.plain.slice(end, end + 4)))
  );
}

/** The sum over an inventory ("3 bars", then lines 1 to 3) for a weight on one of its lines that no noun stands before. */
function sumOverLine(scan: Scan, from: number): number | null {
  const [first] = scan.ordinals;
  const own = scan.ordinals.findLast((at) => at < from);
  if (first === undefined || own === undefined || scan.tokens[own]?.line !== scan.tokens[from]?.line || from - own > 12)
    return null;
  if (scan.plain.slice(own, from).includes('k')) return null;
  for (let i = first - 1; i >= 0 && first - i < PRONOUN_REACH; i -= 1) {
    const term = scan.tokens[i]?.term;
    if (term?.code === 'k' && term.kind && TOLD_APART.includes(term.kind) && term.plural)
      return countBefore(scan, i).count === scan.ordinals.length ? i : null;
  }
  return null;
}

/** The noun that a pronoun before a weight stands for: goods counted as two or three, told before it. */
export function pronounOwner(scan: Scan, from: number): number | null {
  const sum = scan.ordinals.length > 0 ? sumOverLine(scan, from) : null;
  if (sum !== null) return sum;
  let at = from - 1;
  while (at >= 0 && from - at < 20 && scan.clause[at] === scan.clause[from] && !isPronoun(scan, at)) at -= 1;
  if (at < 0 || scan.clause[at] !== scan.clause[from] || !isPronoun(scan, at)) return null;
  for (let i = at - 1; i >= 0 && at - i < PRONOUN_REACH; i -= 1) {
    const term = scan.tokens[i]?.term;
    if (term?.code !== 'k' || !term.kind || !TOLD_APART.includes(term.kind) || !term.plural) continue;
    const count = countBefore(scan, i).count ?? 0;
    if (count === 2 || count === 3) return i;
  }
  return null;
}

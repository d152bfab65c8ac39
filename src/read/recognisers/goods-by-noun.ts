/** Goods named without a weight: "a rack", "2 benches", "Olympic bar", "collars", "four plates". Not those that are denied, left out or only spoken of. */
import type { Kind } from '../../listing/reading.ts';
import type { Noun } from '../mention.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';
import { countBefore, isAside } from './nouns.ts';

const BAR_KINDS: readonly (Kind | undefined)[] = ['bar', 'curl-bar', 'hex-bar', 'other'];

const PIECES: readonly Kind[] = ['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell'];

/** "Two odd bars: safety squat bar $150, cambered bar $80": a plural before a colon and as many bars by name behind it (any number if not counted). */
function isHeading(scan: Scan, at: number): boolean {
  const token = scan.tokens[at];
  if (token?.term?.kind !== 'bar' || !token.term.plural || scan.plain[at + 1] !== ':') return false;
  let named = 0;
  for (let i = at + 2; i < scan.tokens.length && i - at < 60 && scan.clause[i] === scan.clause[at]; i += 1)
    if (scan.plain[i] === 'k' && BAR_KINDS.includes(scan.tokens[i]?.term?.kind) && !isAside(scan, i))
      named += countBefore(scan, i).count ?? 1;
  const { count } = countBefore(scan, at);
  return named > 0 && (count === null || count === named);
}

/** "Two specialty bars. Curl bar, 15 lb. And a trap bar": a plural that sums up as many bars of other names behind it. */
function isSumOfBars(scan: Scan, at: number): boolean {
  const { term } = scan.tokens[at] ?? {};
  if (term?.kind !== 'other' || !term.plural) return false;
  const { count } = countBefore(scan, at);
  if (count === null || count < 2 || count > 6) return false;
  const named = new Set<Kind>();
  for (let i = at + 1; i < scan.tokens.length && i - at < 60; i += 1) {
    const kind = scan.plain[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
    const called = scan.tokens[i - 1]?.term?.part?.endsWith('-bar') === true;
    if (kind && kind !== 'other' && !called && BAR_KINDS.includes(kind) && !isAside(scan, i)) named.add(kind);
  }
  return named.size === count;
}

/** "Dumbbell set 5 lb to 50 lb with rack": the rack of the dumbbells that the same clause names, and of nothing else. */
function isOfDumbbells(scan: Scan, at: number): boolean {
  if (scan.tokens[at]?.text !== 'rack' || !/c\/?[am]{0,2}$/.test(scan.plain.slice(Math.max(0, at - 4), at))) return false;
  let named = false;
  for (let i = at - 1; i >= 0 && at - i < 30 && scan.clause[i] === scan.clause[at]; i -= 1) {
    const kind = scan.plain[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
    if (kind === 'dumbbell' || kind === 'kettlebell') named = true;
    else if (kind && kind !== 'other') return false;
  }
  return named;
}

/** "Lat bar and short bar included": beside a bar that is pulled on a cable, one by its shape is another of those. */
function isOfCable(scan: Scan, at: number): boolean {
  if (!says(scan, at - 1, 'shape-of-bar')) return false;
  for (let i = Math.max(0, at - 6); i < at + 6; i += 1)
    if (i !== at && scan.plain[i] === 'k' && says(scan, i, 'pulled-bar') && scan.clause[i] === scan.clause[at]) return true;
  return false;
}

/** "A rack to hang them on", "a stand that holds the plates". */
function isForGoods(scan: Scan, at: number): boolean {
  if (!scan.senses.has('stow')) return false;
  const stow = scan.tokens.slice(at + 1, at + 4).findIndex(({ term }) => term?.sense === 'stow');
  const object = scan.tokens[at + stow + 2]?.term;
  const inner = scan.tokens[at + stow + 3]?.term;
  const goods = (term: typeof object): boolean =>
    term?.sense === 'they' || (term?.plural === true && PIECES.includes(term.kind ?? 'other'));
  return stow !== -1 && (goods(object) || (object?.code === 'a' || object?.sense === 'definite' ? goods(inner) : false));
}

/** "3 tier dumbbell rack … no dumbbells, just the rack": the one told before by its whole name, where no other rack is. */
function isNamedBefore(scan: Scan, at: number): boolean {
  if (!says(scan, at - 1, 'the')) return false;
  let named = false;
  for (let i = 0; i < at; i += 1) {
    const kind = scan.plain[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
    if (kind === 'rack' && !isOfDumbbells(scan, i)) return false;
    if ((kind === 'storage' || kind === 'rack') && scan.tokens[i]?.text.endsWith(scan.tokens[at]?.text ?? ' ')) named = true;
  }
  return named;
}

/** "Kniebeugenständer (Half Rack)": the brackets say what it is. */
const isAlsoRack = (scan: Scan, at: number): boolean =>
  scan.plain[at + 1] === '(' && scan.tokens[at + 2]?.term?.kind === 'rack' && scan.plain[at + 3] === ')';

/** "Two bars, each with a pair of collars": how many there are of what each has its own. */
function eachOfBars(scan: Scan, from: number): number {
  if (!/e[%cz]{1,2}[az]?$/.test(scan.plain.slice(Math.max(0, from - 5), from)) || scan.clause[from] !== scan.clause[from - 2])
    return 1;
  let pieces = 0;
  let clause: number | undefined;
  for (let i = from - 1; i >= 0 && from - i < 80; i -= 1) {
    if (scan.plain[i] !== 'k' || !BAR_KINDS.slice(0, 3).includes(scan.tokens[i]?.term?.kind) || isAside(scan, i)) continue;
    clause ??= scan.clause[i];
    if (scan.clause[i] === clause) pieces += countBefore(scan, i).count ?? 1;
  }
  return pieces > 0 && pieces <= 6 ? pieces : 1;
}

/** How far behind a bar it may say how it is shaped. */
const SHAPE = 8;

/** "A metal bar, zig zag in the middle": what kind of bar its shape makes it. */
function shapedAs(scan: Scan, at: number): Kind | undefined {
  if (!scan.senses.has('by-design')) return undefined;
  for (let i = at - 2; i <= at + SHAPE; i += 1) {
    if (i > at && scan.plain[i] === 'k') return undefined;
    const term = scan.clause[i] === scan.clause[at] ? scan.tokens[i]?.term : undefined;
    if (term?.sense === 'by-design' && term.part) return term.part;
  }
  return undefined;
}

export function readNouns(scan: Scan): Noun[] {
  const found: Noun[] = [];
  const kinds = new Set(scan.tokens.flatMap(({ term }) => (term?.code === 'k' && term.kind !== 'other' ? [term.kind] : [])));
  scan.tokens.forEach((token, at) => {
    const kind = token.term?.kind;
    // "weights bench", "squat stand style rack": the first noun is an adjective; "Weights bar, etc." names two things.
    const two = token.text === 'weights' && scan.tokens[at + 1]?.term?.kind === 'bar';
    const adjective = token.term?.weak && scan.plain[at + 1] === 'k' && kind === 'plate' && !two;
    const styled = scan.plain.slice(at + 1, at + 3) === 'mk' && says(scan, at + 1, 'style');
    if (adjective || styled) return;
    if (isHeading(scan, at) || isSumOfBars(scan, at)) return;
    // "with weight on" names no goods; "weights" and "200 lbs of weight" do.
    const mass =
      token.term?.sense === 'mass' && /(?:^|[^KXPU]|[^KXP]U)n-?[uh]s?o$/.test(scan.plain.slice(Math.max(0, at - 6), at));
    if (!kind || (token.text === 'weight' && !mass) || scan.letters[at] !== 'k' || isAside(scan, at)) return;
    const { count, from } = countBefore(scan, at);
    // "Hanteln" with no count beside other goods is the trade's word for all of them.
    if (token.term?.sense === 'loosely' && count === null && kinds.size > 1) return;
    if (kind === 'rack' && isNamedBefore(scan, at)) return;
    if (kind === 'stands' && isAlsoRack(scan, at)) return;
    // "The curl bar": its first words are one term.
    const part = kind === 'bar' ? scan.tokens[at - 1]?.term?.part : undefined;
    const named = part?.endsWith('-bar') ? part : (kind === 'bar' && shapedAs(scan, at)) || kind;
    const pulled = kind === 'bar' && isOfCable(scan, at);
    const times = kind === 'collars' && !scan.nounCounts.has(at) ? eachOfBars(scan, from) : 1;
    found.push({
      rule: 'noun',
      from,
      to: at,
      kind: pulled ? 'other' : kind === 'rack' && (isOfDumbbells(scan, at) || isForGoods(scan, at)) ? 'storage' : named,
      count: times > 1 ? times * (count ?? 2) : count,
      plural: token.term?.plural === true || mass || scan.tokens[at - 1]?.term?.sense === 'every',
      weak: token.term?.weak === true,
    });
  });
  return found;
}

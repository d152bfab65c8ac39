/**
 * Lists of goods that are not on offer: "keeping my rack, bench and bar", "not included: bar, 2x35", "the plates (4x45, 2x25) and the bar in
 * the pictures are not for sale". Each list is looked for once in an ad.
 */
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';

/** Tokens that a list may take up. */
const LONGEST = 40;
/** What stands within one element of a list. */
const ELEMENT = 'amCkndsuhvxpqtofj"\'';

const known = new WeakMap<Scan, ReadonlySet<number>>();

/** Whether a token belongs to such a list. */
export function isInLeftOutList(scan: Scan, at: number): boolean {
  if (!scan.plain.includes('Q')) return false;
  const tokens = known.get(scan) ?? listsOf(scan);
  known.set(scan, tokens);
  return tokens.has(at);
}

function listsOf(scan: Scan): ReadonlySet<number> {
  const tokens = new Set<number>();
  for (let at = scan.plain.indexOf('Q'); at !== -1; at = scan.plain.indexOf('Q', at + 1))
    for (const one of [...behind(scan, at), ...before(scan, at)]) tokens.add(one);
  return tokens;
}

const isIn = (scan: Scan, at: number, clause: number | undefined): boolean =>
  at >= 0 && at < scan.tokens.length && scan.clause[at] === clause;

/** Last token of the element that begins at a token, or null where none does or a price follows it. */
function elementAt(scan: Scan, from: number): number | null {
  const clause = scan.clause[from];
  let to = from;
  while (isIn(scan, to, clause) && to - from < 12 && ELEMENT.includes(scan.plain[to] ?? '_')) to += 1;
  const words = scan.plain.slice(from, to);
  const priced = /^[-:=,]?[$M]/.test(scan.plain.slice(to, to + 3)) || /kn$/.test(words);
  return /k|n[suh]|v|nxn|xn/.test(words) && !priced ? to - 1 : null;
}

/** Goods named between the start of the clause and a token. */
function namesGoods(scan: Scan, at: number): boolean {
  for (let i = at - 1; isIn(scan, i, scan.clause[at]) && at - i < LONGEST; i -= 1)
    if ('ksv'.includes(scan.plain[i] ?? '_')) return true;
  return false;
}

/** The list behind the word: "keeping my rack, bench and bar". Behind a colon all of it is meant. */
function behind(scan: Scan, at: number): number[] {
  const listed = /[:(]/.test(scan.plain[at + 1] ?? '_');
  const forward =
    listed ||
    saysWithin(scan, at, at + 1, 'keeps') ||
    says(scan, at, 'except') ||
    says(scan, at, 'incomplete') ||
    !namesGoods(scan, at);
  if (!forward || scan.tokens[at]?.term?.sense === 'trade-for') return [];
  const found: number[] = [];
  let from = at + 1 + Number(listed);
  while (from - at < LONGEST) {
    const to = elementAt(scan, from);
    if (to === null || scan.clause[to] !== scan.clause[at]) break;
    for (let i = from; i <= to; i += 1) found.push(i);
    const joint = /^(?:,?[c/]|,)(?:[c])?/.exec(scan.plain.slice(to + 1, to + 4))?.[0] ?? '';
    const next = to + 1 + joint.length;
    if (joint === '') break;
    // "Keeping the rack, 4x45 for sale": without a colon only nouns go on behind a comma.
    if (joint === ',' && !listed && !/^[am]{0,3}k/.test(scan.plain.slice(next, next + 4))) break;
    from = next;
  }
  return found;
}

/** The list before the word, told of as several: "the rack, the bar and the 4x45s in the photo stay with me". */
function before(scan: Scan, at: number): number[] {
  const clause = scan.clause[at];
  if (!saysWithin(scan, at - 1, at + 1, 'plural')) return [];
  let to = at - 1;
  // Words between: "in the pictures", "you see here".
  while (isIn(scan, to, clause) && at - to < 6 && 'zafU'.includes(scan.plain[to] ?? '_')) to -= 1;
  const found: number[] = [];
  let joined = false;
  let open = 0;
  for (let i = to; isIn(scan, i, clause) && at - i < LONGEST; i -= 1) {
    const letter = scan.plain[i] ?? '_';
    if (letter === ')') open += 1;
    if (letter === '(') open -= 1;
    if (open < 0) return found;
    if (letter === 'c') joined = true;
    else if (letter === ',' && !joined && open === 0) return found;
    else if (!`${ELEMENT},/()`.includes(letter) || scan.letters[i] === 'M') return found;
    found.push(i);
  }
  return found;
}

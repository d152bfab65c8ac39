/** Ordinals of an inventory, "1) Half rack … 2) Bar, 20 kg … 3) Flat bench" and "1. … 2. …", are no counts; "2) 45 lb plates" and "(4) 45 lb" alone are. */
import { blank, findAll, type Scan, valueAt } from '../text/scan.ts';

const ORDINAL = /(?<=^|[l•]|l[-•])(n)[).](?![uhsx/])|(?<=[.;,:])(n)\)(?![uhsx/])/dg;
/** Behind a count of plates their weight follows at once. */
const WEIGHED = /^[mC]{0,2}(?:n[-.]?[uhqs]|v|nk)/;

/** "1 - 45 lb olympic bar", "#1 beater bar" at the head of a line. */
const HEADING = /^(?:n[-:.)]|hn)(?!n[l.;]|$)/;
/** How far before the first line the sum of such a list may stand, in tokens. */
const REACH = 24;

/** "3 bars, take your pick", "Two barbells": as many goods as lines that rise from 1, told before them. */
function isCounted(scan: Scan, first: number, lines: number): boolean {
  for (let i = first - 1; i >= 0 && first - i < REACH; i -= 1) {
    if (!'nd'.includes(scan.plain[i] ?? '_') || valueAt(scan, i) !== lines) continue;
    const noun = /^[mC]{0,3}k/.exec(scan.plain.slice(i + 1, i + 6));
    if (noun && scan.tokens[i + noun[0].length]?.term?.plural) return true;
  }
  return false;
}

/** Lines that begin with their number, under the sum of them: those are no counts either. */
function claimHeadings(scan: Scan): void {
  const marked: number[] = [];
  for (let at = 0; at !== -1; at = scan.plain.indexOf('l', at + 1)) {
    const head = at === 0 ? 0 : at + 1;
    if ('nh'.includes(scan.plain[head] ?? '_') && HEADING.test(scan.plain.slice(head, head + 5)))
      marked.push(scan.plain[head] === 'h' ? head + 1 : head);
  }
  const [first] = marked;
  // In any order: a list says the same when its lines change places.
  const named = marked.filter((at) => (valueAt(scan, at) ?? 0) <= marked.length);
  const told = new Set(named.map((at) => valueAt(scan, at)));
  const all = told.size === named.length && named.length === marked.length;
  if (first === undefined || named.length < 2 || !all || !isCounted(scan, first, named.length)) return;
  for (const at of named) {
    if (scan.plain[at - 1] === 'h') blank(scan, at - 1);
    blank(scan, at);
    scan.ordinals.push(at);
  }
}

/** They rise by one from 1, all that are written so, and are three at least, or two before words. */
export function claimOrdinals(scan: Scan): void {
  claimHeadings(scan);
  const marked: number[] = [];
  findAll(scan, ORDINAL, ({ from }) => {
    marked.push(from);
    return false;
  });
  const weighed = marked.filter((at) => WEIGHED.test(scan.plain.slice(at + 2, at + 8))).length;
  const rising = marked.every((at, index) => valueAt(scan, at) === index + 1);
  if (!rising || marked.length < 2 || weighed * 2 > marked.length || (marked.length === 2 && weighed > 0)) return;
  for (const at of marked) {
    blank(scan, at);
    scan.ordinals.push(at);
  }
}

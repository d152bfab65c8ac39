/** Pieces that the seller would not part from the rest: "I am not going to sell you two 45s", "please don't ask for the pair of 10s alone". */
import type { Quantity } from '../mention.ts';
import { says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';

/** How far before the pieces the verb of selling may stand, and the denial before that, in tokens. */
const VERB_REACH = 8;
const DENIAL_REACH = 6;
/** How far before a size the words of asking for it may stand. */
const ASK_REACH = 8;
/** What may stand between the verb and the pieces: words, and other pieces of a list. */
const BETWEEN = /^[zawUdVopnuhsvmk,c]$/;

/** Whether a denied verb of selling, parting or asking leads to the token in its clause. */
function isDeclined(scan: Scan, from: number): boolean {
  const within = (at: number): boolean => at >= 0 && scan.clause[at] === scan.clause[from];
  for (let at = from - 1; within(at) && from - at <= VERB_REACH; at -= 1) {
    if (says(scan, at, 'part-with') || scan.tokens[at]?.term?.sense === 'asks-whether') {
      for (let before = at - 1; within(before) && at - before <= DENIAL_REACH; before -= 1) {
        if (scan.plain[before] === 'N') return true;
        if ('k$,'.includes(scan.plain[before] ?? '_')) return false;
      }
      return false;
    }
    if (!BETWEEN.test(scan.plain[at] ?? '_')) return false;
  }
  return false;
}

/** "Before asking if we have any 25s", "people ask if I have a bar": goods that others ask for. */
export function isAskedFor(scan: Scan, at: number): boolean {
  if (!scan.senses.has('asks-whether')) return false;
  for (let i = at - 1; i >= at - ASK_REACH && scan.clause[i] === scan.clause[at]; i -= 1) {
    if (scan.tokens[i]?.term?.sense === 'asks-whether') return true;
    if (',;kM'.includes(scan.plain[i] ?? 'l')) return false;
  }
  return false;
}

/** Without those of which the ad tells as many or more elsewhere; where it tells no others they are what is offered, in one piece. */
export function dropDeclined(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  const offered = quantities.filter(({ from, count }) => count !== null || !isAskedFor(scan, from));
  if (!scan.plain.includes('N')) return offered;
  const declined = offered.filter(({ from }) => isDeclined(scan, from));
  if (declined.length === 0) return offered;
  const others = offered.filter((one) => !declined.includes(one));
  return offered.filter((one) => others.includes(one) || !others.some((other) => isSame(one, other)));
}

const isSame = (one: Quantity, other: Quantity): boolean =>
  one.weight !== null && one.weight === other.weight && (one.unit ?? other.unit) === (other.unit ?? one.unit);

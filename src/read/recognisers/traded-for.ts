/** Goods that the seller would take in trade are not on offer: "or trade for a 24 kg kettlebell", "would trade the stack toward bumpers (10, 15, 25)". */
import { endsIn, says } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';

/** How far back of the goods the word of trading may stand, in tokens. */
const REACH = 40;
const LINE = 30;

export function isTradedFor(scan: Scan, at: number): boolean {
  if (isWantedOrMoney(scan, at) || isUnderWants(scan, at) || isWishedFor(scan, at)) return true;
  if (!scan.senses.has('trade') && !scan.senses.has('trade-for')) return false;
  let toward = false;
  for (let i = at - 1; i >= 0 && at - i < REACH && scan.clause[i] === scan.clause[at]; i -= 1) {
    const sense = scan.tokens[i]?.term?.sense;
    if (scan.letters[i] === 'M') return false;
    if (scan.plain[i] === 'w' || scan.tokens[i]?.text.endsWith(' for') || sense === 'toward') toward = true;
    if (sense === 'trade-for') return !/N[a-z]?$/.test(scan.plain.slice(Math.max(0, i - 2), i));
    if (sense === 'trade') return toward && !/N[a-z]?$/.test(scan.plain.slice(Math.max(0, i - 2), i));
  }
  return false;
}

/** What the list of goods consists of that stands between them and the word of wishing. */
const LISTED = 'nduhsqvimCkafxpo,/c';

/** "Trade only … I want 2 x 45 bumpers", "what I'd really like is a straight bar": behind a word of wishing, where a trade is spoken of. */
function isWishedFor(scan: Scan, at: number): boolean {
  if (!scan.senses.has('trade')) return false;
  let first = at;
  while (at - first < LINE && scan.clause[first - 1] === scan.clause[at] && !endsIn(scan, first, 'wishes')) {
    if (!LISTED.includes(scan.plain[first - 1] ?? 'l')) return false;
    first -= 1;
  }
  if (!endsIn(scan, first, 'wishes') || scan.letters[first] === 'M') return false;
  // "I want these 45s gone."
  const behind = scan.tokens.slice(at + 1, at + 6);
  return !behind.some(
    ({ term, text }, i) =>
      scan.clause[at + 1 + i] === scan.clause[at] && (term?.sense === 'be-gone' || /^(?:gone|out|moved|sold)$/.test(text)),
  );
}

/** "Have: 50 lb dumbbells / Want: bumper plates": what begins by the word and a colon, in an ad that tells goods before it. */
function isUnderWants(scan: Scan, at: number): boolean {
  let first = at;
  while (at - first < LINE && scan.clause[first - 1] === scan.clause[at]) first -= 1;
  return scan.plain[first + 1] === ':' && says(scan, first, 'wants-label') && /[kuhs]/.test(scan.plain.slice(0, first));
}

/** "Want a power rack or 260": wanted in the place of money. */
function isWantedOrMoney(scan: Scan, at: number): boolean {
  if (!scan.senses.has('or')) return false;
  let first = at - 1;
  while (first > at - 6 && 'amnuhsckd'.includes(scan.plain[first] ?? 'l')) first -= 1;
  if (scan.plain[first] !== 'A' || first === at - 1 || !says(scan, first, 'asks')) return false;
  let or = at + 1;
  while (or < at + 6 && 'amnuhsckd,'.includes(scan.plain[or] ?? 'l')) or += 1;
  return scan.tokens[or]?.term?.sense === 'or' && /^£?(?:[$]?n|M)/.test(scan.plain.slice(or + 1, or + 4));
}

/** "Will swap two 35s for any one 45": some of the goods that the ad tells elsewhere. */
export function isTradedAway(scan: Scan, at: number): boolean {
  if (!scan.senses.has('trade') || (scan.plain[at] !== 'd' && scan.plain[at] !== 'n')) return false;
  let back = at - 1;
  while (back >= 0 && at - back < 4 && scan.clause[back] === scan.clause[at] && scan.tokens[back]?.term?.sense !== 'trade')
    back -= 1;
  if (scan.tokens[back]?.term?.sense !== 'trade' || scan.clause[back] !== scan.clause[at]) return false;
  for (let i = at + 1; i < scan.tokens.length && i - at < 8 && scan.clause[i] === scan.clause[at]; i += 1)
    if (scan.plain[i] === 'w') return true;
  return false;
}

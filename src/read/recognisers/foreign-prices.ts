/** Money that the seller does not ask: what others offer and he will not have, and what the like goes for with others. */
import type { CueName } from '../language/cues.ts';
import type { Price } from '../mention.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';

/** How far before a price the words may stand, in tokens. */
const REACH = 14;

/** Where the words of a price begin: behind the price before it, in its own clause. */
function wordsFrom(scan: Scan, price: Price): number {
  let from = price.from;
  while (from > Math.max(0, price.from - REACH) && scan.clause[from - 1] === scan.clause[price.from]) {
    if (scan.letters[from - 1] === 'M') break;
    from -= 1;
  }
  return from;
}

const isSaidOf = (scan: Scan, price: Price, cue: CueName): boolean =>
  price.from >= 0 && saysWithin(scan, wordsFrom(scan, price), price.from, cue);

/** "Won't come off I'm asking two fifty", with no stop between. */
const isAskedByMe = (scan: Scan, { from }: Price): boolean =>
  scan.tokens[from - 1]?.term?.sense === 'told' &&
  /^(?:i'm|im|i am|am|we're|we are|are|i)$/.test(scan.tokens[from - 2]?.text ?? '');

/** "Please stop asking if I'd take $100", "don't come at me with 10 bucks", "offers under $50 are ignored", but not "won't take less than $200". */
export function isOthersOffer(scan: Scan, price: Price): boolean {
  if (isAskedByMe(scan, price) || !isSaidOf(scan, price, 'others-offer')) return false;
  const words = scan.plain.slice(wordsFrom(scan, price), price.from);
  const least = [price.from - 1, price.from - 2].some(
    (at) => scan.tokens[at]?.term?.sense === 'bound' || says(scan, at, 'under'),
  );
  return !words.includes('R') && (!least || words.includes('O'));
}

/** "I saw the same ones today for $949", "I've seen these go for over $2 a pound", and no "so I ask $1" behind it. */
export function isSeenElsewhere(scan: Scan, price: Price): boolean {
  if (!isSaidOf(scan, price, 'seen-elsewhere')) return false;
  const from = wordsFrom(scan, price);
  for (let at = price.from - 1; at >= from && at >= price.from - 4; at -= 1)
    if (says(scan, at, 'so') || /^i(?:'m|m)$|^ich$/.test(scan.tokens[at]?.text ?? '')) return false;
  return true;
}

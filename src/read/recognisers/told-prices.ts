/** Bare numbers that a word of asking makes prices: "asking 300", "dropped from 275 to 240", "take both for 80". */
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { findAll, type Scan, valueAt } from '../text/scan.ts';
import { putNumber, putPrice } from './found-price.ts';
import { isFromTo } from './settle-prices.ts';

const TOLD = /[AORLe][a:azUw=\-@.]{0,3}([ni])(?:-(n))?(?![x-]?[uhxfnJqskm]|[ar]J)/dg;
/** "Dropped price from 275 to 240", "von 300 auf 250 reduziert". */
const FROM_TO = /(?<=[zo])([ni])[zA]([ni])(?![x-]?[uhxfnJqskm])/dg;
/** "Take A and B for 300", "take both for 80". */
const TAKEN = /A[aczmkndL]{1,6}w([ni])(?![x-]?[uhxfnJqskm])/dg;

export function readToldPrices(scan: Scan, found: Price[]): void {
  findAll(scan, FROM_TO, ({ from, to }) => {
    const [low, high] = [valueAt(scan, to) ?? 0, valueAt(scan, from) ?? 0];
    const told = [from - 4, from - 3, from - 2, to + 1].some((at) => says(scan, at, 'lowered') || says(scan, at, 'price'));
    if (!told || low >= high || low < 10 || !isFromTo(scan, from, to)) return false;
    putNumber(scan, found, 'price-told', from);
    return putNumber(scan, found, 'price-told', to);
  });
  findAll(scan, TOLD, ({ from, to, group }) => {
    const at = group(1)?.[0] ?? to;
    if (!isAsking(scan, from, at)) return false;
    return putPrice(scan, found, 'price-told', { from: at, to, at, highAt: group(2)?.[0] ?? null });
  });
  findAll(scan, TAKEN, ({ from, to }) => {
    if (scan.tokens[from]?.term?.sense !== 'take' || !/[cdL]/.test(scan.plain.slice(from, to))) return false;
    return putNumber(scan, found, 'price-for-all', to);
  });
}

/** Words of asking that make any number of five and more a price. */
const ASKS = ['told', 'take', 'retract'];

/** Whether the word before a number asks for it: "asking", "I want", "now" (from 20), "takes all" and "everything for" (from 20). */
function isAsking(scan: Scan, from: number, at: number): boolean {
  const value = valueAt(scan, at) ?? 0;
  const { sense, unit } = scan.tokens[from]?.term ?? {};
  if (value < 5 && scan.plain[at + 1] !== 'r' && unit === undefined) return false;
  // "All of it together is 266 something kilos".
  if (/^z{1,2}u/.test(scan.plain.slice(at + 1, at + 4))) return false;
  if (value >= 20 && scan.plain[from] === 'L' && isForAll(scan, from)) return true;
  if (scan.plain[from] !== 'A') return sense === 'told';
  return ASKS.includes(sense ?? '') || (value >= 20 && says(scan, from, 'now'));
}

/** Whether a number behind words for the lot can be its price: "everything for 300", "the whole bunch 300", but not "total 300" or "set 300". */
function isForAll(scan: Scan, at: number): boolean {
  const sense = scan.tokens[at]?.term?.sense;
  return sense !== 'sum' && (sense === 'whole' || scan.plain[at + 1] === 'w' || says(scan, at, 'before-price-of-all'));
}

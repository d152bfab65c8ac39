/** "$400. Also have two 52s, $30 for both": the first price is for all that the second does not speak of. */
import type { Price } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { firstToken } from './draft.ts';
import type { Cover } from './own-prices.ts';

/** Whether the clause says "also" before its goods. */
export function isExtra(scan: Scan, cover: Cover): boolean {
  if (cover.drafts.length === 0 || cover.price.from < 0) return false;
  const at = Math.min(...cover.drafts.map(firstToken));
  for (let i = at - 1; i >= 0 && scan.clause[i] === scan.clause[at]; i -= 1)
    if (scan.tokens[i]?.term?.sense === 'also') return true;
  return false;
}

/** The covers, with the goods that have no price of their own under the price that stands before the extras. */
export function coverRest(scan: Scan, covers: readonly Cover[], live: readonly Draft[]): Cover[] {
  const extras = covers.filter((cover) => isExtra(scan, cover));
  const heads = covers.filter(({ price, drafts }) => drafts.length === 0 && price.role === 'asking' && price.from >= 0);
  const [head] = heads;
  const [extra] = extras;
  if (!head || !extra || heads.length > 1 || head.price.from > extra.price.from || head.price.amount <= extra.price.amount)
    return [...covers];
  const priced = new Set(covers.flatMap(({ drafts }) => drafts));
  const rest = live.filter((item) => !priced.has(item) && item.kind !== 'other');
  return covers.map((cover) => (cover === head ? { price: head.price, drafts: rest } : cover));
}

/** "Also: bookshelf $30, patio set $80": one of several prices in a clause that names no goods of the trade, right behind the thing it is for. */
export function isForOtherGoods(scan: Scan, price: Price): boolean {
  if (price.from < 1 || !'zt'.includes(scan.plain[price.from - 1] ?? '_')) return false;
  const clause = scan.clause[price.from];
  let prices = 0;
  let from = price.from;
  while (from > 0 && scan.clause[from - 1] === clause) from -= 1;
  for (let i = from; i < scan.tokens.length && scan.clause[i] === clause; i += 1) {
    if ('kALFOR'.includes(scan.plain[i] ?? '_')) return false;
    if (scan.letters[i] === 'M') prices += 1;
  }
  return prices > 1;
}

const OTHER_TOPICS = ['household', 'foreign', 'very-foreign'];

/** "Baby clothes $1 each" in a sale of all sorts: a thing of another trade stands in the price's own part of the sentence, and no goods. */
export function isForOtherTrade(scan: Scan, price: Price): boolean {
  if (price.from < 1) return false;
  let from = price.from;
  while (from > 0 && price.from - from < 9 && scan.letters[from - 1] !== 'M' && !',.;!l•('.includes(scan.plain[from - 1] ?? 'l'))
    from -= 1;
  if (/[kvAFLORW]/.test(scan.plain.slice(from, price.from))) return false;
  const [start, end] = [scan.tokens[from]?.start ?? 0, scan.tokens[price.from]?.start ?? 0];
  let at = Math.min(price.from, scan.words.length - 1);
  while (at > 0 && (scan.words[at]?.start ?? 0) >= end) at -= 1;
  for (; at >= 0 && (scan.words[at]?.start ?? -1) >= start; at -= 1)
    if (OTHER_TOPICS.includes(scan.words[at]?.term?.sense ?? '')) return true;
  return false;
}

/** Prices that are all for such things, or stand beside one that is: "$1 each or fill a bag for $10". */
export const areForOtherTrades = (scan: Scan, prices: readonly Price[]): boolean =>
  prices.every(
    (price, index) =>
      isForOtherTrade(scan, price) ||
      (index > 0 &&
        scan.clause[prices[index - 1]?.to ?? -1] === scan.clause[price.from] &&
        !/[kvAL]/.test(scan.plain.slice(prices[index - 1]?.to ?? 0, price.from))),
  );

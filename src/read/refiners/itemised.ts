/** Ads that are priced item by item. */
import { isPlate } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { isStock } from '../recognisers/notation.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { isForOtherTrade } from './extras.ts';
import { type Cover, groupAmount } from './own-prices.ts';
import { isUnknownBeside, isUnknownGoods } from './price-words.ts';

const sameGoods = (a: readonly Draft[], b: readonly Draft[]): boolean =>
  a.length === b.length && a.every((item) => b.includes(item));

/** "Boxes, 2 ......... 40 each", "34 posts, 3 each": times the count that is told right before it, or first on its line. */
function amountOfUnknown(scan: Scan, price: Price): number | null {
  if (price.role === 'asking') return price.amount;
  if (price.role !== 'each') return null;
  let at = price.from - 1;
  while (/[-,:=&]/.test(scan.plain[at] ?? '_')) at -= 1;
  const line = scan.tokens[price.from]?.line;
  let start = price.from;
  while (start > Math.max(0, price.from - 60) && scan.tokens[start - 1]?.line === line && scan.plain[start - 1] !== 'l')
    start -= 1;
  // "Mirrors (3) ... $50 each", "mats, 64 pcs, $6 each", "mirrors, six panels, $50 each".
  if (scan.plain[at] === ')' && scan.plain[at - 2] === '(') at -= 1;
  else if (scan.plain[at] === 'j' || (scan.plain[at] === 'z' && /[,(]/.test(scan.plain[at - 2] ?? '_'))) at -= 1;
  const place = [at, start].find((one) => one < price.from && 'nd'.includes(scan.plain[one] ?? '_'));
  const count = place === undefined ? null : valueAt(scan, place);
  return isStock(count) ? price.amount * count : null;
}

/** "Woven wire, used, offer": a line of the list that asks for offers in the place of a price. */
function hasOfferLine(scan: Scan, covers: readonly Cover[]): boolean {
  const lines = new Set(covers.flatMap(({ price }) => (price.from < 0 ? [] : (scan.tokens[price.from]?.line ?? 0))));
  if (lines.size < 3) return false;
  const [first, last] = [Math.min(...lines), Math.max(...lines)];
  for (let at = scan.plain.indexOf('O'); at !== -1; at = scan.plain.indexOf('O', at + 1)) {
    const line = scan.tokens[at]?.line ?? 0;
    if (line > first && line < last && !lines.has(line) && /^[.]?(?:l|$)/.test(scan.plain.slice(at + 1, at + 3))) return true;
  }
  return false;
}

/** "Lawn mower (runs) 50 €, sled 10 €": words of no goods of ours begin the sentence, and the price ends its part. */
function isOfWords(scan: Scan, price: Price): boolean {
  if (price.from < 1 || price.role !== 'asking') return false;
  let from = price.from;
  while (from > Math.max(0, price.from - 8) && scan.clause[from - 1] === scan.clause[price.from]) from -= 1;
  return /^[•-]?z[z()]{0,6}[-:]?$/.test(scan.plain.slice(from, price.from)) && /^[,;.l]/.test(scan.plain.slice(price.to + 1));
}

const isUnknown = (scan: Scan, price: Price): boolean =>
  isUnknownGoods(scan, price) || isUnknownBeside(scan, price) || isForOtherTrade(scan, price);

/** "2 x 45 lb $50": one kind of goods, right behind it their price, and nothing more. Two of these at one price are no price said twice. */
const isRow = (scan: Scan, { price, drafts: [item, ...others] }: Cover): boolean =>
  item !== undefined &&
  others.length === 0 &&
  !item.again &&
  item.places.some(({ to }) => to < price.from && /^[-:=@]{0,2}$/.test(scan.plain.slice(to + 1, price.from))) &&
  /^[,;.l(]?$/.test(scan.plain[price.to + 1] ?? '');

export interface Itemised {
  readonly covers: Cover[];
  /** What the lines add up to; null when one of them can't be priced. */
  readonly sum: number | null;
  readonly header: Price | null;
  /** Those of goods that we know nothing of, which are in the sum. */
  readonly unknown: readonly Price[];
}

/** At least two prices for different goods: the ad is priced item by item. `header` is a price that covers no goods or all of them. */
export function itemised(scan: Scan, covers: readonly Cover[], live: readonly Draft[]): Itemised | null {
  const withGoods = covers.filter(({ drafts }) => drafts.some((item) => !item.sold));
  const seen = new Set<Draft>();
  const own: Cover[] = [];
  for (const cover of withGoods) {
    const fresh = cover.drafts.filter((item) => !seen.has(item) && !item.sold);
    if (fresh.length === 0) continue;
    for (const item of fresh) seen.add(item);
    // "$35 each or both for $60": the price of the group stands.
    const group = withGoods.find(({ price, drafts }) => price.role === 'all' && sameGoods(drafts, cover.drafts));
    own.push({ price: cover.price.role === 'each' && group ? group.price : cover.price, drafts: fresh });
  }
  const [one, two] = own;
  const again = one && two && own.length === 2 && one.price.amount === two.price.amount;
  const terms = again && /^[,(]?[OR£]/.test(scan.plain.slice(two.price.to + 1, two.price.to + 4));
  const rowsOfTheirOwn = own.every(({ price }) => withGoods.some((cover) => cover.price === price && isRow(scan, cover)));
  const sameTwice =
    again &&
    (terms ||
      (!rowsOfTheirOwn &&
        (((scan.tokens[one.price.from]?.line ?? 0) <= 1 &&
          scan.tokens[one.price.from]?.line !== scan.tokens[two.price.from]?.line) ||
          one.drafts[0]?.kind === two.drafts[0]?.kind)));
  // "Mower $60, olympic bar $75, patio set $100": in the row of our goods' prices.
  const rows = new Set(own.map(({ price }) => scan.clause[price.from]));
  const isInRow = (price: Price): boolean => isForOtherTrade(scan, price) && rows.has(scan.clause[price.from]);
  const ordered = [...covers].sort((a, b) => a.price.from - b.price.from);
  const beside = ordered.filter(
    ({ price, drafts }, index) =>
      drafts.length === 0 && (((ordered[index - 1]?.drafts.length ?? 0) > 0 && isUnknownBeside(scan, price)) || isInRow(price)),
  );
  if (own.length === 0 || own.length + beside.length < 2 || sameTwice) return null;
  const used = new Set(own.map(({ price }) => price.amount));
  const header =
    covers.find(
      ({ price, drafts }) =>
        drafts.length === 0 &&
        price.role === 'asking' &&
        !used.has(price.amount) &&
        !isUnknown(scan, price) &&
        !own.some((cover) => cover.price.amount > price.amount && cover.price.from > price.from && price.from >= 0),
    )?.price ?? null;
  const all = live.every(
    (item) => item.kind === 'other' || item.kind === 'collars' || item.kind === 'storage' || isCovered(item, seen),
  );
  // A line with a price and words that we know no goods by ("rope ... $8") is for sale too.
  const unknown = covers.filter(
    ({ price, drafts }) =>
      drafts.length === 0 &&
      price !== header &&
      ['asking', 'each', 'pair'].includes(price.role) &&
      (isUnknown(scan, price) || isOfWords(scan, price)),
  );
  let sum: number | null = 0;
  for (const cover of own) {
    const loose = cover.drafts.every((item) => item.kind === 'other' && item.count === null);
    const amount = groupAmount(cover) ?? (loose ? amountOfUnknown(scan, cover.price) : null);
    sum = amount === null || sum === null ? null : sum + amount;
  }
  for (const { price } of unknown) {
    const amount = amountOfUnknown(scan, price);
    sum = sum === null || amount === null ? null : sum + amount;
  }
  return {
    covers: own,
    sum: all && !hasOfferLine(scan, covers) ? sum : null,
    header,
    unknown: unknown.map(({ price }) => price),
  };
}

/** Goods have a price when they, or another mention of the same, stand under one. */
export function isCovered(item: Draft, seen: ReadonlySet<Draft>): boolean {
  if (seen.has(item)) return true;
  for (const other of seen) {
    // "Weights" over a list of dumbbells is another mention of those.
    const loose =
      item.kind === 'plate' && item.weight === null && item.total === null && ['dumbbell', 'kettlebell'].includes(other.kind);
    if (loose) return true;
    const alike = other.kind === item.kind || (isPlate(other.kind) && item.kind === 'plate' && item.weight === null);
    if (alike && (item.weight === null || other.weight === null || other.weight.value === item.weight.value)) return true;
  }
  return false;
}

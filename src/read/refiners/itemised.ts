/** Ads that are priced item by item. */
import { isPlate } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { type Cover, groupAmount } from './own-prices.ts';
import { isUnknownGoods } from './price-words.ts';

const sameGoods = (a: readonly Draft[], b: readonly Draft[]): boolean =>
  a.length === b.length && a.every((item) => b.includes(item));

export interface Itemised {
  readonly covers: Cover[];
  /** What the lines add up to; null when one of them can't be priced. */
  readonly sum: number | null;
  readonly header: Price | null;
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
  const sameTwice =
    again &&
    (terms ||
      ((scan.tokens[one.price.from]?.line ?? 0) <= 1 &&
        scan.tokens[one.price.from]?.line !== scan.tokens[two.price.from]?.line) ||
      one.drafts[0]?.kind === two.drafts[0]?.kind);
  if (own.length < 2 || sameTwice) return null;
  const used = new Set(own.map(({ price }) => price.amount));
  const header =
    covers.find(
      ({ price, drafts }) =>
        drafts.length === 0 && price.role === 'asking' && !used.has(price.amount) && !isUnknownGoods(scan, price),
    )?.price ?? null;
  const all = live.every(
    (item) => item.kind === 'other' || item.kind === 'collars' || item.kind === 'storage' || isCovered(item, seen),
  );
  // A line with a price and words that we know no goods by ("rope ... $8") is for sale too.
  const unknown = covers.filter(
    ({ price, drafts }) => drafts.length === 0 && price !== header && price.role === 'asking' && isUnknownGoods(scan, price),
  );
  let sum: number | null = 0;
  for (const cover of own) {
    const amount = groupAmount(cover);
    sum = amount === null || sum === null ? null : sum + amount;
  }
  for (const { price } of unknown) sum = sum === null ? null : sum + price.amount;
  return { covers: own, sum: all ? sum : null, header };
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

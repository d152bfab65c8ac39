/** Money of an ad that the asking price leaves unexplained: neither the price, nor a line's own, nor a rate that multiplies out to it. */
import type { Price } from '../mention.ts';
import type { Asked, Sums } from './asked.ts';
import { isForOtherGoods } from './extras.ts';
import { isConcession, isUnknownBeside, isUnknownGoods } from './price-words.ts';

/** The asking prices, `parts` of which are told to be those of some goods, that nothing accounts for. */
export function looseMoney(asked: Asked, { scan, distinct, covers, live, items }: Sums): readonly Price[] {
  if (asked.amount === null || asked.basis === 'none') return [];
  const told = new Set([asked.amount, asked.unitAmount, asked.high, ...asked.rivals.map(({ amount }) => amount)]);
  const own = new Set(live.flatMap(({ ownPrice }) => ownPrice?.place ?? []));
  const listed = new Set([...(items?.covers.map(({ price }) => price) ?? []), ...(items?.unknown ?? [])]);
  const unitOfAll = ['each', 'pair', 'per-pound', 'per-kilogram'].includes(asked.basis) || asked.unitAmount !== null;
  return distinct.filter((price) => {
    if (told.has(price.amount) || own.has(price) || listed.has(price)) return false;
    if (price.from < 0 || isConcession(scan, price) || isForOtherGoods(scan, price)) return false;
    if (isUnknownGoods(scan, price) || isUnknownBeside(scan, price)) return false;
    // "$1500 all. $1000 without the bench", "$800 for all, $700 if it's gone today": less on a condition.
    if (asked.price?.role === 'all' && price.amount < (asked.amount ?? 0)) return false;
    const goods = covers.find((cover) => cover.price === price)?.drafts ?? [];
    const ofSome = goods.length > 0 && live.some((item) => !goods.includes(item));
    // Beside a price for all that of a piece or pound is another way to buy.
    if (asked.price !== null && price.role !== 'asking' && price.role !== 'all') return false;
    return !(ofSome && asked.price !== null) || unitOfAll;
  });
}

/** Prices per pound or kilogram: times the weight, with what other prices say of the lot or of other goods. */
import { isPlate } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { type Asked, basisOf, inUnit, NOTHING, round, type Sums, setOwnPrices, weightOf } from './asked.ts';
import { isRemark } from './price-words.ts';
import { ratesByGoods } from './rates-by-goods.ts';

/** Rates that differ by the goods, each line of plates with its own. */
export function askedByGoods({ scan, weighed, live }: Sums): Asked | null {
  const rated = ratesByGoods(scan, weighed, live);
  if (!rated) return null;
  for (const { item, price, amount } of rated) item.ownPrice = { amount: round(amount), currency: price.currency, place: price };
  const rest = live.some((item) => !rated.some((one) => one.item === item) && item.kind !== 'other' && item.weight !== null);
  const sum = round(rated.reduce((total, { amount }) => total + amount, 0));
  return { ...NOTHING, amount: rest ? null : sum, basis: 'lot', worked: true };
}

/** One rate: a lot price that it multiplies out to or that stands beside it, else the rate times the weight. */
export function askedByWeight(sums: Sums): Asked | null {
  const { scan, distinct, covers, perWeight, weight } = sums;
  if (!perWeight) return null;
  const lots = distinct.filter((price) => price.role === 'asking' && price !== perWeight);
  const basis = basisOf(perWeight);
  const same = lots.find((price) => price.amount === perWeight.amount);
  const others = lots.filter((price) => price !== same);
  const multiplied = weight === null ? null : round(perWeight.amount * inUnit(weight.pounds, basis));
  const given = others.find((price) => multiplied !== null && Math.abs(price.amount - multiplied) <= 0.02 * multiplied);
  const bracket = others.find((price) => scan.plain[price.from - 1] === '(' || scan.plain[price.from - 1] === '=');
  const lot = given ?? bracket;
  // "$90 takes it, that's around 30 cents a pound": a remark on the price.
  const rough = others.find((price) => isRemark(scan, perWeight) && price.from < perWeight.from);
  if (rough && !bracket) return { ...NOTHING, amount: rough.amount, basis: 'lot', price: rough };
  // "£240 ... £1.60 per kilo" states both; "$0.89/lb ($53.40)" only multiplies out.
  const both = lot !== undefined && lot !== bracket && lot.from >= 0 && lot.from < perWeight.from;
  // "At that rate the plates are $285; the bar is $60": other goods come on top.
  const onTop = covers.filter(
    ({ price, drafts: goods }) =>
      others.includes(price) && price !== lot && goods.length > 0 && goods.every((item) => !isPlate(item.kind) && !item.sold),
  );
  if (lot === given && onTop.length > 0) setOwnPrices(onTop, false);
  const extras = lot === given ? onTop.reduce((sum, { price }) => sum + price.amount, 0) : 0;
  if (lot)
    return {
      ...NOTHING,
      amount: round(lot.amount + extras),
      basis: both ? 'lot' : basis,
      unitAmount: perWeight.amount,
      price: lot,
      unitPrice: perWeight,
    };
  return besideOthers(sums, perWeight, others, multiplied);
}

/** A rate with other prices that it does not multiply out to: the price of the lot, or the prices of other goods. */
function besideOthers(sums: Sums, perWeight: Price, others: readonly Price[], multiplied: number | null): Asked {
  const { covers, live, totals, weight, items } = sums;
  const basis = basisOf(perWeight);
  const [free] = others.filter(
    (price) =>
      price.amount > 20 &&
      !(items?.covers ?? []).some(
        (cover) => cover.price === price && cover.drafts.every((item) => !isPlate(item.kind)) && cover.drafts.length > 0,
      ),
  );
  if (free)
    return { ...NOTHING, amount: free.amount, basis: 'lot', unitAmount: perWeight.amount, price: free, unitPrice: perWeight };
  const extra = others.reduce((sum, price) => sum + price.amount, 0);
  if (extra > 0)
    setOwnPrices(
      covers.filter(({ price }) => others.includes(price)),
      false,
    );
  // "Dumbbells $200. Kettlebells $1.50 a pound": only goods without a price of their own are weighed.
  const apart = new Set(covers.flatMap(({ price, drafts: goods }) => (others.includes(price) ? goods : [])));
  const loose = live.filter((item) => !apart.has(item));
  const loosely = apart.size > 0 && multiplied !== null ? weightOf(loose, totals) : weight;
  const amount = multiplied === null || loosely === null ? null : round(perWeight.amount * inUnit(loosely.pounds, basis) + extra);
  // Each line of goods has its price, some of them by the pound.
  const lines = covers.filter(({ price, drafts: goods }) => price.role === perWeight.role && goods.length > 0);
  if (extra > 0 && lines.length > 1) return { ...NOTHING, amount, basis: 'lot', worked: true };
  return { ...NOTHING, amount, basis, unitAmount: perWeight.amount, price: null, unitPrice: perWeight, worked: true };
}

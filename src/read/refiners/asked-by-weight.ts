/** Prices per pound or kilogram: times the weight, with what other prices say of the lot or of other goods. */
import { isPlate } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { says } from '../text/says.ts';
import { type Asked, basisOf, inUnit, NOTHING, round, type Sums, setOwnPrices, weightOf } from './asked.ts';
import type { Draft } from './draft.ts';
import { isCovered } from './itemised.ts';
import { type Cover, groupAmount } from './own-prices.ts';
import { isRemark } from './price-words.ts';
import { rateBesideSizes, ratesByGoods } from './rates-by-goods.ts';

/** Rates that differ by the goods, each line of plates with its own. */
export function askedByGoods({ scan, weighed, perWeight, covers, live }: Sums): Asked | null {
  const sizes = weighed.length === 1 && perWeight ? rateBesideSizes(scan, perWeight, covers, live) : null;
  const rated = sizes ?? ratesByGoods(scan, weighed, live);
  if (!rated) return null;
  for (const { item, price, amount } of rated) item.ownPrice = { amount: round(amount), currency: price.currency, place: price };
  const seen = new Set(rated.map(({ item }) => item));
  const rest = live.some((item) => !isCovered(item, seen) && item.kind !== 'other' && item.weight !== null);
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
  const near = others.find((price) => multiplied !== null && Math.abs(price.amount - multiplied) <= 0.02 * multiplied);
  // "$1/lb ... So $550".
  const said = others.find((price) => price.from > perWeight.to && says(scan, price.from - 1, 'so'));
  const given = near ?? said;
  const bracket = others.find(({ from }) => '(='.includes(scan.plain[from - 1] ?? '_'));
  const lot = given ?? bracket;
  const parts = lot === undefined ? ratedInPart(sums, perWeight) : null;
  if (parts) return parts;
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

/**
 * "10 lb, 9 pr, $25 … bars $150 each … kettlebells $1.25/lb": a rate for those of the goods that have no price of their own, where others
 * have theirs by the piece or pair. What it all comes to, where everything can be priced.
 */
function ratedInPart({ covers, live }: Sums, rate: Price): Asked | null {
  const own = covers.filter(({ price, drafts }) => !price.role.startsWith('per-') && drafts.some((item) => !item.sold));
  const byPiece = own.some(({ price }) => price.role === 'each' || price.role === 'pair');
  const priced = new Set(own.flatMap(({ drafts }) => drafts));
  const loose = live.filter((item) => !priced.has(item));
  if (!byPiece || own.length < 2 || loose.length === 0) return null;
  setOwnPrices(own, false);
  const weighed = weightOf(loose, []);
  const bare = loose.some((item) => !isWeighed(item) && item.kind !== 'other' && !isCovered(item, priced));
  let sum: number | null = weighed === null || bare ? null : rate.amount * inUnit(weighed.pounds, basisOf(rate));
  for (const cover of own) {
    const amount = groupAmount(cover);
    sum = sum === null || amount === null ? null : sum + amount;
  }
  if (sum !== null)
    for (const item of loose) {
      const mine = weightOf([item], []);
      if (mine && !item.ownPrice)
        item.ownPrice = { amount: round(rate.amount * inUnit(mine.pounds, basisOf(rate))), currency: rate.currency, place: rate };
    }
  return { ...NOTHING, amount: sum === null ? null : round(sum), basis: 'lot', worked: true };
}

/** Whether a price has goods of its own, and others have none of it. */
const isOfSome = (covers: readonly Cover[], price: Price, live: readonly Draft[]): boolean =>
  covers.some(
    (cover) => cover.price === price && cover.drafts.length > 0 && live.some((item) => !isCovered(item, new Set(cover.drafts))),
  );

const isWeighed = (item: Draft): boolean => isPlate(item.kind) || item.kind === 'dumbbell' || item.kind === 'kettlebell';

/** "Bench: $75. Bar: $75. Plates: $1/lb": what two sorts of goods cost is no price said twice. */
const twins = ({ asks, covers }: Sums, single: readonly Price[]): Price[] => {
  const kinds = (price: Price): readonly string[] =>
    covers.find((cover) => cover.price === price)?.drafts.map(({ kind }) => kind) ?? [];
  return asks.filter((price) => {
    const first = single.find((other) => other !== price && other.amount === price.amount && other.role === price.role);
    const [mine, theirs] = [kinds(price), first ? kinds(first) : []];
    return !single.includes(price) && mine.length === 1 && theirs.length === 1 && mine[0] !== theirs[0];
  });
};

/** The price of goods of another kind lies within so many times what the rate would make of their weight. */
const NEAR_RATE = [0.4, 2.5] as const;

/** "Iron 4x45 and 4x10, 75 cents a lb. Also 2x35 bumpers for $60": for goods of a kind that the rate is not for, and about as much as these are worth. */
function isForTheRest({ covers, live, totals }: Sums, rate: Price, price: Price): boolean {
  const own = covers.find((cover) => cover.price === price)?.drafts ?? [];
  const told = covers.filter((cover) => cover.price.role === rate.role).flatMap(({ drafts }) => drafts);
  // A rate in the title is for all that have no other price.
  const rated = told.length > 0 ? told : live.filter((item) => !own.includes(item));
  if (own.length === 0 || rated.length === 0 || own.some(({ kind }) => rated.some((item) => item.kind === kind))) return false;
  const weight = weightOf(own, totals);
  if (weight === null) return false;
  const share = price.amount / (rate.amount * inUnit(weight.pounds, basisOf(rate)));
  return share >= NEAR_RATE[0] && share <= NEAR_RATE[1];
}

/** A rate with other prices that it does not multiply out to: the price of the lot, or the prices of other goods. */
function besideOthers(sums: Sums, perWeight: Price, single: readonly Price[], multiplied: number | null): Asked {
  const others = [...single, ...twins(sums, single)];
  const { covers, live, totals, weight, items } = sums;
  const basis = basisOf(perWeight);
  const several = others.filter((price) => isOfSome(covers, price, live)).length > 1;
  const [free] = others.filter(
    (price) =>
      price.amount > 20 &&
      !(several && isOfSome(covers, price, live)) &&
      !isForTheRest(sums, perWeight, price) &&
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
  // "Dumbbells" over a pair that has its price is that pair.
  const loose = live.filter(
    (item) => !apart.has(item) && !(item.weight === null && item.count === null && isCovered(item, apart)),
  );
  const loosely = apart.size > 0 && multiplied !== null ? weightOf(loose, totals) : weight;
  const amount = multiplied === null || loosely === null ? null : round(perWeight.amount * inUnit(loosely.pounds, basis) + extra);
  // Each line of goods has its price, some of them by the pound.
  const lines = covers.filter(({ price, drafts: goods }) => price.role === perWeight.role && goods.length > 0);
  if (extra > 0 && lines.length > 1) return { ...NOTHING, amount, basis: 'lot', worked: true };
  return { ...NOTHING, amount, basis, unitAmount: perWeight.amount, price: null, unitPrice: perWeight, worked: true };
}

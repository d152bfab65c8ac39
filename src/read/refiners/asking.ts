/** The price of the ad as a whole, and the own prices of its lines: steps from the most telling price to the least, the first that answers holds. */
import type { Price, Total } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import { type Asked, basisOf, inUnit, NOTHING, round, type Sums, setOwnPrices, weightOf } from './asked.ts';
import { askedByGoods, askedByWeight } from './asked-by-weight.ts';
import { askedForAll } from './asked-for-all.ts';
import { askedSingly } from './asked-singly.ts';
import type { Draft } from './draft.ts';
import { areForOtherTrades, coverRest } from './extras.ts';
import { itemised } from './itemised.ts';
import { looseMoney } from './loose-money.ts';
import { type Cover, coverPrices } from './own-prices.ts';
import { goodsOfPart, isConcession, isForPart, isForPartBehind, isForThoseOnly, isFree, isUpdated } from './price-words.ts';
import { rateForAll } from './rate-tiers.ts';
import { scopesOfAll } from './scope-of-all.ts';
import { standIns } from './stand-ins.ts';
import { settleTitlePrice } from './title-price.ts';

const UNIT_ROLES = ['per-pound', 'per-kilogram', 'each', 'pair'] as const;

/** $1, $123, $1234, $12345, $9999, $1111 stand for "ask". */
const isPlaceholder = (amount: number): boolean =>
  amount <= 1 || [123, 1234, 12345, 123456, 1234567].includes(amount) || /^(\d)\1{3,}$/.test(String(amount)) || amount >= 99_999;

export function settleAsking(scan: Scan, prices: readonly Price[], drafts: readonly Draft[], totals: readonly Total[]): Asked {
  const live = drafts.filter((item) => !item.sold);
  const usable = prices.filter((price) => ['asking', 'all', ...UNIT_ROLES].includes(price.role) && price.amount >= 0);
  const told = standIns(scan, prices);
  const placeholders = usable.filter(
    (price) =>
      told.has(price) ||
      (price.role === 'asking' &&
        isPlaceholder(price.amount) &&
        !usable.some((other) => other !== price && other.amount === price.amount && other.role !== 'asking')),
  );
  const priced = usable.filter((price) => !placeholders.includes(price));
  // "I'd sell just the plates for $900" is a choice beside the price of all.
  const choices = priced.filter(
    (price) =>
      (price.role === 'asking' && (isForPart(scan, price) || isForPartBehind(scan, price))) || isForThoseOnly(scan, price),
  );
  const dearer = priced.some((price) => !choices.includes(price) && choices.every((part) => part.amount < price.amount));
  const whole = dearer ? priced.filter((price) => !choices.includes(price)) : priced;
  // "Just the rack for $300" is what the rack costs alone.
  if (dearer && choices.length > 0)
    setOwnPrices(
      coverPrices(scan, choices, drafts)
        .filter(({ price }) => price.role === 'asking')
        .map((cover) => {
          const named = goodsOfPart(scan, cover.price, drafts);
          return named.length > 0 ? { price: cover.price, drafts: named } : cover;
        }),
      false,
    );
  const sure = withoutSold(scan, withoutConcessions(scan, whole), drafts);
  const weak = prices.filter((price) => (price.role === 'former' || price.role === 'other') && price.weak);
  const title = settleTitlePrice(scan, sure, drafts);
  const asks = title.asks.length > 0 ? title.asks : weak.slice(0, 1).map((price): Price => ({ ...price, role: 'asking' }));
  const byDefault = prices.some(({ role }) => role === 'default');
  if (asks.length === 0 && told.size === 0 && isFree(scan)) return { ...NOTHING, amount: 0, basis: 'lot' };
  if (asks.length === 0 && !byDefault) return { ...NOTHING, placeholder: placeholders.length > 0 };
  const own = coverRest(scan, [...coverPrices(scan, asks, drafts), ...defaults(prices, asks, drafts, scan)], live);
  if (own.every(({ drafts: goods }) => goods.length === 0) && areForOtherTrades(scan, asks)) return NOTHING;
  const { covers, parts, perhaps } = scopesOfAll(scan, own, live);
  const distinct = asks.filter(
    (price, index) => asks.findIndex((other) => other.amount === price.amount && other.role === price.role) === index,
  );
  const weighed = distinct.filter((price) => price.role === 'per-pound' || price.role === 'per-kilogram');
  const weight = weightOf(live, totals);
  const tier = rateForAll(scan, weighed, weight?.pounds ?? null);
  // Beside a price for all the rate that is told first is the one to compare with.
  const all = asks.some(({ role, amount }) => role === 'all' || (role === 'asking' && amount > 20));
  const perWeight =
    (all ? null : tier) ?? weighed.findLast((price) => price.from >= 0 && isUpdated(scan, price)) ?? weighed[0] ?? null;
  const items = itemised(scan, covers, live);
  const sums: Sums = { scan, asks, distinct, covers, live, totals, weighed, perWeight, weight, items, parts };
  if (title.lot && items) {
    setOwnPrices(
      items.covers.filter(({ price }) => price !== title.lot),
      false,
    );
    return { ...NOTHING, amount: title.lot.amount, basis: 'lot', price: title.lot };
  }
  const asked = askedForAll(sums) ?? askedByGoods(sums) ?? askedByWeight(sums) ?? askedByItem(sums) ?? askedSingly(sums);
  // "$1 a pound for those under 25, $1.25 for the 45s": of several rates one may not be for all.
  const rates =
    tier === null && weight !== null && asked.unitPrice === perWeight && asked.price === null
      ? weighed.filter((price) => price.amount !== perWeight?.amount && !(price.from >= 0 && isUpdated(scan, price)))
      : [];
  const others = rates.map((price) => ({ ...price, amount: round(price.amount * inUnit(weight?.pounds ?? 0, basisOf(price))) }));
  const rivals = [...asked.rivals, ...others, ...perhaps, ...(title.rival ? [title.rival] : [])];
  const settled = { ...asked, rivals };
  return { ...settled, loose: looseMoney(settled, sums) };
}

/** "Rack $200 … would take $150 for the rack today": less for what has its price already is room to haggle. */
const withoutConcessions = (scan: Scan, prices: readonly Price[]): readonly Price[] =>
  prices.length < 2
    ? prices
    : prices.filter(
        (price) =>
          price.role !== 'asking' ||
          price.from < 0 ||
          !isConcession(scan, price) ||
          !prices.some(
            (other) =>
              (other.role === 'asking' || other.role === 'all') &&
              other.amount > price.amount &&
              other.amount <= 2 * price.amount &&
              !(other.from >= 0 && isConcession(scan, other)),
          ),
      );

/** "Bench $75 - SOLD", "SOLD rack $200": the price went with the goods; "bench is gone, $380" is the price of the rest. */
function withoutSold(scan: Scan, prices: readonly Price[], drafts: readonly Draft[]): readonly Price[] {
  if (!drafts.some(({ sold }) => sold)) return prices;
  const gone = new Set<Price>();
  for (const { price, drafts: goods } of coverPrices(scan, prices, drafts)) {
    if (price.from < 0 || goods.length === 0 || !goods.every(({ sold }) => sold)) continue;
    const ends = goods.flatMap(({ places }) => places.flatMap(({ to }) => (to < price.from ? to : [])));
    const between = ends.length > 0 ? scan.letters.slice(Math.max(...ends) + 1, price.from) : [];
    if (!between.includes('Y')) gone.add(price);
  }
  return gone.size < prices.length ? prices.filter((price) => !gone.has(price)) : prices;
}

/** Each line of goods with its price: they add up, unless a price of its own stands for all. */
function askedByItem({ items }: Sums): Asked | null {
  if (!items) return null;
  setOwnPrices(items.covers, false);
  const lot = items.header;
  if (lot) return { ...NOTHING, amount: lot.amount, basis: 'lot', price: lot, rivals: [] };
  return { ...NOTHING, amount: items.sum === null ? null : round(items.sum), basis: 'lot', worked: true };
}

/** "Everything is $5 unless marked": that price for each line of goods that has none of its own. */
function defaults(prices: readonly Price[], asks: readonly Price[], drafts: readonly Draft[], scan: Scan): Cover[] {
  const price = prices.find(({ role }) => role === 'default');
  if (!price) return [];
  const priced = new Set(coverPrices(scan, asks, drafts).flatMap(({ drafts: goods }) => goods));
  return drafts
    .filter((item) => !priced.has(item) && !item.sold)
    .map((item): Cover => ({ price: { ...price, role: 'asking' }, drafts: [item] }));
}

/** The price of the ad as a whole, and the own prices of its lines. */
import { isPlate, type PriceBasis } from '../../listing/reading.ts';
import { inKilograms, inPounds } from '../../units/mass.ts';
import type { Price, Total } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { coverRest, isForOtherGoods } from './extras.ts';
import { isCovered, itemised } from './itemised.ts';
import { type Cover, coverPrices, goodsByPiece, groupAmount } from './own-prices.ts';
import { isAsked, isConcession, isForPart, isFree, isOfNamedLot, isRemark, isUpdated, TOLD_RULES } from './price-words.ts';
import { ratesByGoods } from './rates-by-goods.ts';

export interface Asked {
  readonly amount: number | null;
  readonly basis: PriceBasis;
  readonly unitAmount: number | null;
  readonly high: number | null;
  /** The price that the amount was read from. */
  readonly price: Price | null;
  readonly unitPrice: Price | null;
  readonly worked: boolean;
  readonly placeholder: boolean;
  /** Other amounts that could be the price. */
  readonly rivals: readonly Price[];
}

export const NOTHING: Asked = {
  amount: null,
  basis: 'none',
  unitAmount: null,
  high: null,
  price: null,
  unitPrice: null,
  worked: false,
  placeholder: false,
  rivals: [],
};
const UNIT_ROLES = ['per-pound', 'per-kilogram', 'each', 'pair'] as const;

/** $1, $123, $1234, $12345, $9999, $1111 stand for "ask". */
export const isPlaceholder = (amount: number): boolean =>
  amount <= 1 || [123, 1234, 12345, 123456, 1234567].includes(amount) || /^(\d)\1{3,}$/.test(String(amount)) || amount >= 99_999;

/** Weight in pounds of what a price per pound covers, or null. */
function weightOf(drafts: readonly Draft[], totals: readonly Total[]): { pounds: number; stated: boolean } | null {
  const plates = drafts.filter(
    (item) => !item.sold && (isPlate(item.kind) || item.kind === 'dumbbell' || item.kind === 'kettlebell'),
  );
  // What the scale says of the lot holds before what is cast on the plates.
  const scaled = totals.find(({ rule }) => rule === 'total-on-scale');
  if (scaled) return { pounds: inPounds({ value: scaled.weight, unit: scaled.unit ?? 'lb' }), stated: true };
  let sum = 0;
  let whole = plates.length > 0;
  // "Several plates: 8x45 …": the plain noun is those that are told.
  const told = plates.filter((item) => item.total || item.weight);
  for (const item of told.length > 0 ? told : plates) {
    if (item.total) sum += inPounds(item.total);
    else if (item.count && item.weight) sum += item.count.value * inPounds({ value: item.weight.value, unit: item.unit ?? 'lb' });
    else whole = false;
  }
  if (whole && sum > 0) return { pounds: sum, stated: false };
  const total = totals.find((candidate) => !candidate.bracketed) ?? totals[0];
  return total ? { pounds: inPounds({ value: total.weight, unit: total.unit ?? 'lb' }), stated: true } : null;
}

/** Pounds in the unit that a price is for. */
const inUnit = (pounds: number, basis: PriceBasis): number =>
  basis === 'per-kilogram' ? inKilograms({ value: pounds, unit: 'lb' }) : pounds;

const round = (amount: number): number => Math.round(amount * 100) / 100;

function setOwnPrices(covers: readonly Cover[], loose: boolean): void {
  for (const cover of covers) {
    const [only] = cover.drafts;
    if (!only) continue;
    const unit = cover.price.role === 'each' || cover.price.role === 'pair';
    if (cover.drafts.length > 1 && !unit) continue;
    for (const item of unit ? goodsByPiece(cover.drafts) : cover.drafts) {
      const amount = groupAmount({ ...cover, drafts: [item] });
      if (amount === null || (item.ownPrice && !loose)) continue;
      item.ownPrice = { amount: round(amount), currency: cover.price.currency, place: cover.price };
    }
  }
}

export function settleAsking(scan: Scan, prices: readonly Price[], drafts: readonly Draft[], totals: readonly Total[]): Asked {
  const live = drafts.filter((item) => !item.sold);
  const usable = prices.filter((price) => ['asking', 'all', ...UNIT_ROLES].includes(price.role) && price.amount >= 0);
  const placeholders = usable.filter(
    (price) =>
      price.role === 'asking' &&
      isPlaceholder(price.amount) &&
      !usable.some((other) => other !== price && other.amount === price.amount && other.role !== 'asking'),
  );
  const priced = usable.filter((price) => !placeholders.includes(price));
  // "I'd sell just the plates for $900" is a choice beside the price of all.
  const parts = priced.filter((price) => price.role === 'asking' && isForPart(scan, price));
  const dearer = priced.some((price) => !parts.includes(price) && parts.every((part) => part.amount < price.amount));
  const sure = dearer ? priced.filter((price) => !parts.includes(price)) : priced;
  const weak = prices.filter((price) => price.role === 'former' && price.weak);
  const asks = sure.length > 0 ? sure : weak.slice(0, 1).map((price): Price => ({ ...price, role: 'asking' }));
  const byDefault = prices.some(({ role }) => role === 'default');
  if (asks.length === 0 && isFree(scan)) return { ...NOTHING, amount: 0, basis: 'lot' };
  if (asks.length === 0 && !byDefault) return { ...NOTHING, placeholder: placeholders.length > 0 };
  const covers = coverRest(scan, [...coverPrices(scan, asks, drafts), ...defaults(prices, asks, drafts, scan)], live);
  // "Would take $400 for all today" beside an asking price is room to haggle.
  const haggled = (price: Price): boolean => asks.length > 1 && isConcession(scan, price);
  const forAll = covers.filter(({ price }) => price.role === 'all' && !haggled(price) && !partial(scan, price, covers, live));
  const distinct = asks.filter(
    (price, index) => asks.findIndex((other) => other.amount === price.amount && other.role === price.role) === index,
  );
  const weighed = distinct.filter((price) => price.role === 'per-pound' || price.role === 'per-kilogram');
  const perWeight = weighed.findLast((price) => price.from >= 0 && isUpdated(scan, price)) ?? weighed[0] ?? null;
  const weight = weightOf(live, totals);
  const items = itemised(scan, covers, live);
  const lowest = [...forAll].sort((a, b) => a.price.amount - b.price.amount)[0]?.price ?? null;
  if (lowest) {
    if (items)
      setOwnPrices(
        items.covers.filter(({ price }) => price !== lowest),
        false,
      );
    // Several unit prices, each for its own goods, are none of the lot.
    const units = distinct.filter((price) => price.role === 'each' || price.role === 'pair');
    const goodsOf = (price: Price | undefined) => covers.find((cover) => cover.price === price)?.drafts ?? [];
    const various = units.some(
      (price) => goodsOf(price).length > 0 && !goodsOf(price).some((item) => goodsOf(units[0]).includes(item)),
    );
    const unit = perWeight ?? (various ? undefined : units[0]) ?? null;
    // "$1.25/lb so $225 for all" only multiplies out; "$1/lb or $200 for all" is another offer.
    const product =
      perWeight && weight
        ? perWeight.amount * inUnit(weight.pounds, perWeight.role === 'per-kilogram' ? 'per-kilogram' : 'per-pound')
        : null;
    const worked =
      product !== null &&
      perWeight !== null &&
      perWeight.to < lowest.from &&
      Math.abs(product - lowest.amount) <= 0.02 * product &&
      /^(so|=|thus|makes|also|macht)$/.test(scan.tokens[lowest.from - 1]?.text ?? '');
    const basis = worked ? (perWeight.role === 'per-kilogram' ? 'per-kilogram' : 'per-pound') : 'lot';
    return { ...NOTHING, amount: lowest.amount, basis, unitAmount: unit?.amount ?? null, price: lowest, unitPrice: unit };
  }
  const rated = ratesByGoods(scan, weighed, live);
  if (rated) {
    for (const { item, price, amount } of rated)
      item.ownPrice = { amount: round(amount), currency: price.currency, place: price };
    const rest = live.some((item) => !rated.some((one) => one.item === item) && item.kind !== 'other' && item.weight !== null);
    const sum = round(rated.reduce((total, { amount }) => total + amount, 0));
    return { ...NOTHING, amount: rest ? null : sum, basis: 'lot', worked: true };
  }
  const lots = distinct.filter((price) => price.role === 'asking' && price !== perWeight);
  if (perWeight) {
    const basis = perWeight.role === 'per-kilogram' ? 'per-kilogram' : 'per-pound';
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
    const amount =
      multiplied === null || loosely === null ? null : round(perWeight.amount * inUnit(loosely.pounds, basis) + extra);
    // Each line of goods has its price, some of them by the pound.
    const lines = covers.filter(({ price, drafts: goods }) => price.role === perWeight.role && goods.length > 0);
    if (extra > 0 && lines.length > 1) return { ...NOTHING, amount, basis: 'lot', worked: true };
    return { ...NOTHING, amount, basis, unitAmount: perWeight.amount, price: null, unitPrice: perWeight, worked: true };
  }
  if (items) {
    setOwnPrices(items.covers, false);
    const lot = items.header;
    if (lot) return { ...NOTHING, amount: lot.amount, basis: 'lot', price: lot, rivals: [] };
    return { ...NOTHING, amount: items.sum === null ? null : round(items.sum), basis: 'lot', worked: true };
  }
  return single(scan, distinct, covers, live);
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

/** "for the pair", "for both" and the like are for the goods of their own line when other lines have prices too. */
function partial(scan: Scan, price: Price, covers: readonly Cover[], live: readonly Draft[]): boolean {
  const cover = covers.find((candidate) => candidate.price === price);
  if (!cover || cover.drafts.length === 0) return false;
  const others = covers.filter(
    (candidate) => candidate.price !== price && candidate.drafts.some((item) => !cover.drafts.includes(item)),
  );
  return others.length > 0 && cover.drafts.length < live.length && (price.whole !== true || isOfNamedLot(scan, price));
}

/** "Each plate is $30. I have 4 45s": the plain noun is the goods that are told. */
function told(covered: readonly Draft[], live: readonly Draft[]): Draft[] {
  const goods = covered.filter((item) => !item.sold);
  const vague = goods.every((item) => item.count === null && item.weight === null);
  const alike = live.filter((item) => item.count !== null && goods.some(({ kind }) => kind === item.kind));
  return vague && alike.length > 0 ? alike : goods;
}

/** One price, or several for the same goods: the last one marked as new stands, else the first. */
function single(scan: Scan, distinct: readonly Price[], covers: readonly Cover[], live: readonly Draft[]): Asked {
  const unit = distinct.find((price) => price.role === 'each' || price.role === 'pair') ?? null;
  const offered = distinct.filter((price) => price.role === 'asking' || price.role === 'all');
  const ours = offered.filter((price) => !isForOtherGoods(scan, price));
  const lots = ours.length > 0 ? ours : offered;
  if (unit) {
    const cover = covers.find(({ price }) => price === unit);
    const goods =
      cover && cover.drafts.length > 0
        ? told(cover.drafts, live)
        : live.filter((item) => isPlate(item.kind) || live.length === 1);
    const priced = goods.length > 0 ? goods : live;
    const amount = groupAmount({ price: unit, drafts: priced });
    const other = lots.find(
      (price) =>
        price.amount > unit.amount * 1.5 && (amount === null || (price.amount > amount * 0.5 && price.amount < amount * 1.3)),
    );
    const basis = unit.role === 'pair' ? 'pair' : 'each';
    const seen = new Set(priced);
    const rest = live.filter((item) => item.kind !== 'other' && !isCovered(item, seen));
    if (other && amount !== null && Math.abs(other.amount - amount) > 0.01)
      return { ...NOTHING, amount: other.amount, basis: 'lot', unitAmount: unit.amount, price: other, unitPrice: unit };
    if (rest.length > 0 && cover && cover.drafts.length > 0) setOwnPrices([{ price: unit, drafts: priced }], false);
    return {
      ...NOTHING,
      amount:
        amount === null || (rest.length > 0 && cover && cover.drafts.length > 0)
          ? rest.length > 0
            ? null
            : amount
          : round(amount),
      basis,
      unitAmount: unit.amount,
      unitPrice: unit,
      worked: true,
    };
  }
  const [first] = lots;
  if (!first) return NOTHING;
  const updated = lots.findLast((price) => price.from >= 0 && isUpdated(scan, price));
  const newer =
    updated ??
    (first.rule === 'price-told' || isAsked(scan, first)
      ? undefined
      : lots.find(
          (price) => (TOLD_RULES.includes(price.rule) || isAsked(scan, price)) && price !== first && !isConcession(scan, price),
        ));
  // Of two, the one with its terms behind it ("$150 cash", "$90 firm") is the one asked.
  const termed = (price: Price): boolean => price.from >= 0 && /^[,(]?[OR£]/.test(scan.plain.slice(price.to + 1, price.to + 3));
  const agreed =
    newer === undefined && lots.length > 1 && !termed(first) && !isAsked(scan, first) ? lots.find(termed) : undefined;
  const price = newer ?? agreed ?? first;
  const rivals = lots.filter((other) => other !== price && other.amount !== price.amount);
  return {
    ...NOTHING,
    amount: price.amount,
    basis: price.high === undefined ? 'lot' : 'range',
    high: price.high ?? null,
    price,
    rivals,
  };
}

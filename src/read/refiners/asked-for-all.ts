/** A price for everything: "$200 takes it all", "package $700"; the cheapest of several stands, and a unit price beside it is kept. */
import type { Kind } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import { says, saysWithin } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import { type Asked, basisOf, inUnit, NOTHING, type Sums, setOwnPrices, setPricesOfEach } from './asked.ts';
import type { Draft } from './draft.ts';
import { isCovered } from './itemised.ts';
import type { Cover } from './own-prices.ts';
import { isConcession, isOfNamedLot } from './price-words.ts';

/** "for the pair", "for both" and the like are for the goods of their own line when other lines have prices too. */
function partial(scan: Scan, price: Price, covers: readonly Cover[], live: readonly Draft[]): boolean {
  const cover = covers.find((candidate) => candidate.price === price);
  if (!cover || cover.drafts.length === 0) return false;
  const others = covers.filter(
    (candidate) => candidate.price !== price && candidate.drafts.some((item) => !cover.drafts.includes(item)),
  );
  const goods = new Set(cover.drafts);
  if (isForBoth(scan, price, covers)) return false;
  return (
    others.length > 0 && !live.every((item) => isCovered(item, goods)) && (price.whole !== true || isOfNamedLot(scan, price))
  );
}

/** Goods that nobody sells by the pound. */
const MAIN_GOODS: readonly Kind[] = ['bar', 'curl-bar', 'hex-bar', 'rack', 'stands', 'bench'];

/** How far behind a price the condition begins that it holds under, in tokens. */
const CONDITION_REACH = 6;

/** How many pieces a price is for: "two for $90", "$90 for two"; null where it does not say. */
function piecesFor(scan: Scan, price: Price): number | null {
  if (price.from >= 2 && /[nd]w/.test(scan.plain.slice(price.from - 2, price.from))) return valueAt(scan, price.from - 2);
  return /^w[nd][,.;)lc]/.test(scan.plain.slice(price.to + 1, price.to + 4)) ? valueAt(scan, price.to + 2) : null;
}

/** "$250 for everything, $225 for everything if picked up this weekend", "$200 for all without the bench": not what is asked of everybody for all. */
function isOnCondition(scan: Scan, { to }: Price): boolean {
  const clause = scan.clause[to];
  for (let at = to + 1; at <= to + CONDITION_REACH && scan.clause[at] === clause && scan.letters[at] !== 'M'; at += 1) {
    const sense = scan.tokens[at]?.term?.sense;
    if (sense === 'unknown' || sense === 'be-gone' || /^[NQ]a?[mC]{0,2}[nk]/.test(scan.plain.slice(at, at + 5))) return true;
  }
  return false;
}

/** "2 for $90, all 4 for $160", "2 for $80, 4 for $150": the first is for fewer pieces than there are, where another is for all of them. */
function withoutSome(scan: Scan, forAll: readonly Cover[], live: readonly Draft[]): readonly Cover[] {
  if (forAll.length < 2) return forAll;
  const pieces = live.reduce((sum, { count }) => sum + (count?.value ?? 0), 0);
  const isSome = ({ price }: Cover): boolean => {
    const told = piecesFor(scan, price);
    return told !== null && told < pieces;
  };
  const whole = forAll.filter((cover) => !isSome(cover) && !isOnCondition(scan, cover.price));
  return whole.length > 0 ? whole : forAll;
}

/**
 * "Two for $90, I have four": so many at a time, of goods that are more. What is left over costs what each does, where that is said ("$40 each or
 * 3 for $100", of eight), or else its share.
 */
function askedForSome({ scan, live, distinct }: Sums, price: Price): Asked | null {
  const some = piecesFor(scan, price);
  const goods = live.filter((item) => item.weight !== null || item.count !== null);
  const [one, ...others] = goods;
  const pieces = one?.count?.value ?? 0;
  if (some === null || some < 2 || others.length > 0 || pieces <= some) return null;
  const single = distinct.find(({ role }) => role === 'each') ?? null;
  const left = pieces % some;
  const amount = single
    ? Math.floor(pieces / some) * price.amount + left * single.amount
    : Math.round((price.amount * pieces * 100) / some) / 100;
  const pair = some === 2;
  const unitPrice = pair ? price : single;
  return {
    ...NOTHING,
    amount,
    basis: pair ? 'pair' : 'lot',
    unitAmount: unitPrice?.amount ?? null,
    unitPrice: unitPrice ?? price,
    worked: true,
  };
}

/** "Bench $50, stands $70 or $100 for both": two goods with their own prices on its line, and no other price. */
function isForBoth(scan: Scan, price: Price, covers: readonly Cover[]): boolean {
  const both = saysWithin(scan, price.from - 3, price.to + 4, 'both');
  const own = covers.filter((cover) => cover.price !== price && cover.drafts.length === 1 && cover.price.role === 'asking');
  const line = scan.tokens[price.from]?.line;
  // "Dumbbells $30, bench $40, both bars $50": those bars, and neither of the others.
  const noun = scan.tokens.slice(Math.max(0, price.from - 3), price.from).find(({ term }) => term?.kind)?.term?.kind;
  const named = (kind: Kind): boolean => noun === undefined || kind === noun || (kind.endsWith('bar') && noun.endsWith('bar'));
  if (!own.every(({ drafts }) => drafts.every(({ kind }) => named(kind)))) return false;
  return both && own.length === 2 && covers.length <= 4 && own.every((cover) => scan.tokens[cover.price.from]?.line === line);
}

/** "Rack $300, plates $1 a pound, $500 for everything", "standard 50 cents a lb, olympic a dollar": no rate of the lot. */
function isRateOfSome({ live, weighed, perWeight, covers }: Sums): boolean {
  const others = live.some(({ kind }) => MAIN_GOODS.includes(kind));
  const cover = covers.find(({ price }) => price === perWeight);
  return (others && (cover?.drafts.length ?? 0) > 0) || new Set(weighed.map(({ amount }) => amount)).size > 1;
}

/** "75 cents a pound for it all so 337.50": what the plates come to by the pound, where there is a price for more goods than those. */
function isByWeight({ scan, live, perWeight, weight }: Sums, price: Price): boolean {
  if (!perWeight || !weight || perWeight.from < 0 || price.from < perWeight.from) return false;
  const product = perWeight.amount * inUnit(weight.pounds, basisOf(perWeight));
  const others = live.some(
    ({ kind }) => !['plate', 'bumper', 'micro', 'dumbbell', 'kettlebell', 'other', 'collars'].includes(kind),
  );
  return others && scan.clause[price.from] === scan.clause[perWeight.from] && Math.abs(product - price.amount) <= 0.05 * product;
}

export function askedForAll(sums: Sums): Asked | null {
  const { scan, asks, distinct, covers, live, perWeight, weight, items, parts } = sums;
  // "Would take $400 for all today" beside an asking price is room to haggle; beside prices of single goods it is the price for all.
  const asked = (price: Price): boolean => price.role === 'all' && !isConcession(scan, price);
  const singly = items?.header === null && items.covers.filter(({ price }) => !price.role.startsWith('per-')).length > 1;
  const lot = !singly || covers.some(({ price }) => asked(price) && !parts.has(price) && !partial(scan, price, covers, live));
  const haggled = (price: Price): boolean => asks.length > 1 && lot && isConcession(scan, price);
  const wholes = covers.filter(
    ({ price }) => price.role === 'all' && !parts.has(price) && !haggled(price) && !partial(scan, price, covers, live),
  );
  const wider = wholes.filter(({ price }) => !isByWeight(sums, price));
  const forAll = withoutSome(scan, wider.length > 0 ? wider : wholes, live);
  const lowest = [...forAll].sort((a, b) => a.price.amount - b.price.amount)[0]?.price;
  if (!lowest) return null;
  const several = askedForSome(sums, lowest);
  if (several) return several;

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
  // "Mats $30 each … or the whole thing for 700", "10s $20 a pair" among lines with their own prices: nor is that of some of the goods.
  const first = goodsOf(units[0]);
  const aside = first.length > 0 && first.every(({ kind }) => kind === 'other') && live.some(({ kind }) => kind !== 'other');
  const beside = aside || (units.length > 0 && items?.covers.some(({ price }) => price.role === 'asking'));
  const rate = perWeight && isRateOfSome(sums) ? null : perWeight;
  const unit = rate ?? (various || beside ? undefined : units[0]) ?? null;
  setPricesOfEach(covers, unit);
  // "$1.25/lb so $225 for all" only multiplies out; "$1/lb or $200 for all" is another offer.
  const product = perWeight && weight ? perWeight.amount * inUnit(weight.pounds, basisOf(perWeight)) : null;
  const worked =
    product !== null &&
    perWeight !== null &&
    perWeight.to < lowest.from &&
    Math.abs(product - lowest.amount) <= 0.02 * product &&
    (scan.plain[lowest.from - 1] === '=' || says(scan, lowest.from - 1, 'so'));
  const basis = worked ? basisOf(perWeight) : 'lot';
  // "$70-80 for the bunch".
  const high = lowest.high ?? null;
  const range = high !== null && basis === 'lot';
  return {
    ...NOTHING,
    amount: lowest.amount,
    basis: range ? 'range' : basis,
    high,
    unitAmount: unit?.amount ?? null,
    price: lowest,
    unitPrice: unit,
  };
}

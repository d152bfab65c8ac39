/** A price for everything: "$200 takes it all", "package $700"; the cheapest of several stands, and a unit price beside it is kept. */
import type { Price } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import { type Asked, basisOf, inUnit, NOTHING, type Sums, setOwnPrices } from './asked.ts';
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
  return (
    others.length > 0 && !live.every((item) => isCovered(item, goods)) && (price.whole !== true || isOfNamedLot(scan, price))
  );
}

export function askedForAll({ scan, asks, distinct, covers, live, perWeight, weight, items }: Sums): Asked | null {
  // "Would take $400 for all today" beside an asking price is room to haggle.
  const haggled = (price: Price): boolean => asks.length > 1 && isConcession(scan, price);
  const forAll = covers.filter(({ price }) => price.role === 'all' && !haggled(price) && !partial(scan, price, covers, live));
  const lowest = [...forAll].sort((a, b) => a.price.amount - b.price.amount)[0]?.price;
  if (!lowest) return null;

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
  const product = perWeight && weight ? perWeight.amount * inUnit(weight.pounds, basisOf(perWeight)) : null;
  const worked =
    product !== null &&
    perWeight !== null &&
    perWeight.to < lowest.from &&
    Math.abs(product - lowest.amount) <= 0.02 * product &&
    /^(so|=|thus|makes|also|macht)$/.test(scan.tokens[lowest.from - 1]?.text ?? '');
  const basis = worked ? basisOf(perWeight) : 'lot';
  return { ...NOTHING, amount: lowest.amount, basis, unitAmount: unit?.amount ?? null, price: lowest, unitPrice: unit };
}

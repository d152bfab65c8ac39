/** One price, each or for all; or several for the same goods, of which the last one marked as new stands, else the first. */
import { isPlate } from '../../listing/reading.ts';
import type { Price } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import { type Asked, NOTHING, round, type Sums, setOwnPrices, setPricesOfEach } from './asked.ts';
import type { Draft } from './draft.ts';
import { isForOtherGoods } from './extras.ts';
import { isCovered } from './itemised.ts';
import { groupAmount } from './own-prices.ts';
import { isAsked, isConcession, isUpdated, TOLD_RULES } from './price-words.ts';

/** "Each plate is $30. I have 4 45s": the plain noun is the goods that are told. */
function told(covered: readonly Draft[], live: readonly Draft[]): Draft[] {
  const goods = covered.filter((item) => !item.sold);
  const vague = goods.every((item) => item.count === null && item.weight === null);
  const alike = live.filter((item) => item.count !== null && goods.some(({ kind }) => kind === item.kind));
  return vague && alike.length > 0 ? alike : goods;
}

/** "Olympic lot $140, standard lot $40": lots with names of their own add up. */
function isLotByName(scan: Scan, { from }: Price): boolean {
  const at = from - 1 - Number(/[-:=]/.test(scan.plain[from - 1] ?? '_'));
  const token = scan.tokens[at];
  return (token?.term?.sense === 'named-lot' || scan.plain[at] === 't') && 'mkz'.includes(scan.plain[at - 1] ?? '_');
}

export function askedSingly({ scan, distinct, covers, live }: Sums): Asked {
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
    const rest = live.filter((item) => item.kind !== 'other' && item.kind !== 'collars' && !isCovered(item, seen));
    if (other && amount !== null && Math.abs(other.amount - amount) > 0.01) {
      setPricesOfEach(covers, unit);
      return { ...NOTHING, amount: other.amount, basis: 'lot', unitAmount: unit.amount, price: other, unitPrice: unit };
    }
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
  const named = lots.filter((price) => isLotByName(scan, price));
  if (lots.length > 1 && named.length === lots.length)
    return { ...NOTHING, amount: round(lots.reduce((sum, { amount }) => sum + amount, 0)), basis: 'lot', worked: true };
  const updated = lots.findLast((price) => price.from >= 0 && isUpdated(scan, price));
  const newer =
    updated ??
    (first.rule === 'price-told' || isAsked(scan, first)
      ? undefined
      : lots.find(
          (price) => (TOLD_RULES.includes(price.rule) || isAsked(scan, price)) && price !== first && !isConcession(scan, price),
        ));
  // Of two, the one with its terms behind it ("$150 cash", "$90 firm") is the one asked.
  const termed = ({ from, to }: Price): boolean =>
    from >= 0 &&
    (/^[,(]?[OR£](?![:=-]?[$n])/.test(scan.plain.slice(to + 1, to + 6)) ||
      /R[:=-]?$/.test(scan.plain.slice(Math.max(0, from - 2), from)));
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

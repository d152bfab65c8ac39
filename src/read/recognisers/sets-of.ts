/** Sets of one make: "Three sets available. Each set is a pair of 10s and a pair of 25s": what each holds, times the sets. */
import type { Price, Quantity } from '../mention.ts';
import { says } from '../text/says.ts';
import { type Scan, valueAt } from '../text/scan.ts';
import { countBefore, isAside } from './nouns.ts';

const SETS = /(?<![$(])[nd](?=[mCz]{0,2}[tJz])/g;
const EACH_SET = /e[tz](?=[:c%=z(-])/g;

/** "Sets", or "stations" and the like, each of which holds several goods. */
const isBundle = (scan: Scan, at: number): boolean => scan.tokens[at]?.term?.sense === 'bundle' || says(scan, at, 'sets');

/** How many sets the ad speaks of; null when it does not tell. */
function countSets(scan: Scan): number | null {
  const counts = [...scan.plain.matchAll(SETS)]
    .filter(({ index }) =>
      [1, 2, 3].some(
        (far) => isBundle(scan, index + far) && /^(?:sets\b|\S*(?:s|en)$)/.test(scan.tokens[index + far]?.text ?? ''),
      ),
    )
    .map(({ index }) => valueAt(scan, index) ?? 0);
  return counts.find((value) => Number.isInteger(value) && value >= 2 && value <= 20) ?? null;
}

/** "Four identical stations. Each station = 1 rack, 2x45": what each holds is there as often as the sets. */
export function multiplySets(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  const heads = [...scan.plain.matchAll(EACH_SET)].filter(({ index }) => isBundle(scan, index + 1));
  const sets = heads.length === 0 ? null : countSets(scan);
  if (sets === null) return [...quantities];
  const clauses = new Set(heads.map(({ index }) => scan.clause[index] ?? -1));
  const within = (at: number): boolean => clauses.has(scan.clause[at] ?? -1);
  for (const { index } of heads)
    for (let i = index + 2; i < scan.tokens.length && scan.clause[i] === scan.clause[index]; i += 1) {
      const kind = scan.letters[i] === 'k' ? scan.tokens[i]?.term?.kind : undefined;
      if (!kind || isAside(scan, i) || scan.nounCounts.has(i)) continue;
      scan.nounCounts.set(i, sets * (countBefore(scan, i).count ?? (kind === 'collars' ? 2 : 1)));
    }
  return quantities.map((quantity) =>
    quantity.count !== null && within(quantity.from)
      ? { ...quantity, count: quantity.count * sets, rule: `${quantity.rule}-per-set` }
      : quantity,
  );
}

/** "$260 per set", with three of them on offer: the price of the three. */
export function priceSets(scan: Scan, prices: readonly Price[]): Price[] {
  const perSet = (price: Price): boolean =>
    price.role === 'asking' &&
    price.from >= 0 &&
    /^[ra/e][tz](?!n)/.test(scan.plain.slice(price.to + 1, price.to + 4)) &&
    isBundle(scan, price.to + 2);
  if (!prices.some(perSet)) return [...prices];
  const count = countSets(scan);
  return count === null
    ? [...prices]
    : prices.map((price) => (perSet(price) ? { ...price, amount: price.amount * count, rule: 'price-per-set' } : price));
}

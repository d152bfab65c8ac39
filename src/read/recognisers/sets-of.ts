/** Sets of one make: "Three sets available. Each set is a pair of 10s and a pair of 25s": what each holds, times the sets. */
import type { Price, Quantity } from '../mention.ts';
import { type Scan, valueAt } from '../text/scan.ts';

const SETS = /(?<!\$)[nd](?=[mC]{0,2}[tJ])/g;
const EACH_SET = /et(?=[:c%=z(-])/g;

/** How many sets the ad speaks of; null when it does not tell. */
function countSets(scan: Scan): number | null {
  const counts = [...scan.plain.matchAll(SETS)]
    .filter(({ index }) => scan.tokens.slice(index + 1, index + 4).some(({ text }) => /^sets\b/.test(text)))
    .map(({ index }) => valueAt(scan, index) ?? 0);
  return counts.find((value) => Number.isInteger(value) && value >= 2 && value <= 20) ?? null;
}

export function multiplySets(scan: Scan, quantities: readonly Quantity[]): Quantity[] {
  const clauses = new Set([...scan.plain.matchAll(EACH_SET)].map(({ index }) => scan.clause[index] ?? -1));
  const sets = clauses.size === 0 ? null : countSets(scan);
  if (sets === null) return [...quantities];
  return quantities.map((quantity) =>
    quantity.count !== null && clauses.has(scan.clause[quantity.from] ?? -1)
      ? { ...quantity, count: quantity.count * sets, rule: `${quantity.rule}-per-set` }
      : quantity,
  );
}

/** "$260 per set", with three of them on offer: the price of the three. */
export function priceSets(scan: Scan, prices: readonly Price[]): Price[] {
  const perSet = (price: Price): boolean =>
    price.role === 'asking' && price.from >= 0 && /^[ra/e]t(?!n)/.test(scan.plain.slice(price.to + 1, price.to + 4));
  if (!prices.some(perSet)) return [...prices];
  const count = countSets(scan);
  return count === null
    ? [...prices]
    : prices.map((price) => (perSet(price) ? { ...price, amount: price.amount * count, rule: 'price-per-set' } : price));
}

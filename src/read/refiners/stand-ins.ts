/** Sums that only fill the field of the price: "the dollar is just so it posts", "$11 isn't the price", "der Preis ist nur ein Platzhalter". */
import type { Price } from '../mention.ts';
import { says, saysWithin } from '../text/says.ts';
import type { Scan } from '../text/scan.ts';

/** Where each sentence that says so begins and ends. */
function tellings(scan: Scan): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  let from = 0;
  for (let at = 1; at <= scan.tokens.length; at += 1) {
    if (at < scan.tokens.length && scan.clause[at] === scan.clause[from]) continue;
    if (saysWithin(scan, from, at, 'stand-in')) found.push([from, at]);
    from = at;
  }
  return found;
}

/** The page's own price, that of the first lines, or the one that stands in or right before the sentence; what the sentence goes on to ask is none. */
export function standIns(scan: Scan, prices: readonly Price[]): ReadonlySet<Price> {
  const found = new Set<Price>();
  const denied = prices.filter(({ role, from }) => role === 'other' && from > 0 && isDenied(scan, from));
  for (const price of prices) if (denied.some(({ amount }) => amount === price.amount)) found.add(price);
  for (const [from, to] of tellings(scan)) {
    const before = prices.filter((price) => price.from < from);
    const first = before.filter((price) => price.from < 0 || (scan.tokens[price.from]?.line ?? 0) <= 1);
    const near = before.filter((price) => (scan.clause[from] ?? 0) - (scan.clause[price.to] ?? 0) <= 1);
    const inside = prices.filter((price) => price.from >= from && price.from < to);
    const meant = first.length > 0 ? first.slice(0, 1) : near.length > 0 ? near.slice(-1) : inside.slice(0, 1);
    const amounts = new Set(meant.map(({ amount }) => amount));
    for (const price of prices) if (amounts.has(price.amount)) found.add(price);
  }
  return found;
}

/** "The price is not $1", "it isn't really a dollar". */
const isDenied = (scan: Scan, at: number): boolean =>
  /N[za]{0,2}$/.test(scan.plain.slice(Math.max(0, at - 3), at)) && [1, 2, 3, 4, 5].some((back) => says(scan, at - back, 'price'));

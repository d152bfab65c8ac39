/**
 * What else there is beside the best list: the next best ones, and at which price an ad left out would come in. Asked for one at a time.
 * `least` says by what lists are compared: by what they cost, or, where the budget falls short of every list, by the money that they take.
 */
import { bestList, chosenBy, type Found, type Kit, type Market, type Solve } from './index.ts';
import { buyProgram, type Wanted } from './program.ts';
import { withoutIdle } from './reckon.ts';
import { type OfferTerms, termsOfAll } from './terms.ts';

type Least = Wanted['least'];

/** An offer left out, and how much less it would have to cost for the best list to have it. */
export interface PriceCut {
  readonly offer: string;
  /** At this cut every best list has it. Null when it would not be bought as a gift. */
  readonly cut: number | null;
  /** Proven: no cut below this one does. Equal to `cut`, or a cent off, but for lots of which so much is sold on that the cap on resale bites. */
  readonly above: number;
}

/**
 * The best lists that each lack at least one ad of every list before: what to do when something falls through. A list that has all of
 * an earlier one, and more, is no alternative to it. When the best list buys everything new, the next ones buy something used.
 */
export async function* alternatives(
  market: Market,
  best: Kit,
  solve: Solve,
  count = 3,
  least: Least = 'cost',
): AsyncGenerator<Found> {
  const before = [best.chosen];
  for (let index = 0; index < count; index += 1) {
    const next = await bestList(market, { least, notAll: before }, solve);
    if (next === null) return;
    yield next;
    before.push(next.kit.chosen);
  }
}

/** Offers of the market that fill a need and are not on the list; those first that would make the list least dearer, added to it or put in for one of it. */
export function leftOut(market: Market, { chosen }: Kit, least: Least = 'cost'): string[] {
  const terms = termsOfAll(market);
  const bought = terms.filter(({ offer }) => chosen.includes(offer.id));
  const dearer = (one: OfferTerms): number => {
    const lists = [bought, ...bought.map((other) => bought.filter((kept) => kept !== other))].map((list) => [...list, one]);
    return Math.min(...lists.map((list) => withoutIdle(market, list, one.offer.id)?.[least] ?? Number.POSITIVE_INFINITY));
  };
  return terms
    .filter(({ offer, supplies }) => supplies.length > 0 && !chosen.includes(offer.id))
    .map((one) => ({ id: one.offer.id, cost: dearer(one) }))
    .sort((a, b) => (a.cost === b.cost ? 0 : a.cost - b.cost))
    .map(({ id }) => id);
}

/** The market with one offer cheaper. */
export const withCut = (market: Market, id: string, cut: number): Market => ({
  ...market,
  offers: market.offers.map((offer) => (offer.id === id ? { ...offer, price: offer.price - cut } : offer)),
});

/** Times that the program for a cut is solved at most; each brings the bound nearer. */
const ROUNDS = 6;

/**
 * The price cut at which an offer comes in: the best list with it then costs less than `best`, or takes less money, which must be the best list
 * of this market. One program with the cut as a variable finds the offers to buy with it. It counts resale at the cap of the uncut price, so its
 * cut is a bound from below; for the same offers the true cut follows by reckoning. Solved again from the bound up, until both meet.
 */
export async function priceCut(market: Market, best: Kit, offer: string, solve: Solve, least: Least = 'cost'): Promise<PriceCut> {
  const price = market.offers.find(({ id }) => id === offer)?.price ?? 0;
  let above = 0;
  let cut: number | null = null;
  for (let round = 0; round < ROUNDS && (cut === null || above < cut); round += 1) {
    const made = buyProgram(withCut(market, offer, above), { least, with: offer, cutFor: best[least] - 1 });
    const solution = await solve(made.program);
    // With the cap at its lowest there is nothing left that the program would count too well.
    if (solution.status === 'infeasible') return { offer, cut, above: cut ?? price };
    const found = smallestCut(market, best, offer, chosenBy(made, solution.values), least);
    if (found !== null && (cut === null || found < cut)) cut = found;
    const further = Math.ceil(solution.bound - 1e-6);
    if (further <= 0) break;
    above += further;
  }
  if (cut !== null) return { offer, cut, above: Math.min(above, cut) };
  const gift = buyProgram(withCut(market, offer, price), { least, with: offer });
  const given = await solve(gift.program);
  return {
    offer,
    cut: given.status === 'infeasible' ? null : smallestCut(market, best, offer, chosenBy(gift, given.values), least),
    above,
  };
}

/** The smallest cut with which these offers beat the best list, by cost within the budget, by halving; null when even a gift does not. */
function smallestCut(market: Market, best: Kit, offer: string, chosen: readonly OfferTerms[], least: Least): number | null {
  const ids = new Set(chosen.map((one) => one.offer.id));
  const limit = least === 'spent' ? null : market.budget;
  const beats = (cut: number): boolean => {
    const cheaper = withCut(market, offer, cut);
    const kit = withoutIdle(
      cheaper,
      termsOfAll(cheaper).filter((one) => ids.has(one.offer.id)),
      offer,
    );
    return kit !== null && kit[least] < best[least] && kit.spent <= (limit ?? Number.POSITIVE_INFINITY);
  };
  let high = market.offers.find(({ id }) => id === offer)?.price ?? 0;
  if (!beats(high)) return null;
  let low = -1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (beats(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** All of it in slices, for a page that shows each as it comes; the asker may stop at any. */
export async function* further(market: Market, best: Kit, solve: Solve): AsyncGenerator<Found | PriceCut> {
  yield* alternatives(market, best, solve);
  for (const offer of leftOut(market, best)) yield await priceCut(market, best, offer, solve);
}

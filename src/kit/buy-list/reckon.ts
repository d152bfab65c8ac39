/** What a chosen set of offers comes to: exactly, in whole minor units, whatever solver chose it. */
import type { Market } from './market.ts';
import type { OfferTerms, Supply } from './terms.ts';

export interface Kit {
  /** Ids of the offers to buy, in the market's order. */
  readonly chosen: readonly string[];
  /** Expected cost: prices, trips and what is bought new, less what surplus brings, with the chances of refusal. */
  readonly cost: number;
  /** Money spent if nothing is refused: prices, cash part of the trips, what is bought new. Resale comes later and is not counted. */
  readonly spent: number;
  /** Ids of the places to drive to. */
  readonly places: readonly string[];
  readonly used: readonly { readonly offer: string; readonly need: string; readonly pieces: number }[];
  readonly surplus: readonly { readonly offer: string; readonly need: string; readonly pieces: number }[];
  /** What is bought new. */
  readonly fresh: readonly { readonly need: string; readonly pieces: number }[];
}

/**
 * The list for a set of offers, each need filled from the cheapest pieces first, which is the best use of them: needs share no pieces, and
 * no used piece costs more than a new one. Null when a need stays open for which there is no new price, or when two of the offers exclude
 * each other. The budget is not looked at.
 */
export function reckon(market: Market, chosen: readonly OfferTerms[]): Kit | null {
  const ids = new Set(chosen.map(({ offer }) => offer.id));
  if (chosen.some(({ offer }) => offer.excludes.some((other) => ids.has(other)))) return null;
  const places = market.places.filter(({ id }) => chosen.some(({ offer }) => offer.place === id));
  let cost = places.reduce((sum, { trip }) => sum + trip, 0);
  let spent = places.reduce((sum, { cash }) => sum + cash, 0);
  for (const { offer, kept } of chosen) {
    cost += kept;
    spent += offer.price;
  }
  const used: Kit['used'][number][] = [];
  const surplus: Kit['surplus'][number][] = [];
  const fresh: Kit['fresh'][number][] = [];
  for (const [index, need] of market.needs.entries()) {
    let open = need.pieces;
    for (const { offer, supply } of suppliesOf(chosen, index)) {
      const pieces = Math.min(open, supply.pieces);
      open -= pieces;
      cost += pieces * supply.use;
      if (pieces > 0) used.push({ offer, need: need.id, pieces });
      if (supply.pieces > pieces) surplus.push({ offer, need: need.id, pieces: supply.pieces - pieces });
    }
    if (open === 0) continue;
    if (need.fresh === null) return null;
    cost += open * need.fresh;
    spent += open * need.fresh;
    fresh.push({ need: need.id, pieces: open });
  }
  return { chosen: chosen.map(({ offer }) => offer.id), cost, spent, places: places.map(({ id }) => id), used, surplus, fresh };
}

function suppliesOf(chosen: readonly OfferTerms[], need: number): { readonly offer: string; readonly supply: Supply }[] {
  return chosen
    .flatMap(({ offer, supplies }) =>
      supplies.filter((supply) => supply.need === need).map((supply) => ({ offer: offer.id, supply })),
    )
    .sort((a, b) => a.supply.use - b.supply.use);
}

/** The same list without offers of which nothing is used; taking them off never raises cost or spending. */
export function withoutIdle(market: Market, chosen: readonly OfferTerms[], keep: string | null = null): Kit | null {
  const kit = reckon(market, chosen);
  if (kit === null) return null;
  const stays = (id: string): boolean => id === keep || (market.must ?? []).some((group) => group.includes(id));
  const working = chosen.filter(({ offer }) => stays(offer.id) || kit.used.some((one) => one.offer === offer.id));
  return working.length === chosen.length ? kit : reckon(market, working);
}

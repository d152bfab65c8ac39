/** A list in the lines that a buyer reads: what each ad fills and leaves over, trip by trip, and what all of it comes to. */
import type { Market, Offer, Place } from './market.ts';
import type { Kit } from './reckon.ts';
import { termsOfAll } from './terms.ts';

interface Pieces {
  readonly need: string;
  readonly pieces: number;
}

export interface OfferLine {
  readonly offer: Offer;
  readonly fills: readonly Pieces[];
  /** Pieces more than needed. */
  readonly spare: readonly Pieces[];
  /** What they and everything else in it bring when sold on, as far as that is counted. */
  readonly brings: number;
}

export interface PlaceLines<P extends Place> {
  readonly place: P;
  readonly lines: readonly OfferLine[];
}

export interface Totals {
  /** Money spent, and its parts: paid to sellers, for driving, in shops. */
  readonly spent: number;
  readonly sellers: number;
  readonly driving: number;
  readonly shops: number;
  /** What selling on brings later; not in what is spent. */
  readonly brings: number;
  /** Everything bought new; what has no new price is not in it. */
  readonly allNew: number;
  /** Whether `allNew` holds everything. */
  readonly allHaveNewPrice: boolean;
}

export interface ListLines<P extends Place> {
  readonly trips: readonly PlaceLines<P>[];
  readonly totals: Totals;
}

const sum = (amounts: readonly number[]): number => amounts.reduce((total, one) => total + one, 0);

/** Trips in the order of `places`, which are those of the market. */
export function linesOf<P extends Place>(market: Market, kit: Kit, places: readonly P[]): ListLines<P> {
  const bought = termsOfAll(market).filter(({ offer }) => kit.chosen.includes(offer.id));
  const lines = bought.map(({ offer, supplies, otherCredit }): OfferLine => {
    const of = (all: Kit['used']): Pieces[] =>
      all.filter((one) => one.offer === offer.id).map(({ need, pieces }) => ({ need, pieces }));
    const spare = of(kit.surplus);
    const resale = new Map(supplies.map((one) => [market.needs[one.need]?.id, one.resale]));
    const brings = sum(spare.map(({ need, pieces }) => pieces * (resale.get(need) ?? 0)));
    return { offer, fills: of(kit.used), spare, brings: brings + otherCredit };
  });
  const trips = places.flatMap((place): PlaceLines<P>[] => {
    const there = lines.filter(({ offer }) => offer.place === place.id);
    return there.length === 0 ? [] : [{ place, lines: there }];
  });
  const freshOf = new Map(market.needs.map(({ id, fresh }) => [id, fresh]));
  return {
    trips,
    totals: {
      spent: kit.spent,
      sellers: sum(lines.map(({ offer }) => offer.price)),
      driving: sum(trips.map(({ place }) => place.cash)),
      shops: sum(kit.fresh.map(({ need, pieces }) => pieces * (freshOf.get(need) ?? 0))),
      brings: sum(lines.map((line) => line.brings)),
      allNew: sum(market.needs.map(({ pieces, fresh }) => pieces * (fresh ?? 0))),
      allHaveNewPrice: market.needs.every(({ fresh }) => fresh !== null),
    },
  };
}

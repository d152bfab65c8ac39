/** What a buy list is chosen from: needs, offers, places to drive to, and the money there is. All money in integer minor units of one currency. */

/** Something that the kit still lacks. */
export interface WantedPieces {
  readonly id: string;
  /** Pieces, not pairs. */
  readonly pieces: number;
  /** What one costs new and delivered; null when that is not known: then only offers can fill it. */
  readonly fresh: number | null;
  /** What one more than needed brings when sold on. It counts no higher than `fresh`. */
  readonly resale: number;
}

/** An ad as a whole, or a part of one that has a price of its own. */
export interface Offer {
  readonly id: string;
  /** Where it is fetched: one trip serves all offers of a place. */
  readonly place: string;
  /** What is reckoned to be paid: the asking price or the walk-away price, as the caller thinks right. */
  readonly price: number;
  /** Chance, 0 to 1, that it is refused at the door. */
  readonly refusal: number;
  /** Pieces in it by need. */
  readonly fills: readonly { readonly need: string; readonly pieces: number }[];
  /** What everything else in it brings when sold on. */
  readonly otherResale: number;
  /** Offers that can't be had together with it: a part and its whole, the same goods posted twice. One direction is enough. */
  readonly excludes: readonly string[];
  /** Why it is out of question (a flag, the buyer's word); null when it isn't. */
  readonly barred: string | null;
}

export interface Place {
  readonly id: string;
  /** The trip as it counts: driving, time, tolls. */
  readonly trip: number;
  /** The part of it that is money spent, held against the budget. */
  readonly cash: number;
}

export interface Market {
  readonly needs: readonly WantedPieces[];
  readonly offers: readonly Offer[];
  readonly places: readonly Place[];
  /** Money that may be spent; null for no limit. */
  readonly budget: number | null;
  /** Ids of offers: of each group at least one is bought, by the buyer's word, whatever it is good for. */
  readonly must?: readonly (readonly string[])[];
}

function onlyOnce(what: string, ids: readonly string[]): void {
  if (new Set(ids).size !== ids.length) throw new RangeError(`buy list: two ${what} of the same id`);
}

const isAmount = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;

/** Throws a RangeError unless money and pieces are whole and not negative, chances are chances, and every id named is there once. */
export function checkMarket({ needs, offers, places, budget }: Market): void {
  onlyOnce(
    'needs',
    needs.map(({ id }) => id),
  );
  onlyOnce(
    'offers',
    offers.map(({ id }) => id),
  );
  onlyOnce(
    'places',
    places.map(({ id }) => id),
  );
  const known = { needs: new Set(needs.map(({ id }) => id)), places: new Set(places.map(({ id }) => id)) };
  const amounts = [
    budget ?? 0,
    ...needs.flatMap(({ pieces, fresh, resale }) => [pieces, fresh ?? 0, resale]),
    ...places.flatMap(({ trip, cash }) => [trip, cash]),
    ...offers.flatMap(({ price, otherResale, fills }) => [price, otherResale, ...fills.map(({ pieces }) => pieces)]),
  ];
  if (!amounts.every(isAmount)) throw new RangeError('buy list: money and pieces must be whole and not below zero');
  for (const { id, place, refusal, fills } of offers) {
    if (!(refusal >= 0 && refusal <= 1)) throw new RangeError(`buy list: ${refusal} is no chance`);
    if (!known.places.has(place)) throw new RangeError(`buy list: offer ${id} is at a place that is not there`);
    if (!fills.every(({ need }) => known.needs.has(need)))
      throw new RangeError(`buy list: offer ${id} fills no need of the list`);
    onlyOnce(
      'fills',
      fills.map(({ need }) => need),
    );
  }
}

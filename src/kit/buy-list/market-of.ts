/** The market of the buyer's finds: open needs with their prices, and an offer for each ad and each part of one with a price of its own. */
import type { Evaluation } from '../../listing/evaluation.ts';
import type { Settings } from '../../listing/settings.ts';
import { fillsOf } from '../fills.ts';
import type { Need } from '../needs.ts';
import { partsOf } from '../part.ts';
import { type PiecePrice, piecePrice } from '../piece-prices.ts';
import type { Market, Offer, Place, WantedPieces } from './market.ts';

export interface ConsideredFind {
  readonly id: string;
  readonly evaluation: Evaluation;
  /** Id of the place where it is fetched. */
  readonly place: string;
  /** Chance, 0 to 1, that it turns out badly and is refused at the door. */
  readonly refusal: number;
  /** Why it is out of question; null when it isn't. */
  readonly barred: string | null;
  /** Finds that are the same goods posted again. */
  readonly same: readonly string[];
  /** By the buyer's word it is bought, whole or in part. */
  readonly must?: boolean;
}

export interface MadeMarket {
  readonly market: Market;
  /** Open needs that nothing prices: they are left out, and have to be told beside the list. */
  readonly unpriced: readonly Need[];
  /** Finds without a price, or in another currency: nothing can be reckoned with them. */
  readonly unreckoned: readonly string[];
}

export interface Terms {
  readonly settings: Settings;
  readonly places: readonly Place[];
  /** Minor units left to spend; null for no limit. */
  readonly budget: number | null;
  /** Whether the asking price is reckoned with, or the walk-away price where that is lower. Parts count at what is asked. */
  readonly paying: 'asked' | 'walk-away';
  readonly platform: PiecePrice | null;
}

/** Id of a part, which no find has: finds' ids hold no such character. */
export const partId = (find: string, item: string): string => `${find}\n${item}`;

/** The find that an offer is of, and the item when it is a part of it. */
export function offered(offer: string): { readonly find: string; readonly item: string | null } {
  const [find = '', item] = offer.split('\n');
  return { find, item: item ?? null };
}

export function marketOf(open: readonly Need[], finds: readonly ConsideredFind[], terms: Terms): MadeMarket {
  const { settings, places, budget } = terms;
  const priced = open.map((need) => ({ need, price: need.kind === 'platform' ? terms.platform : piecePrice(need, settings) }));
  const needs = priced.flatMap(({ need, price }, index): WantedPieces[] =>
    price === null
      ? []
      : // Selling on takes an evening and a photo: it brings the low end of the going rate.
        [{ id: String(index), pieces: need.pieces, fresh: Math.round(price.fresh.likely), resale: Math.floor(price.used.low) }],
  );
  const known = new Set(needs.map(({ id }) => id));
  const made = finds.map((find) => ({ find, offers: offersOf(find, open, known, terms) }));
  // The same goods posted twice: no offer of the one goes with any offer of the other.
  const apart = made.flatMap(({ find, offers }) => {
    const doubles = made
      .filter((other) => find.same.includes(other.find.id))
      .flatMap((other) => other.offers.map(({ id }) => id));
    return offers.map((offer) => ({ ...offer, excludes: [...offer.excludes, ...doubles] }));
  });
  const must = made.flatMap(({ find, offers }) =>
    find.must && find.barred === null && offers.length > 0 ? [offers.map(({ id }) => id)] : [],
  );
  return {
    market: { needs, offers: apart, places, budget, must },
    unpriced: priced.flatMap(({ need, price }) => (price === null ? [need] : [])),
    unreckoned: made.filter(({ offers }) => offers.length === 0).map(({ find }) => find.id),
  };
}

function offersOf(find: ConsideredFind, open: readonly Need[], known: ReadonlySet<string>, { settings, paying }: Terms): Offer[] {
  const { evaluation } = find;
  const { asking, items } = evaluation.reading;
  const fills = fillsOf(evaluation, open, settings.kit).filter(({ need }) => known.has(String(need)));
  const worthLow = (item: string): number => {
    const share = evaluation.worth.split.find((one) => one.item === item);
    return share === undefined || share.worth.currency !== settings.currency ? 0 : Math.max(0, Math.floor(share.worth.low));
  };
  const offer = (id: string, price: number, ids: readonly string[], excludes: readonly string[]): Offer => {
    const pieces = new Map<string, number>();
    for (const fill of fills) {
      if (ids.includes(fill.item)) pieces.set(String(fill.need), (pieces.get(String(fill.need)) ?? 0) + fill.pieces);
    }
    const others = ids.filter((item) => !fills.some((fill) => fill.item === item));
    return {
      id,
      place: find.place,
      price,
      refusal: find.refusal,
      fills: [...pieces].map(([need, count]) => ({ need, pieces: count })),
      otherResale: others.reduce((sum, item) => sum + worthLow(item), 0),
      excludes,
      barred: find.barred,
    };
  };
  const offers: Offer[] = [];
  const asked = asking.placeholder ? null : (asking.amount?.value ?? null);
  const most = paying === 'walk-away' ? evaluation.worth.walkAway : null;
  if (asked !== null && asked.currency === settings.currency) {
    const price =
      most === null || most.currency !== asked.currency ? asked.minor : Math.min(asked.minor, Math.max(0, most.minor));
    offers.push(
      offer(
        find.id,
        price,
        items.map(({ id }) => id),
        [],
      ),
    );
  }
  for (const { id, ownPrice } of partsOf(evaluation.reading, settings.currency)) {
    if (ownPrice !== null) offers.push(offer(partId(find.id, id), ownPrice.value.minor, [id], [find.id]));
  }
  return offers;
}

/**
 * What an offer costs, so that a sum over offers is what a list costs.
 *
 * Who buys a lot of which only some is needed can sell the rest on. But no lot is bought only to be resold: what may be counted on from
 * resale is at most 0.9 of its price, shared out over its pieces. So an offer is reckoned as if all of it were sold on (`kept`), and each
 * piece that is used costs the resale that is forgone with it (`use`). Both are multiplied by the chance that it is not refused at the
 * door; if it is, each piece that was counted on is bought new. Everything is rounded to minor units here, once: sums are exact.
 */
import type { Market, Offer, WantedPieces } from './market.ts';

/** Part of an offer's price that resale can bring back at most. An assumption: the rest is trouble and risk. */
const MOST_CREDIT = 0.9;

export interface Supply {
  /** Index of the need. */
  readonly need: number;
  readonly pieces: number;
  /** Resale of one piece, counted as far as the cap allows. */
  readonly resale: number;
  /** Cost of using one piece. */
  readonly use: number;
}

export interface OfferTerms {
  readonly offer: Offer;
  /** Cost of taking it, with nothing of it used. Not below zero. */
  readonly kept: number;
  readonly supplies: readonly Supply[];
  /** Resale of everything in it that fills no need, counted as far as the cap allows. */
  readonly otherCredit: number;
}

/** A piece sold on brings no more than a new one costs. */
const resaleOf = ({ resale, fresh }: WantedPieces): number => (fresh === null ? resale : Math.min(resale, fresh));

function termsOf(offer: Offer, needs: readonly WantedPieces[], indexOf: ReadonlyMap<string, number>): OfferTerms {
  const fills = offer.fills.flatMap(({ need, pieces }) => {
    const index = indexOf.get(need) ?? -1;
    const wanted = needs[index];
    return wanted === undefined || pieces === 0 ? [] : [{ index, wanted, pieces }];
  });
  const whole = fills.reduce((sum, { wanted, pieces }) => sum + pieces * resaleOf(wanted), offer.otherResale);
  const share = whole > 0 ? Math.min(1, (MOST_CREDIT * offer.price) / whole) : 1;
  const going = 1 - offer.refusal;
  const supplies = fills.map(({ index, wanted, pieces }): Supply => {
    const resale = Math.floor(resaleOf(wanted) * share);
    // Where no new price is known, a refusal leaves the need open, and what that costs nobody knows.
    const instead = wanted.fresh === null ? resale : wanted.fresh;
    return { need: index, pieces, resale, use: Math.round(going * resale + offer.refusal * instead) };
  });
  const otherCredit = Math.floor(offer.otherResale * share);
  const credit = supplies.reduce((sum, { pieces, resale }) => sum + pieces * resale, otherCredit);
  return { offer, kept: Math.max(0, Math.round(going * (offer.price - credit))), supplies, otherCredit };
}

/** The terms of every offer that is not barred, in the market's order. */
export function termsOfAll({ needs, offers }: Market): OfferTerms[] {
  const indexOf = new Map(needs.map(({ id }, index) => [id, index]));
  return offers.filter(({ barred }) => barred === null).map((offer) => termsOf(offer, needs, indexOf));
}

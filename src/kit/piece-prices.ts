/** What one piece of a kit costs, used and new. */
import type { RateCategory, Settings } from '../listing/settings.ts';
import { isByWeight } from '../price/categories.ts';
import { pricesOf } from '../price/rates.ts';
import { inPounds } from '../units/mass.ts';
import { type Range, scale } from '../units/range.ts';
import type { Thing } from './same-thing.ts';

/** In minor units. */
export interface PiecePrice {
  readonly used: Range;
  /** New, with tax and shipping. */
  readonly fresh: Range;
}

/** Row of the rates table by kind: a plate is reckoned as plain iron. */
const categoryOfKind = (kind: Thing['kind']): RateCategory | null => {
  if (kind === 'plate') return 'iron';
  return kind === 'other' || kind === 'platform' ? null : kind;
};

/** Null for a platform and other things without a rate, for plates of unknown weight, and where the buyer's currency has no rates. */
export function piecePrice({ kind, weight }: Thing, settings: Settings): PiecePrice | null {
  const category = categoryOfKind(kind);
  const prices = category === null ? null : pricesOf(category, settings);
  if (category === null || prices === null) return null;
  if (isByWeight(category) && weight === null) return null;
  const amount = isByWeight(category) && weight !== null ? inPounds(weight) : 1;
  return { used: scale(prices.used, amount), fresh: scale(prices.delivered, amount) };
}

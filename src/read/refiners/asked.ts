/** What the ad asks for everything on offer, and the parts that the steps of asking.ts share. */
import { isPlate, type PriceBasis } from '../../listing/reading.ts';
import { inKilograms, inPounds } from '../../units/mass.ts';
import type { Price, Total } from '../mention.ts';
import type { Scan } from '../text/scan.ts';
import type { Draft } from './draft.ts';
import { type Itemised, isCovered } from './itemised.ts';
import { type Cover, goodsByPiece, groupAmount } from './own-prices.ts';

export interface Asked {
  readonly amount: number | null;
  readonly basis: PriceBasis;
  readonly unitAmount: number | null;
  readonly high: number | null;
  /** The price that the amount was read from. */
  readonly price: Price | null;
  readonly unitPrice: Price | null;
  readonly worked: boolean;
  readonly placeholder: boolean;
  /** Other amounts that could be the price. */
  readonly rivals: readonly Price[];
  /** Money that is neither the price nor that of some of the goods, and what it all comes to. */
  readonly loose?: readonly Price[];
}

export const NOTHING: Asked = {
  amount: null,
  basis: 'none',
  unitAmount: null,
  high: null,
  price: null,
  unitPrice: null,
  worked: false,
  placeholder: false,
  rivals: [],
};

/** What the steps look at: the asking prices, the goods that each covers, the goods that are still there. */
export interface Sums {
  readonly scan: Scan;
  readonly asks: readonly Price[];
  /** The asking prices, each amount and role once. */
  readonly distinct: readonly Price[];
  readonly covers: readonly Cover[];
  readonly live: readonly Draft[];
  readonly totals: readonly Total[];
  /** Prices per pound or kilogram; the one that holds, the latest told. */
  readonly weighed: readonly Price[];
  readonly perWeight: Price | null;
  readonly weight: { readonly pounds: number; readonly stated: boolean } | null;
  readonly items: Itemised | null;
  /** Prices for all of some of the goods. */
  readonly parts: ReadonlySet<Price>;
}

/** Weight in pounds of what a price per pound covers, or null. */
export function weightOf(drafts: readonly Draft[], totals: readonly Total[]): { pounds: number; stated: boolean } | null {
  const plates = drafts.filter(
    (item) => !item.sold && (isPlate(item.kind) || item.kind === 'dumbbell' || item.kind === 'kettlebell'),
  );
  // What the scale says of the lot holds before what is cast on the plates.
  const scaled = totals.find(({ rule }) => rule === 'total-on-scale');
  if (scaled) return { pounds: inPounds({ value: scaled.weight, unit: scaled.unit ?? 'lb' }), stated: true };
  let sum = 0;
  let whole = plates.length > 0;
  // "Several plates: 8x45 …": the plain noun is those that are told.
  // Goods named again are counted once.
  const told = plates.filter((item) => (item.total || item.weight) && !item.again);
  for (const item of told.length > 0 ? told : plates) {
    if (item.total) sum += inPounds(item.total);
    else if (item.count && item.weight) sum += item.count.value * inPounds({ value: item.weight.value, unit: item.unit ?? 'lb' });
    else whole = false;
  }
  // "Kettlebells 35 x 2. Dumbbells $1 a pound": goods of another sort, of which nobody knows the weight.
  const seen = new Set(told);
  if (told.length > 0 && plates.some((item) => !item.again && !isCovered(item, seen))) whole = false;
  if (whole && sum > 0) return { pounds: sum, stated: false };
  const total = totals.find((candidate) => !candidate.bracketed) ?? totals[0];
  return total ? { pounds: inPounds({ value: total.weight, unit: total.unit ?? 'lb' }), stated: true } : null;
}

/** Pounds in the unit that a price is for. */
export const inUnit = (pounds: number, basis: PriceBasis): number =>
  basis === 'per-kilogram' ? inKilograms({ value: pounds, unit: 'lb' }) : pounds;

export const round = (amount: number): number => Math.round(amount * 100) / 100;

/** "The cage - full power cage $300": one thing called twice. */
const ofOneSort = (goods: readonly Draft[]): readonly Draft[] => {
  const [first] = goods;
  const plain = goods.every((item) => item.kind === first?.kind && item.weight === null && (item.count?.value ?? 1) === 1);
  const one = plain && first?.kind !== 'other' ? (goods.find(({ total }) => total !== null) ?? first) : undefined;
  return one ? [one] : goods;
};

export function setOwnPrices(covers: readonly Cover[], loose: boolean): void {
  for (const cover of covers) {
    const [only] = cover.drafts;
    if (!only) continue;
    const unit = cover.price.role === 'each' || cover.price.role === 'pair';
    // "Power rack with spotter arms $350": the price is that of the rack with what comes along.
    const goods = cover.drafts.length > 1 ? goodsByPiece(cover.drafts) : cover.drafts;
    const mine = unit ? goods : ofOneSort(goods);
    if (mine.length > 1 && !unit) continue;
    for (const item of mine) {
      const amount = groupAmount({ ...cover, drafts: [item] });
      if (amount === null || (item.ownPrice && !loose)) continue;
      item.ownPrice = { amount: round(amount), currency: cover.price.currency, place: cover.price };
    }
  }
}

/** "Flat bench and plate tree, $60 each or $100 both": the price of each of goods of several kinds. */
export function setPricesOfEach(covers: readonly Cover[], unit: Price | null): void {
  const cover = covers.find(({ price }) => price === unit && price.role === 'each');
  const kinds = new Set(cover?.drafts.map(({ kind }) => kind));
  if (cover && kinds.size > 1 && kinds.size === cover.drafts.length) setOwnPrices([cover], false);
}

export const basisOf = (price: Price): 'per-pound' | 'per-kilogram' =>
  price.role === 'per-kilogram' ? 'per-kilogram' : 'per-pound';

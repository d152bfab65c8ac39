/** How many plates of what weight an ad offers, in pounds, with wide ranges where it doesn't say. */
import type { Item, Reading } from '../listing/reading.ts';
import { isPlate } from '../listing/reading.ts';
import { inPounds } from '../units/mass.ts';
import { exactly, type Range, scale } from '../units/range.ts';
import { deviationOf, trueTotal } from './true-weight.ts';

export interface Amount {
  readonly pieces: number | null;
  /** Face value of one piece. */
  readonly unit: number | null;
  readonly total: Range;
  /** The part that surely comes in pairs, before a known odd piece is taken off. */
  readonly paired: Range;
  readonly doubt: 'unknown-count' | 'unknown-weight' | null;
  readonly unknown: boolean;
}

/** "Some 45s": one to four, a pair most often. An assumption; the ad doesn't say. */
const PIECES: Range = { low: 1, likely: 2, high: 4 };
/** A plate of no stated weight, in pounds. An assumption; the ad doesn't say. */
const PIECE_POUNDS: Range = { low: 2.5, likely: 15, high: 45 };
/** Part of a stated total that may be odd pieces, or missing. An assumption. */
const TOTAL_SLACK = 0.1;
/** A full bar, which a weight stated for a set may count in. */
const BAR_POUNDS = 45;

interface Known {
  readonly item: Item;
  readonly pieces: number | null;
  readonly unit: number | null;
  readonly total: number | null;
}

/** What is stated, each of count, unit and total completed from the other two. */
function known(item: Item): Known {
  let pieces = item.count?.value ?? null;
  const unitWeight = item.unitWeight?.value ?? null;
  let unit = unitWeight === null ? null : inPounds(unitWeight);
  let total = item.totalWeight === null ? null : inPounds(item.totalWeight.value);
  if (pieces === null && unit !== null && total !== null && unit > 0) pieces = Math.round(total / unit) || null;
  if (unit === null && pieces !== null && total !== null && pieces > 0) unit = total / pieces;
  if (total === null && pieces !== null && unit !== null) total = pieces * unit;
  return { item, pieces, unit, total };
}

function statedAmount({ item, pieces, unit, total }: Known): Amount | null {
  const evenPieces = unit !== null && item.unitWeight !== null;
  if (pieces !== null && unit !== null && pieces > 0) {
    const weight = trueTotal(pieces, unit, deviationOf(item));
    // Without a weight for each piece the pieces may differ, so that an odd number need not mean an odd plate.
    return {
      pieces: evenPieces ? pieces : null,
      unit: evenPieces ? unit : null,
      total: weight,
      paired: evenPieces ? weight : { ...weight, low: weight.low * (1 - TOTAL_SLACK) },
      doubt: null,
      unknown: false,
    };
  }
  if (total !== null) {
    const weight = trueTotal(Math.max(1, total / 25), Math.min(25, total), deviationOf(item));
    const paired = { ...weight, low: weight.low * (1 - TOTAL_SLACK) };
    return { pieces: null, unit, total: weight, paired, doubt: null, unknown: false };
  }
  return null;
}

function guessedAmount({ pieces, unit }: Known): Amount {
  if (unit !== null) {
    const total = scale(PIECES, unit);
    return { pieces: null, unit, total, paired: { ...total, low: 0 }, doubt: 'unknown-count', unknown: false };
  }
  if (pieces !== null) {
    const even = pieces - (pieces % 2);
    const paired = { ...scale(PIECE_POUNDS, even), low: 0 };
    return { pieces: null, unit, total: scale(PIECE_POUNDS, pieces), paired, doubt: 'unknown-weight', unknown: false };
  }
  return { pieces, unit, total: exactly(0), paired: exactly(0), doubt: 'unknown-weight', unknown: true };
}

/** Shares of a weight stated for the lot that the items without weights make up; null when there is nothing left to share. */
function restOf(reading: Reading, stated: number, unknowns: number): Range | null {
  if (reading.statedTotal === null || unknowns === 0) return null;
  const rest = inPounds(reading.statedTotal.value) - stated;
  if (rest <= 0) return null;
  // "300 lb set with bar" counts the bar in, as a rule.
  const bar = reading.items.some((item) => item.kind.value === 'bar') && rest > 2 * BAR_POUNDS ? BAR_POUNDS : 0;
  return scale({ low: (rest - bar) * 0.95, likely: rest - bar, high: rest * 1.05 }, 1 / unknowns);
}

/** The amount of every plate item, by id. */
export function amountsOf(reading: Reading): ReadonlyMap<string, Amount> {
  const all = reading.items.filter((item) => isPlate(item.kind.value)).map(known);
  const stated = new Map<string, Amount>();
  for (const one of all) {
    const amount = statedAmount(one);
    if (amount !== null) stated.set(one.item.id, amount);
  }
  const sum = [...stated.values()].reduce((total, amount) => total + amount.total.likely, 0);
  const rest = restOf(reading, sum, all.length - stated.size);
  const amounts = new Map<string, Amount>();
  for (const one of all) {
    const own = stated.get(one.item.id);
    if (own !== undefined) amounts.set(one.item.id, own);
    else if (rest === null) amounts.set(one.item.id, guessedAmount(one));
    else {
      const paired = { ...rest, low: rest.low * (1 - TOTAL_SLACK) };
      amounts.set(one.item.id, { pieces: null, unit: one.unit, total: rest, paired, doubt: null, unknown: false });
    }
  }
  return amounts;
}

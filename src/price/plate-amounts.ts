/** How many plates of what weight an ad offers, in pounds, with wide ranges where it doesn't say. */
import type { Item, Reading } from '../listing/reading.ts';
import { isPlate } from '../listing/reading.ts';
import { inPounds } from '../units/mass.ts';
import { type Range, scale } from '../units/range.ts';
import { guessed, maybeLess, NO_POUNDS, ofPlates, type Pounds, sharedOut } from './pounds.ts';
import { type Belief, gradeOf, learn, trueWeight, UNWEIGHED, type Weighing, type WeightGrade } from './true-weight.ts';

export interface Amount {
  readonly pieces: number | null;
  /** Face value of one piece. */
  readonly unit: number | null;
  readonly total: Pounds;
  /** The part that surely comes in pairs, before a known odd piece is taken off. */
  readonly paired: Pounds;
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
  readonly grade: WeightGrade;
  readonly pieces: number | null;
  readonly unit: number | null;
  readonly total: number | null;
  /** What single pieces weighed, in pounds. */
  readonly weighed: readonly number[];
}

/** What is stated, each of count, unit and total completed from the other two. */
function known(item: Item): Known {
  const weighed = item.weighed?.value.map(inPounds) ?? [];
  let pieces = item.count?.value ?? null;
  const unitWeight = item.unitWeight?.value ?? null;
  let unit = unitWeight === null ? null : inPounds(unitWeight);
  let total = item.totalWeight === null ? null : inPounds(item.totalWeight.value);
  // Pieces of no stated weight that were all on the scale.
  if (unit === null && weighed.length > 0 && weighed.length === pieces) total = sumOf(weighed);
  if (pieces === null && unit !== null && total !== null && unit > 0) pieces = Math.round(total / unit) || null;
  if (unit === null && pieces !== null && total !== null && pieces > 0) unit = total / pieces;
  if (total === null && pieces !== null && unit !== null) total = pieces * unit;
  return { item, grade: gradeOf(item), pieces, unit, total, weighed };
}

const sumOf = (weights: readonly number[]): number => weights.reduce((sum, pounds) => sum + pounds, 0);

/** What the buyer's weighings say of each grade in the lot: only plates with a face value of their own tell how far off it the others are. */
function beliefsOf(all: readonly Known[]): ReadonlyMap<WeightGrade, Belief> {
  const weighings = new Map<WeightGrade, Weighing[]>();
  for (const { item, grade, unit, weighed } of all) {
    if (weighed.length === 0 || unit === null || item.unitWeight === null) continue;
    const seen = weighings.get(grade) ?? [];
    seen.push(...weighed.map((pounds) => ({ face: unit, pounds })));
    weighings.set(grade, seen);
  }
  return new Map([...weighings].map(([grade, seen]) => [grade, learn(grade, seen)]));
}

function statedAmount({ item, grade, pieces, unit, total, weighed }: Known, belief: Belief): Amount | null {
  const evenPieces = unit !== null && item.unitWeight !== null;
  if (pieces !== null && unit !== null && pieces > 0) {
    const weight = ofPlates(trueWeight(grade, pieces, unit, weighed, belief));
    // Without a weight for each piece the pieces may differ, so that an odd number need not mean an odd plate.
    return {
      pieces: evenPieces ? pieces : null,
      unit: evenPieces ? unit : null,
      total: weight,
      paired: evenPieces ? weight : maybeLess(weight, TOTAL_SLACK),
      doubt: null,
      unknown: false,
    };
  }
  if (total !== null) {
    const weight = ofPlates(trueWeight(grade, Math.max(1, total / 25), Math.min(25, total), [], belief));
    return { pieces: null, unit, total: weight, paired: maybeLess(weight, TOTAL_SLACK), doubt: null, unknown: false };
  }
  return null;
}

function guessedAmount({ pieces, unit, weighed }: Known): Amount {
  if (unit !== null) {
    const total = guessed(scale(PIECES, unit));
    return { pieces: null, unit, total, paired: maybeLess(total, 1), doubt: 'unknown-count', unknown: false };
  }
  if (pieces !== null) {
    const rest = pieces - weighed.length;
    const found = sumOf(weighed);
    const guess = (count: number): Range => {
      const others = scale(PIECE_POUNDS, count);
      return { low: found + others.low, likely: found + others.likely, high: found + others.high };
    };
    const paired = guessed({ ...guess(rest - (pieces % 2)), low: 0 });
    return { pieces: null, unit, total: guessed(guess(rest)), paired, doubt: 'unknown-weight', unknown: false };
  }
  return { pieces, unit, total: NO_POUNDS, paired: NO_POUNDS, doubt: 'unknown-weight', unknown: true };
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
  const beliefs = beliefsOf(all);
  const stated = new Map<string, Amount>();
  for (const one of all) {
    const amount = statedAmount(one, beliefs.get(one.grade) ?? UNWEIGHED);
    if (amount !== null) stated.set(one.item.id, amount);
  }
  const sum = [...stated.values()].reduce((total, amount) => total + amount.total.weight.likely, 0);
  const rest = restOf(reading, sum, all.length - stated.size);
  const amounts = new Map<string, Amount>();
  for (const one of all) {
    const own = stated.get(one.item.id);
    if (own !== undefined) amounts.set(one.item.id, own);
    else if (rest === null) amounts.set(one.item.id, guessedAmount(one));
    else {
      const total = sharedOut(rest);
      const paired = maybeLess(total, TOTAL_SLACK);
      amounts.set(one.item.id, { pieces: null, unit: one.unit, total, paired, doubt: null, unknown: false });
    }
  }
  return amounts;
}

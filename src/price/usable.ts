/** How much of the plate weight on offer the buyer can load: it must fit the sleeve, be sound, and have a mate. All in pounds. */
import type { Loss } from '../listing/evaluation.ts';
import type { Item, Reading } from '../listing/reading.ts';
import { isPlate, OF_ONE_PIECE } from '../listing/reading.ts';
import { exactly, type Range, scale, sumIndependent } from '../units/range.ts';
import { type Fit, fitOf, lotFitOf } from './fit.ts';
import { type Amount, amountsOf } from './plate-amounts.ts';

export interface PlateWeight {
  readonly item: Item;
  readonly offered: Range;
  readonly usable: Range;
  readonly fit: Fit;
  readonly losses: readonly Loss[];
  /** The ad says neither how many nor how heavy. */
  readonly unknown: boolean;
}

const NOTHING = exactly(0);

const isFilled = (item: Item): boolean => item.material?.value === 'cement' || item.material?.value === 'vinyl';

/** Cracked pieces of an item: all of them, or the one that the ad speaks of. */
function crackedPieces(item: Item, pieces: number | null): number | 'all' {
  const crack = item.conditions.find((fact) => fact.value === 'cracked');
  if (!crack) return 0;
  return crack.rule === OF_ONE_PIECE && pieces !== null && pieces > 1 ? 1 : 'all';
}

/** Why none of an item's plates can be used, if so. */
function ruin(item: Item, amount: Amount, fit: Fit): Loss['reason'] | null {
  if (fit.known && fit.chance === 0) return fit.clearanceMm !== null && fit.clearanceMm > 0 ? 'sloppy' : 'wrong-bore';
  if (crackedPieces(item, amount.pieces) === 'all') return 'cracked';
  return isFilled(item) ? 'cement' : null;
}

/** Plates of one weight and make pair with one another, on whichever line of the ad they stand. */
const mateKey = (item: Item, amount: Amount): string => `${item.kind.value} ${amount.unit?.toFixed(2)} ${item.fits?.value ?? ''}`;

/** Ids of items of which one piece is left without a mate. */
function oddOnes(sound: readonly { item: Item; amount: Amount }[]): ReadonlySet<string> {
  const groups = new Map<string, { pieces: number; last: string }>();
  for (const { item, amount } of sound) {
    if (amount.unit === null || amount.pieces === null) continue;
    const key = mateKey(item, amount);
    const sound = amount.pieces - (crackedPieces(item, amount.pieces) === 1 ? 1 : 0);
    groups.set(key, { pieces: (groups.get(key)?.pieces ?? 0) + sound, last: item.id });
  }
  return new Set([...groups.values()].filter((group) => group.pieces % 2 === 1).map((group) => group.last));
}

/**
 * The low end of a weight that is usable only with a chance: the mean of the worse half of what may be found.
 * At a chance of a half and under that is nothing.
 */
const doubtful = (weight: Range, chance: number): Range =>
  chance < 0.5
    ? { low: 0, likely: 0, high: weight.high }
    : { ...weight, low: weight.low * Math.min(1, Math.max(0, 2 * chance - 1)) };

function weigh(item: Item, amount: Amount, fit: Fit, isOdd: boolean): PlateWeight {
  const base = { item, fit, offered: amount.total, unknown: amount.unknown };
  const reason = ruin(item, amount, fit);
  if (reason !== null) {
    return { ...base, usable: NOTHING, losses: [{ item: item.id, reason, pounds: amount.total.likely }] };
  }
  const losses: Loss[] = [];
  let usable = amount.paired;
  const cracked = crackedPieces(item, amount.pieces) === 1 && amount.unit !== null && amount.pieces !== null;
  if (cracked) {
    losses.push({ item: item.id, reason: 'cracked', pounds: amount.unit });
    usable = scale(usable, (amount.pieces - 1) / amount.pieces);
  }
  if (isOdd && amount.unit !== null && amount.pieces !== null) {
    losses.push({ item: item.id, reason: 'odd', pounds: amount.unit });
    const sound = amount.pieces - (cracked ? 1 : 0);
    usable = scale(usable, sound > 1 ? (sound - 1) / sound : 0);
  }
  if (amount.doubt !== null) losses.push({ item: item.id, reason: amount.doubt, pounds: usable.likely - usable.low });
  return { ...base, usable: doubtful(usable, fit.chance), losses };
}

/** Every plate item with what of it can be used, and why the rest can't. */
export function plateWeights(reading: Reading, sleeveMm: number): PlateWeight[] {
  const amounts = amountsOf(reading);
  const lot = lotFitOf(reading);
  const plates = reading.items
    .filter((item) => isPlate(item.kind.value))
    .map((item) => ({ item, amount: amounts.get(item.id), fit: fitOf(item, lot, sleeveMm) }))
    .filter((plate): plate is { item: Item; amount: Amount; fit: Fit } => plate.amount !== undefined);
  const odd = oddOnes(plates.filter(({ item, amount, fit }) => ruin(item, amount, fit) === null));
  return plates.map(({ item, amount, fit }) => weigh(item, amount, fit, odd.has(item.id)));
}

export const totalOffered = (plates: readonly PlateWeight[]): Range => sumIndependent(plates.map((plate) => plate.offered));
export const totalUsable = (plates: readonly PlateWeight[]): Range => {
  const sum = sumIndependent(plates.map((plate) => plate.usable));
  return { ...sum, low: Math.max(0, sum.low) };
};

/** What the arithmetic of a kit is about: the plates that are owned, and the bar that they go on. */
import type { Weight } from '../units/mass.ts';
import { type Exact, exactWeight } from './exact-weight.ts';

/** Plates of one weight. Only pairs can be loaded, so an odd one counts for nothing. */
export interface OwnedPlates {
  readonly weight: Weight;
  /** Plates, not pairs. */
  readonly pieces: number;
  /** Thickness where it sits on the sleeve, in mm; null when it isn't known, and then it takes no room. */
  readonly thicknessMm: number | null;
}

export interface LoadedBar {
  readonly weight: Weight;
  /** Both collars together. */
  readonly collars: Weight;
  /** Length of one sleeve that is left for plates, in mm; null when it isn't known: then it sets no limit. */
  readonly sleeveMm: number | null;
}

/** One weight of plate, ready for sums: `pairs` of them, each `each` units heavy and `thickness` mm thick. */
export interface Denomination {
  readonly weight: Weight;
  readonly each: Exact;
  readonly pairs: number;
  readonly thickness: number;
}

/** Heaviest first. Plates of the same weight and thickness are counted together; throws on a count that is no whole number from 0 up. */
export function denominations(owned: readonly OwnedPlates[]): Denomination[] {
  const groups = new Map<string, { weight: Weight; each: Exact; pieces: number; thickness: number }>();
  for (const { weight, pieces, thicknessMm } of owned) {
    if (!(Number.isInteger(pieces) && pieces >= 0)) throw new RangeError(`denominations: ${pieces} is no number of plates`);
    const each = exactWeight(weight);
    if (each === 0) continue;
    const thickness = Math.max(0, thicknessMm ?? 0);
    const key = `${each} ${thickness}`;
    const before = groups.get(key);
    if (before === undefined) groups.set(key, { weight, each, pieces, thickness });
    else before.pieces += pieces;
  }
  return [...groups.values()]
    .map(({ pieces, ...rest }) => ({ ...rest, pairs: Math.floor(pieces / 2) }))
    .filter(({ pairs }) => pairs > 0)
    .sort((a, b) => b.each - a.each || a.thickness - b.thickness);
}

/** Weight of the bar with its collars, in units. */
export const emptyBar = (bar: LoadedBar): Exact => exactWeight(bar.weight) + exactWeight(bar.collars);

/** From plates as they lie, two and two, to the pairs that were found: which plates change places. */
import type { Pair, WeighedPlate } from './pairing.ts';

export interface Swap {
  /** The plate that stays, and who is to be its mate. */
  readonly stays: WeighedPlate;
  readonly comes: WeighedPlate;
  /** Whose place `comes` takes; null where `stays` had no mate, as the last of an odd number. */
  readonly goes: WeighedPlate | null;
  /** By how many pounds `stays` differs from its mate before and after; before is null where it had none. */
  readonly was: number | null;
  readonly becomes: number;
}

const apart = (one: WeighedPlate, other: WeighedPlate): number => Math.round(Math.abs(one.pounds - other.pounds) * 100) / 100;

/** Mates as the plates were written down: of each face value the first with the second, the third with the fourth. */
function matesAsGiven(plates: readonly WeighedPlate[]): Map<WeighedPlate, WeighedPlate> {
  const mates = new Map<WeighedPlate, WeighedPlate>();
  const waiting = new Map<number, WeighedPlate>();
  for (const plate of plates) {
    const first = waiting.get(plate.face);
    if (first === undefined) waiting.set(plate.face, plate);
    else {
      waiting.delete(plate.face);
      mates.set(first, plate);
      mates.set(plate, first);
    }
  }
  return mates;
}

/**
 * The swaps, to be done one after the other, after which every pair lies together; none where all do already. As few as there can be: pairs
 * before and after make rings of 2k plates (one is a chain where a plate is left alone), and a ring needs k − 1 swaps, each of which settles
 * one pair. Which of a pair is left and which right is another matter.
 */
export function swapsTo(pairs: readonly Pick<Pair, 'left' | 'right'>[], plates: readonly WeighedPlate[]): Swap[] {
  const mates = matesAsGiven(plates);
  const swaps: Swap[] = [];
  for (const { left, right } of pairs) {
    // A plate that lies alone comes to the other: so nobody is asked to take a mate from nobody.
    const [stays, comes] = mates.has(left) ? [left, right] : [right, left];
    const goes = mates.get(stays) ?? null;
    if (goes === comes) continue;
    const before = mates.get(comes) ?? null;
    swaps.push({ stays, comes, goes, was: goes === null ? null : apart(stays, goes), becomes: apart(stays, comes) });
    mates.set(stays, comes);
    mates.set(comes, stays);
    if (goes !== null && before !== null) {
      mates.set(goes, before);
      mates.set(before, goes);
    } else {
      if (goes !== null) mates.delete(goes);
      if (before !== null) mates.delete(before);
    }
  }
  return swaps;
}

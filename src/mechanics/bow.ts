/**
 * How far a bar is out of true, from what can be measured on a driveway. Bow is the largest distance of the shaft from the straight line
 * between its ends. All lengths in millimetres. Estimates: a bar bent in two places shows less than it has.
 */
import { LIMITS } from '../flags/limits.ts';
import type { Range } from '../units/range.ts';

export type BowVerdict = 'usable' | 'doubtful' | 'bent';

/** By common practice, which has no source: see the limits. */
export function bowVerdict(bowMm: number): BowVerdict {
  if (bowMm <= LIMITS.bowUsable.value) return 'usable';
  return bowMm > LIMITS.bowBent.value ? 'bent' : 'doubtful';
}

const above = (what: string, ...values: readonly number[]): void => {
  if (!values.every((value) => value > 0)) throw new RangeError(`${what}: lengths must be above zero`);
};

/** From the wobble at the bend (total indicator reading: highest less lowest while it turns once): half of it. */
export function bowFromWobble(totalReadingMm: number): number {
  if (!(totalReadingMm >= 0)) throw new RangeError('bowFromWobble: a reading is not below zero');
  return totalReadingMm / 2;
}

export interface TurnedBar {
  /** Diameter of the circle that the end draws when the bar is turned on two supports. */
  readonly circleMm: number;
  /** Distance of the supports. */
  readonly spanMm: number;
  /** From the nearer support to the end that is watched. */
  readonly overhangMm: number;
  /** From the farther support to the bend; beyond the nearer support it is in the overhang. */
  readonly bendMm: number;
  /** Length of the shaft whose bow is wanted, and where the bend is on it from the end on the farther side. */
  readonly shaftMm: number;
  readonly bendOnShaftMm: number;
}

/**
 * From the circle that an end draws. A bar with one kink of angle θ at s from the far support, supports L apart, end a beyond the near
 * one: between supports the kink stands θ·s·(L − s)/L off the axis, so the piece behind it runs at a slope θ·s/L through the near support
 * and its end draws a radius θ·s·a/L. With the kink in the overhang (s ≥ L) the radius is θ·(L + a − s). From θ follows the bow of a shaft
 * S long with the kink at b: θ·b·(S − b)/S. Small angles throughout.
 */
export function bowFromCircle({ circleMm, spanMm, overhangMm, bendMm, shaftMm, bendOnShaftMm }: TurnedBar): number {
  above('bowFromCircle', spanMm, overhangMm, bendMm, shaftMm, bendOnShaftMm);
  if (!(circleMm >= 0 && bendMm < spanMm + overhangMm && bendOnShaftMm < shaftMm))
    throw new RangeError('bowFromCircle: the bend is not on the bar');
  const arm = bendMm < spanMm ? (bendMm * overhangMm) / spanMm : spanMm + overhangMm - bendMm;
  const angle = circleMm / 2 / arm;
  return (angle * bendOnShaftMm * (shaftMm - bendOnShaftMm)) / shaftMm;
}

/**
 * From a string stretched along the shaft between two points `lengthMm` apart and equally far from it: its distance from the shaft beyond
 * theirs, `offsetMm`, seen at `atMm` from one of them. At the widest place that is the bow, wherever that is. Where it is not known to be the
 * widest, also in the middle, the bow is more by how the bar is bent: `low` is the reading itself; `likely` an even curve (offset·L²/(4·x·(L − x)), a parabola
 * over the string, which is the sagitta of a circle as long as it is shallow); `high` a bend near the farther end, offset·L/x with x from
 * the nearer one: no shaft that is bent to one side only can have more, for a curve that bends one way lies above its chords.
 */
export function bowFromString(offsetMm: number, atMm: number, lengthMm: number): Range {
  above('bowFromString', atMm, lengthMm);
  if (!(offsetMm >= 0 && atMm < lengthMm)) throw new RangeError('bowFromString: the reading is not on the string');
  return {
    low: offsetMm,
    likely: (offsetMm * lengthMm ** 2) / (4 * atMm * (lengthMm - atMm)),
    high: (offsetMm * lengthMm) / Math.min(atMm, lengthMm - atMm),
  };
}

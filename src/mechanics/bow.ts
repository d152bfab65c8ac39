/**
 * How far a bar is out of true, from what can be measured on a driveway. Bow is the largest distance of the shaft from the straight line
 * between its ends. All lengths in millimetres. Estimates: a bar bent in two places shows less than it has.
 */

/** Common practice, no source: about 3 mm is usable as a straight bar, more than 5 mm is bent, between is doubtful. */
export const BOW_LIMITS = { usable: 3, bent: 5 } as const;

export type BowVerdict = 'usable' | 'doubtful' | 'bent';

export function bowVerdict(bowMm: number): BowVerdict {
  if (bowMm <= BOW_LIMITS.usable) return 'usable';
  return bowMm > BOW_LIMITS.bent ? 'bent' : 'doubtful';
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
 * From a string stretched along the shaft between two points `lengthMm` apart: its distance from the shaft, `offsetMm`, seen at `atMm`
 * from one of them. At the widest place that is the bow. Elsewhere the bow is more, by how the bar is bent: `low` for a kink at the place
 * that the reading allows least, which is the reading itself; `likely` for an even curve (offset·L²/(4·x·(L − x)), a parabola); `high` for
 * a kink in the middle (offset·L/(2·x) for x up to the middle); one beyond the middle would be more still, so read it where it is widest.
 */
export function bowFromString(
  offsetMm: number,
  atMm: number,
  lengthMm: number,
): { readonly low: number; readonly likely: number; readonly high: number } {
  above('bowFromString', atMm, lengthMm);
  if (!(offsetMm >= 0 && atMm < lengthMm)) throw new RangeError('bowFromString: the reading is not on the string');
  const nearer = Math.min(atMm, lengthMm - atMm);
  return {
    low: offsetMm,
    likely: (offsetMm * lengthMm ** 2) / (4 * atMm * (lengthMm - atMm)),
    high: (offsetMm * lengthMm) / (2 * nearer),
  };
}

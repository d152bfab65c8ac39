/** How a plate's hole sits on a sleeve: clearance, and the tilt and lean that it allows. All lengths in millimetres. */

/** Hole minus sleeve; negative when the plate won't go on. */
export const clearanceOf = (boreMm: number, sleeveMm: number): number => boreMm - sleeveMm;

/**
 * The largest angle in degrees by which a plate can tilt on a sleeve, from its hole, the sleeve and the thickness of its hub.
 * In the plane of the tilt the hub is a rectangle with a slot `bore` wide and `hub` long, and the sleeve a strip `sleeve` wide:
 * the slot touches the strip at two opposite corners when bore·cos θ − hub·sin θ = sleeve. Solved in closed form:
 * θ = acos(sleeve / √(bore² + hub²)) − atan(hub / bore). Zero when there is no clearance. Throws on a hub that is not above zero.
 */
export function tiltOf(boreMm: number, sleeveMm: number, hubMm: number): number {
  if (!(hubMm > 0 && boreMm > 0 && sleeveMm > 0)) throw new RangeError('tiltOf: lengths must be above zero');
  if (boreMm <= sleeveMm) return 0;
  const radians = Math.acos(sleeveMm / Math.hypot(boreMm, hubMm)) - Math.atan2(hubMm, boreMm);
  return (radians * 180) / Math.PI;
}

/** How far the rim of a plate stands out of true at that tilt: from one side of the rim to the other, in millimetres. */
export const leanAtRim = (tiltDegrees: number, diameterMm: number): number =>
  diameterMm * Math.sin((tiltDegrees * Math.PI) / 180);

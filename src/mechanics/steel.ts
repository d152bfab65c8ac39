/** How much steel a bar of given measures can hold, against the weight it is said to have. Millimetres in, kilograms out. */

/** Steel, 7850 kg/m³: the usual design value (Metals Handbook Desk Edition gives 7844 to 7859). */
export const STEEL_KG_PER_MM3 = 7850e-9;

/** Shaft between the collars of a 2.2 m bar (IWF TCRR 2025, 3.3.3: 1310 mm). */
const BETWEEN_COLLARS_MM = 1310;

/** Two flanges that the plates rest against, at most, in kilograms. An assumption. */
const FLANGES_KG = 2.5;

const cylinder = (diameterMm: number, lengthMm: number): number => (Math.PI / 4) * diameterMm ** 2 * lengthMm * STEEL_KG_PER_MM3;

/**
 * The least and the most that a bar can weigh: the bare shaft from end to end, and the same with solid sleeves and heavy flanges.
 * A bar outside of these bounds is not the bar that the ad describes.
 */
export function barWeightBounds(shaftMm: number, lengthMm: number, sleeveMm = 50): { low: number; high: number } {
  const shaft = cylinder(shaftMm, lengthMm);
  const sleeves = lengthMm > BETWEEN_COLLARS_MM + 400 ? lengthMm - BETWEEN_COLLARS_MM : Math.min(lengthMm, 700);
  return { low: shaft, high: shaft + cylinder(sleeveMm, sleeves) - cylinder(Math.min(shaftMm, sleeveMm), sleeves) + FLANGES_KG };
}

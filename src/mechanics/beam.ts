/** How a round bar bends. Millimetres in. An estimate of a perfect bar, no inspection of a real one. */

/** Young's modulus of steel in N/mm², whatever its tensile strength: the usual design value. */
const STEEL_MODULUS = 200_000;

/** Bending stiffness E·I in N·m² of a solid round shaft: I = π·d⁴/64. Throws unless the diameter is above zero. */
export function stiffnessOf(diameterMm: number): number {
  if (!(diameterMm > 0)) throw new RangeError('stiffnessOf: the diameter must be above zero');
  return (STEEL_MODULUS * Math.PI * diameterMm ** 4) / 64 / 1e6;
}

/** Stiffness of one shaft as a fraction of another's. */
export const stiffnessAgainst = (diameterMm: number, otherMm: number): number => stiffnessOf(diameterMm) / stiffnessOf(otherMm);

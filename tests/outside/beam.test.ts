import { describe, expect, it } from 'vitest';
import { stiffnessAgainst, stiffnessOf } from '../../src/mechanics/beam.ts';

describe('stiffness of a round shaft', () => {
  /**
   * Independent of the closed form: the second moment of area by summing thin strips of the circle, times 200 GPa
   * (formula I = π·d⁴/64 as in any handbook, e.g. Civil Engineering Formulas; strips are the definition, I = ∫ y² dA).
   */
  const byStrips = (d: number): number => {
    const strips = 200_000;
    let sum = 0;
    for (let n = 0; n < strips; n++) {
      const y = -d / 2 + ((n + 0.5) * d) / strips;
      sum += y * y * 2 * Math.sqrt((d * d) / 4 - y * y) * (d / strips);
    }
    return (sum * 200_000) / 1e6;
  };

  it('agrees with the definition for the shafts of the trade', () => {
    for (const d of [25, 28, 28.5, 29, 30, 32]) expect(stiffnessOf(d) / byStrips(d)).toBeCloseTo(1, 6);
  });

  it('gives 3835 N·m² at 25 mm, 6034 at 28 mm, 10 294 at 32 mm (worked out by hand)', () => {
    expect(Math.round(stiffnessOf(25))).toBe(3835);
    expect(Math.round(stiffnessOf(28))).toBe(6034);
    expect(Math.round(stiffnessOf(32))).toBe(10_294);
  });

  it('goes with the fourth power of the diameter', () => {
    expect(stiffnessAgainst(56, 28)).toBeCloseTo(16, 12);
    expect(() => stiffnessOf(0)).toThrow(RangeError);
  });
});

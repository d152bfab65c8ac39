/** Flat washers as micro plates: what one weighs, how many make a wanted weight, and on which sleeve they go. Inches and pounds as in the standard. */
import { STEEL_KG_PER_MM3 } from '../mechanics/steel.ts';
import { inchesToMillimetres } from '../units/length.ts';
import { POUND_IN_KILOGRAMS } from '../units/mass.ts';

export interface Washer {
  readonly id: string;
  /** Hole, outside and thickness in inches. */
  readonly holeIn: number;
  readonly outsideIn: number;
  readonly thicknessIn: number;
  /** Least and greatest thickness within the standard; the same as the nominal where it is not known. */
  readonly thinnestIn: number;
  readonly thickestIn: number;
  readonly source: 'asme' | 'handbook' | 'memory' | 'measured';
}

const TYPE_A = { thinnestIn: 0.153, thickestIn: 0.213 } as const;

/**
 * ASME B18.21.1: 2-inch flat washers of type A (narrow and wide series) and type B; the 1-7/8-inch ones and table 1b's 2-inch one from
 * Machinery's Handbook, 31st edition, pages 1695 and 1697. The two type A rows are from memory.
 */
export const WASHERS: readonly Washer[] = [
  { id: 'a-2-narrow', holeIn: 2.125, outsideIn: 3.75, thicknessIn: 0.18, ...TYPE_A, source: 'memory' },
  { id: 'a-2-wide', holeIn: 2.125, outsideIn: 4.5, thicknessIn: 0.18, ...TYPE_A, source: 'memory' },
  { id: 'a-2-plain', holeIn: 2.062, outsideIn: 4.25, thicknessIn: 0.18, ...TYPE_A, source: 'handbook' },
  { id: 'b-2-regular', holeIn: 2.125, outsideIn: 4.5, thicknessIn: 0.25, thinnestIn: 0.25, thickestIn: 0.25, source: 'asme' },
  { id: 'b-1-7/8-narrow', holeIn: 2, outsideIn: 3.5, thicknessIn: 0.25, thinnestIn: 0.25, thickestIn: 0.25, source: 'handbook' },
  {
    id: 'b-1-7/8-regular',
    holeIn: 2,
    outsideIn: 4.25,
    thicknessIn: 0.25,
    thinnestIn: 0.25,
    thickestIn: 0.25,
    source: 'handbook',
  },
  { id: 'b-1-7/8-wide', holeIn: 2, outsideIn: 4.75, thicknessIn: 0.25, thinnestIn: 0.25, thickestIn: 0.25, source: 'handbook' },
];

/** Weight in pounds of a steel ring: ρ·π/4·(outside² − hole²)·thickness. Inches in; throws unless 0 < hole < outside and the thickness is above zero. */
export function ringPounds(holeIn: number, outsideIn: number, thicknessIn: number): number {
  if (!(holeIn > 0 && outsideIn > holeIn && thicknessIn > 0)) throw new RangeError('ringPounds: not the measures of a washer');
  const [hole, outside, thickness] = [holeIn, outsideIn, thicknessIn].map(inchesToMillimetres) as [number, number, number];
  return (((STEEL_KG_PER_MM3 * Math.PI) / 4) * (outside ** 2 - hole ** 2) * thickness) / POUND_IN_KILOGRAMS;
}

/** Weight of one washer in pounds, with what the thickness tolerance leaves open. */
export const washerPounds = ({ holeIn, outsideIn, thicknessIn, thinnestIn, thickestIn }: Washer) => ({
  low: ringPounds(holeIn, outsideIn, thinnestIn),
  likely: ringPounds(holeIn, outsideIn, thicknessIn),
  high: ringPounds(holeIn, outsideIn, thickestIn),
});

/** Hole less sleeve in mm: negative does not go on. */
export const washerClearance = (washer: Washer, sleeveMm: number): number => inchesToMillimetres(washer.holeIn) - sleeveMm;

export interface WasherStack {
  readonly washers: number;
  /** What they weigh together, in pounds. */
  readonly pounds: number;
  /** Difference from what is wanted, in pounds. */
  readonly off: number;
  readonly withinTolerance: boolean;
  /** Thickness of the stack in mm. */
  readonly thicknessMm: number;
}

/** So many washers make no micro plate any more. */
const MOST = 40;

/**
 * The stack of equal washers, `each` pounds and `thicknessMm` thick, that comes nearest to `wanted` pounds; of equals the smaller.
 * `tolerance` in pounds. Throws unless weights are above zero.
 */
export function stackFor(wanted: number, each: number, thicknessMm: number, tolerance: number): WasherStack {
  if (!(wanted > 0 && each > 0)) throw new RangeError('stackFor: weights must be above zero');
  const washers = Math.min(MOST, Math.max(1, Math.ceil(wanted / each - 0.5)));
  const pounds = washers * each;
  const off = pounds - wanted;
  return { washers, pounds, off, withinTolerance: Math.abs(off) <= tolerance + 1e-9, thicknessMm: washers * thicknessMm };
}

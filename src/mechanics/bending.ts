/**
 * How a loaded bar bends and what it bears: a round beam over two supports, a load on each overhanging end. An estimate of a perfect bar,
 * no inspection of a real one: holes, rust, bends and the maker's rating are not in it.
 */
import { stiffnessOf } from './beam.ts';

export interface LoadedBar {
  /** Diameter of the shaft, mm. */
  readonly diameterMm: number;
  /** Distance of the supports (hands, back, hooks), mm. */
  readonly spanMm: number;
  /** From a support to where the plates weigh down, mm. */
  readonly overhangMm: number;
  /** Weight on each end, newtons. */
  readonly newtons: number;
}

export interface Bending {
  /** Largest bending moment, the same all along between the supports, N·m. */
  readonly moment: number;
  /** Largest stress, in the outermost fibres, MPa. */
  readonly stress: number;
  /** How far the middle rises and an end sinks, mm. */
  readonly centreRise: number;
  readonly endDrop: number;
}

/** Standard gravity, m/s² (CGPM 1901). */
const GRAVITY = 9.80665;

/**
 * M = P·a, σ = 32·M/(π·d³), rise of the middle P·a·L²/(8·E·I), drop of an end P·a²·(3·L + 2·a)/(6·E·I): Civil Engineering Formulas,
 * figure 2.2, case 12. Throws unless diameter and span are above zero and overhang and load not below it.
 */
export function bendingOf({ diameterMm, spanMm, overhangMm, newtons }: LoadedBar): Bending {
  if (!(diameterMm > 0 && spanMm > 0 && overhangMm >= 0 && newtons >= 0))
    throw new RangeError('bendingOf: not the measures of a bar');
  const stiffness = stiffnessOf(diameterMm);
  const [span, overhang, diameter] = [spanMm / 1000, overhangMm / 1000, diameterMm / 1000];
  const moment = newtons * overhang;
  return {
    moment,
    stress: (32 * moment) / (Math.PI * diameter ** 3) / 1e6,
    centreRise: ((moment * span ** 2) / (8 * stiffness)) * 1000,
    endDrop: ((moment * overhang * (3 * span + 2 * overhang)) / (6 * stiffness)) * 1000,
  };
}

/** Where the plates of a 2.2 m bar weigh down: two 45s inside the sleeve, from the middle of the bar. An assumption. */
const PLATES_FROM_MIDDLE_MM = 731;
/** Hands or back carry it about so far apart. An assumption. */
const HELD_SPAN_MM = 662;
/** What a loaded bar may fall on, by how far apart it carries: a bench (common practice, no source), and the pins of a rack (an assumption). */
const FALLEN_ON = { bench: 300, pins: 1100 } as const;
/** What a 20 kg bar itself weighs of a load, kg (IWF TCRR 2025, 3.3.3). */
const BAR_KG = 20;

const endLoad = (kilograms: number): number => (Math.max(0, kilograms - BAR_KG) / 2) * GRAVITY;

/** A straight bar held with a load of so many kilograms, bar included. */
export const heldBar = (diameterMm: number, kilograms: number): LoadedBar => ({
  diameterMm,
  spanMm: HELD_SPAN_MM,
  overhangMm: PLATES_FROM_MIDDLE_MM - HELD_SPAN_MM / 2,
  newtons: endLoad(kilograms),
});

/** The same bar lying across a bench or on the pins of a rack. */
export const lyingBar = (diameterMm: number, kilograms: number, on: keyof typeof FALLEN_ON): LoadedBar => ({
  diameterMm,
  spanMm: FALLEN_ON[on],
  overhangMm: PLATES_FROM_MIDDLE_MM - FALLEN_ON[on] / 2,
  newtons: endLoad(kilograms),
});

/**
 * Stress in MPa when a loaded bar falls across a bench, or on pins, from `heightMm`: the stress at rest times 1 + √(1 + 2·h/δ), with δ the
 * drop of the ends at rest. The energy of the fall becomes that of bending (impact by the energy method: any text on strength of materials).
 * Counted as if nothing yields, so a result over the yield strength means a bent bar, not that stress.
 */
export function dropStress(
  diameterMm: number,
  kilograms: number,
  heightMm: number,
  on: keyof typeof FALLEN_ON = 'bench',
): number {
  const { stress, endDrop } = bendingOf(lyingBar(diameterMm, kilograms, on));
  if (!(heightMm >= 0)) throw new RangeError('dropStress: the height must not be below zero');
  return endDrop > 0 ? stress * (1 + Math.sqrt(1 + (2 * heightMm) / endDrop)) : 0;
}

export interface Yield {
  readonly low: number;
  readonly high: number;
}

const KSI = 6.894757293168;

/** Yield strengths in MPa: mild steel 33 to 36 ksi; cold-drawn 1045 to heat-treated 4340 46 to 200 ksi. What bars are made of lies anywhere in the second. */
export const YIELDS = {
  mild: { low: 33 * KSI, high: 36 * KSI },
  barbell: { low: 46 * KSI, high: 200 * KSI },
} as const satisfies Readonly<Record<string, Yield>>;

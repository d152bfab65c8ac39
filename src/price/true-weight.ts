/** What plates of a given face value really weigh, by how they were made, and what the buyer's own scale changes about that. */

import type { Grade, Item } from '../listing/reading.ts';
import { POUND_IN_KILOGRAMS } from '../units/mass.ts';
import { Z90 } from '../units/range.ts';

export type WeightGrade = Grade | 'bumper' | 'unknown';

/** How far a plate may lie from its face value, as fractions of it. */
export interface Tolerance {
  readonly below: number;
  readonly above: number;
}

/** IWF disc tolerance: over 5 kg +0.1 % / −0.05 %, at 5 kg and under +10 / −0 g (from memory, high confidence). */
export const iwfTolerance = (faceKg: number): Tolerance =>
  faceKg > 5 ? { below: 0.0005, above: 0.001 } : { below: 0, above: 0.01 / faceKg };

/** IPF Technical Rulebook 2026 disc tolerance: within 0.25 % or 10 g of face value, whichever is more. */
export const ipfTolerance = (faceKg: number): Tolerance => {
  const either = Math.max(0.0025, 0.01 / faceKg);
  return { below: either, above: either };
};

/** Calibrated for one federation or the other: an ad does not say which, so the wider on each side. */
function calibrated(facePounds: number): Tolerance {
  const faceKg = facePounds * POUND_IN_KILOGRAMS;
  const [iwf, ipf] = [iwfTolerance(faceKg), ipfTolerance(faceKg)];
  return { below: Math.max(iwf.below, ipf.below), above: Math.max(iwf.above, ipf.above) };
}

/**
 * Where about 90 % of the plates of a grade lie. Plain cast: 45s have been weighed from 41.75 to 56 lb, mostly heavy (common practice, no
 * source; there is no published study), so that its centre of mass is 2.5 % above face value and about 7 in 10 are heavy. What nobody
 * calls anything is mostly plain cast. The others are assumptions.
 */
const DEVIATIONS: Readonly<Record<Exclude<WeightGrade, 'calibrated'>, Tolerance>> = {
  machined: { below: 0.02, above: 0.02 },
  cast: { below: 0.05, above: 0.1 },
  'rubber-coated': { below: 0.03, above: 0.05 },
  bumper: { below: 0.02, above: 0.03 },
  unknown: { below: 0.05, above: 0.09 },
};

/** How a plate was made, as far as the ad says. */
export function gradeOf(item: Item): WeightGrade {
  if (item.grade !== null) return item.grade.value;
  if (item.kind.value === 'bumper') return 'bumper';
  const material = item.material?.value;
  if (material === 'rubber' || material === 'urethane') return 'rubber-coated';
  return material === 'iron' || material === 'steel' ? 'cast' : 'unknown';
}

/**
 * Correlation between the errors of two plates of one grade in one lot: one mould, one foundry, one batch. An assumption. It also stands for
 * not knowing how heavy the grade is on the whole, so that no lot, however large, is known to better than half of one plate's spread.
 */
const CORRELATION = 0.25;

/** Relative error of one plate: normal, with 90 % of the plates within the grade's deviation. So its centre lies above face value for cast. */
export function errorOf(grade: WeightGrade, facePounds: number): { readonly mean: number; readonly deviation: number } {
  const { below, above } = grade === 'calibrated' ? calibrated(facePounds) : DEVIATIONS[grade];
  return { mean: (above - below) / 2, deviation: (above + below) / (2 * Z90) };
}

/** What is known of the error that the plates of a grade share in a lot, in standard deviations of one plate's error. */
export interface Belief {
  readonly mean: number;
  readonly deviation: number;
  readonly weighed: boolean;
}
export const UNWEIGHED: Belief = { mean: 0, deviation: Math.sqrt(CORRELATION), weighed: false };

/** A bathroom or luggage scale used with care: 90 % within 0.5 %, and off the same way each time. An assumption. */
const SCALE_DEVIATION = 0.005 / Z90;

export interface Weighing {
  readonly face: number;
  readonly pounds: number;
}

/**
 * What weighed plates say of the other plates of their grade in the lot. Conjugate normal update in the relative error: each plate's error is
 * z = shared + own with shared ~ N(0, ρ) and own ~ N(0, 1 − ρ), in deviations about the grade's centre of mass; a weighing sees z with the
 * scale's error s on top. Precisions add: 1/v = 1/ρ + Σ 1/(1 − ρ + s²), and the mean is v · Σ z/(1 − ρ + s²).
 * The spread of the plates about each other is held at the grade's own.
 */
export function learn(grade: WeightGrade, weighings: readonly Weighing[]): Belief {
  if (weighings.length === 0) return UNWEIGHED;
  let precision = 1 / CORRELATION;
  let pull = 0;
  for (const { face, pounds } of weighings) {
    const { mean, deviation } = errorOf(grade, face);
    const seen = 1 - CORRELATION + (SCALE_DEVIATION / deviation) ** 2;
    precision += 1 / seen;
    pull += (pounds / face - 1 - mean) / deviation / seen;
  }
  return { mean: pull / precision, deviation: Math.sqrt(1 / precision), weighed: true };
}

/** The weight of some plates in pounds, with its errors kept apart by what they have in common with other plates. */
export interface TrueWeight {
  readonly grade: WeightGrade;
  /**
   * The pounds that count. Face value until plates are weighed, though the centre of mass of cast plates is above it: what is asked, the
   * going rate and new are all prices for a pound of face value, and counting heavier pounds on one side only would make every cast lot
   * look cheaper than it is. From the first weighing on, the centre of mass.
   */
  readonly likely: number;
  /** Centre of mass of the true weight. */
  readonly centre: number;
  /** Standard deviations: of what the plates of the grade share, of what is each plate's own, of the scale. */
  readonly shared: number;
  readonly own: number;
  readonly scale: number;
}

/** True weight of `pieces` plates of `face` pounds each, of which some were weighed. `pieces` need not be whole, and counts the weighed ones. */
export function trueWeight(
  grade: WeightGrade,
  pieces: number,
  face: number,
  weighed: readonly number[] = [],
  belief: Belief = UNWEIGHED,
): TrueWeight {
  const rest = Math.max(0, pieces - weighed.length);
  const sum = weighed.reduce((total, pounds) => total + pounds, 0);
  const { mean, deviation } = errorOf(grade, face);
  const centre = sum + rest * face * (1 + mean + deviation * belief.mean);
  return {
    grade,
    likely: belief.weighed ? centre : sum + rest * face,
    centre,
    shared: rest * face * deviation * belief.deviation,
    own: face * deviation * Math.sqrt(rest * (1 - CORRELATION)),
    scale: SCALE_DEVIATION * sum,
  };
}

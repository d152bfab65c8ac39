/** What plates of a given face value really weigh, by how they were made. */
import type { Grade, Item } from '../listing/reading.ts';
import type { Range } from '../units/range.ts';

/** Deviation of one plate from its face value as fractions, and where the figure comes from. */
interface Deviation {
  readonly below: number;
  readonly above: number;
  readonly source: string;
}

/**
 * Calibrated: the wider of the two federations' tolerances. Plain cast: 45s have been weighed from 41.75 to 56 lb, mostly heavy, so the
 * range is wide and skewed. There is no published study of plain plates.
 */
const DEVIATIONS: Readonly<Record<Grade | 'bumper', Deviation>> = {
  calibrated: { below: 0.0025, above: 0.0025, source: 'IPF Technical Rulebook 2026: 0.25 % of face value' },
  machined: { below: 0.02, above: 0.02, source: 'assumption' },
  cast: { below: 0.05, above: 0.1, source: 'common practice, no source' },
  'rubber-coated': { below: 0.03, above: 0.05, source: 'assumption' },
  bumper: { below: 0.02, above: 0.03, source: 'assumption' },
};

/** Plates of one lot tend to come from one mould: correlation between the errors of two of them. An assumption. */
const CORRELATION = 0.25;

export function deviationOf(item: Item): Deviation {
  if (item.kind.value === 'bumper' && item.grade === null) return DEVIATIONS.bumper;
  if (item.grade !== null) return DEVIATIONS[item.grade.value];
  const material = item.material?.value;
  return material === 'rubber' || material === 'urethane' ? DEVIATIONS['rubber-coated'] : DEVIATIONS.cast;
}

/**
 * Total of `pieces` plates of `unit` face value each: likely is face value, half-widths of the sum of equally correlated errors,
 * σ·√(n·(1 + (n − 1)·ρ)). So a lot is known better, for its weight, than one plate.
 */
export function trueTotal(pieces: number, unit: number, deviation: Deviation): Range {
  const face = pieces * unit;
  const spread = unit * Math.sqrt(pieces * (1 + Math.max(0, pieces - 1) * CORRELATION));
  return { low: Math.max(0, face - deviation.below * spread), likely: face, high: face + deviation.above * spread };
}

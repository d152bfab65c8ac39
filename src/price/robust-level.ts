/** Where a set of weighed values is centred, given a prior belief, with far-off values counting little. */

export interface Weighed {
  readonly value: number;
  /** How much it counts beside a fresh one: above 0, up to 1. */
  readonly weight: number;
}

export interface Level {
  readonly mean: number;
  readonly sd: number;
  /** What each value counts in the end, in the order given: age and distance from the centre together. */
  readonly weights: readonly number[];
  /** The same summed, none above its own weight. */
  readonly effective: number;
}

const MOST_ROUNDS = 200;

/** The value at which half of the weight lies below. Values are in ascending order. */
function medianOf(points: readonly Weighed[]): number {
  const half = points.reduce((sum, { weight }) => sum + weight, 0) / 2;
  let below = 0;
  for (const { value, weight } of points) {
    below += weight;
    if (below >= half) return value;
  }
  return points.at(-1)?.value ?? 0;
}

/**
 * Mode of a normal prior (`mean`, `sd`) times Student-t likelihoods of scale `spread` and `freedom` degrees of freedom, found by
 * reweighting: a value z spreads away from the centre counts (freedom + 1) / (freedom + z²). With infinite freedom each counts 1, and the
 * outcome is the conjugate normal posterior with known variance: precision 1/sd² + Σ weight / spread². `points` ascend; it starts from
 * their median, so that a lone far-off value does not draw it away.
 */
export function fitLevel(
  prior: { readonly mean: number; readonly sd: number },
  points: readonly Weighed[],
  spread: number,
  freedom: number,
): Level {
  const pull = ({ value }: Weighed, centre: number): number =>
    Number.isFinite(freedom) ? (freedom + 1) / (freedom + ((value - centre) / spread) ** 2) : 1;
  const priorPrecision = 1 / prior.sd ** 2;
  let mean = points.length === 0 ? prior.mean : medianOf(points);
  let weights: number[] = [];
  let precision = priorPrecision;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    weights = points.map((point) => point.weight * pull(point, mean));
    precision = priorPrecision + weights.reduce((sum, weight) => sum + weight, 0) / spread ** 2;
    const sum = points.reduce((total, { value }, index) => total + (weights[index] ?? 0) * value, 0);
    const next = (prior.mean * priorPrecision + sum / spread ** 2) / precision;
    const settled = Math.abs(next - mean) < 1e-13 * spread;
    mean = next;
    if (settled) break;
  }
  const effective = points.reduce((sum, { weight }, index) => sum + Math.min(weight, weights[index] ?? 0), 0);
  return { mean, sd: 1 / Math.sqrt(precision), weights, effective };
}

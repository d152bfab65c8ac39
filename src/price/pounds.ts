/**
 * Pounds of plates that can be added up. Errors that plates share add in full, their own in quadrature, so that a lot is known better for
 * its weight than one plate; and it makes no difference over how many lines of an ad the plates are spread.
 */
import { type Range, Z90 } from '../units/range.ts';
import type { TrueWeight } from './true-weight.ts';

/** How much less or more there may be for other reasons than what a plate weighs, in pounds. */
interface Doubt {
  readonly below: number;
  readonly above: number;
}

export interface Pounds {
  readonly weight: TrueWeight;
  /** A doubt about this line alone: its count. */
  readonly alone: Doubt;
  /** A doubt that falls on all lines together: the holes, a total that was shared out. */
  readonly together: Doubt;
}

const NO_DOUBT: Doubt = { below: 0, above: 0 };
const WEIGHTLESS: TrueWeight = { grade: 'unknown', likely: 0, centre: 0, shared: 0, own: 0, scale: 0 };
export const NO_POUNDS: Pounds = { weight: WEIGHTLESS, alone: NO_DOUBT, together: NO_DOUBT };

export const ofPlates = (weight: TrueWeight): Pounds => ({ ...NO_POUNDS, weight });

/** A weight known only as a range, for reasons that are this line's alone. */
export const guessed = ({ low, likely, high }: Range): Pounds => ({
  weight: { ...WEIGHTLESS, likely, centre: likely },
  alone: { below: likely - low, above: high - likely },
  together: NO_DOUBT,
});

/** A weight known only as a range, one share of a weight that was told for several lines. */
export const sharedOut = (range: Range): Pounds => {
  const { alone, ...rest } = guessed(range);
  return { ...rest, alone: NO_DOUBT, together: alone };
};

const doubts = (doubt: Doubt, factor: number): Doubt => ({ below: doubt.below * factor, above: doubt.above * factor });

function multiply(pounds: Pounds, factor: number, own: number): Pounds {
  const { grade, likely, centre, shared, own: plates, scale } = pounds.weight;
  return {
    weight: {
      grade,
      likely: likely * factor,
      centre: centre * factor,
      shared: shared * factor,
      own: plates * own,
      scale: scale * factor,
    },
    alone: doubts(pounds.alone, factor),
    together: doubts(pounds.together, factor),
  };
}

/** The same plates, each counting by a factor. */
export const valued = (pounds: Pounds, factor: number): Pounds => (factor === 1 ? pounds : multiply(pounds, factor, factor));

/** A share of the plates: fewer of them, so that their own errors cancel less. */
export const someOf = (pounds: Pounds, share: number): Pounds =>
  share === 1 ? pounds : multiply(pounds, share, Math.sqrt(Math.max(0, share)));

/** Part of the weight that may be missing, whatever the plates weigh. */
export const maybeLess = (pounds: Pounds, share: number): Pounds => ({
  ...pounds,
  together: { ...pounds.together, below: pounds.together.below + pounds.weight.likely * share },
});

/**
 * Pounds that count only with a chance: the low end is the mean of the worse half of what may be found, at a chance of a half nothing.
 * Below a half they count for nothing, but may be there.
 */
export function withChance(pounds: Pounds, chance: number): Pounds {
  if (chance >= 1) return pounds;
  if (chance >= 0.5) return maybeLess(pounds, 2 * (1 - chance));
  const { weight, alone, together } = pounds;
  return { ...NO_POUNDS, together: { below: 0, above: weight.centre + alone.above + together.above } };
}

/**
 * Sum of pounds as a range of about 90 %: centre of mass of the true weight plus or minus 1.645 √(Σ own² + Σ over grades (Σ shared)² +
 * (Σ scale)²), the variance of a sum of equally correlated normal errors, n·σ²·(1 + (n − 1)·ρ) for n equal plates. Grades are independent
 * of each other. Never below zero; the likely value lies inside.
 */
export function rangeOf(parts: readonly Pounds[]): Range {
  let likely = 0;
  let centre = 0;
  let variance = 0;
  let scale = 0;
  const apart = { below: 0, above: 0 };
  const together = { below: 0, above: 0 };
  const grades = new Map<string, number>();
  for (const { weight, alone, together: common } of parts) {
    likely += weight.likely;
    centre += weight.centre;
    variance += weight.own ** 2;
    scale += weight.scale;
    if (weight.shared > 0) grades.set(weight.grade, (grades.get(weight.grade) ?? 0) + weight.shared);
    apart.below += alone.below ** 2;
    apart.above += alone.above ** 2;
    together.below += common.below;
    together.above += common.above;
  }
  variance += scale ** 2;
  for (const shared of grades.values()) variance += shared ** 2;
  const spread = Z90 * Z90 * variance;
  return {
    low: Math.max(0, Math.min(likely, centre - Math.sqrt(spread + apart.below) - together.below)),
    likely,
    high: Math.max(likely, centre + Math.sqrt(spread + apart.above) + together.above),
  };
}

/**
 * The going rate, learned from priced finds. Prices are worked on as logarithms: a market in which a third less is as common as half more
 * is log-normal. Pure: the finds come with their ages, so that no clock is needed.
 */

import type { LearnedRate, RateCategory, RateCell, Settings } from '../listing/settings.ts';
import { Z90 } from '../units/range.ts';
import { cellBeforeLearning } from './rates.ts';
import { fitLevel, type Weighed } from './robust-level.ts';

/** One ad with a price: major units of the buyer's currency per pound or per piece, as the category is priced. */
export interface PricedFind {
  readonly category: RateCategory;
  readonly perUnit: number;
  /** Days since the price was seen; a price from the future counts as of today. */
  readonly ageDays: number;
}

/**
 * How much of the table's spread (as variance) is not knowing where the local market stands; the rest is the market's own spread from ad
 * to ad. A half means that the table counts as much as one fresh find. An assumption.
 */
const SHARE_OF_LEVEL = 0.5;
/** The table's spread counts as much as so many finds when the market's own spread is judged. An assumption. */
const SPREAD_FINDS = 8;
/** Degrees of freedom of the Student-t that makes far-off prices count little. A usual choice for robust fits, from memory. */
const FREEDOM = 4;
const MOST_ROUNDS = 100;

export interface LearnOptions {
  /** After so many days a find counts half. */
  readonly halfLifeDays: number;
  /** Infinity makes it the plain (non-robust) fit. */
  readonly freedom?: number;
}

/** Sorted, so that sums come out the same to the last bit in whatever order finds arrive; what is no price is left out. */
function weighed(finds: readonly Pick<PricedFind, 'perUnit' | 'ageDays'>[], halfLifeDays: number): Weighed[] {
  return finds
    .filter(({ perUnit, ageDays }) => Number.isFinite(perUnit) && perUnit > 0 && Number.isFinite(ageDays))
    .map(({ perUnit, ageDays }) => ({ value: Math.log(perUnit), weight: 2 ** (-Math.max(0, ageDays) / halfLifeDays) }))
    .sort((a, b) => a.value - b.value || a.weight - b.weight);
}

export interface GoingRate {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Finds that had a price. */
  readonly finds: number;
  /** How many fresh finds with ordinary prices they are worth: old ones and far-off ones count less. */
  readonly effective: number;
}

/**
 * Going rate after `finds`, in the units of `prior`, whose low..high is read as about 90 % of the ads. Level: the mode of a normal prior
 * times Student-t likelihoods, by iteratively reweighted means (Lange, Little & Taylor 1989, Robust statistical modeling using the t
 * distribution, JASA 84, from memory). Low and high are predictive: the market's own spread and what is not known of its level, never
 * narrower than the spread that the table gives the market. Without finds it is the prior. A prior that touches zero can't be learned on
 * and comes back as it is. Throws when the half-life is not above zero.
 */
export function learnRate(
  prior: Pick<RateCell, 'low' | 'likely' | 'high'>,
  finds: readonly Pick<PricedFind, 'perUnit' | 'ageDays'>[],
  { halfLifeDays, freedom = FREEDOM }: LearnOptions,
): GoingRate {
  if (!(halfLifeDays > 0)) throw new RangeError('learnRate: the half-life must be above zero');
  const { low, likely, high } = prior;
  const points = weighed(finds, halfLifeDays);
  const spread = low > 0 ? Math.log(high / low) / (2 * Z90) : 0;
  if (points.length === 0 || !(low > 0) || spread === 0) return { low, likely, high, finds: 0, effective: 0 };
  const level = { mean: Math.log(likely), sd: spread * Math.sqrt(SHARE_OF_LEVEL) };
  const market = spread ** 2 * (1 - SHARE_OF_LEVEL);
  let own = market;
  let fit = fitLevel(level, points, Math.sqrt(own), freedom);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { mean, weights } = fit;
    const sum = points.reduce((total, { value }, index) => total + (weights[index] ?? 0) * (value - mean) ** 2, 0);
    const count = points.reduce((total, { weight }) => total + weight, 0);
    const next = Math.max(market, (SPREAD_FINDS * market + sum) / (SPREAD_FINDS + count));
    const settled = Math.abs(next - own) < 1e-12 * own;
    own = next;
    fit = fitLevel(level, points, Math.sqrt(own), freedom);
    if (settled) break;
  }
  // A skewed table stays skewed: each side is stretched alike.
  const stretch = Math.sqrt(own + fit.sd ** 2) / spread;
  const centre = Math.exp(fit.mean);
  return {
    low: centre * (low / likely) ** stretch,
    likely: centre,
    high: centre * (high / likely) ** stretch,
    finds: points.length,
    effective: fit.effective,
  };
}

/**
 * What the finds teach of each category that has any, for `settings.learned`. Prices are in the buyer's currency; a category without a
 * cell to start from in that currency is left out. `date` ("2026-11") is when it was learned.
 */
export function learnRates(finds: readonly PricedFind[], settings: Settings, date: string): Settings['learned'] {
  const learned: Partial<Record<RateCategory, LearnedRate>> = {};
  for (const category of new Set(finds.map((find) => find.category))) {
    const prior = cellBeforeLearning(category, 'used', settings);
    if (prior === null) continue;
    const { halfLifeDays } = settings;
    const own = finds.filter((find) => find.category === category);
    const rate = learnRate(prior, own, { halfLifeDays });
    if (rate.finds > 0) learned[category] = { ...rate, source: 'learned', date, currency: settings.currency };
  }
  return learned;
}

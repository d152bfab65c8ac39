/**
 * What finds teach, against a textbook and an independent statistics library (simple-statistics 7.12.1, ISC), and how much one wrong
 * price moves it.
 */
import { geometricMean, mean, median, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { learnRate } from '../../src/price/going-rate.ts';
import { fitLevel } from '../../src/price/robust-level.ts';
import { Z90 } from '../../src/units/range.ts';

const fresh = (values: readonly number[]) => values.map((value) => ({ value, weight: 1 }));
const finds = (prices: readonly number[], ageDays = 0) => prices.map((perUnit) => ({ perUnit, ageDays }));
const PRIOR = { low: 0.5, likely: 0.75, high: 1 };

/** Ten prices of iron a pound, invented, and in the second list one of them ten times too high. */
const TEN = [0.55, 0.6, 0.62, 0.66, 0.7, 0.72, 0.75, 0.8, 0.85, 0.9];
const ONE_WRONG = TEN.map((price) => (price === 0.72 ? 7.2 : price));

describe('without robustness it is the conjugate normal posterior with known variance', () => {
  it('as in the textbook: lengths of trout', () => {
    // Bolstad, Introduction to Bayesian Statistics, chapter on the normal mean: prior N(30, 4²), standard deviation 2 known, twelve fish
    // of mean length 32: posterior mean 31.96, standard deviation 0.5714. From memory; the arithmetic is done again by hand:
    // precision 1/16 + 12/4 = 3.0625, mean (30/16 + 32 · 3) / 3.0625 = 31.9592.
    const twelve = [29, 30, 30.5, 31, 31.5, 32, 32, 32.5, 33, 33.5, 34, 35];
    expect(mean(twelve)).toBe(32);
    const posterior = fitLevel({ mean: 30, sd: 4 }, fresh(twelve), 2, Number.POSITIVE_INFINITY);
    expect(posterior.mean).toBeCloseTo(31.9592, 4);
    expect(posterior.sd).toBeCloseTo(0.5714, 4);
    expect(posterior.effective).toBe(12);
  });

  it('and with a vague prior the mean and its standard error of the library', () => {
    const logs = TEN.map(Math.log);
    const spread = sampleStandardDeviation(logs);
    const posterior = fitLevel({ mean: 5, sd: 1e6 }, fresh(logs), spread, Number.POSITIVE_INFINITY);
    expect(Math.exp(posterior.mean)).toBeCloseTo(geometricMean(TEN), 9);
    expect(posterior.sd).toBeCloseTo(spread / Math.sqrt(TEN.length), 9);
  });

  it('and a find of weight a half counts as half a find', () => {
    const twice = fitLevel({ mean: 0, sd: 1 }, fresh([1, 2]), 0.5, Number.POSITIVE_INFINITY);
    const halves = [1, 1, 2, 2].map((value) => ({ value, weight: 0.5 }));
    const split = fitLevel({ mean: 0, sd: 1 }, halves, 0.5, Number.POSITIVE_INFINITY);
    expect(split.mean).toBeCloseTo(twice.mean, 12);
    expect(split.sd).toBeCloseTo(twice.sd, 12);
  });
});

describe('the robust centre', () => {
  /** Log of prior times Student-t likelihoods, written out anew; its highest point is looked for on a fine grid. */
  const highest = (values: readonly number[], prior: { mean: number; sd: number }, spread: number, freedom: number): number => {
    const height = (at: number): number =>
      values.reduce(
        (sum, value) => sum - ((freedom + 1) / 2) * Math.log1p(((value - at) / spread) ** 2 / freedom),
        -0.5 * ((at - prior.mean) / prior.sd) ** 2,
      );
    let best = prior.mean;
    for (let at = -3; at <= 3; at += 1e-4) if (height(at) > height(best)) best = at;
    return best;
  };

  it.each([
    ['ten plain prices', TEN],
    ['one of ten wrong', ONE_WRONG],
    ['two', [0.4, 0.9]],
  ])('is the highest point of prior times Student-t: %s', (_, prices) => {
    const logs = [...prices].map(Math.log).sort((a, b) => a - b);
    const prior = { mean: Math.log(0.75), sd: 0.15 };
    expect(fitLevel(prior, fresh(logs), 0.15, 4).mean).toBeCloseTo(highest(logs, prior, 0.15, 4), 3);
  });

  it('moves by less than 4 % for one price of ten that is ten times too high, where a plain mean moves by more than 85 %', () => {
    const right = learnRate(PRIOR, finds(TEN), { halfLifeDays: 180 }).likely;
    const wrong = learnRate(PRIOR, finds(ONE_WRONG), { halfLifeDays: 180 }).likely;
    expect(Math.abs(wrong / right - 1)).toBeLessThan(0.04);
    expect(mean(ONE_WRONG) / mean(TEN) - 1).toBeGreaterThan(0.85);
    // Nor would logarithms alone do: the plain fit on them moves by more than 12 %.
    const plain = (prices: readonly number[]) =>
      learnRate(PRIOR, finds(prices), { halfLifeDays: 180, freedom: Number.POSITIVE_INFINITY }).likely;
    expect(plain(ONE_WRONG) / plain(TEN) - 1).toBeGreaterThan(0.12);
  });

  it('stays close to the median of many finds', () => {
    const many = Array.from({ length: 40 }, (_, index) => 0.5 + 0.01 * index);
    expect(learnRate(PRIOR, finds(many), { halfLifeDays: 180 }).likely).toBeCloseTo(median(many), 1);
  });
});

describe('low and high', () => {
  it('are read as nine ads in ten: 95th percentile of the normal distribution, 1.644854 in any table', () =>
    expect(Z90).toBeCloseTo(1.644854, 6));

  it('of finds that spread wider than the table come to the nine in ten of the finds', () => {
    // Log-normal prices at even steps of chance, wider than the table: 200 of them outweigh the table's spread.
    const wide = Array.from({ length: 200 }, (_, index) => Math.exp(Math.log(0.75) + 0.5 * quantile((index + 0.5) / 200)));
    const learned = learnRate(PRIOR, finds(wide), { halfLifeDays: 180, freedom: Number.POSITIVE_INFINITY });
    const inside = wide.filter((price) => price >= learned.low && price <= learned.high).length / wide.length;
    expect(inside).toBeGreaterThan(0.87);
    expect(inside).toBeLessThan(0.95);
  });
});

/** Quantile of the standard normal by bisection on its own integral, Simpson's rule: slow and independent. */
function quantile(chance: number): number {
  const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  const below = (x: number): number => {
    const steps = 200;
    const width = x / steps;
    let sum = density(0) + density(x);
    for (let step = 1; step < steps; step++) sum += (step % 2 === 1 ? 4 : 2) * density(step * width);
    return 0.5 + (sum * width) / 3;
  };
  let [low, high] = [-6, 6];
  for (let round = 0; round < 50; round++) {
    const middle = (low + high) / 2;
    if (below(middle) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

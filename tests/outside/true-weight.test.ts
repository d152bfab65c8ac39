/** True weights against the federations' tolerances, against the closed form for sums of correlated errors, and against a simulation. */
import { randomLcg, randomNormal } from 'd3-random';
import { describe, expect, it } from 'vitest';
import { ofPlates, rangeOf } from '../../src/price/pounds.ts';
import { errorOf, ipfTolerance, iwfTolerance, learn, trueWeight, type WeightGrade } from '../../src/price/true-weight.ts';
import { inKilograms, inPounds, kilograms } from '../../src/units/mass.ts';

const grams = (fraction: number, faceKg: number): number => fraction * faceKg * 1000;

describe('discs by the rules', () => {
  // IWF TCRR: over 5 kg +0.1 % / −0.05 %; 5 kg and under +10 / −0 g. From memory, high confidence.
  it.each([
    [25, 12.5, 25],
    [20, 10, 20],
    [10, 5, 10],
    [5, 0, 10],
    [2.5, 0, 10],
    [0.5, 0, 10],
  ])('IWF %s kg: −%s / +%s g', (face, below, above) => {
    expect(grams(iwfTolerance(face).below, face)).toBeCloseTo(below, 9);
    expect(grams(iwfTolerance(face).above, face)).toBeCloseTo(above, 9);
  });

  // IPF Technical Rulebook 2026: within 0.25 % or 10 g of face value.
  it.each([
    [25, 62.5],
    [20, 50],
    [10, 25],
    [5, 12.5],
    [2.5, 10],
    [1.25, 10],
    [0.5, 10],
  ])('IPF %s kg: ±%s g', (face, either) => {
    expect(grams(ipfTolerance(face).below, face)).toBeCloseTo(either, 9);
    expect(grams(ipfTolerance(face).above, face)).toBeCloseTo(either, 9);
  });

  it.each([25, 20, 15, 10, 5, 2.5, 1.25, 0.5])('one calibrated disc of %s kg lies within both', (face) => {
    const { low, likely, high } = rangeOf([ofPlates(trueWeight('calibrated', 1, inPounds(kilograms(face))))]);
    const kg = (value: number): number => inKilograms({ value, unit: 'lb' });
    expect(kg(likely)).toBeCloseTo(face, 9);
    expect(1 - kg(low) / face).toBeCloseTo(Math.max(ipfTolerance(face).below, iwfTolerance(face).below), 9);
    expect(kg(high) / face - 1).toBeCloseTo(Math.max(ipfTolerance(face).above, iwfTolerance(face).above), 9);
  });
});

/** Equal correlation between plates of one grade that the project assumes. */
const RHO = 0.25;
/** 95 % point of the standard normal distribution: Abramowitz & Stegun, table 26.5, 1.64485. */
const Z = 1.64485;

/** Plates of a lot: [pieces, face value in pounds]. */
type Lot = readonly (readonly [number, number])[];
const half = ({ low, high }: { low: number; high: number }): number => (high - low) / 2;
const sumOf = (grade: WeightGrade, lot: Lot) => rangeOf(lot.map(([pieces, face]) => ofPlates(trueWeight(grade, pieces, face))));

describe('the sum of plates, in closed form', () => {
  // Variance of a sum: Σ σ² + Σ over pairs of 2ρσ²; for n equal ones n·σ²·(1 + (n − 1)·ρ). Any textbook on probability.
  it.each([1, 2, 4, 8, 20])('%s equal plates', (n) => {
    const { deviation, mean } = errorOf('cast', 45);
    const { low, high } = sumOf('cast', [[n, 45]]);
    expect((high - low) / 2).toBeCloseTo(Z * 45 * deviation * Math.sqrt(n * (1 + (n - 1) * RHO)), 2);
    expect((high + low) / 2).toBeCloseTo(n * 45 * (1 + mean), 6);
  });

  it('plates of several weights, every pair on its own', () => {
    const lot: Lot = [
      [4, 45],
      [2, 25],
      [4, 10],
    ];
    const faces = lot.flatMap(([pieces, face]) => Array.from({ length: pieces }, () => face));
    const { deviation } = errorOf('cast', 45);
    let variance = 0;
    for (const [i, a] of faces.entries()) for (const [j, b] of faces.entries()) variance += (i === j ? 1 : RHO) * a * b;
    expect(half(sumOf('cast', lot))).toBeCloseTo(Z * deviation * Math.sqrt(variance), 2);
  });

  it('independent plates, each of another grade: in quadrature', () => {
    const grades = ['cast', 'machined', 'rubber-coated', 'bumper'] as const;
    const all = rangeOf(grades.map((grade) => ofPlates(trueWeight(grade, 1, 45))));
    const alone = grades.map((grade) => half(sumOf(grade, [[1, 45]])));
    expect(half(all)).toBeCloseTo(Math.hypot(...alone), 9);
  });
});

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;

/**
 * Relative errors of `n` equally correlated plates, drawn one after the other from the distribution of the next given those before
 * (mean ρ·Σ/(1 + (k − 1)ρ), variance 1 − kρ²/(1 + (k − 1)ρ)): another way than the shared and own parts that the project adds up.
 */
function drawErrors(n: number, normal: () => number): number[] {
  const drawn: number[] = [];
  let sum = 0;
  for (let k = 0; k < n; k += 1) {
    const shrink = RHO / (1 + (k - 1) * RHO);
    const next = k === 0 ? normal() : shrink * sum + Math.sqrt(1 - k * RHO * shrink) * normal();
    drawn.push(next);
    sum += next;
  }
  return drawn;
}

describe('the sum of plates, simulated', () => {
  const lots: readonly (readonly [WeightGrade, Lot])[] = [
    ['cast', [[2, 45]]],
    [
      'cast',
      [
        [6, 45],
        [2, 25],
        [8, 5],
      ],
    ],
    ['bumper', [[4, 44.0925]]],
    ['calibrated', [[6, 44.0925]]],
  ];
  it.each(lots)('%s %j: nine lots in ten lie in the range, and as many above as below', (grade, lot) => {
    const normal = randomNormal.source(randomLcg(0.42))();
    const faces = lot.flatMap(([pieces, face]) => Array.from({ length: pieces }, () => face));
    const sums = Array.from({ length: 40_000 }, () => {
      const errors = drawErrors(faces.length, normal);
      return faces.reduce((sum, face, index) => {
        const { mean, deviation } = errorOf(grade, face);
        return sum + face * (1 + mean + deviation * (errors[index] ?? Number.NaN));
      }, 0);
    }).sort((a, b) => a - b);
    const range = sumOf(grade, lot);
    const slack = 0.04 * half(range);
    expect(Math.abs(range.low - quantile(sums, 0.05))).toBeLessThan(slack);
    expect(Math.abs(range.high - quantile(sums, 0.95))).toBeLessThan(slack);
    expect(Math.abs((range.low + range.high) / 2 - quantile(sums, 0.5))).toBeLessThan(slack);
  });
});

describe('what weighed plates say of the others, simulated', () => {
  // Lots are drawn from what is believed beforehand; each counts as much as its plates would give the weights that the scale showed.
  it.each([[[46.2, 44.8]], [[48.1]], [[43, 43.4, 43.1]]])('after %j lb for 45s', (weights) => {
    const normal = randomNormal.source(randomLcg(0.7))();
    const { mean, deviation } = errorOf('cast', 45);
    const scaleSpread = 45 * 0.01;
    let [total, sum, squares] = [0, 0, 0];
    for (let lot = 0; lot < 500_000; lot += 1) {
      const errors = drawErrors(weights.length + 1, normal).map((error) => 45 * (1 + mean + deviation * error));
      const rest = errors[weights.length] ?? Number.NaN;
      const misfit = weights.reduce((far, shown, index) => far + ((shown - (errors[index] ?? 0)) / scaleSpread) ** 2, 0);
      const counts = Math.exp(-misfit / 2);
      total += counts;
      sum += counts * rest;
      squares += counts * rest * rest;
    }
    const simulated = { centre: sum / total, spread: Math.sqrt(squares / total - (sum / total) ** 2) };
    const belief = learn(
      'cast',
      weights.map((pounds) => ({ face: 45, pounds })),
    );
    const next = trueWeight('cast', 1, 45, [], belief);
    expect(Math.abs(next.centre - simulated.centre)).toBeLessThan(0.1);
    expect(Math.hypot(next.shared, next.own) / simulated.spread).toBeCloseTo(1, 1);
  });
});

/**
 * Loads against the classical problem of weights: W. W. Rouse Ball, Mathematical Recreations and Essays, on Bachet de Méziriac's
 * problem (1624): with weights in one pan only, 1, 2, 4, 8, … reach every whole number, each in one way. From memory.
 */
import { expect, it } from 'vitest';
import { exactWeight, weightOf } from '../../src/kit/exact-weight.ts';
import { loadsOf, widestGap } from '../../src/kit/loads.ts';
import { heavyPairs, needsOf } from '../../src/kit/needs.ts';
import { kilograms, pounds } from '../../src/units/mass.ts';

const bar = { weight: pounds(45), collars: pounds(0), sleeveMm: null };
const pairsOf = (weights: readonly number[], pairs = 1) =>
  weights.map((value) => ({ weight: pounds(value), pieces: 2 * pairs, thicknessMm: null }));

it('one pair each of the powers of two reaches every whole side, each once', () => {
  for (const highest of [3, 6, 9]) {
    const weights = Array.from({ length: highest + 1 }, (_, power) => 2 ** power);
    const loads = loadsOf(pairsOf(weights), bar);
    expect(loads.map(({ total }) => (total - exactWeight(pounds(45))) / exactWeight(pounds(2)))).toEqual(
      Array.from({ length: 2 ** (highest + 1) }, (_, side) => side),
    );
    for (const { total, platesPerSide } of loads) {
      const side = (total - exactWeight(pounds(45))) / exactWeight(pounds(2));
      expect(platesPerSide).toBe([...side.toString(2)].filter((bit) => bit === '1').length);
    }
  }
});

it('without the 4 the gap after 3 opens', () => {
  const gap = widestGap(loadsOf(pairsOf([1, 2, 8]), bar), pounds(45 + 22));
  expect(gap && weightOf(gap.to - gap.from, 'lb').value).toBe(10);
});

// Common practice, no source: one pair of 25s, two of 10s, one of 5s, one of 2.5s, and 45s by strength load every five pounds.
it('the usual plates load every five pounds up to the best lift', () => {
  for (const best of [185, 315, 405, 500, 600]) {
    const needs = needsOf({ best: pounds(best), jump: pounds(5), olympicLifts: false, unit: 'lb' });
    const owned = needs.flatMap(({ kind, weight, pieces }) =>
      kind === 'plate' && weight ? [{ weight, pieces, thicknessMm: null }] : [],
    );
    const gap = widestGap(loadsOf(owned, bar), pounds(best));
    expect(gap && weightOf(gap.to - gap.from, 'lb').value).toBe(5);
  }
});

// Common practice, no source: micro plates for jumps under 5 lb, with which the bar goes up by no more than the jump.
it.each([
  [pounds(1), 'lb'],
  [pounds(2), 'lb'],
  [pounds(2.5), 'lb'],
  [pounds(0.5), 'lb'],
  [pounds(3), 'lb'],
  [kilograms(1), 'lb'],
  [kilograms(1), 'kg'],
  [kilograms(0.5), 'kg'],
  [pounds(1), 'kg'],
] as const)('the plates for a jump of %o load no larger step in %s', (jump, unit) => {
  const best = pounds(405);
  const owned = needsOf({ best, jump, olympicLifts: false, unit }).flatMap(({ kind, weight, pieces }) =>
    (kind === 'plate' || kind === 'micro') && weight ? [{ weight, pieces, thicknessMm: null }] : [],
  );
  const gap = widestGap(loadsOf(owned, bar), best) ?? expect.fail();
  expect(weightOf(gap.to - gap.from, jump.unit).value).toBeLessThanOrEqual(jump.value + 1e-6);
});

// Common practice, no source: fractional plates are sold in halves, ones and twos of a pound, and in halves and ones of a kilogram.
it.each([
  [pounds(1), 'lb', [2, 1, 0.5]],
  [kilograms(1), 'kg', [1, 0.5]],
  [pounds(2.5), 'lb', [1.25]],
  [pounds(5), 'lb', []],
] as const)('a jump of %o takes such pairs as are sold', (jump, unit, weights) => {
  const micro = needsOf({ best: pounds(405), jump, olympicLifts: false, unit }).filter(({ kind }) => kind === 'micro');
  expect(micro.map(({ weight }) => weight?.value)).toEqual(weights);
});

// Common practice, no source: two to six pairs of 45s by strength.
it('two to six pairs of the heaviest', () => {
  const at = (best: number) => heavyPairs({ best: pounds(best), unit: 'lb' });
  expect([135, 225, 315, 405, 495, 585, 800].map(at)).toEqual([2, 2, 3, 4, 5, 6, 6]);
});

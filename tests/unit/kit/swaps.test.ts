import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pairUp, type WeighedPlate } from '../../../src/kit/pairing.ts';
import { swapsTo } from '../../../src/kit/swaps.ts';

const plates = (...pounds: number[]): WeighedPlate[] =>
  pounds.map((one, index) => ({ id: `${index + 1}`, face: 45, pounds: one }));
const told = (all: readonly WeighedPlate[]) =>
  swapsTo(pairUp(all, 45).pairs, all).map(({ stays, comes, goes }) => [stays.id, comes.id, goes?.id ?? null]);

it('names the one swap of four plates, with what it makes better', () => {
  const all = plates(46.2, 44.8, 45.1, 45.9);
  const [swap, ...more] = swapsTo(pairUp(all, 45).pairs, all);
  expect(more).toEqual([]);
  expect(new Set([swap?.comes.id, swap?.goes?.id])).toEqual(
    new Set(swap?.stays.id === '1' || swap?.stays.id === '3' ? ['2', '4'] : ['1', '3']),
  );
  expect(swap?.becomes).toBe(0.3);
  expect([1.4, 0.8]).toContain(swap?.was);
});

it('has nothing to swap where all lie right, and joins a plate that lay alone', () => {
  expect(told(plates(46.2, 45.9, 45.1, 44.8))).toEqual([]);
  // 44 stays alone: 46 and 46.1 belong together, and one of them lay with 44.
  expect(told(plates(46, 44, 46.1))).toEqual([['1', '3', '2']]);
  expect(swapsTo([], [])).toEqual([]);
});

it('makes the pairs, each by one swap at most, and in rings with one less', () => {
  const weights = fc.array(fc.integer({ min: 4200, max: 4900 }), { minLength: 2, maxLength: 13 });
  fc.assert(
    fc.property(weights, (hundredths) => {
      const all = plates(...hundredths.map((one) => one / 100));
      const { pairs } = pairUp(all, 45);
      const swaps = swapsTo(pairs, all);
      // Places on the floor, two and two: a swap exchanges what lies in two of them.
      const floor = all.map(({ id }) => id);
      for (const { stays, comes, goes } of swaps) {
        const place = goes === null ? floor.indexOf(stays.id) ^ 1 : floor.indexOf(goes.id);
        expect(place ^ 1).toBe(floor.indexOf(stays.id));
        const from = floor.indexOf(comes.id);
        floor[from] = goes?.id ?? '';
        floor[place] = comes.id;
      }
      for (const { left, right } of pairs) expect(floor.indexOf(left.id) ^ 1).toBe(floor.indexOf(right.id));
      const joined = pairs.filter(({ left, right }) => (all.indexOf(left) ^ 1) === all.indexOf(right)).length;
      expect(swaps.length).toBeLessThanOrEqual(
        Math.max(0, pairs.length - joined - (all.length % 2 === 0 && joined < pairs.length ? 1 : 0)),
      );
    }),
    { numRuns: 300 },
  );
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactly, over, type Range, range, scale, shift, sumIndependent, sumShared, times } from '../../../src/units/range.ts';

const someRange = fc
  .tuple(
    fc.double({ min: 0.01, max: 1e4, noNaN: true }),
    fc.double({ min: 0, max: 0.9, noNaN: true }),
    fc.double({ min: 0, max: 3, noNaN: true }),
  )
  .map(([likely, below, above]): Range => ({ low: likely * (1 - below), likely, high: likely * (1 + above) }));

const isOrdered = (r: Range): boolean =>
  r.low <= r.likely && r.likely <= r.high && [r.low, r.likely, r.high].every(Number.isFinite);

describe('range', () => {
  it('refuses what is out of order', () => {
    expect(() => range(2, 1, 3)).toThrow(RangeError);
    expect(() => range(1, 2, Number.POSITIVE_INFINITY)).toThrow(RangeError);
    expect(range(1, 2, 3)).toEqual({ low: 1, likely: 2, high: 3 });
  });

  it('adds independent errors in quadrature and shared ones in full', () => {
    const r = { low: 97, likely: 100, high: 104 };
    expect(sumIndependent([r, { low: 46, likely: 50, high: 53 }])).toEqual({ low: 145, likely: 150, high: 155 });
    expect(sumShared([r, r])).toEqual({ low: 194, likely: 200, high: 208 });
    expect(sumIndependent([])).toEqual(exactly(0));
  });

  it('turns round when scaled by a negative factor', () => {
    expect(scale({ low: 1, likely: 2, high: 4 }, -1)).toEqual({ low: -4, likely: -2, high: -1 });
    expect(shift({ low: 1, likely: 2, high: 4 }, 3)).toEqual({ low: 4, likely: 5, high: 7 });
  });

  it('refuses to divide by what may be zero', () => {
    expect(() => over(exactly(1), { low: 0, likely: 1, high: 2 })).toThrow(RangeError);
  });

  it('keeps every result in order, and a sum narrower than the shared one', () => {
    fc.assert(
      fc.property(someRange, someRange, (a, b) => {
        for (const r of [times(a, b), over(a, b), sumIndependent([a, b]), sumShared([a, b])]) expect(isOrdered(r)).toBe(true);
        expect(sumIndependent([a, b]).low).toBeGreaterThanOrEqual(sumShared([a, b]).low - 1e-9);
        expect(sumIndependent([a, b]).high).toBeLessThanOrEqual(sumShared([a, b]).high + 1e-9);
      }),
    );
  });
});

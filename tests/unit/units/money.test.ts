import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allocate, exponentOf, inMajor, money } from '../../../src/units/money.ts';

describe('money', () => {
  it('keeps cents as whole numbers, half away from zero', () => {
    expect(money(0.1 + 0.2, 'USD').minor).toBe(30);
    expect(money(1.005, 'USD').minor).toBe(101);
    expect(money(-2.675, 'USD').minor).toBe(-268);
    expect(() => money(Number.NaN, 'USD')).toThrow(RangeError);
  });

  it('knows currencies without minor units', () => {
    expect(exponentOf('JPY')).toBe(0);
    expect(inMajor(money(1500, 'JPY'))).toBe(1500);
  });
});

describe('allocate', () => {
  it('gives the left-over cents to the largest remainders', () => {
    expect(allocate(money(1, 'USD'), [1, 1, 1]).map((part) => part.minor)).toEqual([34, 33, 33]);
    expect(allocate({ minor: 10, currency: 'USD' }, [1.4, 2.6, 6]).map((part) => part.minor)).toEqual([1, 3, 6]);
    expect(allocate(money(10, 'USD'), [0, 0]).map((part) => part.minor)).toEqual([500, 500]);
    expect(allocate(money(10, 'USD'), [])).toEqual([]);
  });

  it('conserves money, and no part is off its exact share by a cent or more', () => {
    const weights = fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000_000 }), weights, (minor, shares) => {
        const parts = allocate({ minor, currency: 'USD' }, shares).map((part) => part.minor);
        expect(parts.reduce((a, b) => a + b, 0)).toBe(minor);
        const sum = shares.reduce((a, b) => a + b, 0);
        shares.forEach((share, index) => {
          const exact = sum > 0 ? (minor * share) / sum : minor / shares.length;
          expect(Math.abs((parts[index] ?? Number.NaN) - exact)).toBeLessThan(1 + 1e-3);
          expect(Number.isInteger(parts[index])).toBe(true);
        });
      }),
    );
  });
});

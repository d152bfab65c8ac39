/** Sketches against what they stand for: the likeness of whole sets, counted out, and the published vectors of the hash. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandsOf, likeness, smallest } from '../../../src/again/sketch.ts';

const hashes = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b);
const setOf = (size: number) =>
  fc.uniqueArray(fc.integer({ min: 0, max: 0xffffffff }), { minLength: 1, maxLength: size }).map(hashes);
/** Jaccard: shared over all. */
const jaccard = (one: readonly number[], other: readonly number[]): number => {
  const shared = one.filter((value) => other.includes(value)).length;
  return shared / (one.length + other.length - shared);
};

describe('likeness', () => {
  it('is exact for ads of ordinary length', () =>
    fc.assert(
      fc.property(setOf(60), setOf(60), setOf(60), (one, other, shared) => {
        const [a, b] = [hashes([...one, ...shared]), hashes([...other, ...shared])];
        expect(likeness(smallest(a), smallest(b))).toBeCloseTo(jaccard(a, b), 12);
      }),
    ));

  it('is near for long ones: within 4 standard errors of a share counted over 192', () => {
    let worst = 0;
    for (let part = 1; part < 10; part += 1) {
      // Spread evenly by a multiplier that is prime to 2^32 (Knuth).
      const many = Array.from({ length: 2000 }, (_, at) => Math.imul(at + part * 7919, 2654435761) >>> 0);
      const [a, b] = [hashes(many.slice(0, 1000 + part * 50)), hashes(many.slice(1000 - part * 100))];
      worst = Math.max(worst, Math.abs(likeness(smallest(a), smallest(b)) - jaccard(a, b)));
    }
    expect(worst).toBeLessThan(4 * Math.sqrt(0.25 / 192));
  });

  it('is nothing without words', () => expect([likeness([], []), likeness([1], [])]).toEqual([0, 0]));
});

describe('bands', () => {
  /** How many of 300 pairs with a given likeness share a band. */
  const met = (share: number): number => {
    let state = 12345;
    const draw = (): number => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return (state ^ (state >>> 13)) >>> 0;
    };
    let found = 0;
    for (let pair = 0; pair < 300; pair += 1) {
      const shared = Array.from({ length: Math.round(100 * share) }, draw);
      const own = (): number[] => Array.from({ length: Math.round((100 - shared.length) / 2) }, draw);
      const [a, b] = [bandsOf([...shared, ...own()]), bandsOf([...shared, ...own()])];
      if (a.some((band, at) => band === b[at])) found += 1;
    }
    return found / 300;
  };

  // 1 - (1 - s^3)^20, the chance by which bands and rows are chosen (Rajaraman and Ullman, "Mining of Massive Datasets", 3.4, from memory).
  it.each([0.2, 0.35, 0.5, 0.6, 0.8])('are shared at likeness %d as often as worked out', (share) =>
    expect(Math.abs(met(share) - (1 - (1 - share ** 3) ** 20))).toBeLessThan(0.08),
  );
});

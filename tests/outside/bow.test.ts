/** Bow from measurements, against a kinked line that is laid over two points and turned, step by step, with no formula of ours. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowFromCircle, bowFromString, bowFromWobble, bowVerdict } from '../../src/mechanics/bow.ts';

type Point = readonly [number, number];

/** A line of two straight pieces: kink at `bend` by `angle`, as points by their distance along it. */
const kinked =
  (bend: number, angle: number) =>
  (along: number): Point =>
    along <= bend ? [along, 0] : [bend + (along - bend) * Math.cos(angle), (along - bend) * Math.sin(angle)];

/** Distance of a point from the line through two others. */
function off([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  return Math.abs((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / Math.hypot(bx - ax, by - ay);
}

/** Largest distance of the line from the chord between its ends. */
function bowOf(line: (along: number) => Point, length: number): number {
  let most = 0;
  for (let step = 0; step <= 2000; step += 1) most = Math.max(most, off(line((step / 2000) * length), line(0), line(length)));
  return most;
}

describe('the circle that an end draws', () => {
  it('as a kinked bar turned on two supports draws it', () => {
    let inside = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 1500 }),
        fc.integer({ min: 100, max: 800 }),
        fc.integer({ min: 5, max: 95 }),
        fc.integer({ min: 1, max: 30 }),
        (spanMm, overhangMm, part, thousandths) => {
          // The far support stands at the beginning of the shaft, so places on the shaft are places on the bar.
          const shaftMm = spanMm + overhangMm;
          const bend = (shaftMm * part) / 100;
          fc.pre(Math.abs(bend - spanMm) > 1);
          const line = kinked(bend, thousandths / 1000);
          // Turned about the axis through the supports, the end keeps its distance from it.
          const circleMm = 2 * off(line(shaftMm), line(0), line(spanMm));
          fc.pre(circleMm > 0.5);
          const bow = bowFromCircle({ circleMm, spanMm, overhangMm, bendMm: bend, shaftMm, bendOnShaftMm: bend });
          expect(bow / bowOf(line, shaftMm)).toBeCloseTo(1, 1.9);
          if (bend < spanMm) inside += 1;
        },
      ),
      { numRuns: 200 },
    );
    expect(inside).toBeGreaterThan(20);
  });

  it('refuses a bend that is not on the bar', () => {
    const bar = { circleMm: 5, spanMm: 1000, overhangMm: 300, bendMm: 500, shaftMm: 1300, bendOnShaftMm: 500 };
    expect(bowFromCircle(bar)).toBeGreaterThan(0);
    expect(() => bowFromCircle({ ...bar, bendMm: 1300 })).toThrow(RangeError);
    expect(() => bowFromCircle({ ...bar, spanMm: 0 })).toThrow(RangeError);
  });
});

describe('a string along the shaft', () => {
  it('anywhere else the bow lies between the ends of the range, wherever the bar is bent, and comes near both', () => {
    const LENGTH = 1310;
    let [nearLow, nearHigh] = [0, 0];
    for (let bend = 10; bend < LENGTH; bend += 20) {
      const line = kinked(bend, 0.01);
      const bow = bowOf(line, LENGTH);
      for (const at of [100, 200, 500, 655, 800, 1000, 1250]) {
        const { low, likely, high } = bowFromString(off(line(at), line(0), line(LENGTH)), at, LENGTH);
        expect(low).toBeLessThanOrEqual(bow * 1.001);
        expect(high).toBeGreaterThanOrEqual(bow * 0.999);
        expect(likely).toBeGreaterThanOrEqual(low * 0.999_999);
        expect(likely).toBeLessThanOrEqual(high * 1.000_001);
        nearLow = Math.max(nearLow, low / bow);
        nearHigh = Math.max(nearHigh, bow / high);
      }
    }
    expect(nearLow).toBeGreaterThan(0.98);
    expect(nearHigh).toBeGreaterThan(0.98);
    // An even curve: a circle of 20 m.
    const RADIUS = 20_000;
    const arc = (along: number): Point => [RADIUS * Math.sin(along / RADIUS), RADIUS * (1 - Math.cos(along / RADIUS))];
    for (const at of [200, 400, 655, 1100]) {
      const seen = off(arc(at), arc(0), arc(LENGTH));
      expect(bowFromString(seen, at, LENGTH).likely / bowOf(arc, LENGTH)).toBeCloseTo(1, 2);
    }
  });

  it('refuses a reading beyond the string', () => {
    expect(() => bowFromString(1, 1310, 1310)).toThrow(RangeError);
    expect(() => bowFromString(-1, 100, 1310)).toThrow(RangeError);
  });
});

it('wobble: bow is half of the total indicator reading (machinists’ practice)', () => {
  expect(bowFromWobble(6)).toBe(3);
  expect(() => bowFromWobble(-1)).toThrow(RangeError);
});

// Common practice, no source: within about 3 mm usable, more than 4 to 5 mm bent, in between doubtful.
it('what is usable', () => {
  expect([0, 3, 3.1, 5, 5.1, 12].map(bowVerdict)).toEqual(['usable', 'usable', 'doubtful', 'doubtful', 'bent', 'bent']);
});

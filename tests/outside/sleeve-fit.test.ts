import { describe, expect, it } from 'vitest';
import { leanAtRim, tiltOf } from '../../src/mechanics/sleeve-fit.ts';

/**
 * An independent calculation: a rectangle (the sleeve, `sleeve` wide and long enough) is turned about the middle of a slot
 * `bore` wide and `hub` long by small steps, and bisected for the largest angle at which no corner of the slot lies inside the sleeve.
 * No trigonometric identity of the formula under test is used: only rotation of points and a comparison.
 */
function tiltByTurning(bore: number, sleeve: number, hub: number): number {
  const corners = [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ x: (x * hub) / 2, y: (y * bore) / 2 })));
  const clear = (radians: number): boolean =>
    corners.every(({ x, y }) => Math.abs(-x * Math.sin(radians) + y * Math.cos(radians)) >= sleeve / 2);
  let low = 0;
  let high = Math.PI / 2;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    let free = true;
    for (let part = 1; part <= 200 && free; part++) free = clear((middle * part) / 200);
    if (free) low = middle;
    else high = middle;
  }
  return (low * 180) / Math.PI;
}

describe('tilt of a plate on a sleeve', () => {
  for (const [bore, sleeve, hub] of [
    [50.8, 50, 32],
    [52, 50, 25],
    [53.5, 50, 38],
    [56, 50, 20],
    [30, 25, 20],
  ] as const) {
    it(`${bore} mm on ${sleeve} mm with a hub of ${hub} mm agrees with turning a rectangle`, () => {
      expect(tiltOf(bore, sleeve, hub)).toBeCloseTo(tiltByTurning(bore, sleeve, hub), 6);
    });
  }

  it('is nothing without play, grows with play, shrinks with a thicker hub', () => {
    expect(tiltOf(50, 50, 30)).toBe(0);
    expect(tiltOf(49, 50, 30)).toBe(0);
    expect(tiltOf(53, 50, 30)).toBeGreaterThan(tiltOf(52, 50, 30));
    expect(tiltOf(53, 50, 40)).toBeLessThan(tiltOf(53, 50, 30));
    expect(() => tiltOf(53, 50, 0)).toThrow(RangeError);
  });

  it('leans by the sine of the tilt over the diameter', () => {
    expect(leanAtRim(30, 450)).toBeCloseTo(225, 9);
  });
});

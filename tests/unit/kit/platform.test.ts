import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flushness, nearestLayers, platformPlan } from '../../../src/kit/platform.ts';
import { SHEETS } from '../../../src/kit/platform-sheets.ts';

const FEET_8 = 2438.4;
const IN = 25.4;

describe('worked by hand', () => {
  it('makes an 8 by 8 ft square of three crossed layers from six sheets', () => {
    const plan = platformPlan({
      rackFloorMm: 56,
      widthMm: FEET_8,
      depthMm: FEET_8,
      toleranceMm: 3,
      layers: ['plywood-23/32', 'plywood-23/32', 'plywood-23/32'],
    });
    expect(plan.bought).toEqual([{ sheet: 'plywood-23/32', count: 6 }]);
    expect(plan.sheets.every(({ pieces }) => pieces.length === 1)).toBe(true);
    // 3 × 0.719 in = 54.79 mm.
    expect(plan.heightMm.likely).toBeCloseTo(3 * 0.719 * IN, 6);
    expect(plan).toMatchObject({ flush: true, shimMm: 0, turnWithTwo: true });
    // 54.79 ± 2.36 mm: at its thinnest it lies 3.57 mm low.
    expect(plan.surely).toBe(false);
    // A grid of a foot, 2 in from the edges of 96 in: 92 in make 9 screws each way; three layers are screwed from both faces.
    expect(plan.screws).toEqual({ count: 2 * 81, longestMm: 49 });
  });

  it('covers 8 by 8 ft with three stall mats: two whole, the rest from the third', () => {
    const plan = platformPlan({ rackFloorMm: 19, widthMm: FEET_8, depthMm: FEET_8, toleranceMm: 2, layers: ['rubber-3/4'] });
    expect(plan.bought).toEqual([{ sheet: 'rubber-3/4', count: 3 }]);
    expect(plan).toMatchObject({ pounds: 300, screws: null, turnWithTwo: false, price: { likely: 180 } });
  });

  it('says which shim is missing, under the platform or under the rack', () => {
    // Two MDF and a mat: 57.15 mm. The 3/4 in sheets' errors: 2 × 0.127 mm, the mat's 1.5875 mm, in quadrature 1.608 mm.
    const stack = flushness(['mdf-3/4', 'mdf-3/4', 'rubber-3/4'], 60, 2);
    expect(stack.heightMm.likely).toBeCloseTo(57.15, 6);
    expect(stack.heightMm.high - stack.heightMm.likely).toBeCloseTo(Math.hypot(0.254, 1.5875), 6);
    expect(stack.flush).toBe(false);
    expect(stack.shimMm).toBeCloseTo(2.85, 6);
    expect(flushness(['mdf-3/4', 'mdf-3/4', 'rubber-3/4'], 54, 2).shimMm).toBeCloseTo(-3.15, 6);
  });

  it('trims an inch off an end and a side of MDF', () => {
    const { sheets } = platformPlan({
      rackFloorMm: 38,
      widthMm: FEET_8,
      depthMm: FEET_8,
      toleranceMm: 2,
      layers: ['mdf-3/4', 'mdf-3/4'],
    });
    expect(sheets).toHaveLength(4);
    for (const { shortMm, longMm, pieces } of sheets) {
      expect([shortMm / IN, longMm / IN]).toEqual([49, 97]);
      expect(pieces[0]?.acrossSizeMm).toBeCloseTo(48 * IN, 6);
      expect(pieces[0]?.alongSizeMm).toBeCloseTo(96 * IN, 6);
    }
  });

  it('finds a stack by itself: 2-1/4 in is two 3/4 in sheets and a mat', () => {
    const layers = nearestLayers(2.25 * IN);
    expect(layers).toHaveLength(3);
    expect(layers.at(-1)).toBe('rubber-3/4');
    expect(Math.abs(flushness(layers, 2.25 * IN, 1).shimMm)).toBe(0);
  });
});

describe('what no plan of sheets makes good', () => {
  const room = { widthMm: FEET_8, depthMm: FEET_8, toleranceMm: 3 };

  it('one layer of wood is two loose sheets, and so are mats alone; two layers are screwed together', () => {
    const low = platformPlan({ ...room, rackFloorMm: 30 });
    expect(low.layers.filter((layer) => layer !== 'rubber-3/4')).toHaveLength(1);
    expect(low).toMatchObject({ loose: true, screws: null });
    expect(platformPlan({ ...room, rackFloorMm: 19 })).toMatchObject({ layers: ['rubber-3/4'], loose: true });
    expect(platformPlan({ ...room, rackFloorMm: 57 }).loose).toBe(false);
    // One mat by itself has no seam.
    expect(platformPlan({ ...room, widthMm: 1000, depthMm: 1500, rackFloorMm: 19 }).loose).toBe(false);
  });

  it('a floor that no stack reaches is no case for a shim', () => {
    // Four full 3/4 in sheets and a mat: 5 × 19.05 = 95.25 mm.
    const high = platformPlan({ ...room, rackFloorMm: 150 });
    expect(high.heightMm.likely).toBeCloseTo(95.25, 6);
    expect(high).toMatchObject({ tooLow: true, flush: false });
    expect(platformPlan({ ...room, rackFloorMm: 107 }).tooLow).toBe(false);
    expect(platformPlan({ ...room, rackFloorMm: 108 }).tooLow).toBe(true);
    for (const rackFloorMm of [10, 19, 30, 45, 57, 95]) expect(platformPlan({ ...room, rackFloorMm }).tooLow).toBe(false);
  });

  it('says when the room is larger than the plan', () => {
    expect(platformPlan({ ...room, rackFloorMm: 57 }).isPart).toBe(false);
    expect(platformPlan({ ...room, widthMm: FEET_8 + 1, rackFloorMm: 57 }).isPart).toBe(true);
    expect(platformPlan({ ...room, depthMm: 4000, rackFloorMm: 57 })).toMatchObject({ isPart: true, depthMm: FEET_8 });
  });
});

it('refuses rubber under wood, no layers, and a room of nothing', () => {
  const wish = { rackFloorMm: 60, widthMm: 1000, depthMm: 1000, toleranceMm: 2 };
  expect(() => platformPlan({ ...wish, layers: ['rubber-3/4', 'mdf-3/4'] })).toThrow(RangeError);
  expect(() => platformPlan({ ...wish, layers: [] })).toThrow(RangeError);
  expect(() => platformPlan({ ...wish, widthMm: 0 })).toThrow(RangeError);
});

it('covers every layer once, and no two pieces of a sheet overlap or leave it', () => {
  const sizes = fc.integer({ min: 300, max: 2600 });
  fc.assert(
    fc.property(sizes, sizes, fc.integer({ min: 15, max: 110 }), (widthMm, depthMm, rackFloorMm) => {
      const plan = platformPlan({ rackFloorMm, widthMm, depthMm, toleranceMm: 2 });
      for (const [layer] of plan.layers.entries()) {
        const area = plan.sheets
          .flatMap(({ pieces }) => pieces)
          .filter((piece) => piece.layer === layer)
          .reduce((sum, { acrossSizeMm, alongSizeMm }) => sum + acrossSizeMm * alongSizeMm, 0);
        expect(area).toBeGreaterThan(0.995 * plan.widthMm * plan.depthMm);
        expect(area).toBeLessThan(1.001 * plan.widthMm * plan.depthMm);
      }
      for (const { shortMm, longMm, pieces } of plan.sheets) {
        for (const [index, a] of pieces.entries()) {
          expect(a.acrossMm + a.acrossSizeMm).toBeLessThan(shortMm + 1);
          expect(a.alongMm + a.alongSizeMm).toBeLessThan(longMm + 1);
          for (const b of pieces.slice(index + 1)) {
            const apart =
              a.acrossMm + a.acrossSizeMm <= b.acrossMm ||
              b.acrossMm + b.acrossSizeMm <= a.acrossMm ||
              a.alongMm + a.alongSizeMm <= b.alongMm ||
              b.alongMm + b.alongSizeMm <= a.alongMm;
            expect(apart).toBe(true);
          }
        }
      }
    }),
    { numRuns: 200 },
  );
});

it('the nearest stack is off by less than half the thinnest sheet from two sheets and a mat up to four', () => {
  for (let mm = 45; mm <= 95; mm += 1) {
    const { heightMm } = flushness(nearestLayers(mm), mm, 0);
    expect(Math.abs(heightMm.likely - mm), `${mm} mm`).toBeLessThan(6);
  }
  expect(SHEETS['plywood-15/32'].thicknessMm.low).toBeCloseTo(11.125, 3);
});

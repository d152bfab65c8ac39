/** What is left of the saving, distance by distance, against the drive's cost and its break-even, which are worked out elsewhere. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';

const AD = 'Olympic plates 4 x 45 lb and 2 x 25 lb, 50 mm holes. $100 for all';
const judged = (over: Partial<Settings>) => evaluate(listingFromText(AD), { ...DEFAULT_SETTINGS, ...over });
const curve = (over: Partial<Settings>) => judged(over).prospect?.byDistance ?? [];

describe('the saving by distance', () => {
  it('begins at the whole saving, falls straight, and is what the drive leaves of it where the seller lives', () => {
    for (const unit of ['mi', 'km'] as const) {
      const { prospect, trip } = judged({ distance: { value: 32, unit } });
      const points = prospect?.byDistance ?? [];
      const slope = ((points[1]?.saving.likely ?? 0) - (points[0]?.saving.likely ?? 0)) / (points[1]?.distance.value ?? 1);
      expect(Math.abs((points[0]?.saving.likely ?? 0) - (prospect?.saving.minor ?? 0))).toBeLessThan(1);
      expect(Math.abs((points[0]?.saving.likely ?? 0) + 32 * slope - (prospect?.afterDrive?.minor ?? 0))).toBeLessThan(1);
      expect(32 * slope).toBeCloseTo(-(trip?.cost.likely ?? 0), 6);
      expect(
        points.every(
          ({ saving, distance }) => saving.low <= saving.likely && saving.likely <= saving.high && distance.unit === unit,
        ),
      ).toBe(true);
    }
  });

  it('crosses zero at the break-even, with tolls and a van counted too', () => {
    for (const over of [{}, { tolls: 12 }, { van: { cost: 20, per: 'trip' as const }, payloadLb: 150 }]) {
      const { prospect } = judged({ distance: { value: 5, unit: 'mi' }, ...over });
      const points = prospect?.byDistance ?? [];
      const gone = prospect?.breakEvenDistance?.value ?? Number.NaN;
      const after = points.find(({ saving }) => saving.likely < 0)?.distance.value ?? Number.NaN;
      const before = points.findLast(({ saving }) => saving.likely >= 0)?.distance.value ?? Number.NaN;
      expect(gone + 1).toBeGreaterThanOrEqual(before);
      expect(gone).toBeLessThanOrEqual(after);
    }
  });

  it('reaches past the seller and past the break-even, but not past what anybody drives', () => {
    const far = (over: Partial<Settings>) => curve(over).at(-1)?.distance.value ?? 0;
    expect(far({ distance: { value: 400, unit: 'mi' } })).toBe(500);
    expect(far({ perMile: 0.01, hourWorth: 0 })).toBe(250);
    const { breakEvenDistance } = judged({}).prospect ?? {};
    expect(far({})).toBeCloseTo(1.25 * (breakEvenDistance?.value ?? 0), 9);
  });

  it('is empty where there is no saving, and where driving costs nothing', () => {
    expect(evaluate(listingFromText(AD.replace('$100', '$900')), DEFAULT_SETTINGS).prospect?.byDistance).toEqual([]);
    expect(curve({ perMile: 0, hourWorth: 0 })).toEqual([]);
  });
});

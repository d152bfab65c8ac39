import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { loadingCautions, pickupSteps, STEP_IDS, toolsFor } from '../../../src/pickup/steps.ts';
import { straightnessCorrections, straightnessOf } from '../../../src/pickup/straightness.ts';

const LOT = listingFromText(
  '4 x 45 lb olympic plates, an olympic bar, 7 ft, straight, a power rack and a flat bench, $600 for all',
);
const judge = (...corrections: Parameters<typeof evaluate>[2][]) =>
  evaluate(
    LOT,
    DEFAULT_SETTINGS,
    corrections.flatMap((one) => one ?? []),
  );
const reading = judge().reading;
const bar = reading.items.find(({ kind }) => kind.value === 'bar')?.id ?? '';

describe('steps', () => {
  it('come in the order of a driveway, each with what it is done to', () => {
    const steps = pickupSteps(reading);
    expect(steps.map(({ id }) => id)).toEqual(STEP_IDS.filter((id) => id !== 'collars' && id !== 'hooks'));
    expect(steps.every(({ items }) => items.length > 0)).toBe(true);
    expect(steps.find(({ id }) => id === 'straight')?.items.map(({ id }) => id)).toEqual([bar]);
    expect(pickupSteps({ items: [], text: '' })).toEqual([]);
  });

  it('look at pins on a rack alone, at hooks on stands and on a bench with uprights', () => {
    const held = (text: string) =>
      pickupSteps(evaluate(listingFromText(text), DEFAULT_SETTINGS).reading)
        .filter(({ id }) => id === 'pins' || id === 'hooks')
        .map(({ id, items }) => [id, ...items.map(({ kind }) => kind.value)]);
    expect(held('A power rack and a flat bench, $200')).toEqual([['pins', 'rack']]);
    expect(held('Squat stands and a bench with uprights, $100')).toEqual([['hooks', 'stands', 'bench']]);
    expect(held('A flat bench, $40')).toEqual([]);
  });

  it('pass over what counts for nothing', () => {
    const { reading: less } = judge([{ path: `${bar}.plan`, value: 'nothing' }]);
    expect(pickupSteps(less).map(({ id }) => id)).not.toContain('straight');
  });

  it('name the tools', () => {
    const plates = evaluate(listingFromText('4 x 45 lb olympic plates $100'), DEFAULT_SETTINGS).reading;
    expect(toolsFor(pickupSteps(plates))).toEqual(['calipers', 'scale', 'chalk', 'collars', 'straps', 'gloves', 'cash']);
    expect(toolsFor(pickupSteps(reading))).toEqual(expect.arrayContaining(['string', 'tape', 'wrench', 'help']));
    expect(toolsFor([])).toEqual([]);
    expect(loadingCautions(plates)).toEqual(['strap', 'low', 'payload']);
    expect(loadingCautions(reading)).toContain('bar');
  });
});

describe('straightness', () => {
  it('by any way', () => {
    expect(straightnessOf({ way: 'wobble', readingMm: 4 })).toEqual({
      bowMm: { low: 2, likely: 2, high: 2 },
      verdict: 'usable',
      open: false,
    });
    expect(straightnessOf({ way: 'string', offsetMm: 2.5 })).toEqual({
      bowMm: { low: 2.5, likely: 2.5, high: 2.5 },
      verdict: 'usable',
      open: false,
    });
    expect(straightnessOf({ way: 'stringAt', offsetMm: 6, atMm: 655, lengthMm: 1310 })?.verdict).toBe('bent');
    // Not at the widest place the same distance leaves more open, also in the middle.
    expect(straightnessOf({ way: 'stringAt', offsetMm: 2.5, atMm: 300, lengthMm: 1310 })?.open).toBe(true);
    expect(straightnessOf({ way: 'stringAt', offsetMm: 2.5, atMm: 655, lengthMm: 1310 })?.bowMm.high).toBe(5);
    // A kink in the middle of evenly set supports, span 1200, overhang 500: θ = r/(600·500/1200), bow = θ·1310/4.
    const circle = straightnessOf({ way: 'circle', circleMm: 10, spanMm: 1200, overhangMm: 500, bendMm: 600, shaftMm: 1310 });
    expect(circle?.bowMm.likely).toBeCloseTo(((5 / 250) * 1310) / 4, 6);
  });

  it('gives nothing where the measures can’t be', () => {
    expect(straightnessOf({ way: 'stringAt', offsetMm: 2, atMm: 1400, lengthMm: 1310 })).toBeNull();
    expect(straightnessOf({ way: 'string', offsetMm: -1 })).toBeNull();
    expect(
      straightnessOf({ way: 'circle', circleMm: 10, spanMm: 1200, overhangMm: 500, bendMm: 1800, shaftMm: 1310 }),
    ).toBeNull();
    expect(straightnessOf({ way: 'wobble', readingMm: -1 })).toBeNull();
  });

  it('turns the reading: bent, straight, or neither whatever the ad says', () => {
    const words = (verdict: Parameters<typeof straightnessCorrections>[1]) =>
      judge(straightnessCorrections(bar, verdict))
        .reading.items.find(({ id }) => id === bar)
        ?.conditions.map(({ value }) => value);
    expect(words('usable')).toContain('straight');
    expect(words('bent')).toContain('bent');
    expect(words('bent')).not.toContain('straight');
    expect(words('doubtful')).not.toContain('straight');
    expect(words('doubtful')).not.toContain('bent');
  });
});

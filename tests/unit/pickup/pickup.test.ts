import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import type { Correction } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { refusals } from '../../../src/message/refusal.ts';
import { loadingCautions, pickupSteps, STEP_IDS, toolsFor } from '../../../src/pickup/steps.ts';
import {
  type Straightness,
  straightnessBefore,
  straightnessCorrections,
  straightnessOf,
  straightnessPaths,
} from '../../../src/pickup/straightness.ts';

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

  /** The bar of the lot, measured by wobble. */
  const measuredBar = (verdict: Straightness['verdict']) => {
    const measure = straightnessOf({ way: 'wobble', readingMm: { usable: 4, doubtful: 8, bent: 14 }[verdict] });
    expect(measure?.verdict).toBe(verdict);
    const evaluation = judge(measure ? straightnessCorrections(bar, measure) : []);
    return { ...evaluation, item: evaluation.reading.items.find(({ id }) => id === bar) };
  };

  it('is not known while a measure leaves more open', () => {
    // 2.5 mm there may be 5 mm elsewhere: no bar to go under.
    const open = straightnessOf({ way: 'stringAt', offsetMm: 2.5, atMm: 655, lengthMm: 1310 });
    expect([open?.verdict, open?.open]).toEqual(['doubtful', true]);
    // The same circle, with the bend in the middle and near the far support.
    const circle = { way: 'circle', circleMm: 4.5, spanMm: 1200, overhangMm: 500, shaftMm: 1310 } as const;
    expect(straightnessOf({ ...circle, bendMm: 600 })?.verdict).toBe('usable');
    expect(straightnessOf({ ...circle, bendMm: 200 })?.verdict).toBe('bent');
  });

  it('stays with the bar as a length, and is told when it comes back', () => {
    for (const [verdict, mm] of [
      ['usable', 2],
      ['doubtful', 4],
      ['bent', 7],
    ] as const) {
      const { item } = measuredBar(verdict);
      expect(item?.bowMm).toMatchObject({ value: mm, basis: 'measured' });
      expect(item && straightnessBefore(item)).toEqual({ verdict, bowMm: mm });
    }
    expect(reading.items.map(straightnessBefore).filter((before) => before !== null)).toEqual([]);
  });

  it('a doubtful one is a caution, costs worth, is a reason, and is asked no more', () => {
    const lone = (...corrections: Correction[]) =>
      evaluate(
        listingFromText('Olympic barbell, 7 ft, $200'),
        { ...DEFAULT_SETTINGS, distance: { value: 30, unit: 'mi' } },
        corrections,
      );
    const unsaid = lone();
    const [path = ''] = straightnessPaths('bar-1').slice(-1);
    const doubtful = lone({ path, value: 4, unit: 'mm', basis: 'measured' });
    const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
    expect(ids(unsaid.flags)).toContain('straightness-unknown');
    expect(ids(unsaid.questions)).toContain('straightness');
    expect(ids(doubtful.flags)).toContain('bow-doubtful');
    expect(ids(doubtful.flags)).not.toContain('straightness-unknown');
    expect(ids(doubtful.questions)).not.toContain('straightness');
    expect(doubtful.worth.walkAway?.minor).toBeLessThan(unsaid.worth.walkAway?.minor ?? 0);
    expect(refusals(doubtful).map(({ key }) => key)).toContain('message_refuse_bow');
    for (const verdict of ['usable', 'bent'] as const)
      expect(measuredBar(verdict).flags.map(({ id }) => id)).not.toContain('bow-doubtful');
  });

  it('turns the reading: bent, straight, or neither whatever the ad says', () => {
    const words = (verdict: Straightness['verdict']) => measuredBar(verdict).item?.conditions.map(({ value }) => value);
    expect(words('usable')).toContain('straight');
    expect(words('bent')).toContain('bent');
    expect(words('bent')).not.toContain('straight');
    expect(words('doubtful')).not.toContain('straight');
    expect(words('doubtful')).not.toContain('bent');
  });
});

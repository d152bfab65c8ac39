import { describe, expect, it } from 'vitest';
import { barWeightBounds } from '../../../src/mechanics/steel.ts';

describe('what a bar can weigh', () => {
  it('is at least its shaft from end to end', () => {
    // π/4 · 28² mm² · 2200 mm · 7850 kg/m³ = 10.634 kg
    expect(barWeightBounds(28, 2200).low).toBeCloseTo(10.634, 3);
  });

  it('grows with shaft and length', () => {
    expect(barWeightBounds(32, 2200).low).toBeGreaterThan(barWeightBounds(28, 2200).low);
    expect(barWeightBounds(28, 1500).high).toBeLessThan(barWeightBounds(28, 2200).high);
  });
});

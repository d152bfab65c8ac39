/** Assumptions by their path into the settings. */
import { describe, expect, it } from 'vitest';
import { isOwn, withDefault, withOwn } from '../../../src/listing/setting-path.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { exactly } from '../../../src/units/range.ts';

const DAY = '2026-05-31';
const low = { low: 0.1, likely: 0.2, high: 0.3 };
const put = (settings: Settings, ...change: [Parameters<typeof withOwn>[1], Parameters<typeof withOwn>[2]]): Settings => {
  const changed = withOwn(settings, ...change, DAY);
  if (changed === null) throw new Error('refused');
  return { ...settings, ...changed };
};

describe('an assumption by its path', () => {
  it('is changed, is then own, and goes back to the default without a trace', () => {
    for (const path of ['margin', 'salesTax', 'rates.iron.used', 'rates.rack.shipping'] as const) {
      const changed = put(DEFAULT_SETTINGS, path, low);
      expect(isOwn(DEFAULT_SETTINGS, path)).toBe(false);
      expect(isOwn(changed, path)).toBe(true);
      expect({ ...changed, ...withDefault(changed, path) }).toEqual(DEFAULT_SETTINGS);
    }
  });

  it('leaves the other cells and rows as they are, going in and going out', () => {
    const two = put(put(DEFAULT_SETTINGS, 'rates.iron.used', low), 'rates.iron.new', exactly(2));
    const three = put(two, 'rates.bar.used', exactly(90));
    expect(three.rates.iron?.used).toEqual({ ...low, source: 'own', date: DAY });
    expect({ ...three, ...withDefault(three, 'rates.bar.used') }).toEqual(two);
    expect({ ...two, ...withDefault(two, 'rates.iron.new') }).toEqual(put(DEFAULT_SETTINGS, 'rates.iron.used', low));
  });

  it.each([
    ['rates.iron.used', { low: 3, likely: 2, high: 4 }],
    ['rates.iron.used', { low: 1, likely: 2, high: 1.5 }],
    ['rates.iron.used', exactly(-1)],
    ['margin', exactly(0.95)],
    ['salesTax', exactly(1.01)],
    ['speedMph', exactly(0)],
    ['sleeveMm', exactly(19.9)],
    ['perMile', exactly(Number.NaN)],
    ['hourWorth', exactly(Number.POSITIVE_INFINITY)],
  ] as const)('%s of %j is refused', (path, value) => expect(withOwn(DEFAULT_SETTINGS, path, value, DAY)).toBeNull());
});

/** Common practice, no source: what its maker rates low is of the cheapest make, and no buyer pays for it what a sturdy one brings. */
import { expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import { item, lb, reading, settings } from '../making/readings.ts';

it.each(['bar', 'rack', 'bench'] as const)('a low rating lowers what a %s is worth, a high one does not', (kind) => {
  const most = (values: Parameters<typeof item>[2]) => {
    const conditions = kind === 'bar' ? (['straight'] as const) : [];
    return (
      judge(reading([item(`${kind}-1`, kind, { count: 1, ...values }, conditions)], 100), settings()).worth.walkAway?.minor ?? 0
    );
  };
  expect(most({ capacity: lb(1000) })).toBe(most({}));
  expect(most({ capacity: lb(300) })).toBeLessThan(most({}) / 2);
  expect(most({ capacity: lb(300) })).toBeGreaterThan(0);
});

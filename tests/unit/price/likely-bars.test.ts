/** Bars by the plates they come with. Common practice, no source: filled and 1-inch plates are sold with 1-inch bars. */
import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/evaluate.ts';
import type { Item } from '../../../src/listing/reading.ts';
import { item, kg, lb, plates, reading, settings } from '../making/readings.ts';

const vinyl = plates('plate-1', 4, lb(10), { material: 'vinyl' });
const judged = (bar: Item, ...others: readonly Item[]) => judge(reading([bar, ...others], 40), settings());
const bar = (values: Parameters<typeof item>[2] = {}) => item('bar-1', 'bar', { count: 1, ...values });
const said = ({ flags }: ReturnType<typeof judge>) => flags.find(({ id }) => id === 'one-inch-bar')?.says.key ?? null;

describe('a bar of which the ad tells nothing', () => {
  it('is taken for a 1-inch bar among filled or 1-inch plates, and is worth nothing on a 50 mm buyer', () => {
    for (const plate of [vinyl, plates('plate-1', 4, lb(10), { fits: '25mm' })]) {
      const evaluation = judged(bar(), plate);
      expect(said(evaluation)).toBe('flag_one_inch_bar_likely');
      expect(evaluation.call.kind).toBe('leave');
      expect(evaluation.reading.items[0]?.fits).toBeNull();
    }
  });

  it('stays open where the ad says more, or sells other plates too', () => {
    expect(said(judged(bar({ fits: '50mm' }), vinyl))).toBeNull();
    expect(said(judged(bar({ lengthMm: 2134 }), vinyl))).toBeNull();
    expect(said(judged(bar({ unitWeight: kg(20) }), vinyl))).toBeNull();
    expect(said(judged(bar(), vinyl, plates('plate-2', 2, lb(45))))).toBeNull();
    expect(said(judged(bar()))).toBeNull();
  });
});

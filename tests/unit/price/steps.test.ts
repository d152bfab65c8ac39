/** Where the rates of the calculation come from, in words; the figures are the project's own defaults, no source. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { english } from '../../tools/evaluate/strings.ts';

const say = english();
const AD = 'Olympic plates 4 x 45 lb and a power rack. $400 for all';
const sources = (settings: Settings): Record<string, string> =>
  Object.fromEntries(
    evaluate(listingFromText(AD), settings)
      .worth.steps.filter(({ id, source }) => /^(?:used-rate|new-price):/.test(id) && source !== null)
      .map(({ id, source }) => [id, source ? say(source) : '']),
  );

describe('the source of a rate', () => {
  it('is told of the used and of the new figure apart', () =>
    expect(sources(DEFAULT_SETTINGS)).toEqual({
      'used-rate:iron': 'Common practice, no source (Jan 2026)',
      'new-price:iron': 'Common practice, no source (Jan 2026)',
      'used-rate:rack': 'Assumption (Jan 2026)',
      'new-price:rack': 'Common practice, no source (Jan 2026)',
    }));

  it("is the buyer's own, in the buyer's words where there are any", () => {
    const figures = { low: 0.4, likely: 0.6, high: 0.8 };
    const rates: Settings['rates'] = {
      iron: {
        used: { ...figures, source: 'own', date: '' },
        new: { ...figures, source: 'the shop at the weir', date: '2026-05' },
      },
    };
    expect(sources({ ...DEFAULT_SETTINGS, rates })).toMatchObject({
      'used-rate:iron': 'Your own figure',
      'new-price:iron': 'the shop at the weir (May 2026)',
    });
  });
});

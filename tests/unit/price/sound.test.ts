/** What a sound one costs beside one that is good for nothing; the figures are the project's own default rates. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';

const soundOf = (ad: string, over = {}) => evaluate(listingFromText(ad), { ...DEFAULT_SETTINGS, ...over }).worth.sound;

describe('a sound one', () => {
  it('is told of a bar with a deal-breaker, by the piece', () =>
    expect(soundOf('Olympic bar 7 ft, shaft 32 mm. $45')).toMatchObject({
      kind: 'bar',
      per: 'piece',
      used: { low: 8000, likely: 16000, high: 30000, currency: 'USD' },
    }));

  it('is told of cracked plates, by the pound or kilogram', () => {
    const ad = 'Olympic plates, 4 x 45 lb, cracked, all of them. $60';
    expect(soundOf(ad)).toMatchObject({ kind: 'plate', per: 'lb', used: { likely: 75 } });
    expect(soundOf(ad, { unit: 'kg' })?.used.likely).toBeCloseTo(75 * 2.20462262, 4);
  });

  it('is not told of 1-inch plates to somebody whose sleeves are all wide', () => {
    const ad = '1 inch hole plates, 4 x 25 lb, cracked, all of them. $20';
    expect(soundOf(ad)).toBeNull();
    expect(soundOf(ad, { otherSleeveMm: 25 })).toMatchObject({ used: { likely: 45 } });
  });

  it('is not told where something is worth something, where kinds are mixed, or in another currency', () => {
    expect(soundOf('Olympic plates 4 x 45 lb and an olympic bar, shaft 32 mm. $145')).toBeNull();
    expect(soundOf('Olympic plates 4 x 45 lb, cracked, all of them. Olympic bar, shaft 32 mm. $45')).toBeNull();
    expect(soundOf('Olympic bar 7 ft, shaft 32 mm. 45 €')).toBeNull();
  });
});

import { describe, expect, test } from 'vitest';
import { adKey } from '../../../extension/panel/ad-key.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';

const key = (text: string) => adKey(listingFromText(text));

describe('the name of an ad', () => {
  test('is the same for the same words, however they are spaced, wherever they stand', () => {
    expect(key('4x45 lb\n  $90')).toBe(key('4X45  lb $90 '));
    expect(adKey({ ...listingFromText('4x45 lb'), address: 'http://a.example/', origin: 'pick' })).toBe(key('4x45 lb'));
  });

  test('is another for other words', () => {
    const ads = Array.from({ length: 5000 }, (_, i) => `${(i % 8) + 1}x${45 + (i % 3)} lb, $${i}`);
    expect(new Set(ads.map(key)).size).toBe(new Set(ads.map((ad) => ad.toLowerCase())).size);
  });
});

/** Parcel limits: the large US carriers' and the federal post's, seen in a transcription of their lists. Fees are the project's assumptions. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { parcelFeeOf, pricesForItem, pricesOf } from '../../../src/price/rates.ts';
import { parcelClassOf, parcelOf } from '../../../src/price/shipping.ts';
import { item, kg, lb, plates, settings } from '../making/readings.ts';

const box = (lengthIn: number, pounds: number, widthIn = 4, heightIn = 4) => ({ lengthIn, widthIn, heightIn, pounds });

describe('the class of a parcel', () => {
  it.each([
    ['at every plain limit', box(48, 50), 'ordinary'],
    ['over 48 in', box(48.1, 20), 'handling'],
    ['over 50 lb', box(12, 50.1), 'handling'],
    ['a boxed 2.2 m bar: 90 x 4 x 4 in, 45 lb', box(90, 45), 'handling'],
    ['at 96 in and 110 lb', box(96, 110), 'handling'],
    ['over 96 in', box(96.1, 20), 'large'],
    ['130 in of length and girth', box(60, 20, 20, 15), 'handling'],
    ['over 130 in of length and girth', box(60, 20, 20, 15.1), 'large'],
    ['over 110 lb', box(20, 110.1), 'large'],
    ['165 in of length and girth, 150 lb', box(80, 150, 22.5, 20), 'large'],
    ['over 165 in of length and girth', box(80, 20, 22.5, 20.1), 'freight'],
    ['over 150 lb', box(20, 150.1), 'freight'],
  ])('%s', (_, parcel, expected) => expect(parcelClassOf(parcel)).toBe(expected));
});

describe('the box of a piece', () => {
  it('is as long as the bar and its packing', () => {
    expect(parcelOf(item('bar-1', 'bar', { lengthMm: 2200 }), 'bar')?.lengthIn).toBeCloseTo(90, 9);
    expect(parcelOf(item('bar-1', 'bar', { lengthMm: 1000 }), 'bar')?.lengthIn).toBeCloseTo(42.757, 2);
    expect(parcelOf(item('bar-1', 'bar'), 'bar')).toEqual(box(90, 45));
  });

  it('is none where the weight of a piece is not known, nor for a rack, which comes in several', () => {
    expect(parcelOf(item('plate-1', 'plate', { totalWeight: lb(300) }), 'iron')).toBeNull();
    expect(parcelOf(item('rack-1', 'rack', { unitWeight: lb(200) }), 'rack')).toBeNull();
  });
});

describe('the fee', () => {
  const delivered = (weight: number, changes: Partial<Settings> = {}): number => {
    const own = settings(changes);
    const one = plates('plate-1', 2, lb(weight));
    const prices = pricesOf('iron', own);
    return prices === null ? Number.NaN : pricesForItem(one, 'iron', prices, own).delivered.likely;
  };

  it('comes on every pound of a piece that is past a limit', () => {
    const plain = delivered(45);
    expect(delivered(50)).toBe(plain);
    expect(delivered(100) - plain).toBeCloseTo(1500 / 100, 9);
    expect(delivered(120) - plain).toBeCloseTo(9000 / 120, 9);
  });

  it("is in the buyer's own shipping cell already, and unknown in another currency", () => {
    const cell = { low: 0.2, likely: 0.3, high: 0.4, source: 'own', date: '' };
    expect(delivered(100, { rates: { iron: { shipping: cell } } })).toBe(delivered(45, { rates: { iron: { shipping: cell } } }));
    expect(parcelFeeOf(plates('plate-1', 2, lb(100)), 'iron', settings({ currency: 'CAD' }))).toBeNull();
  });

  it('is charged on a 25 kg bumper, which weighs 55 lb, not on a 20 kg one', () => {
    const fee = (weight: number) => parcelFeeOf(plates('plate-1', 2, kg(weight)), 'bumper', DEFAULT_SETTINGS)?.parcel ?? null;
    expect([20, 25].map(fee)).toEqual([null, 'handling']);
  });

  it('stands in the working, once for each class', () => {
    const ad = 'Olympic plates 2 x 100 lb, 2 x 45 lb, olympic bar 7 ft. $300 for all';
    const { steps } = evaluate(listingFromText(ad), DEFAULT_SETTINGS).worth;
    const fees = steps.filter(({ id }) => id.startsWith('parcel'));
    expect(fees.map(({ id, result }) => [id, result.likely])).toEqual([
      ['parcel-handling:iron', 1500],
      ['parcel-handling:bar', 1500],
    ]);
  });

  // By hand: 290 lb at $1.50 with 7 % tax and $0.45 for shipping, and two parcels over 50 lb at $15 more.
  it('counts for the pieces that pay it, in whatever order they stand', () => {
    for (const ad of ['Olympic plates 2 x 100 lb, 2 x 45 lb. $200', 'Olympic plates 2 x 45 lb, 2 x 100 lb. $200']) {
      const { newWorth } = evaluate(listingFromText(ad), DEFAULT_SETTINGS).worth;
      expect(newWorth?.likely).toBeCloseTo(290 * 205.5 + 2 * 1500, 6);
    }
  });
});

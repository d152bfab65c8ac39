/** Prices off shops' pages. Shops and goods are invented. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText, type PageListing } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { cellsFrom, perUnitOf, type ShopPrice, shopPriceOf } from '../../../src/price/shop-price.ts';

const offer = (price: string | null, over: Partial<PageListing['offers'][number]> = {}) => ({
  name: null,
  price,
  currency: 'USD',
  condition: null,
  availability: null,
  description: null,
  weight: null,
  ...over,
});
function read(text: string, offers: PageListing['offers']): ShopPrice | null {
  const listing = { ...listingFromText(text, 'page'), offers };
  return shopPriceOf(listing, evaluate(listing, DEFAULT_SETTINGS));
}

describe('the price of a product’s page', () => {
  it('of goods by weight, with their pounds', () =>
    expect(read('Pair of 45 lb olympic plates, cast iron\n$149.00', [offer('149.00')])).toMatchObject({
      category: 'iron',
      price: { minor: 149_00, currency: 'USD' },
      pounds: 90,
    }));

  it('of goods by the piece, of one of them', () =>
    expect(read('2 olympic barbells, 7 ft\n$500', [offer('500')])).toMatchObject({
      category: 'bar',
      price: { minor: 250_00, currency: 'USD' },
      pounds: null,
    }));

  it.each([
    ['without a price in the page’s data', 'Pair of 45 lb olympic plates\n$149', []],
    ['for used goods', 'Pair of 45 lb olympic plates\n$149', [offer('149', { condition: 'https://schema.org/UsedCondition' })]],
    ['of goods of several categories', 'Pair of 45 lb olympic plates and an olympic barbell\n$349', [offer('349')]],
    ['of goods of no stated weight', 'Olympic plates\n$149', [offer('149')]],
  ])('is none %s', (_why, text, offers) => expect(read(text, offers)).toBeNull());
});

const shop = (major: number, over: Partial<ShopPrice> = {}): ShopPrice => ({
  category: 'iron',
  price: { minor: major * 100, currency: 'USD' },
  pounds: 100,
  shipping: null,
  ...over,
});

describe('cells from shops’ prices', () => {
  it('go from the lowest over the middle to the highest', () => {
    const cells = cellsFrom([shop(200), shop(120), shop(150), shop(160)], DEFAULT_SETTINGS, 'shops', '2026-05-01');
    expect(cells).toEqual({ new: { low: 1.2, likely: 1.55, high: 2, source: 'shops', date: '2026-05-01' } });
  });

  it('take shipping along where it is told', () =>
    expect(
      cellsFrom([shop(200, { shipping: { minor: 30_00, currency: 'USD' } }), shop(150)], DEFAULT_SETTINGS, 's', 'd')?.shipping,
    ).toEqual({ low: 0.3, likely: 0.3, high: 0.3, source: 's', date: 'd' }));

  it('convert by the buyer’s own rate alone', () => {
    const euros = shop(100, { price: { minor: 100_00, currency: 'EUR' } });
    expect(perUnitOf(euros, DEFAULT_SETTINGS)).toBeNull();
    expect(perUnitOf(euros, { ...DEFAULT_SETTINGS, exchange: { EUR: 1.1 } })?.fresh).toBeCloseTo(1.1, 12);
    expect(cellsFrom([euros], DEFAULT_SETTINGS, 's', 'd')).toBeNull();
  });

  it('need a weight where goods are priced by it', () => {
    expect(perUnitOf(shop(100, { pounds: null }), DEFAULT_SETTINGS)).toBeNull();
    expect(perUnitOf(shop(100, { pounds: 0 }), DEFAULT_SETTINGS)).toBeNull();
    expect(perUnitOf(shop(100, { pounds: null, category: 'rack' }), DEFAULT_SETTINGS)?.fresh).toBe(100);
  });
});

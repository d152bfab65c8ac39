/** What a page shows as the price beside the text, and the words that pages and auctions put about prices. Invented ads, no source. */
import { describe, expect, it } from 'vitest';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { read } from '../../../src/read/index.ts';
import { inMajor } from '../../../src/units/money.ts';
import { offer, readText } from './goods.ts';

const shown = (text: string, priceText: string) => {
  const { asking } = read({ ...listingFromText(text, 'selection'), priceText });
  const major = (fact: typeof asking.amount): number | null => fact && inMajor(fact.value);
  return {
    amount: major(asking.amount),
    basis: asking.basis,
    unit: major(asking.unitAmount),
    currency: asking.currency?.value ?? null,
    open: asking.openToOffers !== null,
    firm: asking.firm !== null,
  };
};
const base = { amount: 225, basis: 'lot', unit: null, currency: 'USD', open: false, firm: false };

describe('the price that the page shows', () => {
  const text = '4 x 45 lb, 2 x 25 lb olympic plates, no rust';
  it.each([
    ['$225', base],
    ['Asking price $225 or best offer', { ...base, open: true }],
    ['C$225 firm', { ...base, currency: 'CAD', firm: true }],
    ['$1 / lb', { ...base, amount: 230, basis: 'per-pound', unit: 1 }],
    ['$300 $225', base],
    ['$200 - 250', { ...base, amount: 200, basis: 'range' }],
  ])('%s', (priceText, said) => expect(shown(text, priceText)).toEqual(said));

  it('gives a bare number of the text its currency', () => expect(shown(`${text}. Asking 225 for it all`, '$225')).toEqual(base));
  it('by the kilogram', () =>
    expect(shown('4 Hantelscheiben je 20 kg, 50 mm', '2,50 € pro kg')).toMatchObject({ amount: 200, basis: 'per-kilogram' }));
  it('cites no words, for it stands outside the text', () => {
    const { asking } = read({ ...listingFromText(text), priceText: '$225 obo' });
    expect([asking.amount?.evidence, asking.openToOffers?.evidence]).toEqual([[], []]);
  });
});

describe('words about prices', () => {
  const BARS = '20 kg bar - $150\n24 kg kettlebell - $45\n';
  const SUM = '195 lot | 1 bar 20 kg =150, 1 kettlebell 24 kg =45';
  it.each([
    ['Barbell 20 kg\nCurrent bid: £62.00 [ 7 bids ]\nPrice: £95.00', '95 lot | 1 bar 20 kg'],
    ['Barbell 20 kg\nCurrent bid: £62.00 [ 7 bids ]', '62 lot | 1 bar 20 kg'],
    ['Langhantel 20 kg. Aktuelles Gebot: 62 €. Sofortkauf 95 €', '95 lot | 1 bar 20 kg'],
    ['4x45 plates. Dropped price from 275 to 240', '240 lot | 4 plate 45 lb'],
    ['4x45 plates. Lowered from 275 down to 240', '240 lot | 4 plate 45 lb'],
    ['Hantelscheiben 4 x 20 kg von 300 auf 250 reduziert', '250 lot | 4 plate 20 kg'],
    ['4x45 deep dish, $300 shipped', '300 lot | 4 plate 45 lb'],
    ['4x45 plates $200, $40 shipped', '200 lot | 4 plate 45 lb'],
    ['4x45 plates\n$120\n$40 shipped', '120 lot | 4 plate 45 lb'],
    [`${BARS}Prices are firm unless you take it all.`, SUM],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it('offers that the site forbids are none of the seller’s', () => {
    const site = 'do NOT contact me with unsolicited services or offers';
    expect(readText(`4x45 plates $120\n${site}`).asking.openToOffers).toBeNull();
    expect(readText(`4x45 plates $120 or best offer\n${site}`).asking.openToOffers).not.toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { listingFromText, type Offer, type PageListing } from '../../../src/listing/page-listing.ts';
import { read } from '../../../src/read/index.ts';

const offer = (name: string, price: string): Offer => ({
  name,
  price,
  currency: 'USD',
  condition: null,
  availability: null,
  description: null,
  weight: null,
});
const doubts = (over: Partial<PageListing>) =>
  read({ ...listingFromText('Olympic plates 4x45 lb, $120', 'page'), ...over }).doubts.map(({ id }) => id);

describe('page-doubts.ts', () => {
  it('asks for one ad where the page marks up several', () => {
    expect(doubts({ offers: [offer('Plates', '120'), offer('Rack', '300')] })).toContain('several_ads:text');
  });
  it.each<[string, Partial<PageListing>]>([
    ['one offer', { offers: [offer('Plates', '120')] }],
    ['the same offer twice', { offers: [offer('Plates', '120'), offer('plates ', '120')] }],
    ['a selection: the buyer has chosen', { origin: 'selection', offers: [offer('Plates', '120'), offer('Rack', '300')] }],
  ])('not with %s', (_, over) => expect(doubts(over)).not.toContain('several_ads:text'));
  it.each([
    ['pickup at my shop, I… See more', true],
    ['Abholung nur… Mehr anzeigen', true],
    ['and more... read more\nSeller: ann', true],
    ['see more in my other ads', false],
    ['more…', false],
  ])('says when the page shows only the beginning: %s', (end, cut) =>
    expect(doubts({ text: `Olympic plates 4x45 lb, $120. ${end}` }).includes('cut_short:text')).toBe(cut),
  );
  it('says when only the beginning was read', () => {
    expect(doubts({ text: `Olympic plates 4x45 lb, $120\n${'and more words of it\n'.repeat(6000)}` })).toContain('too_long:text');
  });
});

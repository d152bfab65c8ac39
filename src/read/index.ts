import { composeText } from '../listing/compose.ts';
import type { PageListing } from '../listing/page-listing.ts';
import type { Reading } from '../listing/reading.ts';

/** Text of an ad to its structured content. */
export function read(listing: PageListing): Reading {
  const { text } = composeText(listing);
  return {
    text,
    language: 'en',
    asking: {
      amount: null,
      basis: 'none',
      unitAmount: null,
      high: null,
      currency: null,
      firm: null,
      openToOffers: null,
      former: [],
      delivery: null,
      placeholder: false,
    },
    items: [],
    sold: [],
    statedTotal: null,
    place: null,
    distance: null,
    aboutThisTrade: false,
    wanted: false,
    terms: [],
    doubts: [],
  };
}

/** The worked example of an empty Workshop: an ad that nobody wrote, and what a buyer might say about it. */
import { listingFromText, type PageListing } from '../../../src/listing/page-listing.ts';

/** In the words of the ads that are read, and so in English whatever the language of the screens. */
export const EXAMPLE: PageListing = {
  ...listingFromText(
    [
      'Olympic weights and bar, garage clear-out',
      '$240 for everything, pick up in Elmwick.',
      '',
      '4 x 45 lb olympic plates, cast iron, some surface rust',
      '2 x 25 lb and 4 x 10 lb, same make',
      '7 ft olympic bar, straight, 28 mm shaft',
      '',
      'Stored indoors. Cash only.',
    ].join('\n'),
  ),
  title: 'Olympic weights and bar, garage clear-out',
};

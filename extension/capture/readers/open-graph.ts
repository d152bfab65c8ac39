/** What a page says of itself in its meta elements: Open Graph, product and language tags. */
import type { Offer } from '../../../src/listing/page-listing.ts';
import { own } from './own.ts';
import { makeOffer } from './structured-types.ts';

/** Content of the first meta element of that name; null when it is absent or empty. */
export function metaContent(document: Document, ...names: readonly string[]): string | null {
  for (const name of names) {
    for (const meta of own(document).querySelectorAll(
      `meta[property="${name}" i], meta[name="${name}" i], meta[http-equiv="${name}" i]`,
    )) {
      const content = meta.getAttribute('content')?.trim();
      if (content) return content;
    }
  }
  return null;
}

/** The price that the page's head gives, as an offer; null when it gives none. */
export function readOpenGraph(document: Document): Offer | null {
  const price = metaContent(document, 'product:price:amount', 'og:price:amount', 'product:sale_price:amount');
  if (price === null) return null;
  return makeOffer({
    name: metaContent(document, 'og:title'),
    price,
    currency: metaContent(document, 'product:price:currency', 'og:price:currency'),
    condition: metaContent(document, 'product:condition'),
    availability: metaContent(document, 'product:availability', 'og:availability'),
    description: metaContent(document, 'og:description'),
  });
}

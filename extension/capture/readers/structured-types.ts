/** schema.org's words for something offered, as JSON-LD and microdata both use them. */
import type { Offer } from '../../../src/listing/page-listing.ts';
import { OFFER_LIMITS } from './limits.ts';

const PRODUCTS = new Set(['Product', 'IndividualProduct', 'ProductModel', 'ProductGroup', 'SomeProducts']);
const OFFERS = new Set(['Offer', 'AggregateOffer', 'OfferForPurchase', 'Demand']);

/** "https://schema.org/Product", "schema:Product" and "Product" are one type. */
const bare = (type: string): string => type.trim().replace(/^(?:https?:\/\/(?:www\.)?schema\.org\/|schema:)/i, '');

export const isProductType = (type: string): boolean => PRODUCTS.has(bare(type));
export const isOfferType = (type: string): boolean => OFFERS.has(bare(type));

/** Prices that schema.org marks as not being the one asked: former, list, suggested. */
export const isOtherPrice = (priceType: string | null): boolean =>
  priceType !== null && /Strikethrough|ListPrice|MSRP|SRP|Regular/i.test(priceType);

const cutTo = (value: string | null, limit: number): string | null => {
  const trimmed = value?.replace(/[^\S\n]+/g, ' ').trim() ?? '';
  return trimmed === '' ? null : trimmed.slice(0, limit);
};

/** An offer within the limits of the listing's schema; empty texts become null. */
export function makeOffer(parts: Partial<Offer>): Offer {
  const weight = parts.weight ?? null;
  return {
    name: cutTo(parts.name ?? null, OFFER_LIMITS.name),
    price: cutTo(parts.price ?? null, OFFER_LIMITS.price),
    currency: cutTo(parts.currency ?? null, OFFER_LIMITS.currency),
    condition: cutTo(parts.condition ?? null, OFFER_LIMITS.condition),
    availability: cutTo(parts.availability ?? null, OFFER_LIMITS.availability),
    description: cutTo(parts.description ?? null, OFFER_LIMITS.description),
    weight:
      weight && weight.value.trim() !== '' ? { value: weight.value.trim().slice(0, 50), unit: cutTo(weight.unit, 20) } : null,
  };
}

/** Says nothing that the text does not. */
export const isEmptyOffer = (offer: Offer): boolean => Object.values(offer).every((value) => value === null);

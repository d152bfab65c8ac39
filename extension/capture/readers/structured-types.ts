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
const isOtherPrice = (priceType: string | null): boolean =>
  priceType !== null && /Strikethrough|ListPrice|MSRP|SRP|Regular/i.test(priceType);

const cutTo = (value: string | null | undefined, limit: number): string | null => {
  const trimmed = value?.replace(/[^\S\n]+/g, ' ').trim() ?? '';
  return trimmed === '' ? null : trimmed.slice(0, limit);
};

/** An offer within the limits of the listing's schema; empty texts become null. */
export function makeOffer(parts: Partial<Offer>): Offer {
  const { weight } = parts;
  const value = cutTo(weight?.value, 50);
  const texts = Object.entries(OFFER_LIMITS).map(([name, limit]) => [
    name,
    cutTo(parts[name as keyof typeof OFFER_LIMITS], limit),
  ]);
  return {
    ...(Object.fromEntries(texts) as Record<keyof typeof OFFER_LIMITS, string | null>),
    weight: value && weight ? { value, unit: cutTo(weight.unit, 20) } : null,
  };
}

/** A property's value by its name; null where there is none. */
export type Values = (name: string) => string | null;

/** What a product and its offer say. The asked price: the offer's own, or that of its price specification; a range as "low-high". */
export function describe(product: Values, offer: Values, specifications: readonly Values[], weight: Offer['weight']): Offer {
  const either = (name: string): string | null => offer(name) ?? product(name);
  const own = offer('price');
  const specified = own === null ? specifications.find((one) => one('price') !== null && !isOtherPrice(one('priceType'))) : null;
  const [low, high] = [offer('lowPrice'), offer('highPrice')];
  return makeOffer({
    name: either('name'),
    price: own ?? specified?.('price') ?? (low !== null && high !== null && low !== high ? `${low}-${high}` : (low ?? high)),
    currency: specified?.('priceCurrency') ?? offer('priceCurrency'),
    condition: either('itemCondition'),
    availability: offer('availability'),
    description: product('description') ?? offer('description'),
    weight,
  });
}

/** Says nothing that the text does not. */
export const isEmptyOffer = (offer: Offer): boolean => Object.values(offer).every((value) => value === null);

/** Limits of what is read from a page. They are those of the listing's schema, repeated so that the capture script carries no schema. */
export const MAX_TEXT = 1_000_000;
export const MAX_TITLE = 2000;
export const MAX_ADDRESS = 4000;
export const MAX_PRICE_TEXT = 200;
export const MAX_LANGUAGE = 50;
export const MAX_OFFERS = 20;

export const OFFER_LIMITS = {
  name: 2000,
  price: 100,
  currency: 10,
  condition: 200,
  availability: 200,
  description: 200_000,
} as const;

/** A page may carry a great deal of structured data; beyond these it is left unread. */
export const MAX_DATA_CHARACTERS = 2_000_000;
export const MAX_DATA_NODES = 20_000;

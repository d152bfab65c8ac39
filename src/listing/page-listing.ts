/** What a page, a selection, a paste or a file hands over: plain data, with no judgement in it. */
import * as z from 'zod/mini';

const text = (max: number) => z.string().check(z.maxLength(max));
const nullableText = (max: number) => z.nullable(text(max));

/** One schema.org Offer or Product on the page, as written there. */
export const offerSchema = z.object({
  name: nullableText(2000),
  price: nullableText(100),
  currency: nullableText(10),
  condition: nullableText(200),
  availability: nullableText(200),
  description: nullableText(200_000),
  /** Weight as written, with its unit as a UN/CEFACT code or word ("LBR", "KGM"). */
  weight: z.nullable(z.object({ value: text(50), unit: nullableText(20) })),
});

export const spanSchema = z.object({ start: z.int().check(z.nonnegative()), end: z.int().check(z.nonnegative()) });

export const MAX_TEXT = 1_000_000;

export const pageListingSchema = z.object({
  /** Where the text came from: what the buyer did. */
  origin: z.enum(['selection', 'pick', 'page', 'paste', 'file', 'sweep']),
  address: nullableText(4000),
  title: text(2000),
  /** The ad with its line structure: "\n" between lines and blocks, "\t" between table cells, "• " before a list item. */
  text: text(MAX_TEXT),
  /** Spans of `text` that the page shows struck through (former prices, sold parts). */
  struck: z.array(spanSchema),
  /** What the page itself marks up as the price, as shown ("$120"), when there is one. */
  priceText: nullableText(200),
  offers: z.array(offerSchema),
  /** BCP 47 tag of the ad's language as the page declares it. */
  language: nullableText(50),
});

export type Offer = z.infer<typeof offerSchema>;
export type Span = z.infer<typeof spanSchema>;
export type PageListing = z.infer<typeof pageListingSchema>;

/** A listing from bare text: a paste, a file. */
export const listingFromText = (body: string, origin: PageListing['origin'] = 'paste'): PageListing => ({
  origin,
  address: null,
  title: '',
  text: body,
  struck: [],
  priceText: null,
  offers: [],
  language: null,
});

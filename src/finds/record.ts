/** What is kept of an ad: the row that lists need, and beside it the bulk that only the open ad needs. Schemas, for nothing stored is trusted. */
import * as z from 'zod/mini';
import { KINDS } from '../listing/reading.ts';
import { RATE_CATEGORIES } from '../listing/settings.ts';

const text = (max: number) => z.string().check(z.maxLength(max));
const currency = z.string().check(z.regex(/^[A-Z]{3}$/));
const minor = z.int();
/** Milliseconds since 1970. */
export const moment = z.number().check(z.gte(0), z.lte(8.64e15));
export const recordId = z.string().check(z.minLength(1), z.maxLength(100));
const range = { low: z.number(), likely: z.number(), high: z.number() };

export const moneySchema = z.object({ minor, currency });

export const STATUSES = ['new', 'asked', 'going', 'bought', 'gone'] as const;
export type Status = (typeof STATUSES)[number];

export const MOST_OFFERS = 200;
export const offerSchema = z.object({
  kind: z.enum(KINDS),
  weight: z.nullable(z.object({ value: z.number().check(z.nonnegative()), unit: z.enum(['lb', 'kg']) })),
  pieces: z.int().check(z.positive()),
});
export type Offer = z.infer<typeof offerSchema>;

/** The evaluation in the few figures that a list shows and sorts by. */
const summarySchema = z.object({
  call: z.enum(['go', 'haggle', 'ask', 'leave']),
  /** Per usable pound, or for the lot where nothing is sold by weight; minor units. */
  perUsable: z.nullable(z.object({ ...range, currency, per: z.enum(['lot', 'lb', 'kg']) })),
  /** Usable plate weight in pounds. */
  usable: z.object(range),
  /** Price, drive and tax in minor units. */
  allIn: z.nullable(z.object({ ...range, currency })),
  /** Against the same goods new and delivered in their condition, the drive counted; minor units, below zero for a loss. */
  saving: z.nullable(moneySchema),
  kinds: z.array(z.enum(KINDS)),
  place: z.nullable(text(500)),
  /** One way. */
  distance: z.nullable(z.object({ value: z.number().check(z.nonnegative()), unit: z.enum(['mi', 'km']) })),
  /** What the price says of the going rate, per pound or piece: see price/observed.ts. Finds of before have none. */
  observed: z.optional(
    z.array(z.object({ category: z.enum(RATE_CATEGORIES), perUnit: z.number().check(z.positive()), currency })),
  ),
  /** Sound pieces that it offers, to hold against what a kit lacks. Finds of before have none until they are judged again. */
  offers: z.optional(z.array(offerSchema).check(z.maxLength(MOST_OFFERS))),
});
export type Summary = z.infer<typeof summarySchema>;

/** An asking price and when it was first seen. */
const pricePointSchema = z.object({ at: moment, minor, currency });
export type PricePoint = z.infer<typeof pricePointSchema>;

export const findSchema = z.object({
  id: recordId,
  title: text(2000),
  /** Where the ad stands, to open it again; null for a paste. */
  address: z.nullable(text(4000)),
  /** The address without its host, short enough to be shown: tells two ads of one site apart. */
  path: z.nullable(text(4000)),
  status: z.enum(STATUSES),
  summary: summarySchema,
  /** Oldest first; two that follow each other differ. Empty while no price was ever stated. */
  prices: z.array(pricePointSchema),
  /** What the buyer paid, once bought. */
  paid: z.nullable(moneySchema),
  notes: text(20_000),
  /** What the buyer said of it on the buy list: it must be on it, or is left out. */
  onList: z.optional(z.nullable(z.enum(['must', 'out']))),
  /** The items that the buyer takes of it, where that is a part with a price of its own; none, or nothing said, for all of it. */
  taking: z.optional(z.array(text(100)).check(z.maxLength(MOST_OFFERS))),
  keptAt: moment,
  /** When the ad was last met on a page. */
  metAt: moment,
  /** Of two versions of a find the one changed later holds. */
  changedAt: moment,
});
export type Find = z.infer<typeof findSchema>;

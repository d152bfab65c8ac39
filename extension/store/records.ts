/** Records beside the finds. Optional fields may be added; a changed meaning needs a version in database.ts and in the export. */
import * as z from 'zod/mini';
import { findSchema, moment, moneySchema, recordId } from '../../src/finds/record.ts';
import { pageListingSchema } from '../../src/listing/page-listing.ts';
import { KINDS } from '../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, RATE_CATEGORIES, settingsSchema } from '../../src/listing/settings.ts';
import { storedEditsSchema } from '../panel/stored-edits.ts';

const text = (max: number) => z.string().check(z.maxLength(max));
const weight = z.object({ value: z.number().check(z.nonnegative()), unit: z.enum(['lb', 'kg']) });
const pieces = z.int().check(z.nonnegative());
const millimetres = z.nullable(z.number().check(z.nonnegative()));
const atLeastZero = z.number().check(z.nonnegative());

/** The bulk of a find, apart from its row. */
export const adSchema = z.object({ id: recordId, listing: pageListingSchema, edits: storedEditsSchema });
export type Ad = z.infer<typeof adSchema>;

/** Equipment that the buyer has. */
export const ownedSchema = z.object({
  id: recordId,
  kind: z.enum([...KINDS, 'platform']),
  pieces,
  /** Face value of one piece. */
  weight: z.nullable(weight),
  /** What single pieces really weigh, as far as weighed. */
  weighed: z.array(weight),
  boreMm: millimetres,
  shaftMm: millimetres,
  sleeveMm: millimetres,
  lengthMm: millimetres,
  note: text(2000),
  /** Thickness of a plate where it sits on the sleeve. */
  thicknessMm: z.optional(millimetres),
  /** For all pieces; what came with a find has none of its own: it was paid with the find. */
  paid: z.optional(z.nullable(moneySchema)),
  changedAt: moment,
});
export type Owned = z.infer<typeof ownedSchema>;

/** A find taken off the lists, whole, until it is purged; `goods`: what had come with it to the kit. */
export const removedSchema = z.object({
  id: recordId,
  token: recordId,
  removedAt: moment,
  find: findSchema,
  ad: adSchema,
  goods: z.optional(z.array(ownedSchema)),
});
export type Removed = z.infer<typeof removedSchema>;

export const needSchema = z.object({
  id: recordId,
  kind: z.enum([...KINDS, 'platform']),
  pieces,
  weight: z.nullable(weight),
  note: text(2000),
  /** The buyer's own word: it stays when the list follows other figures. With 0 pieces: taken off the list. */
  own: z.optional(z.boolean()),
  changedAt: moment,
});
export type Need = z.infer<typeof needSchema>;

export const rateRowSchema = z.object({
  /** Category and column: "iron.used". */
  id: recordId,
  category: z.enum(RATE_CATEGORIES),
  column: z.enum(['used', 'new', 'shipping']),
  /** Edited by the buyer, and so part of the settings; or learned from the finds. */
  origin: z.enum(['edited', 'learned']),
  cell: z.object({ low: atLeastZero, likely: atLeastZero, high: atLeastZero, source: text(500), date: text(50) }),
  changedAt: moment,
});
export type RateRow = z.infer<typeof rateRowSchema>;

/** A price of new goods, read off a shop's page. */
export const capturedPriceSchema = z.object({
  id: recordId,
  category: z.enum(RATE_CATEGORIES),
  title: text(2000),
  address: z.nullable(text(4000)),
  price: moneySchema,
  /** What is sold for it, in pounds; null where it is sold by the piece. */
  pounds: z.nullable(atLeastZero),
  shipping: z.nullable(moneySchema),
  at: moment,
  changedAt: moment,
});
export type CapturedPrice = z.infer<typeof capturedPriceSchema>;

/** A file of before knows nothing of newer settings: they stand at their defaults. */
const filledUp = z.transform((value) =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...DEFAULT_SETTINGS, ...value } : value,
);

/** Settings but for the rates, which are rows of their own. */
export const settingsRowSchema = z.object({
  id: z.literal('settings'),
  value: z.pipe(filledUp, settingsSchema),
  changedAt: moment,
});
export type SettingsRow = z.infer<typeof settingsRowSchema>;

/** A record that failed its check, as it was, and where it came from. */
export const setAsideSchema = z.object({
  id: recordId,
  table: text(100),
  key: text(200),
  value: z.unknown(),
  why: text(2000),
  at: moment,
});
export type SetAside = z.infer<typeof setAsideSchema>;

/** That a small record was deleted, so that an older file does not bring it back. */
export const tombSchema = z.object({ id: text(300), at: moment });
export type Tomb = z.infer<typeof tombSchema>;

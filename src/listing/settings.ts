/** The buyer's settings: one object of defaults that is also the type. Parsed at the boundary (storage, --settings FILE). */
import * as z from 'zod/mini';
import { DEFAULT_PER_MILE } from '../trip/mileage-rates.ts';
import { correctionSchema } from './correction.ts';

const positive = z.number().check(z.positive());
const atLeastZero = z.number().check(z.nonnegative());
const cellShape = {
  low: atLeastZero,
  likely: atLeastZero,
  high: atLeastZero,
  /** Where the figures come from: "own", "assumption", "common-practice", "learned", or words of the buyer's; and when ("2026-05"). */
  source: z._default(z.string(), 'own'),
  date: z._default(z.string(), ''),
};
interface InOrder {
  low: number;
  likely: number;
  high: number;
}
const inOrder = z.refine<InOrder>(
  ({ low, likely, high }) => low <= likely && likely <= high,
  'low, likely and high are not in order',
);
const cell = z.object(cellShape).check(inOrder);
const currency = z.string().check(z.regex(/^[A-Z]{3}$/));
/** A used price learned from finds: how many there were, how many fresh ones they are worth, and the currency that they were in. */
const learnedCell = z
  .object({ ...cellShape, finds: z.int().check(z.nonnegative()), effective: atLeastZero, currency })
  .check(inOrder);

const weight = z.object({ value: positive.check(z.lte(5000)), unit: z.enum(['lb', 'kg']) });

/** What the buyer said of lifting, money and room: what the kit is reckoned from. */
const kitFigures = z.object({
  /** The best lift, bar included, and the smallest jump, both sides together. */
  best: weight,
  jump: weight,
  /** Snatches and cleans are done. */
  olympicLifts: z.boolean(),
  /** Plates that are bought; "mixed" is a bar and bumpers in kilograms with plates in pounds. */
  plates: z.enum(['lb', 'kg', 'mixed']),
  /** Cap for the whole kit in major units; null for none. */
  budget: z.nullable(atLeastZero),
  /** Both collars together; null when none are used or they weigh next to nothing. */
  collars: z.nullable(weight),
  /** Length of one sleeve that takes plates, in mm; null when it isn't known. */
  sleeveLengthMm: z.nullable(positive),
  /** Height of the rack's floor and room for a platform, in mm; null while nobody measured. */
  platform: z.nullable(z.object({ rackFloorMm: positive, widthMm: positive, depthMm: positive })),
});
export type KitFigures = z.infer<typeof kitFigures>;

export const placeSchema = z.object({
  name: z.string().check(z.maxLength(200)),
  /** Degrees north and east. */
  lat: z.number().check(z.gte(-90), z.lte(90)),
  lon: z.number().check(z.gte(-180), z.lte(180)),
});

/** Categories of the rates table. Weight categories are priced per pound, the others per piece. */
export const RATE_CATEGORIES = [
  'iron',
  'machined',
  'calibrated',
  'rubber-coated',
  'bumper',
  'micro',
  'one-inch-plate',
  'dumbbell',
  'kettlebell',
  'bar',
  'curl-bar',
  'hex-bar',
  'one-inch-bar',
  'rack',
  'stands',
  'bench',
  'collars',
  'storage',
] as const;
export type RateCategory = (typeof RATE_CATEGORIES)[number];

/** What an ad may leave open that would change its worth: see trip/unknowns.ts. */
export const UNKNOWNS = ['bore', 'straightness', 'shaft', 'count'] as const;
export type UnknownId = (typeof UNKNOWNS)[number];

const rateSchema = z.object({ used: cell, new: cell, shipping: cell });
export type CategoryRate = z.infer<typeof rateSchema>;
export type RateCell = z.infer<typeof cell>;
export type LearnedRate = z.infer<typeof learnedCell>;

export const settingsSchema = z.object({
  /** Unit in which the buyer thinks and in which weights are shown. */
  unit: z.enum(['lb', 'kg']),
  /** Language in which ads are read; "auto" goes by the ad's own words and the page's tag. */
  language: z.enum(['auto', 'en', 'de']),
  currency,
  /** Diameter of the buyer's sleeve in mm: 50 for an Olympic bar, 25 for a one-inch bar. */
  sleeveMm: z.number().check(z.gte(20), z.lte(60)),
  /** A second sleeve in mm, of a buyer who owns a one-inch bar too; null for none. Plates that go on either sleeve are usable. */
  otherSleeveMm: z.nullable(z.number().check(z.gte(20), z.lte(60))),
  /** Plates that the kit still lacks, by face value; what an ad offers beyond is surplus. Null when no limit is known. */
  need: z.nullable(
    z
      .array(
        z.object({
          weight: z.object({ value: positive, unit: z.enum(['lb', 'kg']) }),
          pieces: z.int().check(z.gte(0), z.lte(1000)),
        }),
      )
      .check(z.maxLength(100)),
  ),
  /** Null while no kit was set up: then `need` sets no limit. */
  kit: z.nullable(kitFigures),
  /** One-way distance to the seller, when typed. */
  distance: z.nullable(z.object({ value: atLeastZero, unit: z.enum(['mi', 'km']) })),
  /** Where the buyer sets out, and where the seller of the ad in hand lives: the distance comes from them when none is typed or stated. */
  home: z.nullable(placeSchema),
  sellerAt: z.nullable(placeSchema),
  /** Cost of a driven mile in major units of `currency`; published ones are in trip/mileage-rates.ts. */
  perMile: atLeastZero,
  /** What an hour is worth to the buyer, in major units. */
  hourWorth: atLeastZero,
  /** Average speed in miles per hour. */
  speedMph: positive,
  /** Tolls, ferry and parking of one trip there and back, in major units. */
  tolls: atLeastZero,
  /** Hire of a van for one trip, in major units; counted only when the goods don't fit. Null: the buyer's own vehicle takes everything. */
  van: z.nullable(z.object({ cost: atLeastZero, per: z.literal('trip') })),
  /** Longest piece in mm that goes into the buyer's vehicle; null when anything does. */
  longestMm: z.nullable(positive),
  /** Pounds of goods that the buyer's vehicle may carry: its rated payload less everyone in it; null when that is never reached. */
  payloadLb: z.nullable(positive),
  /** Sales tax on new goods, as a fraction. */
  salesTax: z.number().check(z.gte(0), z.lte(1)),
  /** Least saving against new delivered that makes a used purchase worth the trouble, as a fraction of new delivered. */
  margin: z.number().check(z.gte(0), z.lte(0.9)),
  /** Edited cells of the rates table, by category; the others keep their defaults. */
  rates: z.partialRecord(z.enum(RATE_CATEGORIES), z.partial(rateSchema)),
  /** Used prices that the buyer's finds taught, by category: see price/going-rate.ts. Edited cells go before them, defaults behind. */
  learned: z.partialRecord(z.enum(RATE_CATEGORIES), learnedCell),
  /** After so many days a find counts half in what is learned. */
  halfLifeDays: positive,
  /** The buyer's own chances, 0 to 1, that what an ad leaves open turns out badly: wrong holes, bent, too thick, fewer plates. */
  chances: z.partialRecord(z.enum(UNKNOWNS), z.number().check(z.gte(0), z.lte(1))),
  /** What one unit of another currency is worth in `currency`, by the buyer's own word: {"EUR": 1.1}. Without it nothing is converted. */
  exchange: z.record(currency, positive),
  /** The load in pounds, bar included, that the buyer trains with: what a bar is reckoned under. */
  loadLb: positive,
  /** Height of the room in mm, floor to ceiling; null when it is high enough for anything. */
  ceilingMm: z.nullable(positive),
  /** Limits of flags that the buyer set in place of common practice, by their names in flags/limits.ts, in the unit that stands there. */
  limits: z.record(z.string(), atLeastZero),
  /** Dark or light; "system" goes by the browser. */
  theme: z.enum(['system', 'light', 'dark']),
  /** Kinds of cautions that the buyer has read and put away. */
  hiddenCautions: z.array(z.string()),
  corrections: z.array(correctionSchema),
});
export type Settings = z.infer<typeof settingsSchema>;

export const DEFAULT_SETTINGS: Settings = {
  unit: 'lb',
  language: 'auto',
  currency: 'USD',
  sleeveMm: 50,
  otherSleeveMm: null,
  need: null,
  kit: null,
  distance: null,
  home: null,
  sellerAt: null,
  perMile: DEFAULT_PER_MILE,
  hourWorth: 10,
  speedMph: 35,
  tolls: 0,
  van: null,
  longestMm: null,
  payloadLb: null,
  salesTax: 0.07,
  margin: 0.15,
  rates: {},
  learned: {},
  // Half a year: an assumption; used iron moves slowly, but it moves.
  halfLifeDays: 180,
  chances: {},
  exchange: {},
  loadLb: 315,
  ceilingMm: null,
  limits: {},
  theme: 'system',
  hiddenCautions: [],
  corrections: [],
};

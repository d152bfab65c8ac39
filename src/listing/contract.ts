/** The JSON contract for tools: the shape that `npm run -s evaluate` prints, checked before it is printed. */
import * as z from 'zod/mini';
import { spanSchema } from './page-listing.ts';
import { CONDITIONS, KINDS, MATERIALS } from './reading.ts';

const weight = z.nullable(z.object({ value: z.number(), unit: z.enum(['lb', 'kg']) }));
const amount = z.nullable(z.number());
const rangeOf = z.object({ low: z.number(), likely: z.number(), high: z.number(), unit: z.string() });

export const contractSchema = z.object({
  reading: z.object({
    asking: z.object({
      amount,
      currency: z.nullable(z.string()),
      basis: z.enum(['lot', 'per-pound', 'per-kilogram', 'each', 'pair', 'range', 'none']),
      unitAmount: amount,
      firm: z.nullable(z.boolean()),
      openToOffers: z.nullable(z.boolean()),
    }),
    items: z.array(
      z.object({
        id: z.string(),
        kind: z.enum(KINDS),
        count: amount,
        unitWeight: weight,
        totalWeight: weight,
        bore: z.object({ fits: z.nullable(z.enum(['50mm', '25mm'])), mm: amount }),
        shaftMm: amount,
        lengthMm: amount,
        material: z.nullable(z.enum(MATERIALS)),
        condition: z.array(z.enum(CONDITIONS)),
        ownPrice: amount,
        basis: z.enum(['stated', 'implied', 'assumed', 'measured']),
        evidence: z.array(spanSchema),
      }),
    ),
    statedTotal: weight,
    place: z.nullable(z.string()),
    aboutThisTrade: z.boolean(),
    wanted: z.boolean(),
    doubts: z.array(z.object({ about: z.string(), why: z.string(), choices: z.array(z.string()) })),
  }),
  flags: z.array(
    z.object({
      id: z.string(),
      weight: z.enum(['deal-breaker', 'caution', 'note']),
      item: z.nullable(z.string()),
      says: z.string(),
      found: z.nullable(z.string()),
      limit: z.nullable(z.string()),
      source: z.string(),
    }),
  ),
  worth: z.object({
    usable: rangeOf,
    allIn: z.nullable(rangeOf),
    perUsablePound: z.nullable(rangeOf),
    newDelivered: z.nullable(rangeOf),
    goingRate: z.nullable(rangeOf),
    walkAway: amount,
    split: z.array(z.object({ item: z.string(), allIn: z.number(), worth: rangeOf })),
  }),
  trip: z.nullable(
    z.object({
      distance: z.object({ value: z.number(), unit: z.enum(['mi', 'km']) }),
      cost: rangeOf,
      breakEven: z.nullable(z.object({ value: z.number(), unit: z.enum(['mi', 'km']) })),
    }),
  ),
  questions: z.array(z.object({ id: z.string(), about: z.string(), says: z.string(), value: z.number() })),
  call: z.object({ kind: z.enum(['go', 'haggle', 'ask', 'leave']), says: z.string(), because: z.array(z.string()) }),
});

export type Contract = z.infer<typeof contractSchema>;

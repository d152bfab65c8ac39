import * as z from 'zod/mini';

/** A value set by the buyer; see `Correction` in reading.ts. */
export const correctionSchema = z.object({
  path: z.string().check(z.maxLength(100)),
  value: z.union([z.string().check(z.maxLength(500)), z.number(), z.boolean(), z.null()]),
  unit: z.optional(z.string().check(z.maxLength(20))),
  basis: z.optional(z.enum(['stated', 'measured'])),
});

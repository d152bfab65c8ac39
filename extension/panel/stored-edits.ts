/** A session's edits as they are stored, while the browser runs and with a find, and back. Settled doubts are stored by name and found again in the reading. */
import * as z from 'zod/mini';
import { correctionSchema } from '../../src/listing/correction.ts';
import type { Doubt } from '../../src/listing/reading.ts';
import { placeSchema } from '../../src/listing/settings.ts';
import type { Change, Session } from './session.ts';

export const storedEditsSchema = z.object({
  changes: z.array(
    z.discriminatedUnion('by', [
      z.object({ by: z.literal('hand'), correction: correctionSchema }),
      z.object({ by: z.literal('doubt'), doubt: z.string(), choice: z.int().check(z.nonnegative()) }),
    ]),
  ),
  distance: z.nullable(z.object({ value: z.number().check(z.nonnegative()), unit: z.enum(['mi', 'km']) })),
  // Edits from before there were places have none.
  sellerAt: z.optional(z.nullable(placeSchema)),
});
export type StoredEdits = z.infer<typeof storedEditsSchema>;

export const packEdits = ({ changes, distance, sellerAt }: Session): StoredEdits => ({
  changes: changes.map((change) => (change.by === 'hand' ? change : { ...change, doubt: change.doubt.id })),
  distance,
  ...(sellerAt === undefined ? {} : { sellerAt }),
});

/** The session with stored edits; as it is when they can't be read. Settled doubts that the reading raises no more fall away. */
export function unpackEdits(session: Session, stored: unknown, doubts: readonly Doubt[]): Session {
  const parsed = storedEditsSchema.safeParse(stored);
  if (!parsed.success) return session;
  const changes = parsed.data.changes.flatMap((change): Change[] => {
    if (change.by === 'hand') return [change];
    const doubt = doubts.find((one) => one.id === change.doubt);
    return doubt?.choices[change.choice] ? [{ ...change, doubt }] : [];
  });
  return { ...session, changes, distance: parsed.data.distance, sellerAt: parsed.data.sellerAt };
}

/** Nothing that was stored is trusted: each record is checked when it is read, and one that fails is set aside, not lost. */
import * as z from 'zod/mini';
import { findSchema } from '../../src/finds/record.ts';
import type { Database, FindRow } from './database.ts';
import { StoreFailure } from './failure.ts';
import { adSchema } from './records.ts';

/** What a schema finds wrong first, for people who repair files: "prices.0.minor: Invalid input". */
const whyBad = (error: z.core.$ZodError): string =>
  error.issues
    .slice(0, 5)
    .map((issue) => `${issue.path.join('.')}: ${issue.message}`)
    .join('; ')
    .slice(0, 2000);

/** A value that is handed in. Throws `bad-input`. */
export function taken<S extends z.core.$ZodType>(schema: S, value: unknown): z.output<S> {
  const parsed = z.safeParse(schema, value);
  if (parsed.success) return parsed.data;
  throw new StoreFailure('bad-input');
}

export interface Damage {
  readonly table: 'finds' | 'removed' | 'owned' | 'needs' | 'rates' | 'captured' | 'settings';
  readonly key: string;
  readonly why: string;
}

/** A stored value, or null when it fails; then the damage is noted. */
export function sound<S extends z.core.$ZodType>(
  schema: S,
  value: unknown,
  place: Pick<Damage, 'table' | 'key'>,
  damage: Damage[],
): z.output<S> | null {
  const parsed = z.safeParse(schema, value);
  if (parsed.success) return parsed.data;
  damage.push({ ...place, why: whyBad(parsed.error) });
  return null;
}

/** The find of a row, or null with the damage noted. */
export function soundFind(row: FindRow, damage: Damage[]): z.output<typeof findSchema> | null {
  const place = { table: 'finds', key: row.id } as const;
  const find = sound(findSchema, row.find, place, damage);
  if (find === null || find.id === row.id) return find;
  damage.push({ ...place, why: `find.id: is "${find.id}"` });
  return null;
}

export const soundAd = (ad: unknown, key: string, damage: Damage[]): z.output<typeof adSchema> | null =>
  sound(adSchema, ad, { table: 'finds', key }, damage);

/** Moves damaged records to the table of what was set aside, with their other parts: inside a transaction over all tables. */
export async function setAside(db: Database, damage: readonly Damage[], at: number): Promise<void> {
  for (const { table, key, why } of damage) {
    const record: unknown = await db.table(table).get(key);
    if (record === undefined) continue;
    const value = table === 'finds' ? { row: record, ad: await db.ads.get(key) } : record;
    await db.aside.put({ id: `${table}/${key}/${at}`, table, key, value, why, at });
    await db.table(table).delete(key);
    if (table === 'finds') {
      await db.ads.delete(key);
      await db.marks.delete(key);
    }
  }
}

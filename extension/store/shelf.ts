/** A table of small records: kit, rates, captured prices. */
import type { Table } from 'dexie';
import type * as z from 'zod/mini';
import type { Shelf } from './api.ts';
import { type Damage, sound, taken } from './checked.ts';
import { type Context, following, reading, writing } from './context.ts';

export const SHELVES = ['owned', 'needs', 'rates', 'captured'] as const;
export type ShelfTable = (typeof SHELVES)[number];

export interface Record {
  readonly id: string;
  readonly changedAt: number;
}

/** Every sound record of a table. */
export async function allSound<T extends Record>(
  { db }: Context,
  table: ShelfTable,
  schema: z.ZodMiniType<T>,
  damage: Damage[],
): Promise<readonly T[]> {
  const stored: Record[] = await db.table(table).toArray();
  return stored.flatMap((one) => {
    const record = sound(schema, one, { table, key: one.id }, damage);
    return record === null ? [] : [record];
  });
}

export function shelf<T extends Record>(context: Context, table: ShelfTable, schema: z.ZodMiniType<T>): Shelf<T> {
  const rows: Table<Record, string> = context.db.table(table);
  const read = (damage: Damage[]) => allSound(context, table, schema, damage);
  const put = async (record: Omit<T, 'changedAt'>, now: number): Promise<T> => {
    const { id } = record as { id?: unknown };
    const before = typeof id === 'string' ? await rows.get(id) : undefined;
    const checked = taken(schema, { ...record, changedAt: Math.max(now, Number(before?.changedAt ?? -1) + 1 || 0) });
    await rows.put(checked);
    return checked;
  };
  const remove = async (id: string, now: number): Promise<null> => {
    const before = await rows.get(id);
    await rows.delete(id);
    await context.db.tombs.put({ id: `${table}/${id}`, at: Math.max(now, Number(before?.changedAt ?? 0) || 0) });
    return null;
  };
  return {
    put: (record, now) => writing(context, [table], () => put(record, now)),
    remove: (id, now) => writing(context, [table, 'tombs'], () => remove(id, now)),
    change: (given, gone, now) =>
      writing(context, [table, 'tombs'], async () => {
        for (const record of given) await put(record, now);
        for (const id of gone) await remove(id, now);
        return null;
      }),
    all: () => reading(context, read),
    watch: (seen) => following(context, read, seen),
  };
}

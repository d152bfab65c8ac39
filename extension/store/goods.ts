/** What came to the kit with finds that were bought. Its ids lead back to them, so that taking it back needs no other record. All inside a transaction over `GOODS`. */
import { type Damage, sound, taken } from './checked.ts';
import type { Database } from './database.ts';
import { type Owned, ownedSchema } from './records.ts';

export const GOODS = ['owned', 'tombs'] as const;

const tombOf = (id: string): string => `owned/${id}`;

/** Takes out of the kit what came with finds; gives it by find, as it was. */
export async function takeGoods(
  db: Database,
  finds: readonly string[],
  now: number,
  damage: Damage[],
): Promise<ReadonlyMap<string, readonly Owned[]>> {
  const byFind = new Map<string, readonly Owned[]>(finds.map((find) => [find, []]));
  const findOf = (id: string): string => id.slice(0, Math.max(0, id.lastIndexOf('/')));
  const ids = finds.length === 0 ? [] : await db.owned.toCollection().primaryKeys();
  for (const one of await db.owned.bulkGet(ids.filter((id) => byFind.has(findOf(id))))) {
    const thing = one && sound(ownedSchema, one, { table: 'owned', key: one.id }, damage);
    if (thing) byFind.set(findOf(thing.id), [...(byFind.get(findOf(thing.id)) ?? []), thing]);
  }
  const goods = [...byFind.values()].flat();
  if (goods.length === 0) return byFind;
  await db.owned.bulkDelete(goods.map(({ id }) => id));
  await db.tombs.bulkPut(goods.map(({ id, changedAt }) => ({ id: tombOf(id), at: Math.max(now, changedAt) })));
  return byFind;
}

/** Puts things into the kit, newer than what was there and than its removal. */
export async function putGoods(db: Database, goods: readonly Omit<Owned, 'changedAt'>[], now: number): Promise<void> {
  if (goods.length === 0) return;
  const ids = goods.map(({ id }) => id);
  const [there, tombs] = await Promise.all([db.owned.bulkGet(ids), db.tombs.bulkGet(ids.map(tombOf))]);
  const newest = (at: number): number => Math.max(now, (Number(there[at]?.changedAt) || 0) + 1, (tombs[at]?.at ?? -1) + 1);
  await db.owned.bulkPut(goods.map((one, at) => taken(ownedSchema, { ...one, changedAt: newest(at) })));
}

/** What became of finds: asked, bought, gone, removed and brought back; one or many at once, and with them what came with them to the kit. */
import { type Find, findSchema } from '../../src/finds/record.ts';
import type { Before, Finds, Removal } from './api.ts';
import { type Damage, sound, soundAd, soundFind, taken } from './checked.ts';
import { type Context, present, writing } from './context.ts';
import type { Database } from './database.ts';
import { StoreFailure } from './failure.ts';
import { later, PARTS } from './find-writes.ts';
import { GOODS, putGoods, takeGoods } from './goods.ts';
import { beginningOf } from './goods-id.ts';
import { type Removed, removedSchema } from './records.ts';
import { nextRevision } from './row-cache.ts';
import { markRowOf, rowOf } from './rows.ts';

/** The finds that are there and sound, once each; damage of the others is noted. */
async function loadFinds(db: Database, ids: readonly string[], damage: Damage[]): Promise<readonly Find[]> {
  const rows = await db.finds.bulkGet([...new Set(ids)]);
  return rows.flatMap((row) => (row && soundFind(row, damage)) ?? []);
}

async function putRows(db: Database, finds: readonly Find[]): Promise<void> {
  const revision = await nextRevision(db);
  await db.finds.bulkPut(finds.map((find) => rowOf(find, revision)));
}

async function change(
  db: Database,
  finds: readonly Find[],
  now: number,
  step: (find: Find) => Partial<Find> | undefined,
): Promise<readonly Find[]> {
  const changed = finds.map((find) => taken(findSchema, { ...find, ...step(find), changedAt: later(find, now) }));
  await putRows(db, changed);
  return changed;
}

/** The only one; `not-found` where there is none, `unreadable` where it is damaged. */
function theOnly<T>([first]: readonly T[], damage: readonly Damage[]): T {
  if (first === undefined && damage.length > 0) throw new StoreFailure('unreadable');
  return present(first);
}

export const asRemoval = ({ token, find, removedAt, goods }: Removed): Removal => ({
  token,
  find,
  removedAt,
  goods: goods?.length ?? 0,
});

const boughtOf = (finds: readonly Find[]): readonly string[] =>
  finds.flatMap(({ id, status }) => (status === 'bought' ? [id] : []));

export function outcomeWrites(
  context: Context,
): Pick<Finds, 'update' | 'setStatus' | 'setStatusOf' | 'buy' | 'putBack' | 'remove' | 'removeMany' | 'undo' | 'undoMany'> {
  const { db } = context;
  const work = <T>(write: (damage: Damage[]) => Promise<T>) => writing(context, [...PARTS, ...GOODS], write);
  const removing = <T>(write: (damage: Damage[]) => Promise<T>) => writing(context, [...PARTS, ...GOODS, 'removed'], write);

  async function setStatus(ids: readonly string[], status: Find['status'], now: number, damage: Damage[]) {
    const finds = await loadFinds(db, ids, damage);
    const goods = await takeGoods(db, status === 'bought' ? [] : boughtOf(finds), now, damage);
    const changed = await change(db, finds, now, ({ id, paid }) => ({ status, paid: goods.has(id) ? null : paid }));
    const before = finds.map((find): Before => {
      return { id: find.id, status: find.status, paid: find.paid, goods: goods.get(find.id) ?? [] };
    });
    return { changed, before };
  }

  async function remove(ids: readonly string[], now: number, damage: Damage[]): Promise<readonly Removal[]> {
    const finds = await loadFinds(db, ids, damage);
    const ads = await db.ads.bulkGet(finds.map(({ id }) => id));
    const whole = finds.flatMap((find, at) => {
      const ad = soundAd(ads[at], find.id, damage);
      return ad ? [{ find, ad }] : [];
    });
    const goods = await takeGoods(db, boughtOf(whole.map(({ find }) => find)), now, damage);
    const removed = whole.map(({ find, ad }): Removed => {
      const { id } = find;
      return { id, token: crypto.randomUUID(), removedAt: later(find, now), find, ad, goods: [...(goods.get(id) ?? [])] };
    });
    await db.removed.bulkPut(removed);
    for (const table of [db.finds, db.ads, db.marks]) await table.bulkDelete(removed.map(({ id }) => id));
    return removed.map(asRemoval);
  }

  async function undo(tokens: readonly string[], damage: Damage[]): Promise<readonly Find[]> {
    const stored = await db.removed.where('token').anyOf(tokens).toArray();
    const removed = stored.flatMap((one) => sound(removedSchema, one, { table: 'removed', key: one.id }, damage) ?? []);
    // Newer than the removal, also for a file that was exported in between.
    const back = removed.map(({ find, removedAt }) => ({ ...find, changedAt: removedAt + 1 }));
    await putRows(db, back);
    await db.ads.bulkPut(removed.map(({ ad }) => ad));
    await db.marks.bulkPut(removed.map(({ ad }) => markRowOf(ad)));
    await db.removed.bulkDelete(removed.map(({ id }) => id));
    for (const { goods, removedAt } of removed) await putGoods(db, goods ?? [], removedAt + 1);
    return back;
  }

  return {
    update: (id, given, now) =>
      work(async (damage) => theOnly(await change(db, await loadFinds(db, [id], damage), now, () => given), damage)),
    setStatus: (id, status, now) => work(async (damage) => theOnly((await setStatus([id], status, now, damage)).changed, damage)),
    setStatusOf: (ids, status, now) => work(async (damage) => (await setStatus(ids, status, now, damage)).before),

    buy: (id, paid, goods, now) =>
      work(async (damage): Promise<Before> => {
        const find = theOnly(await loadFinds(db, [id], damage), damage);
        if (!goods.every((one) => one.id.startsWith(beginningOf(id)))) throw new StoreFailure('bad-input');
        const before = await takeGoods(db, [id], now, damage);
        await putGoods(db, goods, now);
        await change(db, [find], now, () => ({ paid, status: 'bought' }));
        return { id, status: find.status, paid: find.paid, goods: before.get(id) ?? [] };
      }),

    putBack: (before, now) =>
      work(async (damage) => {
        const was = new Map(before.map((one) => [one.id, one]));
        const finds = await loadFinds(db, [...was.keys()], damage);
        await takeGoods(db, boughtOf(finds), now, damage);
        await change(db, finds, now, ({ id }) => {
          const one = was.get(id);
          return one && { status: one.status, paid: one.paid };
        });
        await putGoods(
          db,
          finds.flatMap(({ id }) => was.get(id)?.goods ?? []),
          now,
        );
        return null;
      }),

    remove: (id, now) => removing(async (damage) => theOnly(await remove([id], now, damage), damage)),
    removeMany: (ids, now) => removing((damage) => remove(ids, now, damage)),
    undo: (token) => removing(async (damage) => theOnly(await undo([token], damage), damage)),
    undoMany: (tokens) => removing(async (damage) => (await undo(tokens, damage)).length),
  };
}

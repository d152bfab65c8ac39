/** The finds: reading, following, and knowing an ad again. Writing is in find-writes.ts and outcome-writes.ts. */
import { keysOf, knownAmong, type Mark, markOf, markSchema } from '../../src/again/index.ts';
import type { Find } from '../../src/finds/record.ts';
import type { FindPage, Finds, ListQuery, MetAgain, RemovalPage } from './api.ts';
import { type Damage, sound, soundFind } from './checked.ts';
import { type Context, following, present, reading } from './context.ts';
import type { Database, MarkRow } from './database.ts';
import { StoreFailure } from './failure.ts';
import { idsOf, openingPage, pageOf } from './find-list.ts';
import { findWrites, loadFind } from './find-writes.ts';
import { asRemoval, outcomeWrites } from './outcome-writes.ts';
import { removedSchema } from './records.ts';
import { renewedMarks } from './renew-marks.ts';
import { rowCache } from './row-cache.ts';

async function oneFind(db: Database, id: string, damage: Damage[]): Promise<Find> {
  const find = soundFind(present(await db.finds.get(id)), damage);
  if (!find) throw new StoreFailure('unreadable');
  return find;
}

/** A mark is made of its ad and can be made again: a bad one is passed over. */
const soundMarks = (rows: readonly MarkRow[]): (readonly [string, Mark])[] =>
  rows.flatMap(({ id, mark }) => {
    const parsed = markSchema.safeParse(mark);
    return parsed.success ? [[id, parsed.data] as const] : [];
  });

export function findsOf(context: Context): Finds {
  const { db } = context;
  const { rows, isFilled } = rowCache(db);
  const marksRenewed = renewedMarks(context);
  const listed = async (query: ListQuery, damage: Damage[]): Promise<FindPage> =>
    (isFilled() ? null : await openingPage(db, query, damage)) ?? pageOf(await rows(), query, damage);
  const removed = async (damage: Damage[], most = Number.POSITIVE_INFINITY): Promise<RemovalPage> => {
    const [stored, total] = await Promise.all([
      db.removed.orderBy('removedAt').reverse().limit(most).toArray(),
      db.removed.count(),
    ]);
    const rows = stored.flatMap((one) => sound(removedSchema, one, { table: 'removed', key: one.id }, damage) ?? []);
    return { rows: rows.map(asRemoval), total };
  };
  return {
    ...findWrites(context),
    ...outcomeWrites(context),
    removals: () => reading(context, async (damage) => (await removed(damage)).rows),
    watchRemovals: (most, seen) => following(context, (damage) => removed(damage, most), seen),
    get: (id) =>
      reading(context, async (damage) => {
        const { find, ad } = await loadFind(db, id, damage);
        return { find, listing: ad.listing, edits: ad.edits };
      }),
    list: (query) => reading(context, (damage) => listed(query, damage)),
    matching: (query) => reading(context, async () => idsOf(await rows(), query)),
    withoutOffers: () =>
      reading(context, async () => (await rows()).flatMap(({ id, find }) => (find?.summary?.offers ? [] : [id]))),
    watchList: (query, seen) => following(context, (damage) => listed(query, damage), seen),
    watch: (id, seen) => following(context, (damage) => oneFind(db, id, damage), seen),
    again: async (listing) => {
      await marksRenewed();
      return reading(context, async (damage) => {
        const mark = markOf(listing);
        const candidates = await db.marks.where('keys').anyOf(keysOf(mark)).distinct().toArray();
        const known = knownAmong(soundMarks(candidates), mark);
        const rows = await db.finds.bulkGet(known.map(({ id }) => id));
        return known.flatMap(({ how, likeness }, index): MetAgain[] => {
          const row = rows[index];
          const find = row ? soundFind(row, damage) : null;
          return find ? [{ find, how, likeness }] : [];
        });
      });
    },
  };
}

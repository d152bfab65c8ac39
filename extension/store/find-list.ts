/** Which finds, in which order: by the browser's indexes, over keys alone. Only the rows of the page that is shown are read. */
import type { Collection } from 'dexie';
import type { FindPage, ListQuery, Order } from './api.ts';
import { type Damage, soundFind } from './checked.ts';
import type { Database, FindRow } from './database.ts';
import { wordsIn } from './rows.ts';

const INDEX: Readonly<Record<Order, string>> = {
  changed: 'changed',
  kept: 'kept',
  'per-usable': 'perUsable',
  'all-in': 'allIn',
  usable: 'usable',
  saving: 'saving',
  distance: 'distance',
  title: 'title',
};

const idsOf = (collection: Collection<FindRow, string>): PromiseLike<string[]> => collection.primaryKeys();

/** What each filter lets through; no filter, no set. */
async function filters(db: Database, query: ListQuery): Promise<ReadonlySet<string>[]> {
  const wanted: PromiseLike<string[]>[] = wordsIn(query.words ?? '').map((word) =>
    idsOf(db.finds.where('words').startsWith(word)),
  );
  if (query.statuses?.length) wanted.push(idsOf(db.finds.where('status').anyOf(query.statuses)));
  if (query.kinds?.length) wanted.push(idsOf(db.finds.where('kinds').anyOf(query.kinds)));
  return (await Promise.all(wanted)).map((ids) => new Set(ids));
}

/** All ids in order; those without a value behind the others, by id. */
async function ordered(db: Database, { order, descending }: ListQuery): Promise<readonly string[]> {
  const sorted = db.finds.orderBy(INDEX[order]);
  const [inOrder, all] = await Promise.all([idsOf(sorted), idsOf(db.finds.toCollection())]);
  if (descending) inOrder.reverse();
  if (inOrder.length === all.length) return inOrder;
  const known = new Set(inOrder);
  return [...inOrder, ...all.filter((id) => !known.has(id))];
}

/** In one transaction, so that the rows belong to the count. */
export const listFinds = (db: Database, query: ListQuery, damage: Damage[]): PromiseLike<FindPage> =>
  db.transaction('r', db.finds, () => pageOf(db, query, damage));

async function pageOf(db: Database, query: ListQuery, damage: Damage[]): Promise<FindPage> {
  const [ids, sets] = await Promise.all([ordered(db, query), filters(db, query)]);
  const matching = sets.length === 0 ? ids : ids.filter((id) => sets.every((set) => set.has(id)));
  const from = Math.max(0, query.from);
  const rows = await db.finds.bulkGet(matching.slice(from, from + Math.max(0, query.count)));
  return { rows: rows.flatMap((row) => (row && soundFind(row, damage)) || []), total: matching.length };
}

// @vitest-environment node
/** What ads are known again by is as it should be whenever an ad is met, and keeps nobody waiting before. */
import 'fake-indexeddb/auto';
import { expect, it, vi } from 'vitest';
import { Database } from '../../../extension/store/database.ts';
import { openStore, type Store } from '../../../extension/store/index.ts';
import { ad, freshName, PLATES, value } from './making.ts';

const titles = async (store: Store): Promise<string[]> =>
  value(await store.finds.again(ad(PLATES).listing)).map(({ find }) => find.title);

/** A store with one find, whose mark was spoiled before it was opened anew. */
async function spoiled(spoil: (db: Database) => Promise<unknown>) {
  const name = freshName();
  const first = value(await openStore({ name }));
  await first.finds.keep(ad(PLATES, null, 'Plates'), 1);
  first.close();
  const db = new Database(name);
  await spoil(db);
  const before = await db.marks.toArray();
  const store = value(await openStore({ name }));
  return { store, db, before };
}

it.each([
  ['gone', (db: Database) => db.marks.clear()],
  ['of an older way of reading', (db: Database) => db.marks.toCollection().modify({ version: 0, keys: [] })],
])('marks that are %s are made anew at the first look, and not before', async (_, spoil) => {
  const { store, db, before } = await spoiled(spoil);
  await store.finds.list({ order: 'changed', descending: true, from: 0, count: 10 });
  expect(await db.marks.toArray()).toEqual(before);
  expect(await titles(store)).toEqual(['Plates']);
  expect(await db.marks.toArray()).not.toEqual(before);
});

it('two looks at once make them once, and each sees them', async () => {
  const { store } = await spoiled((db) => db.marks.clear());
  expect(await Promise.all([titles(store), titles(store)])).toEqual([['Plates'], ['Plates']]);
});

it('what could not be made is tried again at the next look', async () => {
  const { store } = await spoiled((db) => db.marks.clear());
  const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('full', 'QuotaExceededError');
  });
  expect(await titles(store)).toEqual([]);
  full.mockRestore();
  expect(await titles(store)).toEqual(['Plates']);
  told.mockRestore();
});

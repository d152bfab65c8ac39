// @vitest-environment node
/** The second copy: whatever the browser loses of the first comes back, and the other way round. */
import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { Database } from '../../../extension/store/database.ts';
import { openStore, type Store } from '../../../extension/store/index.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { ad, freshName, PLATES, value } from './making.ts';

let name: string;
let place: IDBFactory;
const open = async (): Promise<Store> => value(await openStore({ name, copyIn: place }));
beforeEach(() => {
  name = freshName();
  place = new IDBFactory();
});

/** All tables of a database but for the counts, and for marks, which follow from the ads and are not copied. */
async function contents(factory?: IDBFactory): Promise<Record<string, unknown[]>> {
  const db = new Database(name, factory);
  const found: Record<string, unknown[]> = {};
  for (const table of db.tables)
    if (table.name !== 'counters' && table.name !== 'marks') found[table.name] = await table.toArray();
  db.close();
  return found;
}

/** Some of everything that can be written, with what is taken back and what is removed. */
async function use(store: Store): Promise<void> {
  const kept = [];
  for (const now of [1, 2, 3, 4]) kept.push(value(await store.finds.keep(ad(`${PLATES} lot ${now}`), now)).id);
  const [first = '', second = '', third = ''] = kept;
  await store.finds.setStatus(first, 'asked', 10);
  await store.finds.undo(value(await store.finds.remove(second, 11)).token);
  await store.finds.remove(third, 12);
  await store.finds.purge(100);
  await store.kit.needs.put({ id: 'a', kind: 'rack', pieces: 1, weight: null, note: '' }, 13);
  await store.kit.needs.put({ id: 'b', kind: 'bar', pieces: 1, weight: null, note: '' }, 13);
  await store.kit.needs.remove('b', 14);
  await store.settings.save({ ...DEFAULT_SETTINGS, unit: 'kg' }, 15);
}

describe('the copy', () => {
  it('has everything as soon as it is confirmed', async () => {
    await use(await open());
    expect(await contents(place)).toEqual(await contents());
    expect((await contents()).finds).toHaveLength(3);
  });

  it('has what one page writes while another one does', async () => {
    const [one, other] = [await open(), await open()];
    await Promise.all([1, 2, 3, 4, 5, 6].map((now) => (now % 2 ? one : other).finds.keep(ad(`${PLATES} lot ${now}`), now)));
    expect(await contents(place)).toEqual(await contents());
    expect((await contents()).finds).toHaveLength(6);
  });

  it('has what an import brought, and lacks what was set aside', async () => {
    const store = await open();
    await use(store);
    const file = value(await store.exportAll(20));
    name = freshName();
    const other = await open();
    await other.importAll(file);
    const raw = new Database(name);
    await raw.finds.toCollection().modify((row) => Object.assign(row, { find: null }));
    raw.close();
    expect(value(await other.check())).toBe(3);
    expect(await contents(place)).toEqual(await contents());
    expect((await contents()).aside).toHaveLength(3);
  });
});

describe('what the browser loses', () => {
  it('comes back when it is opened again, and is told', async () => {
    const store = await open();
    await use(store);
    const before = await contents();
    store.close();
    await Dexie.delete(name);
    const again = await open();
    expect([store.restored, again.restored]).toEqual([false, true]);
    expect(await contents()).toEqual(before);
    await again.finds.keep(ad('7 ft bar $90'), 20);
    expect(await contents(place)).toEqual(await contents());
    again.close();
    expect((await open()).restored).toBe(false);
  });

  it('comes back with what ads are known again by, though that is not copied', async () => {
    const store = await open();
    await use(store);
    const copy = new Database(name, place);
    expect([await copy.ads.count(), await copy.marks.count()]).toEqual([3, 0]);
    copy.close();
    store.close();
    await Dexie.delete(name);
    const { listing } = ad(`${PLATES} lot 4`);
    const again = value(await (await open()).finds.again(listing));
    expect(again.map(({ find }) => find.title)).toContainEqual(expect.stringContaining('lot 4'));
  });

  it('of the copy is put there again', async () => {
    const store = await open();
    await use(store);
    store.close();
    place = new IDBFactory();
    expect((await open()).restored).toBe(false);
    expect(await contents(place)).toEqual(await contents());
  });

  it('between database and copy is caught up with at the next opening', async () => {
    const store = await open();
    await use(store);
    // As if it had been killed in between: written, but not to the copy.
    await value(await openStore({ name, copyIn: null })).finds.keep(ad('7 ft bar $90'), 20);
    expect(await contents(place)).not.toEqual(await contents());
    store.close();
    await open();
    expect(await contents(place)).toEqual(await contents());
  });
});

it('without a place for it the store works on', async () => {
  const store = value(await openStore({ name, copyIn: null }));
  await use(store);
  expect(value(await store.finds.removals())).toEqual([]);
  expect(store.restored).toBe(false);
});

it('in a place that refuses, the store works on', async () => {
  const written = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const refusing = {
    open: () => {
      throw new DOMException('no', 'InvalidStateError');
    },
  } as never;
  const store = value(await openStore({ name, copyIn: refusing }));
  expect((await store.finds.keep(ad(PLATES), 1)).ok).toBe(true);
  written.mockRestore();
});

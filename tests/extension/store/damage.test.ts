// @vitest-environment node
/** Records that went bad, browsers that refuse, pages of other versions: a clear code each time, and nothing that was kept is lost. */
import 'fake-indexeddb/auto';
import Dexie from 'dexie';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import core from '../../../extension/_locales/en/store.json' with { type: 'json' };
import { Database } from '../../../extension/store/database.ts';
import { codeOf } from '../../../extension/store/failure.ts';
import { type FindPage, failureMessage, openStore, STORE_CODES, type Store } from '../../../extension/store/index.ts';
import { ad, failed, freshName, freshStore, gather, type Loose, PLATES, value } from './making.ts';

const ALL = { order: 'kept', descending: false, from: 0, count: 100 } as const;
let name: string;
let store: Store;
beforeEach(async () => {
  name = freshName();
  store = await freshStore({ name, clock: () => 77 });
});

/** Writes past every check, into the record kept first, as a failing disk or a defect of an older version would. */
async function spoil(table: string, change: (record: Loose) => void): Promise<void> {
  const raw = new Database(name);
  const [record] = (await raw.table(table).toArray()).sort((one, other) => (one.kept ?? 0) - (other.kept ?? 0));
  change(record);
  await raw.table(table).put(record);
  raw.close();
}

describe('a damaged record is set aside, whole, and the rest works', () => {
  it('in the row of a find', async () => {
    await store.finds.keep(ad(PLATES), 1);
    const good = value(await store.finds.keep(ad('7 ft bar $90'), 2));
    await spoil('finds', (row) => Object.assign(row.find, { prices: [{ at: 1, minor: 'many', currency: 'USD' }] }));
    expect(value(await store.finds.list(ALL)).rows).toEqual([good]);
    expect(value(await store.finds.list(ALL))).toEqual({ rows: [good], total: 1 });
    const [kept] = value(await store.setAside.all());
    expect(kept).toMatchObject({ table: 'finds', at: 77, value: { ad: { listing: { text: PLATES } } } });
    expect(kept?.why).toContain('prices.0.minor');
  });

  it('in the words of a find, by which it is searched: it stays in the list, and so do the others', async () => {
    await store.finds.keep(ad(PLATES), 1);
    const good = value(await store.finds.keep(ad('7 ft bar $90', null, 'Straight bar'), 2));
    await store.finds.keep(ad('bench $50', null, 'Flat bench'), 3);
    await spoil('finds', (row) => Reflect.deleteProperty(row, 'words'));
    const { rows } = value(await store.finds.list({ ...ALL, words: 'straight' }));
    expect(rows.map(({ id }) => id)).toContain(good.id);
    expect(rows).toHaveLength(2);
  });

  it('in the bulk of a find, when it is opened', async () => {
    const { id } = value(await store.finds.keep(ad(PLATES), 1));
    await spoil('ads', (row) => Object.assign(row, { listing: null }));
    expect(await store.finds.get(id)).toEqual(failed('unreadable'));
    expect(await store.finds.get(id)).toEqual(failed('not-found'));
    expect(value(await store.setAside.all())).toMatchObject([{ key: id, value: { row: { id } } }]);
  });

  it('also while a list is followed, which then shows the others', async () => {
    await store.finds.keep(ad(PLATES), 1);
    await store.finds.keep(ad('7 ft bar $90'), 2);
    await spoil('finds', (row) => Object.assign(row.find, { status: 'lent' }));
    const list = gather<FindPage>((seen) => store.finds.watchList(ALL, seen));
    expect((await list.next(({ total }) => total === 1)).rows).toHaveLength(1);
    list.stop();
  });

  it('in everything, by a check; what was set aside is exported, and dropped by hand', async () => {
    await store.kit.needs.put({ id: 'n', kind: 'bar', pieces: 1, weight: null, note: '' }, 1);
    await store.kit.owned.put(
      {
        id: 'o',
        kind: 'plate',
        pieces: 4,
        weight: { value: 45, unit: 'lb' },
        weighed: [],
        boreMm: null,
        shaftMm: null,
        sleeveMm: null,
        lengthMm: null,
        note: '',
      },
      1,
    );
    await spoil('needs', (row) => Object.assign(row, { pieces: -1 }));
    expect([value(await store.check()), value(await store.check())]).toEqual([1, 0]);
    expect(value(await store.kit.owned.all())).toHaveLength(1);
    const file = JSON.parse(value(await store.exportAll(5)));
    expect(file.setAside).toMatchObject([{ table: 'needs', value: { id: 'n', pieces: -1 } }]);
    await store.setAside.drop(file.setAside[0].id);
    expect(value(await store.setAside.all())).toEqual([]);
  });
});

describe('a failure', () => {
  it.each([
    [{ name: 'QuotaExceededError' }, 'full'],
    [{ name: 'AbortError', inner: { name: 'QuotaExceededError' } }, 'full'],
    [{ name: 'OpenFailedError', inner: { name: 'InvalidStateError' } }, 'refused'],
    [{ name: 'OpenFailedError', inner: { name: 'VersionError' } }, 'newer'],
    [{ name: 'BlockedError' }, 'blocked'],
    [{ name: 'OpenFailedError', inner: { name: 'UnknownError' } }, 'broken'],
    [{ name: 'TypeError' }, 'unexpected'],
    ['text', 'unexpected'],
  ])('%j is "%s"', (thrown, code) => expect(codeOf(thrown)).toBe(code));

  it('has a message each', () => {
    for (const code of STORE_CODES) expect(Object.keys(core)).toContain(failureMessage(code).key);
  });

  it('of a full disk keeps nothing of the find, and what was there stays', async () => {
    const first = value(await store.finds.keep(ad(PLATES), 1));
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore) {
      // As browsers do it: the request is made, then the transaction aborts for want of room.
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.finds.keep(ad('7 ft bar $90'), 2)).toEqual(failed('full'));
    put.mockRestore();
    expect(value(await store.finds.list(ALL)).rows).toEqual([first]);
  });

  it('of a browser that keeps nothing is told when opening', async () => {
    const open = vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      throw new DOMException('private', 'InvalidStateError');
    });
    const written = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    expect(await openStore({ name: freshName() })).toEqual(failed('refused'));
    expect(written).toHaveBeenCalled();
    for (const mock of [open, written]) mock.mockRestore();
  });

  it('because a newer version wrote the store leaves it as it is', async () => {
    store.close();
    const newer = new Dexie(name);
    newer.version(99).stores({ finds: 'id' });
    await newer.open();
    newer.close();
    expect(await openStore({ name })).toEqual(failed('newer'));
    expect((await indexedDB.databases()).find((one) => one.name === name)?.version).toBe(990);
  });

  it('because another page brought a newer version is told once, and every call says so', async () => {
    const told = vi.fn();
    store.onOutdated(told);
    const newer = new Dexie(name);
    newer.version(99).stores({ finds: 'id' });
    await newer.open();
    expect(told).toHaveBeenCalledOnce();
    expect(await store.finds.keep(ad(PLATES), 1)).toEqual(failed('outdated'));
    expect(await store.finds.list(ALL)).toEqual(failed('outdated'));
    newer.close();
  });

  it('because an older page does not let go is told after a while, and it works when the page is gone', async () => {
    const older = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open('held', 1);
      request.onsuccess = () => resolve(request.result);
    });
    expect(await openStore({ name: 'held', patience: 20 })).toEqual(failed('blocked'));
    older.close();
    await vi.waitFor(async () => expect((await openStore({ name: 'held', patience: 20 })).ok).toBe(true));
  });
});

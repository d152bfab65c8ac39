/** What became of finds, and what came with them to the kit: in one write, or not at all. */
import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import type { Outcome, Store } from '../../../extension/store/index.ts';
import { ownedFrom } from '../../../extension/workshop/bought.ts';
import { ad, failed, freshStore, gather, PLATES, value } from './making.ts';

const LOT = ad('4 x 45 lb olympic plates, 2 x 25 lb, and a curl bar, $200 for all', null, 'Lot');
const PAID = { minor: 18_000, currency: 'USD' };

/** Two finds, the first bought; what came with it was weighed since. */
async function bought() {
  const store = await freshStore();
  const lot = value(await store.finds.keep(LOT, 1));
  const other = value(await store.finds.keep(ad(PLATES), 2));
  value(await store.finds.buy(lot.id, PAID, ownedFrom(lot, LOT.evaluation), 3));
  const [first] = value(await store.kit.owned.all()).filter(({ id }) => id.endsWith('/plate-1'));
  if (!first) throw new Error('nothing owned');
  value(await store.kit.owned.put({ ...first, weighed: [{ value: 46, unit: 'lb' }] }, 4));
  return { store, lot, other };
}

const goods = async (store: Store) =>
  value(await store.kit.owned.all()).map(({ id, weighed }) => [id.split('/')[1], weighed.length]);
const ALL = [
  ['curl-bar-1', 0],
  ['plate-1', 1],
  ['plate-2', 0],
];
const stateOf = async (store: Store, id: string) => {
  const { status, paid } = value(await store.finds.get(id)).find;
  return { status, paid };
};

describe('a find that is no longer bought', () => {
  it('takes its goods out of the kit and forgets what was paid; put back it is as it was, weighings and all', async () => {
    const { store, lot, other } = await bought();
    const before = value(await store.finds.setStatusOf([lot.id, other.id, 'gone-since'], 'gone', 5));
    expect(before.map(({ status, goods }) => [status, goods.length])).toEqual([
      ['bought', 3],
      ['new', 0],
    ]);
    expect(await goods(store)).toEqual([]);
    expect(await stateOf(store, lot.id)).toEqual({ status: 'gone', paid: null });
    value(await store.finds.putBack(before, 6));
    expect(await goods(store)).toEqual(ALL);
    expect(await stateOf(store, lot.id)).toEqual({ status: 'bought', paid: PAID });
    expect(await stateOf(store, other.id)).toEqual({ status: 'new', paid: null });
  });

  it('put back is newer than what was taken, whatever the clock says', async () => {
    const { store, lot } = await bought();
    const elsewhere = await freshStore();
    const before = value(await store.finds.setStatusOf([lot.id], 'gone', 50));
    value(await elsewhere.importAll(value(await store.exportAll(60))));
    value(await store.finds.putBack(before, 10));
    value(await elsewhere.importAll(value(await store.exportAll(70))));
    expect(await goods(elsewhere)).toEqual(ALL);
  });

  it('one by one too', async () => {
    const { store, lot } = await bought();
    expect(value(await store.finds.setStatus(lot.id, 'new', 5))).toMatchObject({ status: 'new', paid: null });
    expect(await goods(store)).toEqual([]);
  });

  it('bought again stays as it is', async () => {
    const { store, lot } = await bought();
    value(await store.finds.setStatusOf([lot.id], 'bought', 5));
    expect(await goods(store)).toEqual(ALL);
    expect(await stateOf(store, lot.id)).toEqual({ status: 'bought', paid: PAID });
  });

  it('removed takes its goods along, and brings them back, over an export too', async () => {
    const { store, lot, other } = await bought();
    const removals = value(await store.finds.removeMany([lot.id, other.id, lot.id, 'gone-since'], 5));
    expect(removals.map((one) => one.goods)).toEqual([3, 0]);
    expect(await goods(store)).toEqual([]);
    const elsewhere = await freshStore();
    value(await elsewhere.importAll(value(await store.exportAll(6))));
    for (const one of [store, elsewhere]) {
      const tokens = value(await one.finds.removals()).map(({ token }) => token);
      expect(value(await one.finds.undoMany([...tokens, 'purged']))).toBe(2);
      expect(await goods(one)).toEqual(ALL);
      expect(await stateOf(one, lot.id)).toEqual({ status: 'bought', paid: PAID });
    }
    // Newer than the removal: the file from before it takes nothing away again.
    value(await store.importAll(value(await elsewhere.exportAll(7))));
    expect(await goods(store)).toEqual(ALL);
  });
});

describe('all or nothing', () => {
  /** The store as it is when its last step fails: the disk is full. */
  async function whenFull(work: (store: Store, id: string) => Promise<Outcome<unknown>>) {
    const { store, lot } = await bought();
    const was = [await goods(store), await stateOf(store, lot.id)];
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
      if (this.name === 'finds') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    };
    const outcome = await work(store, lot.id).finally(() => {
      IDBObjectStore.prototype.put = put;
    });
    expect(outcome).toEqual(failed('full'));
    expect([await goods(store), await stateOf(store, lot.id)]).toEqual(was);
  }

  it('buying', () => whenFull((store, id) => store.finds.buy(id, { minor: 1, currency: 'USD' }, [], 9)));
  it('another status', () => whenFull((store, id) => store.finds.setStatusOf([id], 'gone', 9)));
  it('put back', () => whenFull((store, id) => store.finds.putBack([{ id, status: 'new', paid: null, goods: [] }], 9)));

  it('goods that are not of the find are refused', async () => {
    const { store, lot } = await bought();
    const mine = ownedFrom({ id: 'other', title: '' }, LOT.evaluation);
    expect(await store.finds.buy(lot.id, PAID, mine, 9)).toEqual(failed('bad-input'));
    expect(await goods(store)).toEqual(ALL);
  });

  it('what is not there is said', async () => {
    const { store } = await bought();
    expect(await store.finds.buy('x', PAID, [], 9)).toEqual(failed('not-found'));
  });
});

it('removals are followed, the latest first, and counted', async () => {
  const { store, lot, other } = await bought();
  const { next, stop } = gather<{ rows: readonly { find: { id: string } }[]; total: number }>((seen) =>
    store.finds.watchRemovals(1, seen),
  );
  value(await store.finds.remove(lot.id, 5));
  value(await store.finds.remove(other.id, 6));
  expect((await next(({ total }) => total === 2)).rows.map(({ find }) => find.id)).toEqual([other.id]);
  value(await store.finds.purge(7));
  expect((await next(({ total }) => total === 0)).rows).toEqual([]);
  stop();
});

it('ids of all that match, whatever stretch is asked for', async () => {
  const { store, lot, other } = await bought();
  const query = { order: 'kept', descending: false, from: 0, count: 0 } as const;
  expect([...value(await store.finds.matching(query))].sort()).toEqual([lot.id, other.id].sort());
  expect(value(await store.finds.matching({ ...query, statuses: ['bought'] }))).toEqual([lot.id]);
});

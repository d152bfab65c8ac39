import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { buy, ownedFrom, takeBack } from '../../../extension/workshop/bought.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { ad, freshStore, value } from '../store/making.ts';

const LOT = ad('4 x 45 lb olympic plates, 2 x 25 lb, and a curl bar, $200 for all', null, 'Lot');
const PAID = { minor: 18_000, currency: 'USD' };

it('takes only what is kept', () => {
  const corrections = [
    { path: 'curl-bar-1.plan', value: 'sell' },
    { path: 'plate-2.plan', value: 'nothing' },
    { path: 'plate-1.weighed', value: '46.2, 44.8' },
  ];
  const { reading } = evaluate(LOT.listing, DEFAULT_SETTINGS, corrections);
  expect(ownedFrom({ id: 'f', title: 'Lot' }, reading)).toEqual([
    expect.objectContaining({
      id: 'f/plate-1',
      kind: 'plate',
      pieces: 4,
      note: 'Lot',
      weighed: [46.2, 44.8].map((value) => ({ value, unit: 'lb' })),
    }),
  ]);
});

it('bought twice is there once, and another find’s goods stay', async () => {
  const store = await freshStore();
  const find = value(await store.finds.keep(LOT, 1));
  for (const one of ownedFrom({ id: 'other', title: '' }, LOT.evaluation.reading).slice(0, 1)) {
    value(await store.kit.owned.put({ ...one, id: 'mine' }, 1));
  }
  for (const now of [2, 3]) expect(value(await buy(store, find, LOT.evaluation.reading, PAID, now))).toBe(3);
  expect(value(await store.kit.owned.all())).toHaveLength(4);
  value(await takeBack(store, find.id, find, 4));
  expect(value(await store.kit.owned.all()).map(({ id }) => id)).toEqual(['mine']);
  expect(value(await store.finds.get(find.id)).find).toMatchObject({ status: 'new', paid: null });
});

it('when a step fails nothing was bought', async () => {
  const store = await freshStore();
  const find = value(await store.finds.keep(LOT, 1));
  const full = { ...store, finds: { ...store.finds, setStatus: async () => ({ ok: false, code: 'full' }) as const } };
  expect(await buy(full, find, LOT.evaluation.reading, PAID, 2)).toEqual({ ok: false, code: 'full' });
  expect(value(await store.kit.owned.all())).toEqual([]);
  expect(value(await store.finds.get(find.id)).find).toMatchObject({ status: 'new', paid: null });
});

import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { foundIn, ownedFrom } from '../../../extension/workshop/bought.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { offersOf, sortGoods } from '../../../src/kit/fills.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { ad, freshStore, value } from '../store/making.ts';

const LOT = ad('4 x 45 lb olympic plates, 2 x 25 lb, and a curl bar, $200 for all', null, 'Lot');
const PAID = { minor: 18_000, currency: 'USD' };
const ONE_INCH_BAR = { ...DEFAULT_SETTINGS, sleeveMm: 25 };

it('takes only what is kept', () => {
  const corrections = [
    { path: 'curl-bar-1.plan', value: 'sell' },
    { path: 'plate-2.plan', value: 'nothing' },
    { path: 'plate-1.weighed', value: '46.2, 44.8' },
  ];
  expect(ownedFrom({ id: 'f', title: 'Lot' }, evaluate(LOT.listing, DEFAULT_SETTINGS, corrections))).toEqual([
    expect.objectContaining({
      id: 'f/plate-1',
      kind: 'plate',
      pieces: 4,
      note: 'Lot',
      weighed: [46.2, 44.8].map((value) => ({ value, unit: 'lb' })),
    }),
  ]);
});

it.each([
  ['a bent bar', '4 x 45 lb olympic plates and a bent 7 ft barbell, $200', ['plate 4'], ['bar 1']],
  ['a straight one', '4 x 45 lb olympic plates and a straight 7 ft barbell, $200', ['plate 4', 'bar 1'], []],
  ['one-inch plates', 'Two 25 lb standard plates with 1 inch hole, $20', [], ['plate 2']],
  ['one-inch plates that nobody counted', '25 lb standard plates with 1 inch hole, $20', [], ['plate 1']],
  ['cracked plates', 'Pair of 45 lb olympic plates, both cracked, $30', [], ['plate 2']],
  ['one of several cracked', '3 x 45 lb olympic plates, one of the 45s is cracked, $100', ['plate 2'], ['plate 1']],
  ['plates filled with cement', '4 x 10 lb olympic cement plates, $10', [], ['plate 4']],
  ['plates of a one-inch lot', 'One inch bar with 4 x 10 lb plates, $40', [], ['bar 1', 'plate 4']],
  ['what nobody counted', '45 lb olympic plates, $60', ['plate 1'], []],
])('counts for the kit what can be used: %s', (_, text, sound, unfit) => {
  const { evaluation } = ad(text);
  expect(ownedFrom({ id: 'f', title: '' }, evaluation).map(({ kind, pieces }) => `${kind} ${pieces}`)).toEqual(sound);
  const left = sortGoods(evaluation).filter((one) => one.unfit > 0);
  expect(left.map(({ item, unfit }) => `${item.kind.value} ${unfit}`)).toEqual(unfit);
});

it('one-inch plates count for who has such a bar', () => {
  const { listing } = ad('Two 25 lb standard plates with 1 inch hole, $20');
  expect(ownedFrom({ id: 'f', title: '' }, evaluate(listing, ONE_INCH_BAR))).toMatchObject([{ kind: 'plate', pieces: 2 }]);
});

it('what is to be sold on or not wanted offers nothing to a kit', () => {
  const corrections = [
    { path: 'curl-bar-1.plan', value: 'sell' },
    { path: 'plate-2.plan', value: 'nothing' },
  ];
  const offers = offersOf(evaluate(LOT.listing, DEFAULT_SETTINGS, corrections));
  expect(offers.map(({ kind, pieces }) => `${kind} ${pieces}`)).toEqual(['plate 4']);
});

it('bought twice is there once, and another find’s goods stay', async () => {
  const store = await freshStore();
  const find = value(await store.finds.keep(LOT, 1));
  const goods = ownedFrom(find, LOT.evaluation);
  for (const one of ownedFrom({ id: 'other', title: '' }, LOT.evaluation).slice(0, 1)) {
    value(await store.kit.owned.put({ ...one, id: 'mine' }, 1));
    value(await store.kit.owned.put(one, 1));
  }
  const before = value(await store.finds.buy(find.id, PAID, goods, 2));
  expect(before).toEqual({ id: find.id, status: 'new', paid: null, goods: [] });
  value(await store.finds.buy(find.id, PAID, goods, 3));
  const owned = value(await store.kit.owned.all());
  expect(owned).toHaveLength(5);
  expect(owned.filter((one) => foundIn([find], one))).toHaveLength(3);
  expect(value(await store.finds.get(find.id)).find).toMatchObject({ status: 'bought', paid: PAID });
  value(await store.finds.putBack([before], 4));
  expect(value(await store.kit.owned.all()).map(({ id }) => id)).toEqual(['mine', 'other/plate-1']);
  expect(value(await store.finds.get(find.id)).find).toMatchObject({ status: 'new', paid: null });
});

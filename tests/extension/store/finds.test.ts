// @vitest-environment node
/** Keeping, changing, listing and taking back finds, over an IndexedDB in memory. The real one is in tests/browser/store.test.ts. */
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Find, FindPage, ListQuery, Store } from '../../../extension/store/index.ts';
import { ad, failed, freshStore, gather, PLATES, value } from './making.ts';

const ALL: ListQuery = { order: 'kept', descending: false, from: 0, count: 100 };
let store: Store;
beforeEach(async () => {
  store = await freshStore();
});
const keep = async (text: string, now: number, address: string | null = null): Promise<Find> =>
  value(await store.finds.keep(ad(text, address), now));
const titles = async (query: Partial<ListQuery>): Promise<string[]> =>
  value(await store.finds.list({ ...ALL, ...query })).rows.map(({ title }) => title);

describe('a kept find', () => {
  it('comes back whole, with the figures that a list shows', async () => {
    const given = ad(PLATES, 'https://ads.invalid/item/1234567?utm_source=x', 'Plates');
    const find = value(await store.finds.keep(given, 1000));
    expect(find).toMatchObject({
      title: 'Plates',
      path: '/item/1234567',
      status: 'new',
      prices: [{ at: 1000, minor: 15_000, currency: 'USD' }],
      keptAt: 1000,
      summary: { call: given.evaluation.call.kind, kinds: ['plate'], place: 'Elmwick', usable: given.evaluation.worth.usable },
    });
    expect(find.summary.saving).toEqual(given.evaluation.worth.saving ?? expect.fail());
    // Against new in the same condition: rusted through it saves less than sound.
    const rusty = value(
      await store.finds.keep(ad(PLATES.replace('plates', 'plates, heavily rusted'), 'https://ads.invalid/item/7654321'), 1000),
    );
    expect(rusty.summary.saving?.minor).toBeLessThan(find.summary.saving?.minor ?? 0);
    expect(value(await store.finds.get(find.id))).toEqual({ find, listing: given.listing, edits: given.edits });
  });

  it('takes what was said about it along', async () => {
    const edits = {
      changes: [{ by: 'hand' as const, correction: { path: 'plate-1.count', value: 6 } }],
      distance: { value: 9, unit: 'mi' as const },
    };
    const { id } = value(await store.finds.keep({ ...ad(PLATES), edits }, 1));
    expect(value(await store.finds.get(id)).edits).toEqual(edits);
  });

  it('met again at another price has both in its history, and keeps status, notes and the day it was kept', async () => {
    const { id } = await keep(PLATES, 1000);
    await store.finds.setStatus(id, 'asked', 2000);
    await store.finds.update(id, { notes: 'Asked for the bore.' }, 3000);
    const cheaper = value(await store.finds.refresh(id, ad(PLATES.replace('150', '120')), 4000));
    expect(cheaper).toMatchObject({ status: 'asked', notes: 'Asked for the bore.', keptAt: 1000, metAt: 4000 });
    expect(cheaper.prices).toEqual([
      { at: 1000, minor: 15_000, currency: 'USD' },
      { at: 4000, minor: 12_000, currency: 'USD' },
    ]);
    const again = value(await store.finds.refresh(id, ad(PLATES.replace('150', '120')), 5000, false));
    expect([again.prices.length, again.metAt]).toEqual([2, 4000]);
  });

  it('is changed later than it was before, whatever the clock says', async () => {
    const { id } = await keep(PLATES, 5000);
    expect(value(await store.finds.setStatus(id, 'going', 10)).changedAt).toBe(5001);
  });

  it('that is handed in wrong is not kept, nor changed', async () => {
    const wrong = { ...ad(PLATES), edits: { changes: 'none', distance: null } as never };
    expect(await store.finds.keep(wrong, 1)).toEqual(failed('bad-input'));
    const { id } = await keep(PLATES, 1);
    expect(await store.finds.setStatus(id, 'sold' as never, 2)).toEqual(failed('bad-input'));
    expect(await store.finds.update(id, { notes: 'x'.repeat(20_001) }, 2)).toEqual(failed('bad-input'));
    expect(value(await store.finds.list(ALL)).rows).toMatchObject([{ status: 'new', notes: '' }]);
  });

  it('that is not there is not found', async () => {
    for (const outcome of [
      await store.finds.get('x'),
      await store.finds.setStatus('x', 'gone', 1),
      await store.finds.remove('x', 1),
      await store.finds.undo('x'),
    ])
      expect(outcome).toEqual(failed('not-found'));
  });
});

describe('a removed find', () => {
  it('is off the lists, and back as it was when undone', async () => {
    const find = await keep(PLATES, 1000);
    const before = value(await store.finds.get(find.id));
    const { token } = value(await store.finds.remove(find.id, 2000));
    expect(await titles({})).toEqual([]);
    expect(value(await store.finds.again(before.listing))).toEqual([]);
    expect(value(await store.finds.removals())).toMatchObject([{ token, removedAt: 2000 }]);
    const back = value(await store.finds.undo(token));
    expect(value(await store.finds.get(find.id))).toEqual({ ...before, find: { ...find, changedAt: back.changedAt } });
    expect(back.changedAt).toBeGreaterThan(2000);
    expect(await store.finds.undo(token)).toEqual(failed('not-found'));
  });

  it('is gone for good only when purged', async () => {
    const tokens = [];
    for (const now of [1000, 2000]) tokens.push(value(await store.finds.remove((await keep(PLATES, now)).id, now + 1)).token);
    expect(value(await store.finds.purge(1500))).toBe(1);
    expect(await store.finds.undo(tokens[0] ?? '')).toEqual(failed('not-found'));
    expect((await store.finds.undo(tokens[1] ?? '')).ok).toBe(true);
  });

  it('is gone for good at once when it alone is purged, and no file from before brings it back', async () => {
    const [one, other] = [await keep(PLATES, 1000), await keep(PLATES, 1000)];
    const file = value(await store.exportAll(1500));
    const { token } = value(await store.finds.remove(one.id, 2000));
    const { token: others } = value(await store.finds.remove(other.id, 2000));
    expect(value(await store.finds.purgeOne(token))).toBe(1);
    expect(value(await store.finds.purgeOne(token))).toBe(0);
    value(await store.importAll(file));
    expect(await store.finds.get(one.id)).toEqual(failed('not-found'));
    expect(value(await store.finds.removals()).map((left) => left.token)).toEqual([others]);
  });
});

describe('the list', () => {
  beforeEach(async () => {
    await keep('Rack, sturdy, $300', 1, 'https://ads.invalid/item/1000001');
    await keep('Bumper plates 2 x 20 kg, 4 x 10 kg, $200', 2, 'https://ads.invalid/item/1000002');
    await keep('4 x 45 lb iron plates, $100', 3, 'https://ads.invalid/item/1000003');
    await keep('4 x 45 lb iron plates, price on request', 4, 'https://ads.invalid/item/1000004');
  });

  it('is ordered either way; what lacks the value comes last both times', async () => {
    const [rack, bumpers, iron, unpriced] = await titles({});
    expect(await titles({ descending: true })).toEqual([unpriced, iron, bumpers, rack]);
    const up = await titles({ order: 'per-usable' });
    const down = await titles({ order: 'per-usable', descending: true });
    expect(up.slice(0, 2)).toEqual([iron, bumpers]);
    expect(down.slice(0, 2)).toEqual([bumpers, iron]);
    // A price for a rack is no price per pound.
    for (const last of [up, down]) expect(last.slice(2).sort()).toEqual([rack, unpriced].sort());
  });

  it('is filtered by status, kind and words, together', async () => {
    const [, bumpers, iron] = value(await store.finds.list(ALL)).rows;
    await store.finds.setStatus(iron?.id ?? '', 'asked', 9);
    expect(await titles({ statuses: ['asked', 'bought'] })).toEqual([iron?.title]);
    expect(await titles({ kinds: ['rack', 'bumper'] })).toHaveLength(2);
    expect(await titles({ words: 'PLAT 45' })).toHaveLength(2);
    expect(await titles({ words: 'plates', kinds: ['bumper'], statuses: ['new'] })).toEqual([bumpers?.title]);
    expect(await titles({ words: 'absent' })).toEqual([]);
  });

  it('finds notes, whatever their accents', async () => {
    const [first] = value(await store.finds.list(ALL)).rows;
    await store.finds.update(first?.id ?? '', { notes: 'Café round the corner' }, 9);
    expect(await titles({ words: 'cafe' })).toEqual([first?.title]);
  });

  it('gives a stretch of the rows and the number of all', async () => {
    const page = value(await store.finds.list({ ...ALL, from: 1, count: 2 }));
    expect([page.rows.map(({ keptAt }) => keptAt), page.total]).toEqual([[2, 3], 4]);
  });

  it('follows whatever happened between two looks', async () => {
    const ids = value(await store.finds.list(ALL)).rows.map(({ id }) => id);
    const last = ids[3] ?? '';
    const { token } = value(await store.finds.remove(last, 10));
    await keep('7 ft bar, $90', 11);
    expect(value(await store.finds.list(ALL)).rows.map(({ keptAt }) => keptAt)).toEqual([1, 2, 3, 11]);
    await store.finds.undo(token);
    await store.finds.remove(ids[0] ?? '', 12);
    await store.finds.setStatus(last, 'asked', 13);
    await keep('Flat bench, $40', 14);
    const { rows, total } = value(await store.finds.list(ALL));
    expect([rows.map(({ keptAt }) => keptAt), total]).toEqual([[2, 3, 4, 11, 14], 5]);
    expect(rows[2]?.status).toBe('asked');
  });

  it('is live, and so is a single find', async () => {
    const [first] = value(await store.finds.list(ALL)).rows;
    const list = gather<FindPage>((seen) => store.finds.watchList(ALL, seen));
    const one = gather<Find>((seen) => store.finds.watch(first?.id ?? '', seen));
    await list.next(({ total }) => total === 4);
    await store.finds.setStatus(first?.id ?? '', 'bought', 9);
    await list.next(({ rows }) => rows[0]?.status === 'bought');
    await one.next(({ status }) => status === 'bought');
    for (const { stop } of [list, one]) stop();
    const shown = list.all.length;
    await store.finds.setStatus(first?.id ?? '', 'gone', 10);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(list.all.length).toBe(shown);
  });
});

describe('met again', () => {
  it('by its address, and as a repost by its words', async () => {
    const text =
      'Clearing out the garage: six cast plates of 45 lb each, two of 25 lb, holes measured at 50.6 mm, kept dry, a little rust on the rims. Collect from Elmwick after work.';
    const { id } = await keep(`${text} $200`, 1, 'https://ads.invalid/item/1234567');
    await keep('7 ft bar, straight, spins well, $90', 2, 'https://ads.invalid/item/7654321');
    const seen = async (words: string, address: string | null) =>
      value(await store.finds.again(ad(words, address).listing)).map(({ find, how }) => [find.id, how]);
    expect(await seen(`${text} Now $170`, 'https://m.ads.invalid/item/1234567/?utm_campaign=mail#top')).toEqual([
      [id, 'address'],
    ]);
    expect(await seen(`Weights. ${text} $180`, 'https://other.invalid/ad/99887766')).toEqual([[id, 'words']]);
    expect(await seen(text.replace('six', 'four'), 'https://other.invalid/ad/99887766')).toEqual([]);
  });
});

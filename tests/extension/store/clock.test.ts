// @vitest-environment node
/** A clock that was moved back: what is changed later stays the later, also in a file, and nothing is lost or shown as from the future. */
import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { daysKnown } from '../../../src/finds/history.ts';
import { ad, freshStore, PLATES, value } from './making.ts';

const ALL = { order: 'changed', descending: true, from: 0, count: 100 } as const;
const [LATER, EARLIER] = [9_000_000, 1_000_000];

describe('after the clock was moved back', () => {
  it('a change is newer than what it changes, and wins when a file is brought in', async () => {
    const store = await freshStore();
    const { id } = value(await store.finds.keep(ad(PLATES), LATER));
    const old = value(await store.exportAll(LATER));
    expect(value(await store.finds.setStatus(id, 'asked', EARLIER)).changedAt).toBeGreaterThan(LATER);
    expect(value(await store.importAll(old))).toMatchObject({ added: 0, replaced: 0 });
    expect(value(await store.finds.get(id)).find.status).toBe('asked');
  });

  it('the find that was changed last stands first', async () => {
    const store = await freshStore();
    const one = value(await store.finds.keep(ad(PLATES), LATER));
    const other = value(await store.finds.keep(ad('7 ft olympic bar $90'), LATER + 5));
    await store.finds.update(one.id, { notes: 'x' }, LATER + 10);
    await store.finds.update(other.id, { notes: 'y' }, EARLIER);
    await store.finds.update(other.id, { notes: 'z' }, EARLIER + 1);
    expect(value(await store.finds.list(ALL)).rows.map(({ notes }) => notes)).toHaveLength(2);
    expect(value(await store.finds.get(other.id)).find.notes).toBe('z');
  });

  it('a removal can be undone, and is not purged before its time', async () => {
    const store = await freshStore();
    const { id } = value(await store.finds.keep(ad(PLATES), LATER));
    const { token } = value(await store.finds.remove(id, EARLIER));
    expect(value(await store.finds.purge(EARLIER + 1))).toBe(0);
    expect(value(await store.finds.undo(token)).id).toBe(id);
  });

  it('prices stay in the order in which they were met, and the ad was never met in the future', async () => {
    const store = await freshStore();
    const { id } = value(await store.finds.keep(ad(PLATES), LATER));
    const cheaper = ad(PLATES.replace('$150', '$120'));
    const { prices, metAt } = value(await store.finds.refresh(id, cheaper, EARLIER));
    expect(prices.map(({ minor }) => minor)).toEqual([15_000, 12_000]);
    expect(prices.map(({ at }) => at)).toEqual([...prices.map(({ at }) => at)].sort((a, b) => a - b));
    expect(metAt).toBe(LATER);
    expect(daysKnown(LATER, EARLIER)).toBe(0);
  });
});

// @vitest-environment node
/** Settings in the store, and those that an older version kept elsewhere. */
import 'fake-indexeddb/auto';
import { describe, expect, it, vi } from 'vitest';
import { Database } from '../../../extension/store/database.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { failed, freshName, freshStore, gather, value } from './making.ts';

const CELL = { low: 0.4, likely: 0.5, high: 0.6, source: 'own', date: '2026-05' };
const OLD: Settings = { ...DEFAULT_SETTINGS, unit: 'kg', rates: { iron: { used: CELL, new: CELL } } };
const elsewhere = (settings: Settings | null) => ({
  read: vi.fn(async () => settings && { settings, unreadable: [] }),
  drop: vi.fn(async () => undefined),
});

describe('settings', () => {
  it('are the defaults where nothing was ever saved', async () =>
    expect(value(await (await freshStore()).settings.load(1))).toEqual({ settings: DEFAULT_SETTINGS, unreadable: [] }));

  it('come back as saved, with their rate cells, which also stand as rows', async () => {
    const store = await freshStore();
    await store.settings.save(OLD, 1);
    expect(value(await store.settings.load(2)).settings).toEqual(OLD);
    expect(
      value(await store.rates.cells.all())
        .map(({ id }) => id)
        .sort(),
    ).toEqual(['iron.new', 'iron.used']);
    await store.settings.save({ ...OLD, rates: { iron: { used: CELL } } }, 3);
    expect(value(await store.settings.load(4)).settings.rates).toEqual({ iron: { used: CELL } });
  });

  it('follow a cell that is edited by itself; a learned one is not theirs', async () => {
    const store = await freshStore();
    const seen = gather(store.settings.watch);
    await store.rates.cells.put({ id: 'bar.used', category: 'bar', column: 'used', origin: 'edited', cell: CELL }, 1);
    await store.rates.cells.put({ id: 'bar.new', category: 'bar', column: 'new', origin: 'learned', cell: CELL }, 1);
    await seen.next(({ rates }) => rates.bar?.used?.likely === 0.5 && rates.bar.new === undefined);
    seen.stop();
  });

  it('that are wrong are not saved', async () =>
    expect(await (await freshStore()).settings.save({ ...OLD, margin: 3 }, 1)).toEqual(failed('bad-input')));

  it('of which one went bad keep the others; the old record is set aside', async () => {
    const name = freshName();
    const store = await freshStore({ name });
    await store.settings.save(OLD, 1);
    const raw = new Database(name);
    await raw.settings.update('settings', { 'value.perMile': 'much' } as never);
    raw.close();
    const { settings, unreadable } = value(await store.settings.load(5));
    expect([settings, unreadable]).toEqual([OLD, ['perMile']]);
    expect(value(await store.setAside.all())).toMatchObject([{ table: 'settings', value: { value: { perMile: 'much' } } }]);
    expect(value(await store.settings.load(6)).unreadable).toEqual([]);
  });
});

describe('settings kept elsewhere', () => {
  it('are taken over once; the old copy goes when the new one is written', async () => {
    const old = elsewhere(OLD);
    const name = freshName();
    const store = await freshStore({ name, oldSettings: old });
    old.drop.mockImplementation(async () => {
      const raw = new Database(name);
      expect(await raw.settings.count()).toBe(1);
      raw.close();
      return undefined;
    });
    expect(value(await store.settings.load(1)).settings).toEqual(OLD);
    expect(value(await store.settings.load(2)).settings).toEqual(OLD);
    expect([old.read.mock.calls.length, old.drop.mock.calls.length]).toEqual([1, 1]);
  });

  it('hold, and stay, while the new copy can not be written', async () => {
    const old = elsewhere(OLD);
    const store = await freshStore({ oldSettings: old });
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(value(await store.settings.load(1)).settings).toEqual(OLD);
    expect(old.drop).not.toHaveBeenCalled();
    put.mockRestore();
    expect(value(await store.settings.load(2)).settings).toEqual(OLD);
    expect(old.drop).toHaveBeenCalledOnce();
  });

  it('do not win over what was saved here', async () => {
    const old = elsewhere(OLD);
    const store = await freshStore({ oldSettings: old });
    await store.settings.save(DEFAULT_SETTINGS, 1);
    expect(value(await store.settings.load(2)).settings).toEqual(DEFAULT_SETTINGS);
    expect(old.drop).not.toHaveBeenCalled();
  });
});

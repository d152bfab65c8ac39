// @vitest-environment node
/** The going rate follows the finds; changes of settings by several pages; what an import would do. */
import 'fake-indexeddb/auto';
import { describe, expect, it, vi } from 'vitest';
import { keepLearning, learn } from '../../../extension/store/learning.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { ad, failed, freshStore, PLATES, value } from './making.ts';

const NOW = Date.UTC(2026, 4, 1);
type Store = Awaited<ReturnType<typeof freshStore>>;
const settingsIn = async (store: Store) => value(await store.settings.load(NOW)).settings;

describe('learning', () => {
  it('puts what the finds taught among the settings, and takes it back when they are gone', async () => {
    const store = await freshStore();
    const { id } = value(await store.finds.keep(ad(PLATES), NOW));
    await learn(store, NOW);
    expect((await settingsIn(store)).learned.iron).toMatchObject({
      finds: 1,
      source: 'learned',
      date: '2026-05',
      currency: 'USD',
    });
    await store.finds.remove(id, NOW);
    await learn(store, NOW);
    expect((await settingsIn(store)).learned).toEqual({});
  });

  it('does not make the settings newer than those of a file', async () => {
    const other = await freshStore();
    await other.settings.save({ ...DEFAULT_SETTINGS, margin: 0.3 }, 5);
    const file = value(await other.exportAll(6));
    const store = await freshStore();
    await store.finds.keep(ad(PLATES), NOW);
    await learn(store, NOW);
    value(await store.importAll(file));
    expect((await settingsIn(store)).margin).toBe(0.3);
  });

  it('follows every change, and comes to rest', async () => {
    const store = await freshStore();
    const clock = vi.fn(() => NOW);
    const stop = keepLearning(store, clock);
    await store.finds.keep(ad(PLATES), NOW);
    await vi.waitFor(async () => expect((await settingsIn(store)).learned.iron?.finds).toBe(1));
    await store.settings.change(() => ({ currency: 'EUR' }), NOW);
    await vi.waitFor(async () => expect((await settingsIn(store)).learned).toEqual({}));
    await new Promise((resolve) => setTimeout(resolve, 700));
    const calls = clock.mock.calls.length;
    await new Promise((resolve) => setTimeout(resolve, 700));
    expect(clock.mock.calls.length).toBe(calls);
    stop();
  });

  it('takes over settings from elsewhere before it writes its own', async () => {
    const read = vi.fn(async () => ({ settings: { ...DEFAULT_SETTINGS, margin: 0.4 }, unreadable: [] }));
    const store = await freshStore({ oldSettings: { read, drop: async () => undefined } });
    await store.finds.keep(ad(PLATES), NOW);
    await learn(store, NOW);
    expect(await settingsIn(store)).toMatchObject({ margin: 0.4, learned: { iron: { finds: 1 } } });
  });
});

describe('changes', () => {
  it('of two pages both hold', async () => {
    const store = await freshStore();
    await Promise.all([
      store.settings.change(() => ({ margin: 0.2 }), NOW),
      store.settings.change(() => ({ perMile: 0.5 }), NOW),
      store.settings.change(({ limits }) => ({ limits: { ...limits, shaftThick: 31 } }), NOW),
    ]);
    expect(await settingsIn(store)).toMatchObject({ margin: 0.2, perMile: 0.5, limits: { shaftThick: 31 } });
  });

  it('that are wrong change nothing', async () => {
    const store = await freshStore();
    expect(await store.settings.change(() => ({ margin: 7 }), NOW)).toEqual(failed('bad-input'));
    expect((await settingsIn(store)).margin).toBe(DEFAULT_SETTINGS.margin);
  });
});

describe('a preview', () => {
  it('tells what importing does, and does nothing', async () => {
    const other = await freshStore();
    await other.finds.keep(ad(PLATES), NOW);
    await other.settings.save({ ...DEFAULT_SETTINGS, margin: 0.3 }, NOW);
    const file = value(await other.exportAll(NOW + 1));
    const store = await freshStore();
    const told = value(await store.previewImport(file));
    expect(told).toEqual({ exportedAt: NOW + 1, finds: 1, others: 0, settings: true, added: 2, replaced: 0, kept: 0 });
    expect(JSON.parse(value(await store.exportAll(NOW))).finds).toEqual([]);
    expect(value(await store.importAll(file))).toEqual({ added: 2, replaced: 0, kept: 0 });
    expect(value(await store.previewImport(file))).toMatchObject({ added: 0, replaced: 0, kept: 2 });
  });

  it('of a bad file says where', async () => {
    const store = await freshStore();
    const file = JSON.parse(value(await store.exportAll(NOW)));
    file.finds = [{ find: {}, ad: {} }];
    expect(await store.previewImport(JSON.stringify(file))).toMatchObject({
      ok: false,
      code: 'bad-record',
      path: ['finds', 0, 'find', 'id'],
    });
  });

  it('a file from before a setting was there is taken, with its default', async () => {
    const store = await freshStore();
    await store.settings.save({ ...DEFAULT_SETTINGS, margin: 0.3, theme: 'dark' }, NOW);
    const file = JSON.parse(value(await store.exportAll(NOW)));
    delete file.settings.value.theme;
    const fresh = await freshStore();
    value(await fresh.importAll(JSON.stringify(file)));
    expect(await settingsIn(fresh)).toMatchObject({ margin: 0.3, theme: 'system' });
  });
});

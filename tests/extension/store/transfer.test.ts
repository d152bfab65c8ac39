// @vitest-environment node
/** Everything out as a file and in again. */
import 'fake-indexeddb/auto';
import { parse } from 'papaparse';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import strings from '../../../extension/_locales/en/store.json' with { type: 'json' };
import { harmless } from '../../../extension/store/csv.ts';
import { badFileMessage, type Store } from '../../../extension/store/index.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { speaker } from '../../../src/words/say.ts';
import { stringsOf } from '../panel/fixtures/strings.ts';
import { ad, freshStore, type Loose, PLATES, value } from './making.ts';

const words = Object.fromEntries(Object.entries(strings).map(([key, { message }]) => [key, message]));
const say = speaker(words, 'en-GB');
const CELL = { low: 0.4, likely: 0.5, high: 0.6, source: 'own', date: '2026-05' };
const ALL = { order: 'kept', descending: false, from: 0, count: 100 } as const;

let store: Store;
beforeEach(async () => {
  store = await freshStore();
});

async function fill(): Promise<void> {
  await store.finds.keep(ad(PLATES, 'https://ads.invalid/item/1234567'), 1000);
  const second = value(await store.finds.keep(ad('7 ft bar $90'), 2000));
  await store.finds.remove(second.id, 3000);
  await store.kit.needs.put({ id: 'rack', kind: 'rack', pieces: 1, weight: null, note: '' }, 10);
  await store.kit.needs.put({ id: 'bench', kind: 'bench', pieces: 1, weight: null, note: '' }, 10);
  await store.kit.needs.remove('bench', 20);
  await store.settings.save({ ...DEFAULT_SETTINGS, unit: 'kg', rates: { iron: { used: CELL } } }, 30);
}
const exported = async (from: Store): Promise<Loose> => JSON.parse(value(await from.exportAll(9)));

describe('an export', () => {
  it('brought into an empty store gives the same export again', async () => {
    await fill();
    const other = await freshStore();
    const file = value(await store.exportAll(9));
    expect(value(await other.importAll(file))).toEqual({ added: 4, replaced: 1, kept: 0 });
    expect(await exported(other)).toEqual(await exported(store));
    expect(value(await other.settings.load(99)).settings).toMatchObject({ unit: 'kg', rates: { iron: { used: CELL } } });
    expect(value(await other.finds.again(ad(PLATES, 'https://ads.invalid/item/1234567').listing))).toHaveLength(1);
  });

  it('brought in twice changes nothing more', async () => {
    await fill();
    const file = value(await store.exportAll(9));
    const before = await exported(store);
    for (const _ of [1, 2]) expect(value(await store.importAll(file))).toMatchObject({ added: 0, replaced: 0 });
    expect(await exported(store)).toEqual(before);
  });
});

describe('what a preview tells', () => {
  /** A file that holds one id as a find and as a removal, each later than the other in turn, beside deletions and what is here. */
  it('is what importing then does, whichever of both sides is later, and nothing is written for it', async () => {
    await fill();
    const [find] = value(await store.finds.list(ALL)).rows;
    const file = await exported(store);
    const [kept] = file.finds;
    const at = find?.changedAt ?? 0;
    const as = (id: string, changedAt: number) => ({ find: { ...kept.find, id, changedAt }, ad: { ...kept.ad, id } });
    const gone = (id: string, changedAt: number, removedAt: number) => ({
      ...as(id, changedAt),
      id,
      token: `t-${id}`,
      removedAt,
    });
    file.finds = [as('a', 50), as('b', 50), as('c', 50), as(kept.find.id, at + 5), as('d', 50)];
    file.removed = [...file.removed, gone('a', 40, 60), gone('b', 40, 45), gone('e', 40, 45), gone(kept.find.id, at, at + 9)];
    file.tombs = [...file.tombs, { id: 'finds/c', at: 70 }, { id: 'finds/d', at: 10 }, { id: 'needs/rack', at: 99 }];
    const text = JSON.stringify(file);
    const before = await exported(store);
    const told = value(await store.previewImport(text));
    expect(await exported(store)).toEqual(before);
    const done = value(await store.importAll(text));
    expect(told).toMatchObject(done);
    expect(done.added).toBeGreaterThan(0);
    expect(done.replaced).toBeGreaterThan(0);
    expect(
      value(await store.finds.list(ALL))
        .rows.map(({ id }) => id)
        .sort(),
    ).toEqual(['b', 'd']);
    expect(value(await store.previewImport(text))).toMatchObject({ added: 0, replaced: 0 });
  });

  it('takes no writing of finds', async () => {
    await fill();
    const text = value(await store.exportAll(9));
    const put = vi.spyOn(IDBObjectStore.prototype, 'put');
    value(await (await freshStore()).previewImport(text));
    const tables = put.mock.contexts.map((table) => (table as IDBObjectStore).name);
    put.mockRestore();
    expect(tables.filter((name) => ['finds', 'ads', 'marks', 'removed'].includes(name))).toEqual([]);
  });
});

describe('a merge', () => {
  it('takes of each record the version that was changed later, from whichever side', async () => {
    await fill();
    const other = await freshStore();
    await other.importAll(value(await store.exportAll(9)));
    const [find] = value(await store.finds.list(ALL)).rows;
    const id = find?.id ?? '';
    await store.finds.setStatus(id, 'asked', 5000);
    await other.finds.setStatus(id, 'bought', 6000);
    await store.importAll(value(await other.exportAll(9)));
    await other.importAll(value(await store.exportAll(9)));
    for (const one of [store, other]) expect(value(await one.finds.list(ALL)).rows).toMatchObject([{ status: 'bought' }]);
    expect(await exported(store)).toEqual(await exported(other));
  });

  it('does not bring back what was removed since, nor lose what was changed since', async () => {
    await fill();
    const [find] = value(await store.finds.list(ALL)).rows;
    const id = find?.id ?? '';
    const old = value(await store.exportAll(9));
    const { token } = value(await store.finds.remove(id, 7000));
    await store.importAll(old);
    expect(value(await store.finds.list(ALL)).total).toBe(0);
    const removedThere = value(await store.exportAll(9));
    await store.finds.undo(token);
    await store.importAll(removedThere);
    expect(value(await store.finds.list(ALL)).total).toBe(1);
    await store.finds.remove(id, 8000);
    await store.finds.purge(9000);
    await store.importAll(old);
    expect(value(await store.finds.list(ALL)).total).toBe(0);
    expect(value(await store.kit.needs.all()).map((need) => need.id)).toEqual(['rack']);
  });

  it('follows a removal that was made elsewhere, and it can be undone here', async () => {
    await fill();
    const other = await freshStore();
    await other.importAll(value(await store.exportAll(9)));
    const [find] = value(await store.finds.list(ALL)).rows;
    await other.finds.remove(find?.id ?? '', 7000);
    await store.importAll(value(await other.exportAll(9)));
    expect(value(await store.finds.list(ALL)).total).toBe(0);
    const [removal] = value(await store.finds.removals());
    expect((await store.finds.undo(removal?.token ?? '')).ok).toBe(true);
  });
});

describe('a bad file changes nothing and says where it is wrong', () => {
  const broken = async (change: (file: Loose) => void): Promise<string> => {
    await fill();
    const file = await exported(store);
    change(file);
    const empty = await freshStore();
    const outcome = await empty.importAll(JSON.stringify(file));
    expect(await exported(empty)).toMatchObject({ finds: [], needs: [], settings: null });
    if (outcome.ok || !('path' in outcome)) throw new Error('taken');
    return say(badFileMessage(outcome));
  };

  it('in a price', async () =>
    expect(await broken(({ finds }) => Object.assign(finds[0].find.prices[0], { minor: 1.5 }))).toBe(
      'This file is damaged at: the file › “finds” › number 1 › “find” › “prices” › number 1 › “minor”. Nothing was changed.',
    ));
  it('in one record of many, the last', async () =>
    expect(await broken((file) => Object.assign(file, { needs: [...file.needs, { id: 'x' }] }))).toContain('“needs” › number 2'));
  it('in a list that is missing', async () => expect(await broken((file) => delete file.tombs)).toContain('“tombs”'));
  it('in a find and its text that do not belong together', async () =>
    expect(await broken(({ finds }) => Object.assign(finds[0].ad, { id: 'other' }))).toContain('“ad” › “id”'));
  it('of a newer version', async () =>
    expect(await broken((file) => Object.assign(file, { version: 2 }))).toBe(words.store_file_newer));

  it.each([
    ['not JSON', '{', 'not-json'],
    ['empty', '', 'not-json'],
    ["another program's", '{"version": 1}', 'not-ours'],
    ['null', 'null', 'not-ours'],
    ['hostile', '{"__proto__": {"format": "ironsift"}, "version": 1}', 'not-ours'],
  ])('%s', async (_, text, code) => expect(await store.importAll(text)).toMatchObject({ ok: false, code }));
});

describe('CSV', () => {
  it('is read by another program cell for cell, formulas made harmless', async () => {
    const text = '=HYPERLINK("https://x.invalid")\n4 x 45 lb plates, "good", $150';
    const { id } = value(await store.finds.keep(ad(text, 'https://ads.invalid/item/1234567'), Date.UTC(2026, 4, 2)));
    await store.finds.update(id, { notes: '@SUM(1)\nsecond, line' }, Date.UTC(2026, 4, 3));
    const csv = value(await store.exportCsv((key) => words[key] ?? key));
    const { data, errors } = parse<Record<string, string>>(csv.replace('\ufeff', ''), { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(data).toHaveLength(1);
    expect(data[0]).toMatchObject({
      Title: '\'=HYPERLINK("https://x.invalid")',
      'Asking price': '150',
      Currency: 'USD',
      Notes: "'@SUM(1)\nsecond, line",
      'Kept on': '2026-05-02',
      Address: 'https://ads.invalid/item/1234567',
    });
  });

  it('says its codes in the reader’s words, and days of his own zone', async () => {
    vi.stubEnv('TZ', 'America/New_York');
    const text = 'Trap bar $60, bench $40, 4 x 45 lb olympic plates $80';
    // An hour past midnight at Greenwich, the evening before in New York.
    value(await store.finds.keep(ad(text), Date.UTC(2026, 4, 2, 1)));
    const german = stringsOf('de');
    const csv = value(await store.exportCsv((key) => german[key] ?? key));
    const [row] = parse<Record<string, string>>(csv.replace('\ufeff', ''), { header: true }).data;
    expect(row).toMatchObject({
      Stand: 'neu',
      Urteil: 'Die Fahrt lohnt sich',
      Arten: 'Hex-Bar, Bank, Scheiben',
      'Behalten am': '2026-05-01',
      'Zuletzt gesehen am': '2026-05-01',
    });
    vi.unstubAllEnvs();
  });

  // OWASP, "CSV Injection": the signs with which a formula may begin.
  it.each(['=1', '+1', '-1', '@a', '\ta', '\ra', ' =1', '\uff1d1'])('%j is made harmless', (cell) =>
    expect(harmless(cell)).toBe(`'${cell}`),
  );
  it.each(['a=1', '1-2', '', 'x@y.invalid'])('%j stays', (cell) => expect(harmless(cell)).toBe(cell));
});

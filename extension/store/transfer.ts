/** Everything out as one file, and a file in: merged by id, the version changed later holds, all or nothing. */

import type { BadFile, Imported, Preview, Store } from './api.ts';
import { type Damage, sound, soundAd, soundFind } from './checked.ts';
import { type Context, present, reading, writing } from './context.ts';
import type { Outcome } from './failure.ts';
import { type ExportFile, FILE_FORMAT, FILE_VERSION, readFile } from './file.ts';
import { mergeFinds } from './merge-finds.ts';
import {
  capturedPriceSchema,
  needSchema,
  ownedSchema,
  rateRowSchema,
  removedSchema,
  setAsideSchema,
  settingsRowSchema,
  tombSchema,
} from './records.ts';
import { allSound, type Record, SHELVES } from './shelf.ts';

async function everything(context: Context, exportedAt: number, damage: Damage[]): Promise<ExportFile> {
  const { db } = context;
  const [rows, ads] = await Promise.all([db.finds.orderBy('id').toArray(), db.ads.toArray()]);
  const adById = new Map(ads.map((ad) => [ad.id, ad]));
  const finds = rows.flatMap((row) => {
    const find = soundFind(row, damage);
    const ad = find && soundAd(adById.get(row.id), row.id, damage);
    return find && ad ? [{ find, ad }] : [];
  });
  const removed = (await db.removed.toArray()).flatMap(
    (one) => sound(removedSchema, one, { table: 'removed', key: one.id }, damage) ?? [],
  );
  const settings = await db.settings.get('settings');
  return {
    format: FILE_FORMAT,
    version: FILE_VERSION,
    exportedAt,
    finds,
    removed,
    owned: [...(await allSound(context, 'owned', ownedSchema, damage))],
    needs: [...(await allSound(context, 'needs', needSchema, damage))],
    rates: [...(await allSound(context, 'rates', rateRowSchema, damage))],
    captured: [...(await allSound(context, 'captured', capturedPriceSchema, damage))],
    settings: settings ? sound(settingsRowSchema, settings, { table: 'settings', key: 'settings' }, damage) : null,
    // What was set aside goes along as it is; what is no JSON of its own accord is lost by nobody's doing but the format's.
    setAside: (await db.aside.toArray()).flatMap((one) => setAsideSchema.safeParse(one).data ?? []),
    tombs: (await db.tombs.toArray()).flatMap((one) => tombSchema.safeParse(one).data ?? []),
  };
}

/** Merges the small records of one table. */
async function mergeShelf({ db }: Context, file: ExportFile, done: Counted): Promise<void> {
  for (const table of SHELVES) {
    const theirs: readonly Record[] = file[table];
    const ours: (Record | undefined)[] = await db.table(table).bulkGet(theirs.map(({ id }) => id));
    const tombs = await db.tombs.bulkGet(theirs.map(({ id }) => `${table}/${id}`));
    const newer = theirs.filter(({ changedAt }, at) => changedAt > Math.max(ours[at]?.changedAt ?? -1, tombs[at]?.at ?? -1));
    const here = new Set(ours.map((one) => one?.id));
    done.count(newer.length, theirs.length, newer.filter(({ id }) => here.has(id)).length);
    await db.table(table).bulkPut(newer);
  }
  const ours = await db.settings.get('settings');
  const theirs = file.settings;
  if (!theirs) return;
  const newer = theirs.changedAt > (ours?.changedAt ?? -1);
  done.count(newer ? 1 : 0, 1, ours ? 1 : 0);
  if (newer) await db.settings.put(theirs);
}

/** Deletes small records that were deleted elsewhere since they were changed here, and remembers all deletions, the latest of each. */
async function mergeTombs({ db }: Context, file: ExportFile): Promise<void> {
  const ours = await db.tombs.bulkGet(file.tombs.map(({ id }) => id));
  const newer = file.tombs.filter(({ at }, index) => at > (ours[index]?.at ?? -1));
  await db.tombs.bulkPut(newer);
  for (const { id, at } of newer) {
    const [, table, key] = /^(\w+)\/(.+)$/.exec(id) ?? [];
    if (key === undefined || !SHELVES.some((shelf) => shelf === table)) continue;
    const record: Record | undefined = await db.table(table ?? '').get(key);
    if (record && record.changedAt <= at) await db.table(table ?? '').delete(key);
  }
}

export interface Counted {
  readonly count: (changed: number, all: number, replaced: number) => void;
}

async function merge(context: Context, file: ExportFile, trying = false): Promise<Imported> {
  let [added, replaced, kept] = [0, 0, 0];
  const done: Counted = {
    count: (changed, all, over) => {
      replaced += Math.min(changed, over);
      added += changed - Math.min(changed, over);
      kept += all - changed;
    },
  };
  await mergeTombs(context, file);
  await mergeFinds(context, file, done, trying);
  await mergeShelf(context, file, done);
  const { aside } = context.db;
  const known = await aside.bulkGet(file.setAside.map(({ id }) => id));
  await aside.bulkPut(file.setAside.filter((_, at) => known[at] === undefined));
  return { added, replaced, kept };
}

/** Merges, finds only as far as to count them, and takes it all back: what is told is what importing does. Resolves when the transaction is gone. */
async function tryMerge({ db, ...rest }: Context, file: ExportFile): Promise<Imported> {
  const imported: Imported[] = [];
  const tried = db.transaction('rw', db.tables, async (transaction) => {
    imported.push(await merge({ db, ...rest }, file, true));
    transaction.abort();
  });
  await tried.catch((error: unknown) => {
    if (imported.length === 0) throw error;
  });
  return present(imported[0]);
}

const holds = ({ exportedAt, finds, removed, owned, needs, rates, captured, settings }: ExportFile) => ({
  exportedAt,
  finds: finds.length,
  others: removed.length + owned.length + needs.length + rates.length + captured.length,
  settings: settings !== null,
});

export const transferOf = (context: Context): Pick<Store, 'exportAll' | 'importAll' | 'previewImport'> => ({
  exportAll: (now) => reading(context, async (damage) => JSON.stringify(await everything(context, now, damage), null, 1)),
  async importAll(text): Promise<Outcome<Imported> | BadFile> {
    const read = readFile(text);
    if (!read.ok) return read;
    return writing(context, context.db.tables.map(({ name }) => name) as never, () => merge(context, read.file));
  },
  async previewImport(text): Promise<Outcome<Preview> | BadFile> {
    const read = readFile(text);
    if (!read.ok) return read;
    return reading(context, async () => ({ ...holds(read.file), ...(await tryMerge(context, read.file)) }));
  },
});

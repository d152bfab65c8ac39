/** The finds of a file among those that are here. */
import type { Context } from './context.ts';
import type { Database, FindRow } from './database.ts';
import type { ExportFile } from './file.ts';
import { nextRevision } from './row-cache.ts';
import { markRowOf, rowOf } from './rows.ts';
import type { Counted } from './transfer.ts';

/** Time of the latest version of a find that is known here, lists and removals and purged ones together; -1 for a new one. */
async function knownTimes(
  { db }: Context,
  ids: readonly string[],
): Promise<readonly { readonly at: number; readonly row: FindRow | undefined }[]> {
  const [rows, removed, tombs] = await Promise.all([
    db.finds.bulkGet([...ids]),
    db.removed.bulkGet([...ids]),
    db.tombs.bulkGet(ids.map((id) => `finds/${id}`)),
  ]);
  return rows.map((row, index) => ({
    at: Math.max(row?.find.changedAt ?? -1, removed[index]?.removedAt ?? -1, tombs[index]?.at ?? -1),
    row,
  }));
}

/** Asked for at once: while the browser writes one table, the records of the next are made. */
async function putFinds(db: Database, kept: ExportFile['finds']): Promise<void> {
  const revision = await nextRevision(db);
  await Promise.all([
    db.ads.bulkPut(kept.map(({ ad }) => ad)),
    db.finds.bulkPut(kept.map(({ find }) => rowOf(find, revision))),
    db.marks.bulkPut(kept.map(({ ad }) => markRowOf(ad))),
    db.removed.bulkDelete(kept.map(({ find }) => find.id)),
  ]);
}

/**
 * Finds changed later than here are put; removals later than here are followed, and can be undone like any other. `trying` only counts: written
 * and taken back, ten thousand finds take as long as bringing them in.
 */
export async function mergeFinds(context: Context, file: ExportFile, done: Counted, trying: boolean): Promise<void> {
  const { db } = context;
  const known = await knownTimes(
    context,
    file.finds.map(({ find }) => find.id),
  );
  const isNewer = ({ find }: ExportFile['finds'][number], at: number): boolean => find.changedAt > (known[at]?.at ?? -1);
  const newer = file.finds.filter(isNewer);
  done.count(newer.length, file.finds.length, file.finds.filter((one, at) => isNewer(one, at) && known[at]?.row).length);
  if (!trying) await putFinds(db, newer);

  // Whatever is newer in the file is what is here now.
  const put = new Map(newer.map(({ find }) => [find.id, find.changedAt]));
  const before = await knownTimes(
    context,
    file.removed.map(({ id }) => id),
  );
  const gone = file.removed.filter(({ id, removedAt }, at) => removedAt > (put.get(id) ?? before[at]?.at ?? -1));
  done.count(gone.length, file.removed.length, gone.length);
  if (trying) return;
  await db.removed.bulkPut(gone);
  for (const table of [db.finds, db.ads, db.marks]) await table.bulkDelete(gone.map(({ id }) => id));
}

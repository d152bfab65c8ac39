/** The finds of a file among those that are here. */
import type { Context } from './context.ts';
import type { FindRow } from './database.ts';
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

/** Finds changed later than here are put; removals later than here are followed, and can be undone like any other. */
export async function mergeFinds(context: Context, file: ExportFile, done: Counted): Promise<void> {
  const { db } = context;
  const known = await knownTimes(
    context,
    file.finds.map(({ find }) => find.id),
  );
  const isNewer = ({ find }: ExportFile['finds'][number], at: number): boolean => find.changedAt > (known[at]?.at ?? -1);
  const newer = file.finds.filter(isNewer);
  done.count(newer.length, file.finds.length, file.finds.filter((one, at) => isNewer(one, at) && known[at]?.row).length);
  const revision = await nextRevision(db);
  await db.finds.bulkPut(newer.map(({ find }) => rowOf(find, revision)));
  await db.ads.bulkPut(newer.map(({ ad }) => ad));
  await db.marks.bulkPut(newer.map(({ ad }) => markRowOf(ad)));
  await db.removed.bulkDelete(newer.map(({ find }) => find.id));

  const before = await knownTimes(
    context,
    file.removed.map(({ id }) => id),
  );
  const gone = file.removed.filter(({ removedAt }, at) => removedAt > (before[at]?.at ?? -1));
  done.count(gone.length, file.removed.length, gone.length);
  await db.removed.bulkPut(gone);
  for (const table of [db.finds, db.ads, db.marks]) await table.bulkDelete(gone.map(({ id }) => id));
}

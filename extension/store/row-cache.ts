/**
 * All rows of the finds in memory, so that a list of thousands follows each change at once: only rows written since the last look are read.
 * Every write gives its rows a higher revision; rows that were deleted show in the count, and then all are read again.
 */
import type { Database, FindRow } from './database.ts';

/** The revision for the rows of one write: inside its transaction, over `finds` and `counters`. Never given twice, also when the row is deleted. */
export async function nextRevision(db: Database): Promise<number> {
  const value = (Number((await db.counters.get('finds'))?.value) || 0) + 1;
  await db.counters.put({ id: 'finds', value });
  return value;
}

export interface RowCache {
  /** The rows as they are now, in no order; they must not be changed. */
  readonly rows: () => PromiseLike<readonly FindRow[]>;
  /** False until all were read once. */
  readonly isFilled: () => boolean;
}

/** One for each open database. */
export function rowCache(db: Database): RowCache {
  let known: { readonly revision: number; readonly rows: ReadonlyMap<string, FindRow> } = { revision: 0, rows: new Map() };

  const withRows = (rows: ReadonlyMap<string, FindRow>, fresh: readonly FindRow[], revision: number) => {
    if (fresh.length === 0) return;
    const all = new Map(rows);
    for (const row of fresh) all.set(row.id, row);
    // A damaged row may have no revision: it is read again whenever all are.
    known = { rows: all, revision: fresh.reduce((most, row) => Math.max(most, Number(row.revision) || 0), revision) };
  };

  const rows = () =>
    db.transaction('r', db.finds, async () => {
      const { revision, rows } = known;
      const [fresh, count] = await Promise.all([db.finds.where('revision').above(revision).toArray(), db.finds.count()]);
      const added = fresh.filter(({ id }) => !rows.has(id)).length;
      if (rows.size + added === count) withRows(rows, fresh, revision);
      else {
        known = { revision: 0, rows: new Map() };
        withRows(new Map(), await db.finds.toArray(), 0);
      }
      return [...known.rows.values()];
    });
  return { rows, isFilled: () => known.rows.size > 0 };
}

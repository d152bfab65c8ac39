/**
 * A second copy of everything, in files of its own. Why: a Chromium that is killed in the middle of a write can leave a torn record in the
 * log of its database; it writes on behind it, and a later start calls the whole database corrupt and deletes it. Seen with Chromium 156
 * in about 1 of 250 kills (`npm run kills`). A storage bucket (W3C Storage Buckets; Chromium since 122) has a database apart, and one kill
 * tears but one of the two. Firefox has no buckets, keeps its databases in SQLite, and needs no copy.
 */
import type { Table } from 'dexie';
import type { Database } from './database.ts';
import type { Touched } from './touched.ts';

const BUCKET = 'copy';

interface Buckets {
  open(name: string, options: { readonly durability: 'strict' }): Promise<{ readonly indexedDB: IDBFactory }>;
}

interface Around {
  readonly storageBuckets?: Buckets;
  readonly locks?: LockManager;
}
const around = (): Around => (globalThis as { readonly navigator?: Around }).navigator ?? {};

/** Where the copy lies; null where the browser has no such place. */
export async function copyPlace(): Promise<IDBFactory | null> {
  try {
    return (await around().storageBuckets?.open(BUCKET, { durability: 'strict' }))?.indexedDB ?? null;
  } catch {
    return null;
  }
}

/** One page at a time, and what happens within in the order of the calls; without locks at least within this page. */
let last: Promise<unknown> = Promise.resolve();
function alone<T>(name: string, work: () => Promise<T>): Promise<T> {
  const { locks } = around();
  const mine = locks ? (locks.request(`${name}-copy`, work) as Promise<T>) : last.then(work);
  last = mine.catch(() => undefined);
  return mine;
}

/** Transactions written so far: in the copy, those that reached it. The two are the same only while the copy lacks nothing. */
const CHANGES = 'changes';
const changesIn = async (db: Database): Promise<number> => Number((await db.counters.get(CHANGES))?.value) || 0;

/** Counts a transaction that has written something: inside it. */
export async function countChange(db: Database): Promise<void> {
  await db.counters.put({ id: CHANGES, value: (await changesIn(db)) + 1 });
}

/** What follows from the rest is not written twice: with the keys that marks are found by it is half of what an import writes. */
const isCopied = (table: string): boolean => table !== 'marks';

/** Everything from one database to another, in place of what was there. */
async function copyAll(from: Database, to: Database): Promise<void> {
  const names = from.tables.map(({ name }) => name).filter(isCopied);
  const contents = await from.transaction('r', names, () =>
    Promise.all(names.map(async (name) => [name, (await from.table(name).toArray()) as unknown[]] as const)),
  );
  await to.transaction('rw', names, async () => {
    for (const [name, records] of contents) {
      await to.table(name).clear();
      await to.table(name).bulkPut(records);
    }
  });
}

interface Written {
  readonly table: string;
  readonly ids: readonly string[];
  /** As they are now, in the order of the ids; undefined for one that was deleted. */
  readonly records: readonly unknown[];
}

const readWritten = (db: Database, touched: Touched): PromiseLike<Written[]> =>
  db.transaction('r', [...touched.keys()], () =>
    Promise.all(
      [...touched].map(async ([table, ids]) => ({ table, ids: [...ids], records: await db.table(table).bulkGet([...ids]) })),
    ),
  );

async function follow(to: Table, { ids, records }: Written): Promise<void> {
  await to.bulkDelete(ids.filter((_, at) => records[at] === undefined));
  await to.bulkPut(records.filter((record) => record !== undefined));
}

export interface Copy {
  /** Brings back what the browser has lost, or has the copy catch up. True when something was brought back. */
  readonly reconcile: () => Promise<boolean>;
  /** Resolves when the copy has what a transaction wrote. */
  readonly after: (touched: Touched) => Promise<void>;
}

export function copyOf(db: Database, copy: Database): Copy {
  return {
    reconcile: () =>
      alone(db.name, async () => {
        const [here, there] = await Promise.all([changesIn(db), changesIn(copy)]);
        if (here === there) return false;
        // An empty database where there was a full one: the browser has deleted it.
        if (here === 0) {
          await copyAll(copy, db);
          return true;
        }
        await copyAll(db, copy);
        return false;
      }),
    after: (all) =>
      alone(db.name, async () => {
        const touched: Touched = new Map([...all].filter(([table]) => isCopied(table)));
        const written = await readWritten(db, touched);
        await copy.transaction('rw', [...touched.keys()], async () => {
          const changes = await changesIn(copy);
          await Promise.all(written.map((one) => follow(copy.table(one.table), one)));
          // Its own count, not that of the database: another page's transaction may not have come here yet.
          await copy.counters.put({ id: CHANGES, value: changes + 1 });
        });
      }),
  };
}

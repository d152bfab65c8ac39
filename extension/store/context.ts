/** What every part of the store works with, and the one way in which it reads, follows and writes. */
import { liveQuery } from 'dexie';
import type { Seen, Stop } from './api.ts';
import { type Damage, setAside } from './checked.ts';
import { countChange } from './copy.ts';
import type { Database, Opening } from './database.ts';
import { type Outcome, StoreFailure, settle } from './failure.ts';
import { type Touched, touchedHere } from './touched.ts';

export interface Context {
  readonly db: Database;
  readonly opening: Opening;
  /** Milliseconds since 1970, for damage that is found while reading. */
  readonly clock: () => number;
}

/** Reads; what turns out damaged is noted by the reader and set aside when it is through. */
export type Reader<T> = (damage: Damage[]) => PromiseLike<T>;

const outdatedOr = <T>({ opening }: Context, outcome: Outcome<T>): Outcome<T> =>
  opening.outdated && !outcome.ok ? { ok: false, code: 'outdated' } : outcome;

/**
 * One transaction over all tables named, then its second copy. Resolves when both are complete, which is when they are on disk. A copy that
 * fails takes nothing back: it catches up at the next opening.
 */
async function committed<T>({ db, opening }: Context, tables: readonly string[], work: () => PromiseLike<T>): Promise<T> {
  let touched: Touched = new Map();
  const value = await db.transaction('rw', [...new Set([...tables, 'counters'])], async () => {
    const made = await work();
    if (touchedHere().size > 0) await countChange(db);
    touched = touchedHere();
    return made;
  });
  if (touched.size > 0) await opening.copy?.after(touched).catch((error: unknown) => console.error('Ironsift:', error));
  return value;
}

/** Setting aside must not fail the reading that found the damage: it is found again the next time. */
async function putAside(context: Context, damage: readonly Damage[]): Promise<void> {
  const { db, clock } = context;
  if (damage.length === 0) return;
  const names = db.tables.map(({ name }) => name);
  await settle(() => committed(context, names, () => setAside(db, damage, clock())));
}

export async function reading<T>(context: Context, read: Reader<T>): Promise<Outcome<T>> {
  const damage: Damage[] = [];
  const outcome = await settle(() => read(damage));
  await putAside(context, damage);
  return outdatedOr(context, outcome);
}

/** Writes in one transaction over all tables named; resolves when it is on disk, twice where the browser has room for a second copy. */
export async function writing<T>(
  context: Context,
  tables: readonly (keyof Database & string)[],
  write: Reader<T>,
): Promise<Outcome<T>> {
  const damage: Damage[] = [];
  const outcome = await settle(() => committed(context, tables, () => write(damage)));
  await putAside(context, damage);
  return outdatedOr(context, outcome);
}

/** Reads now and after every change of what was read, by whichever page. */
export function following<T>(context: Context, read: Reader<T>, seen: Seen<T>): Stop {
  const query = liveQuery(async () => {
    const damage: Damage[] = [];
    const outcome = await settle(() => read(damage));
    return { outcome, damage };
  });
  const subscription = query.subscribe({
    next: ({ outcome, damage }) => {
      seen(outdatedOr(context, outcome));
      void putAside(context, damage);
    },
    error: (error: unknown) =>
      void settle(() => Promise.reject(error)).then((failed) => failed.ok || seen(outdatedOr(context, failed))),
  });
  return () => subscription.unsubscribe();
}

/** The value, or the failure that there is none. */
export function present<T>(value: T | undefined | null): T {
  if (value === undefined || value === null) throw new StoreFailure('not-found');
  return value;
}

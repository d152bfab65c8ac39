/** The tables and their versions. A version that was once shipped is never edited: a change is a new one behind it. */
import Dexie, { type Table } from 'dexie';
import type { Mark } from '../../src/again/index.ts';
import type { Find } from '../../src/finds/record.ts';
import { type Copy, copyOf } from './copy.ts';
import type { Ad, CapturedPrice, Need, Owned, RateRow, Removed, SetAside, SettingsRow, Tomb } from './records.ts';
import { followWrites } from './touched.ts';

export const NAME = 'ironsift';
/** Number of the last version below. */
const LATEST = 1;

/** A find with what the browser indexes beside it, and its words as they are searched. */
export interface FindRow {
  readonly id: string;
  readonly find: Find;
  readonly status: string;
  readonly kept: number;
  readonly changed: number;
  /** Higher than that of every row written before. */
  readonly revision: number;
  /** Each word of title, place and notes once, lower case without accents, a blank before each. */
  readonly words: string;
}

export interface MarkRow {
  readonly id: string;
  readonly mark: Mark;
  readonly keys: readonly string[];
  readonly version: number;
}

export class Database extends Dexie {
  declare readonly finds: Table<FindRow, string>;
  /** The bulk of each find: listing and edits. */
  declare readonly ads: Table<Ad, string>;
  /** What each find is known again by; made anew from the ad when need be. */
  declare readonly marks: Table<MarkRow, string>;
  declare readonly removed: Table<Removed, string>;
  declare readonly owned: Table<Owned, string>;
  declare readonly needs: Table<Need, string>;
  declare readonly rates: Table<RateRow, string>;
  declare readonly captured: Table<CapturedPrice, string>;
  declare readonly settings: Table<SettingsRow, string>;
  declare readonly aside: Table<SetAside, string>;
  declare readonly tombs: Table<Tomb, string>;
  /** The highest revision given so far, also to rows that are gone: 'finds'. */
  declare readonly counters: Table<{ readonly id: string; readonly value: number }, string>;

  /** `factory` for a database in another place than the browser's usual one. */
  constructor(name = NAME, factory?: IDBFactory) {
    // Strict: a write is done when it is on the disk, not when the system has it (IndexedDB 3.0, "durability hint"). Without
    // the cache nobody is shown what is not written yet.
    super(name, {
      chromeTransactionDurability: 'strict',
      cache: 'disabled',
      ...(factory && { indexedDB: factory, IDBKeyRange }),
    });
    this.version(LATEST).stores({
      finds: 'id, status, kept, changed, revision',
      ads: 'id',
      marks: 'id, *keys, version',
      removed: 'id, &token, removedAt',
      owned: 'id',
      needs: 'id',
      rates: 'id, origin',
      captured: 'id, category',
      settings: 'id',
      aside: 'id, table',
      tombs: 'id',
      counters: 'id',
    });
  }
}

export interface Opening {
  readonly db: Database;
  /** Another page opened a newer version, and this one had to let go. */
  outdated: boolean;
  readonly onOutdated: Set<() => void>;
  /** Null where there is none: see copy.ts. */
  copy: Copy | null;
}

/**
 * Throws when a newer version of the extension wrote the database. Dexie would open it all the same and change its tables; but this
 * version does not know what the records mean. Dexie counts in tenths: version 1 is the browser's 10 to 19.
 */
async function refuseNewer(name: string): Promise<void> {
  const found = (await globalThis.indexedDB?.databases?.()) ?? [];
  const version = found.find((one) => one.name === name)?.version ?? 0;
  if (version >= (LATEST + 1) * 10) throw Object.assign(new Error('newer'), { name: 'VersionError' });
}

/** How long another page may take to let go of an older version. */
const PATIENCE = 2000;

/** Pauses in ms between attempts to open, where the browser says only "unknown error": after a crash its files may be held for a moment. */
const PAUSES = [100, 300, 1000];

const isPassing = (error: unknown): boolean =>
  [error, (error as { inner?: unknown } | null)?.inner].some(
    (one) => (one as { name?: unknown } | null)?.name === 'UnknownError',
  );

/** Opens the database. Rejects with whatever the browser throws, or by name with "BlockedError" while an older page does not let go. */
export async function openDatabase(name = NAME, patience = PATIENCE): Promise<Opening> {
  await refuseNewer(name);
  for (const pause of PAUSES) {
    try {
      return await openOnce(name, patience);
    } catch (error) {
      if (!isPassing(error)) throw error;
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
  }
  return openOnce(name, patience);
}

async function openOnce(name: string, patience: number): Promise<Opening> {
  const db = new Database(name);
  const opening: Opening = { db, outdated: false, onOutdated: new Set(), copy: null };
  followWrites(db);
  // Lets go at once, or the newer page could not open at all; what this page had confirmed is on disk.
  db.on('versionchange', () => {
    opening.outdated = true;
    db.close();
    for (const told of opening.onOutdated) told();
    // Else Dexie opens it again by itself, as the newer version.
    return false;
  });
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stuck = new Promise<never>((_, reject) => {
    db.on('blocked', () => {
      timer ??= setTimeout(() => {
        db.close();
        reject(Object.assign(new Error('blocked'), { name: 'BlockedError' }));
      }, patience);
    });
  });
  try {
    await Promise.race([db.open(), stuck]);
  } finally {
    clearTimeout(timer);
  }
  return opening;
}

/**
 * Opens the second copy beside a database and brings back what the browser has lost. Without a copy the store works on; what it lacks it
 * gets at a later opening. Gives whether something was brought back.
 */
export async function openCopy(opening: Opening, place: IDBFactory | null): Promise<boolean> {
  if (!place) return false;
  const { db } = opening;
  const copy = new Database(db.name, place);
  copy.on('versionchange', () => {
    copy.close();
    return false;
  });
  try {
    await copy.open();
    const twice = copyOf(db, copy);
    const brought = await twice.reconcile();
    opening.copy = twice;
    return brought;
  } catch (error) {
    console.error('Ironsift:', error);
    return false;
  }
}

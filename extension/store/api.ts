/** The store as its users see it. Every call settles with an `Outcome`; `ok` of a write means that it is on disk. Times are milliseconds since 1970. */

import type { AgainHow } from '../../src/again/index.ts';
import type { Find, Offer, Status } from '../../src/finds/record.ts';
import type { Thing } from '../../src/kit/same-thing.ts';
import type { CallKind, Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Kind } from '../../src/listing/reading.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Money } from '../../src/units/money.ts';
import type { StoredEdits } from '../panel/stored-edits.ts';
import type { Outcome, StoreCode } from './failure.ts';
import type { CapturedPrice, Need, Owned, RateRow, SetAside } from './records.ts';

/** An ad as it stands in the panel: what is handed in to be kept. */
export interface AdToKeep {
  readonly listing: PageListing;
  /** Corrections and settled doubts: `packEdits(session)`. */
  readonly edits: StoredEdits;
  readonly evaluation: Evaluation;
}

/** A kept ad with its bulk: what is needed to open it in the panel or to judge it anew. */
export interface KeptAd {
  readonly find: Find;
  readonly listing: PageListing;
  readonly edits: StoredEdits;
}

export const ORDERS = ['changed', 'kept', 'per-usable', 'all-in', 'usable', 'saving', 'distance', 'title'] as const;
export type Order = (typeof ORDERS)[number];

/** Which finds, in which order, and which stretch of them. Finds that lack the value they are ordered by come last either way. */
export interface ListQuery {
  readonly order: Order;
  readonly descending: boolean;
  /** Only these; all when left out or empty. */
  readonly statuses?: readonly Status[];
  /** Only finds with one of these calls; all when left out or empty. */
  readonly calls?: readonly CallKind[];
  /** Only finds that have one of these. */
  readonly kinds?: readonly Kind[];
  /** Only finds that offer something of these; what was never judged for it is left out. Everything when left out, nothing when empty. */
  readonly fills?: readonly Thing[];
  /** Only finds in whose title, place or notes every word (or its beginning) stands, in any case. */
  readonly words?: string;
  /** First row wanted, from 0, and how many at most. */
  readonly from: number;
  readonly count: number;
}

export interface FindPage {
  readonly rows: readonly Find[];
  /** How many match in all. */
  readonly total: number;
}

export interface Removal {
  /** Hand it to `undo`; it holds until the removal is purged, also over a restart. */
  readonly token: string;
  readonly find: Find;
  readonly removedAt: number;
  /** How many things of the kit came with it and went with it. */
  readonly goods: number;
}

/** The latest removals, and how many there are in all. */
export interface RemovalPage {
  readonly rows: readonly Removal[];
  readonly total: number;
}

/** What a find was before its status was changed: `putBack` makes it so again. */
export interface Before {
  readonly id: string;
  readonly status: Status;
  readonly paid: Money | null;
  /** What had come with it to the kit and left it. */
  readonly goods: readonly Owned[];
}

/** A kept find that the ad in front is again. */
export interface MetAgain {
  readonly find: Find;
  readonly how: AgainHow;
  /** 0 to 1: how much of the words is the same. */
  readonly likeness: number;
}

/** Stops a live query. */
export type Stop = () => void;
/** Called at once and after every change, by whichever page of the extension. */
export type Seen<T> = (outcome: Outcome<T>) => void;

export interface Finds {
  /** Keeps an ad as a new find with status "new". */
  keep(ad: AdToKeep, now: number): Promise<Outcome<Find>>;
  /** The find with the ad as it is now: met again, edited, or judged by other settings. Status and notes stay; a changed price joins the history. */
  refresh(id: string, ad: AdToKeep, now: number, met?: boolean): Promise<Outcome<Find>>;
  update(
    id: string,
    change: {
      readonly notes?: string;
      readonly paid?: Money | null;
      readonly onList?: Find['onList'];
      readonly taking?: string[];
    },
    now: number,
  ): Promise<Outcome<Find>>;
  /** As `setStatusOf` for one find. */
  setStatus(id: string, status: Status, now: number): Promise<Outcome<Find>>;
  /**
   * Sets the status of many in one write, all or none; those that are gone are passed over. Of a find that is no longer bought the goods
   * leave the kit, and what was paid is forgotten. Gives what each was before.
   */
  setStatusOf(ids: readonly string[], status: Status, now: number): Promise<Outcome<readonly Before[]>>;
  /** Bought: what was paid, the goods in the kit (in place of any that came with it before), and the status, in one write. Gives what it was before. */
  buy(id: string, paid: Money, goods: readonly Omit<Owned, 'changedAt'>[], now: number): Promise<Outcome<Before>>;
  /** Finds as they were before: status, what was paid, and what came with them to the kit. All or none; those that are gone are passed over. */
  putBack(before: readonly Before[], now: number): Promise<Outcome<null>>;
  /** As `removeMany` for one find; `not-found` where there is none. */
  remove(id: string, now: number): Promise<Outcome<Removal>>;
  /** Removes many in one write, all or none, and with what was bought its goods from the kit. Those that are gone are passed over. */
  removeMany(ids: readonly string[], now: number): Promise<Outcome<readonly Removal[]>>;
  undo(token: string): Promise<Outcome<Find>>;
  /** Brings back many, all or none. What was purged is passed over; gives how many are back. */
  undoMany(tokens: readonly string[]): Promise<Outcome<number>>;
  /** Finds kept before there was a word of what they offer, in no order. */
  withoutOffers(): Promise<Outcome<readonly string[]>>;
  /** Adds what finds offer, all at once. It does not make them newer, for the ad is the same. Those that are gone are passed over. */
  putOffers(offers: ReadonlyMap<string, readonly Offer[]>): Promise<Outcome<null>>;
  /** What can be undone, the latest removal first. */
  removals(): Promise<Outcome<readonly Removal[]>>;
  /** The latest `most` of them, live. */
  watchRemovals(most: number, seen: Seen<RemovalPage>): Stop;
  /** Deletes for good what was removed before a time; gives how many. */
  purge(before: number): Promise<Outcome<number>>;
  /** The same for one removal, whenever it was; 0 where it is gone already, or back. */
  purgeOne(token: string): Promise<Outcome<number>>;
  get(id: string): Promise<Outcome<KeptAd>>;
  list(query: ListQuery): Promise<Outcome<FindPage>>;
  /** Ids of all that match, whatever stretch is asked for, in no order. */
  matching(query: ListQuery): Promise<Outcome<readonly string[]>>;
  watchList(query: ListQuery, seen: Seen<FindPage>): Stop;
  /** Follows one find; `not-found` once it is removed. */
  watch(id: string, seen: Seen<Find>): Stop;
  /** Finds that this ad is again, the likeliest first; none for a new one. */
  again(listing: PageListing): Promise<Outcome<readonly MetAgain[]>>;
}

/** A table of small records with an id each. Writing sets `changedAt`. */
export interface Shelf<T extends { readonly id: string; readonly changedAt: number }> {
  put(record: Omit<T, 'changedAt'>, now: number): Promise<Outcome<T>>;
  remove(id: string, now: number): Promise<Outcome<null>>;
  /** Puts and removes many in one write: all of it or nothing, in the time of one. */
  change(put: readonly Omit<T, 'changedAt'>[], remove: readonly string[], now: number): Promise<Outcome<null>>;
  all(): Promise<Outcome<readonly T[]>>;
  watch(seen: Seen<readonly T[]>): Stop;
}

export interface Kit {
  readonly owned: Shelf<Owned>;
  readonly needs: Shelf<Need>;
}

export interface Rates {
  /** Cells that the buyer edited or that were learned from finds; one id per cell, "iron.used". */
  readonly cells: Shelf<RateRow>;
  /** Prices of new goods captured from shops' pages. */
  readonly captured: Shelf<CapturedPrice>;
}

export interface SettingsStore {
  /** Defaults where nothing was ever saved. Edited rate cells are part of them. Names of settings that could not be read are given. */
  load(now: number): Promise<Outcome<{ readonly settings: Settings; readonly unreadable: readonly string[] }>>;
  save(settings: Settings, now: number): Promise<Outcome<Settings>>;
  /** Changes some of them, whatever another page changed meanwhile. `step` gives what is to be another; it must not wait for anything. */
  change(step: (settings: Settings) => Partial<Settings>, now: number): Promise<Outcome<Settings>>;
  /** Puts what the finds taught; nothing is written where it is known already. It does not make the settings newer than an imported file's. */
  learn(step: (settings: Settings) => Settings['learned'], now: number): Promise<Outcome<Settings>>;
  watch(seen: Seen<Settings>): Stop;
}

/** What an import did, or in words why it did nothing. */
export interface Imported {
  /** Records of the file that were not here, that replaced an older version, and that were here as they are or newer. */
  readonly added: number;
  readonly replaced: number;
  readonly kept: number;
}
/** What a file holds, and what importing it would do. */
export interface Preview extends Imported {
  readonly exportedAt: number;
  readonly finds: number;
  /** Of kit, rates and captured prices together. */
  readonly others: number;
  readonly settings: boolean;
}
/** Why a file was refused; `path` leads into it ("finds", 2, "prices", 0, "minor"). `badFileMessage` says it in words. */
export interface BadFile {
  readonly ok: false;
  readonly code: 'not-json' | 'not-ours' | 'newer-file' | 'bad-record';
  readonly path: readonly (string | number)[];
}

export interface Store {
  /** The browser had lost its database, and everything was brought back from the second copy. */
  readonly restored: boolean;
  readonly finds: Finds;
  readonly kit: Kit;
  readonly rates: Rates;
  readonly settings: SettingsStore;
  /** Everything as one JSON file. */
  exportAll(now: number): Promise<Outcome<string>>;
  /** Merges a file by id; the version changed later holds. All or nothing. */
  importAll(file: string): Promise<Outcome<Imported> | BadFile>;
  /** What `importAll` would do; nothing is written. */
  previewImport(file: string): Promise<Outcome<Preview> | BadFile>;
  /** The finds as CSV for a spreadsheet. `words` gives those for a key of the strings: of headings, and of what stands in the cells. */
  exportCsv(words: (key: string) => string): Promise<Outcome<string>>;
  /** Damaged records that were set aside, as they were. */
  readonly setAside: {
    all(): Promise<Outcome<readonly SetAside[]>>;
    drop(id: string): Promise<Outcome<null>>;
    watch(seen: Seen<number>): Stop;
  };
  /** Reads every record once and sets aside what is damaged; gives how many. */
  check(): Promise<Outcome<number>>;
  /** Told once when another page brought a newer version: this one must be loaded again. */
  onOutdated(told: () => void): void;
  close(): void;
}

export type OpenStore = { readonly ok: true; readonly value: Store } | { readonly ok: false; readonly code: StoreCode };

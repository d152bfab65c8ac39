/**
 * The buyer's settings. Edited rate cells lie as rows of their own and are put together with the rest when loaded. Settings that an older version
 * kept elsewhere are taken over at the first load; the old copy goes only when the new one is on disk.
 */
import { DEFAULT_SETTINGS, type Settings, settingsSchema } from '../../src/listing/settings.ts';
import { type LoadedSettings, readSettings } from '../platform/settings.ts';
import type { SettingsStore } from './api.ts';
import { type Damage, taken } from './checked.ts';
import { type Context, following, reading, writing } from './context.ts';
import type { Database } from './database.ts';
import type { Outcome } from './failure.ts';
import { type RateRow, rateRowSchema } from './records.ts';
import { allSound } from './shelf.ts';

/** Where settings were kept before there was a store. */
export interface OldSettings {
  /** The old copy, each bad value at its default and named; null when there is none. */
  read(): Promise<LoadedSettings | null>;
  drop(): Promise<void>;
}

const DEFAULTS: LoadedSettings = { settings: DEFAULT_SETTINGS, unreadable: [] };
const COLUMNS = ['used', 'new', 'shipping'] as const;

/** Rows for the edited cells of settings. */
const cellsOf = ({ rates }: Settings, changedAt: number): readonly RateRow[] =>
  Object.entries(rates).flatMap(([name, columns]) =>
    COLUMNS.flatMap((column) => {
      const cell = columns?.[column];
      return cell
        ? [taken(rateRowSchema, { id: `${name}.${column}`, category: name, column, origin: 'edited', cell, changedAt })]
        : [];
    }),
  );

function withCells(settings: Settings, rows: readonly RateRow[]): Settings {
  const rates: Record<string, Partial<Record<(typeof COLUMNS)[number], RateRow['cell']>>> = {};
  for (const { category, column, cell, origin } of rows) {
    if (origin === 'edited') rates[category] = { ...rates[category], [column]: cell };
  }
  return { ...settings, rates };
}

/** Puts settings and their cells: inside a transaction over `settings`, `rates` and `tombs`. Cells that are as they were keep their time. */
async function putSettings(db: Database, given: Settings, now: number): Promise<Settings> {
  const settings = taken(settingsSchema, given);
  const [before, old] = await Promise.all([db.settings.get('settings'), db.rates.where('origin').equals('edited').toArray()]);
  const changedAt = Math.max(now, (Number(before?.changedAt) || -1) + 1);
  const fresh = cellsOf(settings, changedAt);
  const ids = new Set(fresh.map(({ id }) => id));
  const same = (row: RateRow): boolean =>
    old.some((one) => one.id === row.id && JSON.stringify(one.cell) === JSON.stringify(row.cell));
  const gone = old.filter(({ id }) => !ids.has(id)).map(({ id }) => id);
  await db.rates.bulkDelete(gone);
  await db.tombs.bulkPut(gone.map((id) => ({ id: `rates/${id}`, at: changedAt })));
  await db.rates.bulkPut(fresh.filter((row) => !same(row)));
  await db.settings.put({ id: 'settings', value: { ...settings, rates: {} }, changedAt });
  return settings;
}

export function settingsOf(context: Context, elsewhere: OldSettings | null): SettingsStore {
  const { db } = context;
  const TABLES = ['settings', 'rates', 'tombs'] as const;

  /** Null where nothing was ever saved. A bad value stands at its default and is named; the others hold. */
  async function read(damage: Damage[]): Promise<LoadedSettings | null> {
    const [row, cells] = await Promise.all([db.settings.get('settings'), allSound(context, 'rates', rateRowSchema, damage)]);
    if (!row && cells.length === 0) return null;
    const { settings, unreadable } = readSettings(row?.value);
    return { settings: withCells(settings, cells), unreadable };
  }

  /** Sets a copy of a damaged row aside and writes it anew without the damage. */
  const mend = ({ settings }: LoadedSettings, now: number) =>
    writing(context, [...TABLES, 'aside'], async () => {
      const value: unknown = await db.settings.get('settings');
      await db.aside.put({ id: `settings/settings/${now}`, table: 'settings', key: 'settings', value, why: 'settings', at: now });
      return putSettings(db, settings, now);
    });

  /** What was kept elsewhere; null when there is none, or another page has taken it over first. */
  async function takeOver(now: number): Promise<LoadedSettings | null> {
    const old = await elsewhere?.read();
    if (!old) return null;
    const written = await writing(context, TABLES, async () => {
      if ((await db.settings.get('settings')) !== undefined) return 'was-here';
      await putSettings(db, old.settings, now);
      return 'taken';
    });
    // Not written: the old copy holds, and stays for the next time.
    if (!written.ok) return old;
    await elsewhere?.drop();
    return written.value === 'taken' ? old : null;
  }

  const load = (now: number) =>
    reading(context, async (damage) => {
      const found = await read(damage);
      if (found && found.unreadable.length > 0) await mend(found, now);
      return found ?? (await takeOver(now)) ?? (await read(damage)) ?? DEFAULTS;
    });

  /** A change of what is there: what lay elsewhere must be taken over before, or it would never be. */
  async function first<T>(now: number, write: (damage: Damage[]) => Promise<T>): Promise<Outcome<T>> {
    const loaded = await load(now);
    return loaded.ok ? writing(context, TABLES, write) : loaded;
  }

  return {
    load,
    save: (settings, now) => writing(context, TABLES, () => putSettings(db, settings, now)),
    change: (step, now) =>
      first(now, async (damage) => {
        const { settings } = (await read(damage)) ?? DEFAULTS;
        return putSettings(db, { ...settings, ...step(settings) }, now);
      }),
    learn: (step, now) =>
      first(now, async (damage) => {
        const { settings } = (await read(damage)) ?? DEFAULTS;
        const learned = taken(settingsSchema, { ...settings, learned: step(settings) }).learned;
        if (JSON.stringify(learned) === JSON.stringify(settings.learned)) return settings;
        const before = await db.settings.get('settings');
        const value = { ...settings, learned, rates: {} };
        await db.settings.put({ id: 'settings', value, changedAt: before?.changedAt ?? 0 });
        return { ...settings, learned };
      }),
    watch: (seen) => following(context, async (damage) => (await read(damage))?.settings ?? DEFAULT_SETTINGS, seen),
  };
}

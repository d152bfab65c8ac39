/** Opens the store: one per page, kept open. */

import type { OpenStore, Store } from './api.ts';
import { sound, soundAd, soundFind } from './checked.ts';
import { type Context, following, reading, writing } from './context.ts';
import { copyPlace } from './copy.ts';
import { findsCsv } from './csv.ts';
import { NAME, openCopy, openDatabase } from './database.ts';
import { settle } from './failure.ts';
import { findsOf } from './finds.ts';
import { capturedPriceSchema, needSchema, ownedSchema, rateRowSchema, removedSchema, setAsideSchema } from './records.ts';
import { type OldSettings, settingsOf } from './settings.ts';
import { allSound, shelf } from './shelf.ts';

export interface OpenOptions {
  /** Name of the database; the extension's own when left out. */
  readonly name?: string;
  /** Where settings were kept before; they are taken over at the first load. */
  readonly oldSettings?: OldSettings;
  /** Milliseconds since 1970. */
  readonly clock?: () => number;
  /** How long to wait for a page of an older version to let go, in ms. */
  readonly patience?: number;
  /** Where the second copy lies; the browser's own place for it when left out, null for none. */
  readonly copyIn?: IDBFactory | null;
}

/** Gives the store, or the code of why there is none: `refused`, `blocked`, `newer`. Trying again later is fine. */
export async function openStore(options: OpenOptions = {}): Promise<OpenStore> {
  const { name = NAME, oldSettings, clock = Date.now, patience } = options;
  // The place for the copy is asked for at once, and neither waits for the other.
  const place = options.copyIn === undefined ? copyPlace() : options.copyIn;
  const opened = await settle(() => openDatabase(name, patience));
  if (!opened.ok) return opened;
  const context: Context = { db: opened.value.db, opening: opened.value, clock };
  const restored = await openCopy(opened.value, await place);
  return { ok: true, value: storeOf(context, oldSettings ?? null, restored) };
}

function storeOf(context: Context, oldSettings: OldSettings | null, restored: boolean): Store {
  const { db, opening } = context;
  return {
    restored,
    finds: findsOf(context),
    kit: { owned: shelf(context, 'owned', ownedSchema), needs: shelf(context, 'needs', needSchema) },
    rates: { cells: shelf(context, 'rates', rateRowSchema), captured: shelf(context, 'captured', capturedPriceSchema) },
    settings: settingsOf(context, oldSettings),
    ...transferLater(context),
    exportCsv: (words) =>
      reading(context, async (damage) => {
        const rows = await db.finds.orderBy('kept').toArray();
        return findsCsv(
          rows.flatMap((row) => soundFind(row, damage) ?? []),
          words,
        );
      }),
    setAside: {
      all: () =>
        reading(context, async () => (await db.aside.toArray()).flatMap((one) => setAsideSchema.safeParse(one).data ?? [])),
      drop: (id) => writing(context, ['aside'], async () => db.aside.delete(id).then(() => null)),
      watch: (seen) => following(context, () => db.aside.count(), seen),
    },
    check: () => checkAll(context),
    onOutdated: (told) => void opening.onOutdated.add(told),
    close: () => db.close(),
  };
}

/** Files are seldom written or read: what that takes is fetched when it is asked for. */
function transferLater(context: Context): ReturnType<typeof import('./transfer.ts').transferOf> {
  const transfer = () => settle(async () => (await import('./transfer.ts')).transferOf(context));
  return {
    exportAll: async (now) => {
      const loaded = await transfer();
      return loaded.ok ? loaded.value.exportAll(now) : loaded;
    },
    importAll: async (file) => {
      const loaded = await transfer();
      return loaded.ok ? loaded.value.importAll(file) : loaded;
    },
    previewImport: async (file) => {
      const loaded = await transfer();
      return loaded.ok ? loaded.value.previewImport(file) : loaded;
    },
  };
}

/** Reads every record; the reading sets aside what is damaged. */
async function checkAll(context: Context) {
  const { db } = context;
  return reading(context, async (damage) => {
    await db.ads.toArray().then((ads) => ads.forEach((ad) => void soundAd(ad, ad.id, damage)));
    await db.finds.toArray().then((rows) => rows.forEach((row) => void soundFind(row, damage)));
    await db.removed
      .toArray()
      .then((all) => all.forEach((one) => void sound(removedSchema, one, { table: 'removed', key: one.id }, damage)));
    await allSound(context, 'owned', ownedSchema, damage);
    await allSound(context, 'needs', needSchema, damage);
    await allSound(context, 'rates', rateRowSchema, damage);
    await allSound(context, 'captured', capturedPriceSchema, damage);
    return new Set(damage.map(({ table, key }) => `${table}/${key}`)).size;
  });
}

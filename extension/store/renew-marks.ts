/**
 * Marks that are missing or of an older way of reading words, made anew before the first look at them. Not at the opening: to count ten thousand
 * takes a browser longer than to show a list of them, and only who meets an ad asks for marks.
 */
import { MARK_VERSION } from '../../src/again/index.ts';
import { type Context, writing } from './context.ts';
import type { Database } from './database.ts';
import { adSchema } from './records.ts';
import { markRowOf } from './rows.ts';

/** Resolves when the marks are as they should be, or can't be made so now; what fails is tried again at the next call. */
export function renewedMarks(context: Context): () => Promise<void> {
  let renewing: Promise<boolean> | null = null;
  return async () => {
    renewing ??= renewMarks(context);
    if (!(await renewing)) renewing = null;
  };
}

/** As a rule none is old and none is missing, but the second copy has none. */
async function renewMarks(context: Context): Promise<boolean> {
  const { db } = context;
  const renewed = await writing(context, ['marks', 'ads'], async () => {
    const [old, marks, kept] = await Promise.all([
      db.marks.where('version').below(MARK_VERSION).primaryKeys(),
      db.marks.count(),
      db.ads.count(),
    ]);
    const stale = [...old, ...(marks < kept ? await missingMarks(db) : [])];
    if (stale.length === 0) return;
    const ads = (await db.ads.bulkGet(stale)).flatMap((ad) => adSchema.safeParse(ad).data ?? []);
    await db.marks.bulkPut(ads.map(markRowOf));
  });
  return renewed.ok;
}

async function missingMarks(db: Database): Promise<string[]> {
  const [ads, marks] = await Promise.all([db.ads.toCollection().primaryKeys(), db.marks.toCollection().primaryKeys()]);
  const there = new Set(marks);
  return ads.filter((id) => !there.has(id));
}

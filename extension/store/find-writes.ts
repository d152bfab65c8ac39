/** Everything that changes a find. Row, bulk and mark change together or not at all. What became of it is in outcome-writes.ts. */

import { adAddress } from '../../src/again/index.ts';
import { askingOf, withEditedPrice, withPrice } from '../../src/finds/history.ts';
import { type Find, findSchema } from '../../src/finds/record.ts';
import { summarise } from '../../src/finds/summary.ts';
import type { AdToKeep, Finds } from './api.ts';
import { type Damage, soundAd, soundFind, taken } from './checked.ts';
import { type Context, present, writing } from './context.ts';
import type { Database } from './database.ts';
import { StoreFailure } from './failure.ts';
import { type Ad, adSchema, type Removed } from './records.ts';
import { nextRevision } from './row-cache.ts';
import { markRowOf, rowOf } from './rows.ts';

export const PARTS = ['finds', 'ads', 'marks', 'counters'] as const;

const putRow = async (db: Database, find: Find): Promise<unknown> => db.finds.put(rowOf(find, await nextRevision(db)));

/** Puts a find with its bulk and its mark: inside a transaction over the three tables. */
async function putFind(db: Database, find: Find, ad: Ad): Promise<void> {
  await Promise.all([putRow(db, find), db.ads.put(ad), db.marks.put(markRowOf(ad))]);
}

/** The find and its bulk; throws `not-found`, or `unreadable` with the damage noted. */
export async function loadFind(db: Database, id: string, damage: Damage[]): Promise<{ readonly find: Find; readonly ad: Ad }> {
  const [row, stored] = await Promise.all([db.finds.get(id), db.ads.get(id)]);
  const find = soundFind(present(row), damage);
  const ad = find && soundAd(stored, id, damage);
  if (!find || !ad) throw new StoreFailure('unreadable');
  return { find, ad };
}

/** What follows from the ad alone. */
function fromAd({ listing, evaluation }: AdToKeep): Pick<Find, 'title' | 'address' | 'path' | 'summary'> {
  const firstLine = listing.text.split('\n', 1)[0] ?? '';
  return {
    title: (listing.title.trim() || firstLine.trim()).slice(0, 300),
    address: listing.address,
    path: adAddress(listing.address)?.path.slice(0, 4000) ?? null,
    summary: summarise(evaluation),
  };
}

/** A clock that was set back must not make a change look older than what it changes. */
export const later = (find: Find, now: number): number => Math.max(now, find.changedAt + 1);

export function findWrites(context: Context): Pick<Finds, 'keep' | 'refresh' | 'putOffers' | 'purge' | 'purgeOne'> {
  const { db } = context;

  const purging = (doomed: () => PromiseLike<readonly Removed[]>) =>
    writing(context, ['removed', 'tombs'], async () => {
      const gone = await doomed();
      if (gone.length === 0) return 0;
      await db.tombs.bulkPut(gone.map(({ id, removedAt }) => ({ id: `finds/${id}`, at: removedAt })));
      await db.removed.bulkDelete(gone.map(({ id }) => id));
      return gone.length;
    });

  return {
    keep: (ad, now) =>
      writing(context, PARTS, async () => {
        const id = crypto.randomUUID();
        const prices = withPrice([], askingOf(ad.evaluation.reading), now);
        const rest = { status: 'new', prices, paid: null, notes: '', keptAt: now, metAt: now, changedAt: now };
        const find = taken(findSchema, { ...fromAd(ad), ...rest, id });
        await putFind(db, find, taken(adSchema, { id, listing: ad.listing, edits: ad.edits }));
        return find;
      }),

    refresh: (id, ad, now, met = true) =>
      writing(context, PARTS, async (damage) => {
        const { find } = await loadFind(db, id, damage);
        const prices = (met ? withPrice : withEditedPrice)(find.prices, askingOf(ad.evaluation.reading), now);
        const metAt = met ? Math.max(now, find.metAt) : find.metAt;
        const changed = taken(findSchema, { ...find, ...fromAd(ad), prices, metAt, changedAt: later(find, now) });
        await putFind(db, changed, taken(adSchema, { id, listing: ad.listing, edits: ad.edits }));
        return changed;
      }),

    putOffers: (offers) =>
      writing(context, PARTS, async (damage) => {
        for (const [id, given] of offers) {
          const row = await db.finds.get(id);
          const find = row && soundFind(row, damage);
          if (find) await putRow(db, taken(findSchema, { ...find, summary: { ...find.summary, offers: given } }));
        }
        return null;
      }),

    purge: (before) => purging(() => db.removed.where('removedAt').below(before).toArray()),
    purgeOne: (token) => purging(() => db.removed.where('token').equals(token).toArray()),
  };
}

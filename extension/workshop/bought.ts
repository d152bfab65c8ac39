/** A find that was bought: what was paid is kept with it, and its goods become part of the kit. All of it, or none. */
import { type Item, isKept, measuredBore, type Reading } from '../../src/listing/reading.ts';
import type { Money } from '../../src/units/money.ts';
import type { Find, Outcome, Owned, Status, Store } from '../store/index.ts';

/** Ids of what came with a find: they lead back to it, so that taking it back needs no other record. */
const beginningOf = (find: string): string => `${find}/`;

/** The find that a thing of the kit came with; null for what was there before or was added by hand. */
export const foundIn = (finds: readonly Find[], { id }: Pick<Owned, 'id'>): Find | null =>
  finds.find((find) => id.startsWith(beginningOf(find.id))) ?? null;

/** Its goods as the kit keeps them. What is to be sold on, or counts for nothing, does not get there. */
export const ownedFrom = (find: Pick<Find, 'id' | 'title'>, { items }: Pick<Reading, 'items'>): Omit<Owned, 'changedAt'>[] =>
  items.filter(isKept).map((item: Item) => ({
    id: `${beginningOf(find.id)}${item.id}`,
    kind: item.kind.value,
    // A thing that is named is there: one of it where nobody counted.
    pieces: item.count?.value ?? 1,
    weight: item.unitWeight?.value ?? null,
    weighed: [...(item.weighed?.value ?? [])],
    boreMm: measuredBore(item)?.value ?? null,
    shaftMm: item.shaftMm?.value ?? null,
    sleeveMm: item.sleeveMm?.value ?? null,
    lengthMm: item.lengthMm?.value ?? null,
    note: find.title.slice(0, 2000),
  }));

export interface Before {
  readonly status: Status;
  readonly paid: Money | null;
}

/** Keeps what was paid, moves the goods to the kit and sets the status; gives how many things went to the kit. When a step fails the others are taken back. */
export async function buy(store: Store, find: Find, reading: Reading, paid: Money, now: number): Promise<Outcome<number>> {
  const goods = ownedFrom(find, reading);
  const failed = await firstFailure([
    ...goods.map((one) => () => store.kit.owned.put(one, now)),
    () => store.finds.update(find.id, { paid }, now),
    () => store.finds.setStatus(find.id, 'bought', now),
  ]);
  if (failed === null) return { ok: true, value: goods.length };
  await takeBack(store, find.id, find, now);
  return failed;
}

/** Takes the goods of a find out of the kit and gives the find back what it said before. */
export async function takeBack(store: Store, find: string, { status, paid }: Before, now: number): Promise<Outcome<null>> {
  const owned = await store.kit.owned.all();
  if (!owned.ok) return owned;
  const goods = owned.value.filter(({ id }) => id.startsWith(beginningOf(find)));
  const failed = await firstFailure([
    ...goods.map(
      ({ id }) =>
        () =>
          store.kit.owned.remove(id, now),
    ),
    () => store.finds.update(find, { paid }, now),
    () => store.finds.setStatus(find, status, now),
  ]);
  return failed ?? { ok: true, value: null };
}

export type Failed = Extract<Outcome<never>, { readonly ok: false }>;

/** Does one after the other, up to the first that fails. */
export async function firstFailure(works: readonly (() => Promise<Outcome<unknown>>)[]): Promise<Failed | null> {
  for (const work of works) {
    const outcome = await work();
    if (!outcome.ok) return outcome;
  }
  return null;
}

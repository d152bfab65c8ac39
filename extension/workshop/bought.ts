/** A find that was bought: its goods as they become part of the kit. */
import { sortGoods } from '../../src/kit/fills.ts';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import { measuredBore } from '../../src/listing/reading.ts';
import { beginningOf } from '../store/goods-id.ts';
import type { Find, Outcome, Owned } from '../store/index.ts';

/** The find that a thing of the kit came with; null for what was there before or was added by hand. */
export const foundIn = (finds: readonly Find[], { id }: Pick<Owned, 'id'>): Find | null =>
  finds.find((find) => id.startsWith(beginningOf(find.id))) ?? null;

/** Its goods as the kit keeps them. What is to be sold on, can't be used or counts for nothing does not get there. */
export const ownedFrom = (find: Pick<Find, 'id' | 'title'>, evaluation: Evaluation): Omit<Owned, 'changedAt'>[] =>
  sortGoods(evaluation)
    .filter(({ sound }) => sound > 0)
    .map(({ item, sound, unfit }) => ({
      id: `${beginningOf(find.id)}${item.id}`,
      kind: item.kind.value,
      pieces: sound,
      weight: item.unitWeight?.value ?? null,
      // Nobody knows which of the weighed ones the unfit one is.
      weighed: unfit > 0 ? [] : [...(item.weighed?.value ?? [])],
      boreMm: measuredBore(item)?.value ?? null,
      shaftMm: item.shaftMm?.value ?? null,
      sleeveMm: item.sleeveMm?.value ?? null,
      lengthMm: item.lengthMm?.value ?? null,
      note: find.title.slice(0, 2000),
    }));

export type Failed = Extract<Outcome<never>, { readonly ok: false }>;

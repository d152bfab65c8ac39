/** What several lots would each add to the loads of a kit: the best first. One lot at a time, so that the caller can pause between them. */
import type { Weight } from '../units/mass.ts';
import { type Exact, exactWeight } from './exact-weight.ts';
import { type Gap, type Load, loadsOf, widestGap } from './loads.ts';
import type { LoadedBar, OwnedPlates } from './plates.ts';

export interface Addition {
  readonly id: string;
  /** Totals up to the best lift that can't be made now. */
  readonly added: number;
  readonly gap: Gap | null;
}

export interface Lot {
  readonly id: string;
  readonly plates: readonly OwnedPlates[];
}

const nameOf = (plates: readonly OwnedPlates[]): string =>
  plates
    .map(({ weight, pieces }) => `${exactWeight(weight)} ${pieces}`)
    .sort()
    .join();

/** Gives a function that looks at one lot; equal lots are reckoned once. Null for what adds nothing. */
export function additionsTo(
  owned: readonly OwnedPlates[],
  now: readonly Load[],
  bar: LoadedBar,
  target: Weight,
): (lot: Lot) => Addition | null {
  const top = exactWeight(target);
  const known = new Set<Exact>(now.map(({ total }) => total));
  const reckoned = new Map<string, Omit<Addition, 'id'>>();
  return ({ id, plates }) => {
    const name = nameOf(plates);
    let found = reckoned.get(name);
    if (found === undefined) {
      const after = loadsOf([...owned, ...plates], bar);
      found = {
        added: after.filter(({ total }) => total <= top && !known.has(total)).length,
        gap: widestGap(after, target),
      };
      reckoned.set(name, found);
    }
    return found.added === 0 ? null : { id, ...found };
  };
}

const widthOf = (gap: Gap | null): number => (gap === null ? Number.POSITIVE_INFINITY : gap.to - gap.from);

/** The smallest gap left first; of equals, the one that adds more totals. */
export const byUse = (a: Addition, b: Addition): number =>
  widthOf(a.gap) - widthOf(b.gap) || b.added - a.added || (a.id < b.id ? -1 : 1);

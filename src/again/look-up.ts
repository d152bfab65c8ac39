/** Many marks at hand, and which of them an ad is again, without comparing it with all. */
import { keysOf, type Mark } from './mark.ts';
import { likelier, type Same, sameAd } from './same.ts';

export interface Known extends Same {
  readonly id: string;
}

export interface LookUp {
  /** Adds a mark, or puts it in the place of the one with that id. */
  readonly add: (id: string, mark: Mark) => void;
  readonly remove: (id: string) => void;
  /** Which ones an ad is again, the likeliest first. */
  readonly find: (mark: Mark) => readonly Known[];
}

/** Those of the marks that an ad is again, the likeliest first. */
export const knownAmong = (marks: Iterable<readonly [string, Mark]>, mark: Mark): readonly Known[] =>
  [...marks]
    .flatMap(([id, other]) => {
      const same = sameAd(mark, other);
      return same ? [{ id, ...same }] : [];
    })
    .sort((a, b) => likelier(a, b) || (a.id < b.id ? -1 : 1));

export function lookUp(marks: Iterable<readonly [string, Mark]> = []): LookUp {
  const byId = new Map<string, Mark>();
  const byKey = new Map<string, Set<string>>();
  const remove = (id: string): void => {
    for (const key of keysOf(byId.get(id) ?? { address: null, size: 0, sketch: [], bands: [], numbers: [] }))
      byKey.get(key)?.delete(id);
    byId.delete(id);
  };
  const add = (id: string, mark: Mark): void => {
    remove(id);
    byId.set(id, mark);
    for (const key of keysOf(mark)) byKey.set(key, (byKey.get(key) ?? new Set()).add(id));
  };
  for (const [id, mark] of marks) add(id, mark);
  const find = (mark: Mark): readonly Known[] => {
    const ids = new Set(keysOf(mark).flatMap((key) => [...(byKey.get(key) ?? [])]));
    const candidates = [...ids].flatMap((id) => {
      const other = byId.get(id);
      return other ? [[id, other] as const] : [];
    });
    return knownAmong(candidates, mark);
  };
  return { add, remove, find };
}

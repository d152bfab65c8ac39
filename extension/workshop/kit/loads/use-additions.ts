/** What each kept find would add to the loads: a few at a time, so that the page stays at hand. */
import { useEffect, useState } from 'preact/hooks';
import { type Addition, additionsTo, byUse } from '../../../../src/kit/additions.ts';
import type { Load } from '../../../../src/kit/loads.ts';
import type { LoadedBar, OwnedPlates } from '../../../../src/kit/plates.ts';
import type { Weight } from '../../../../src/units/mass.ts';
import type { Find } from '../../../store/index.ts';
import { useStore } from '../../use-store.tsx';
import { platesOf } from './on-the-bar.ts';

export interface Found extends Addition {
  readonly find: Find;
}

export interface Additions {
  /** The best few; null until the first ones are reckoned. */
  readonly best: readonly Found[] | null;
  /** Finds looked at so far, and in all. */
  readonly seen: number;
  readonly all: number;
}

const MOST_SHOWN = 5;
/** So long the page may stand still, in ms. */
const SLICE = 12;
const QUERY = { order: 'changed', descending: true, statuses: ['new', 'asked', 'going'], from: 0, count: 10_000 } as const;
const NONE: Additions = { best: null, seen: 0, all: 0 };

export function useAdditions(
  wanted: boolean,
  plates: readonly OwnedPlates[],
  loads: readonly Load[],
  bar: LoadedBar,
  target: Weight,
): Additions {
  const store = useStore();
  const [found, setFound] = useState(NONE);
  useEffect(() => {
    if (!wanted) return;
    let here = true;
    const look = async () => {
      const page = await store.finds.list(QUERY);
      if (!page.ok) return;
      const lots = page.value.rows.flatMap((find) => {
        const own = platesOf(find.summary.offers ?? []);
        return own.length > 0 ? [{ find, plates: own }] : [];
      });
      const reckon = additionsTo(plates, loads, bar, target);
      let best: Found[] = [];
      let paused = Date.now();
      for (const [index, { find, plates: own }] of lots.entries()) {
        const one = reckon({ id: find.id, plates: own });
        if (one) best = [...best, { ...one, find }].sort(byUse).slice(0, MOST_SHOWN);
        if (Date.now() - paused > SLICE) {
          setFound({ best, seen: index + 1, all: lots.length });
          await new Promise((done) => setTimeout(done, 0));
          if (!here) return;
          paused = Date.now();
        }
      }
      if (here) setFound({ best, seen: lots.length, all: lots.length });
    };
    look().catch((error: unknown) => console.error('Ironsift:', error));
    return () => {
      here = false;
    };
  }, [store, wanted, plates, loads, bar, target]);
  return found;
}

/** What each kept find would add to the loads: a few at a time, so that the page stays at hand. */
import { useEffect, useRef, useState } from 'preact/hooks';
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
  /** All that add something so far, the best first; null until the first ones are reckoned. */
  readonly best: readonly Found[] | null;
  /** Finds looked at so far, and in all. */
  readonly seen: number;
  readonly all: number;
  /** The buyer ended it before all were looked at. */
  readonly stopped: boolean;
}

/** So long the page may stand still, in ms. */
const SLICE = 12;
/** And so far apart, in ms, what was found is put in order and shown. */
const TOGETHER = 150;
const QUERY = { order: 'changed', descending: true, statuses: ['new', 'asked', 'going'], from: 0, count: 10_000 } as const;
const NONE: Additions = { best: null, seen: 0, all: 0, stopped: false };

export function useAdditions(
  wanted: boolean,
  plates: readonly OwnedPlates[],
  loads: readonly Load[],
  bar: LoadedBar,
  target: Weight,
): Additions & { readonly stop: () => void } {
  const store = useStore();
  const [found, setFound] = useState(NONE);
  const end = useRef(() => {});
  useEffect(() => {
    if (!wanted) return;
    let here = true;
    end.current = () => {
      here = false;
      setFound((last) => ({ ...last, best: last.best ?? [], stopped: last.seen < last.all }));
    };
    const look = async () => {
      const page = await store.finds.list(QUERY);
      if (!page.ok) return;
      const lots = page.value.rows.flatMap((find) => {
        const own = platesOf(find.summary.offers ?? []);
        return own.length > 0 ? [{ find, plates: own }] : [];
      });
      const reckon = additionsTo(plates, loads, bar, target);
      const best: Found[] = [];
      const show = (seen: number) => setFound({ best: [...best].sort(byUse), seen, all: lots.length, stopped: false });
      let paused = Date.now();
      let shownAt = 0;
      for (const [index, { find, plates: own }] of lots.entries()) {
        const one = reckon({ id: find.id, plates: own });
        if (one) best.push({ ...one, find });
        if (Date.now() - paused > SLICE) {
          if (paused - shownAt > TOGETHER) {
            show(index + 1);
            shownAt = paused;
          }
          await new Promise((done) => setTimeout(done, 0));
          if (!here) return;
          paused = Date.now();
        }
      }
      show(lots.length);
    };
    look().catch((error: unknown) => console.error('Ironsift:', error));
    return () => {
      here = false;
    };
  }, [store, wanted, plates, loads, bar, target]);
  return { ...found, stop: () => end.current() };
}

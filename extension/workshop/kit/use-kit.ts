/** The kit, followed live: what is needed, owned and paid, and where that leaves it. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type NamedNeed, needList } from '../../../src/kit/need-list.ts';
import { type KitStatus, kitStatus } from '../../../src/kit/status.ts';
import type { KitFigures, Settings } from '../../../src/listing/settings.ts';
import type { Money } from '../../../src/units/money.ts';
import type { Find, FindPage, Need, Owned } from '../../store/index.ts';
import { type Failed, foundIn } from '../bought.ts';
import type { WorkshopHost } from '../host.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';
import { followFigures, saveFiguresNow, type Write } from './save.ts';

export interface OpenKit {
  readonly settings: Settings;
  /** Null while no kit was set up. */
  readonly figures: KitFigures | null;
  readonly needs: readonly NamedNeed[];
  /** As they are kept, with what was taken off the list. */
  readonly storedNeeds: readonly Need[];
  readonly owned: readonly Owned[];
  /** Finds that were bought. */
  readonly bought: readonly Find[];
  /** Null without figures. */
  readonly status: KitStatus | null;
  /** Writes, one after the other in the order of the calls. */
  readonly write: Write;
  /** Changes figures at once; what follows from them is written in its turn. */
  readonly save: (change: Partial<KitFigures>) => void;
  readonly failed: Failed['code'] | null;
}

const BOUGHT = { order: 'kept', descending: false, statuses: ['bought'], from: 0, count: 10_000 } as const;

/** Everything that was paid: for finds as a whole, and for things that came with none. */
export const paidFor = (owned: readonly Owned[], bought: readonly Find[]): readonly Money[] => [
  ...bought.flatMap(({ paid }) => (paid ? [paid] : [])),
  ...owned.flatMap((one) => (one.paid && foundIn(bought, one) === null ? [one.paid] : [])),
];

/** Null until everything is there. */
export function useKit(host: WorkshopHost): OpenKit | null {
  const store = useStore();
  const [failed, setFailed] = useState<Failed['code'] | null>(null);
  const last = useRef<Promise<unknown>>(Promise.resolve());
  const settings = useLive<Settings>(store.settings.watch, [store]);
  const stored = useLive<readonly Need[]>(store.kit.needs.watch, [store]);
  const owned = useLive<readonly Owned[]>(store.kit.owned.watch, [store]);
  const page = useLive<FindPage>((seen) => store.finds.watchList(BOUGHT, seen), [store]);
  const figures = settings?.ok ? settings.value.kit : null;
  const needs = useMemo(() => (figures && stored?.ok ? needList(stored.value, figures) : []), [figures, stored]);
  const things = owned?.ok ? owned.value : [];
  const bought = page?.ok ? page.value.rows : [];
  const own = settings?.ok ? settings.value : null;
  const status = useMemo(
    () => figures && own && kitStatus({ figures, needs, owned: things, paid: paidFor(things, bought), settings: own }),
    [own, needs, owned, page],
  );
  const write: Write = (work) => {
    const done = last.current.then(() => work(store, host.now()));
    last.current = done.catch(() => undefined);
    return done.then((outcome) => {
      setFailed(outcome.ok ? null : outcome.code);
      return outcome.ok;
    });
  };
  const save: OpenKit['save'] = (change) => saveFiguresNow(store, write, change, host.now());
  // A tab that was closed between the figures and what follows from them.
  useEffect(() => void write(followFigures), [store]);
  if (!own || !stored || !owned || !page) return null;
  return {
    settings: own,
    figures,
    needs,
    storedNeeds: stored.ok ? stored.value : [],
    owned: things,
    bought,
    status,
    write,
    save,
    failed,
  };
}

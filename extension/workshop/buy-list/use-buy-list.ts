/** The list as it is worked out: the finds judged, the best list solved beside the page, then one by one what else there is. */
import { useContext, useEffect, useRef, useState } from 'preact/hooks';
import { type Considered, consider, type JudgedFind } from '../../../src/kit/buy-list/consider.ts';
import { type BuyList, buyList, type Found, type Program } from '../../../src/kit/buy-list/index.ts';
import { type MadeMarket, marketOf } from '../../../src/kit/buy-list/market-of.ts';
import { alternatives, leftOut, type PriceCut, priceCut } from '../../../src/kit/buy-list/others.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import type { Place } from '../../../src/trip/great-circle.ts';
import { hasPlaces, PlaceLists } from '../../components/place-lists.ts';
import { placeOf } from '../../components/place-words.ts';
import type { Find } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useStore } from '../use-store.tsx';
import type { Choices } from './choices.ts';
import type { Solver } from './solver.ts';
import type { KitNeeds } from './use-kit-needs.ts';

/** Ads left out for which the price at which they would come in belongs to the answer: the nearest. The others' follow behind it. */
export const MOST_CUTS = 25;
/** Prices that come one upon the other are shown together, so many ms apart: each time the whole list is drawn. */
const TOGETHER = 300;
const MOST_OTHERS = 3;

/** By what lists are compared: where every list is over the budget, by the money that it takes. */
export const leastOf = ({ kind }: BuyList): 'cost' | 'spent' => (kind === 'short' ? 'spent' : 'cost');

export interface Worked {
  readonly considered: Considered;
  readonly judged: readonly JudgedFind[];
  readonly made: MadeMarket;
  readonly list: BuyList;
  readonly kit: KitNeeds;
  readonly settings: Settings;
  /** What came after the list, so far. */
  readonly others: readonly Found[];
  /** Offers left out, nearest first, and their cuts as far as they are known. */
  readonly left: readonly string[];
  readonly cuts: ReadonlyMap<string, PriceCut>;
}

export type Stage =
  | { readonly at: 'judging' | 'rest'; readonly seen: number; readonly all: number }
  | { readonly at: 'solving' | 'others' | 'cuts' | 'done' | 'stopped' | 'failed' };

export interface BuyListState {
  readonly stage: Stage;
  /** The last list that was found; while another is worked out it still stands. */
  readonly worked: Worked | null;
  readonly stop: () => void;
  readonly again: () => void;
  /** Works out at which price an ad that was left out would come in: before all that are not worked out yet. */
  readonly askCut: (offer: string) => void;
  /** The offer for which that is being worked out. */
  readonly asking: string | null;
}

interface Given {
  readonly finds: readonly Find[];
  readonly kit: KitNeeds;
  readonly settings: Settings;
  readonly choices: Choices;
}

/** A program that is solved at once. */
const SMALLEST: Program = {
  variables: [{ name: 'x', most: 1, whole: true }],
  objective: [[0, 1]],
  rows: [{ name: 'most', terms: [[0, 1]], sense: '<=', right: 1 }],
};

const NOTHING: readonly Find[] = [];

export function useBuyList(host: WorkshopHost, given: Given | null): BuyListState {
  const store = useStore();
  const lists = useContext(PlaceLists);
  const [stage, setStage] = useState<Stage>({ at: 'judging', seen: 0, all: 0 });
  const [worked, setWorked] = useState<Worked | null>(null);
  const [round, setRound] = useState(0);
  const off = useRef<(() => void) | null>(null);
  const solver = useRef<Solver | null>(null);
  const [asking, setAsking] = useState<string | null>(null);
  /** While the rest is being worked out: the one to be put before it. */
  const first = useRef<string | null>(null);
  /** What the buyer had chosen when the list was stopped: while that stands, only asking for it begins it again. */
  const stoppedAt = useRef<string | null>(null);
  const inRest = stage.at === 'rest';
  const finds = given?.finds ?? NOTHING;
  const { settings, choices, kit } = given ?? {};
  const chosen = JSON.stringify([[...(choices?.said ?? [])], choices?.paying]);
  useEffect(() => {
    if (!settings || !choices || !kit || stoppedAt.current === chosen) return;
    stoppedAt.current = null;
    let here = true;
    let solving = false;
    const isOff = (): boolean => !here;
    const end = () => {
      here = false;
      setAsking(null);
      // A worker that has nothing to do is kept: loading the solver takes longer than most lists.
      if (solving) solver.current?.stop();
    };
    off.current = end;
    // It loads beside the judging: that takes as long as a list.
    const startSolver = async (): Promise<Solver> => {
      if (solver.current !== null) return solver.current;
      const made = await host.solver();
      solver.current ??= made;
      void solver.current.solve(SMALLEST).catch(() => undefined);
      return solver.current;
    };
    const tell = (next: Stage) => here && setStage(next);
    const work = async (): Promise<void> => {
      tell({ at: 'judging', seen: 0, all: finds.length });
      const starting = startSolver();
      const [core, places] = await Promise.all([host.core(), placesOf(settings, finds, lists)]);
      const seen = (count: number) => tell({ at: 'judging', seen: count, all: finds.length });
      const judged = await judgeAll(finds, { store, core, settings, placeOf: places, seen, isOff });
      if (judged === null || isOff()) return;
      tell({ at: 'solving' });
      const { status, platform } = kit;
      const considered = consider(judged, status.open, choices.said, settings);
      const budget = status.left === null ? null : Math.max(0, status.left);
      const made = marketOf(status.open, considered.finds, {
        settings,
        places: considered.places.map(({ id, trip, cash }) => ({ id, trip, cash })),
        budget,
        paying: choices.paying,
        platform,
      });
      const { solve } = await starting;
      if (isOff()) return;
      solving = true;
      const list = await buyList(made.market, solve);
      if (isOff()) return;
      let now: Worked = { considered, judged, made, list, kit, settings, others: [], left: [], cuts: new Map() };
      const show = (more: Partial<Worked>) => {
        now = { ...now, ...more };
        if (here) setWorked(now);
      };
      show({});
      if (list.kind !== 'impossible') {
        const least = leastOf(list);
        tell({ at: 'others' });
        for await (const other of alternatives(made.market, list.kit, solve, MOST_OTHERS, least)) {
          if (isOff()) return;
          show({ others: [...now.others, other] });
        }
        show({ left: leftOut(made.market, list.kit, least) });
        tell({ at: 'cuts' });
        for (const offer of now.left.slice(0, MOST_CUTS)) {
          const cut = await priceCut(made.market, list.kit, offer, solve, least);
          if (isOff()) return;
          show({ cuts: new Map(now.cuts).set(offer, cut) });
        }
        await workOutRest(now, show, solve);
      }
      solving = false;
      tell({ at: 'done' });
    };
    /** The answer stands: behind it whatever is left, and before that what is asked for. */
    const workOutRest = async (
      { made, list, left, cuts }: Worked,
      show: (more: Partial<Worked>) => void,
      solve: Solver['solve'],
    ) => {
      if (list.kind === 'impossible') return;
      const rest = left.slice(MOST_CUTS);
      const all = rest.length;
      first.current = null;
      let known = cuts;
      let shownAt = 0;
      while (rest.length > 0) {
        if (performance.now() - shownAt >= TOGETHER) {
          show({ cuts: known });
          tell({ at: 'rest', seen: all - rest.length, all });
          shownAt = performance.now();
        }
        const asked: string | null = first.current;
        const [offer = '']: string[] = rest.splice(asked === null ? 0 : Math.max(0, rest.indexOf(asked)), 1);
        const cut = await priceCut(made.market, list.kit, offer, solve, leastOf(list));
        if (isOff()) return;
        known = new Map(known).set(offer, cut);
        if (offer !== first.current) continue;
        first.current = null;
        show({ cuts: known });
        setAsking(null);
      }
      show({ cuts: known });
      setAsking(null);
    };
    work().catch((error: unknown) => {
      if (!here) return;
      console.error('Ironsift:', error);
      setStage({ at: 'failed' });
    });
    return end;
  }, [store, finds, kit, settings, choices?.said, choices?.paying, round]);
  useEffect(() => () => solver.current?.stop(), []);
  const askCut = async (offer: string): Promise<void> => {
    if (worked === null || worked.list.kind === 'impossible' || asking !== null) return;
    const { made, list } = worked;
    setAsking(offer);
    if (inRest) {
      first.current = offer;
      return;
    }
    try {
      solver.current ??= await host.solver();
      const cut = await priceCut(made.market, list.kit, offer, solver.current.solve, leastOf(list));
      // Another list may stand there by now, to which this says nothing.
      setWorked((now) => (now?.list === list ? { ...now, cuts: new Map(now.cuts).set(offer, cut) } : now));
    } catch (error) {
      // Stopped, for everything is worked out anew.
      if (!(error instanceof Error && error.name === 'SolverStopped')) console.error('Ironsift:', error);
    }
    setAsking(null);
  };
  return {
    stage,
    worked,
    stop: () => {
      stoppedAt.current = chosen;
      off.current?.();
      setStage({ at: 'stopped' });
    },
    again: () => {
      stoppedAt.current = null;
      setRound((last) => last + 1);
    },
    askCut: (offer) => void askCut(offer),
    asking,
  };
}

/** Fetched when there is something to judge: the pieces that it needs come with it. */
const judgeAll: typeof import('./judge-finds.ts').judgeFinds = async (finds, given) =>
  (await import('./judge-finds.ts')).judgeFinds(finds, given);

/** Looks up where the ads are, once it is known where the buyer sets out; a name that may be several places is none. */
async function placesOf(
  { home, currency }: Settings,
  finds: readonly Find[],
  load: (currency: string) => Promise<import('../../../src/places/gazetteer.ts').Gazetteer>,
): Promise<(name: string) => Place | null> {
  if (home === null || !hasPlaces(currency) || finds.every(({ summary }) => summary.place === null)) return () => null;
  const known = new Map<string, Place | null>();
  try {
    const gazetteer = await load(currency);
    return (name) => {
      const before = known.get(name);
      if (before !== undefined) return before;
      const found = gazetteer.find(name, home);
      const place = found.ok && found.chosen ? placeOf(found.chosen) : null;
      known.set(name, place);
      return place;
    };
  } catch (error) {
    // Without the lists the ads' own distances do.
    console.error('Ironsift:', error);
    return () => null;
  }
}

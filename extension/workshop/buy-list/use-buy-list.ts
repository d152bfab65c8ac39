/** The list as a screen has it: worked out anew whenever finds, kit, settings or choices change, until the buyer stops it. */
import { useContext, useEffect, useRef, useState } from 'preact/hooks';
import type { Program, Solve } from '../../../src/kit/buy-list/index.ts';
import { priceCut } from '../../../src/kit/buy-list/others.ts';
import { PlaceLists } from '../../components/place-lists.ts';
import type { Find } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useStore } from '../use-store.tsx';
import type { Solver } from './solver.ts';
import { type Given, leastOf, type Waiting, type Worked, type Working, workOut } from './work-out.ts';

export type Stage = Working | { readonly at: 'stopped' | 'failed' };

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

/** A program that is solved at once. */
const SMALLEST: Program = {
  variables: [{ name: 'x', most: 1, whole: true }],
  objective: [[0, 1]],
  rows: [{ name: 'most', terms: [[0, 1]], sense: '<=', right: 1 }],
};

const NOTHING: readonly Find[] = [];

export function useBuyList(host: WorkshopHost, given: Given | null): BuyListState {
  const store = useStore();
  const places = useContext(PlaceLists);
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
    first.current = null;
    let here = true;
    let solving = false;
    const end = () => {
      here = false;
      setAsking(null);
      // A worker that has nothing to do is kept: loading the solver takes longer than most lists.
      if (solving) solver.current?.stop();
    };
    off.current = end;
    const startSolver = async (): Promise<Solve> => {
      if (solver.current === null) {
        const made = await host.solver();
        solver.current ??= made;
        void solver.current.solve(SMALLEST).catch(() => undefined);
      }
      const { solve } = solver.current;
      return (program) => {
        solving = true;
        return solve(program);
      };
    };
    const waiting: Waiting = {
      isOff: () => !here,
      tell: (next) => {
        if (next.at === 'done') solving = false;
        if (here) setStage(next);
      },
      show: (now) => {
        if (here) setWorked(now);
      },
      askedFor: () => first.current,
      answered: () => {
        first.current = null;
        setAsking(null);
      },
    };
    workOut({ finds, kit, settings, choices }, { store, core: host.core, places, startSolver }, waiting).catch(
      (error: unknown) => {
        if (!here) return;
        console.error('Ironsift:', error);
        setStage({ at: 'failed' });
      },
    );
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

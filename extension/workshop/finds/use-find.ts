/** A kept find opened for work: its ad, what the buyer said about it, the answer; every change is stored with the answer that follows. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { evaluate as Evaluate } from '../../../src/evaluate.ts';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import type { Message } from '../../../src/words/message.ts';
import { adKey } from '../../panel/ad-key.ts';
import type { Edits } from '../../panel/edits.ts';
import {
  corrections,
  putBack,
  putBackItem,
  reopenDoubt,
  type Session,
  setDistance,
  settleDoubt,
  setValue,
  startSession,
  type TypedDistance,
} from '../../panel/session.ts';
import { packEdits, unpackEdits } from '../../panel/stored-edits.ts';
import { type Find, failureMessage, type KeptAd } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';

export interface OpenFind {
  readonly find: Find;
  readonly session: Session;
  readonly settings: Settings;
  readonly evaluation: Evaluation;
  readonly edits: Edits;
  readonly setDistance: (distance: TypedDistance | null) => void;
}

interface Loaded {
  readonly judge: typeof Evaluate;
  readonly settings: Settings;
  readonly session: Session;
}

const judged = ({ judge, settings }: Loaded, session: Session, asRead = false): Evaluation =>
  judge(session.listing, { ...settings, distance: session.distance }, asRead ? [] : corrections(session));

const opened = (judge: typeof Evaluate, settings: Settings, { listing, edits }: KeptAd): Loaded => {
  const fresh = startSession(adKey(listing), listing);
  return { judge, settings, session: unpackEdits(fresh, edits, judge(listing, settings).reading.doubts) };
};

/** Null while it loads; a message when it can't be opened. */
export function useFind(host: WorkshopHost, id: string): { readonly open: OpenFind | null; readonly failed: Message | null } {
  const store = useStore();
  const [loaded, setLoaded] = useState<Loaded | null>(null);
  const [failed, setFailed] = useState<Message | null>(null);
  const find = useLive<Find>((seen) => store.finds.watch(id, seen), [store, id]);
  useEffect(() => {
    let here = true;
    Promise.all([store.finds.get(id), store.settings.load(host.now()), host.core()]).then(([kept, stored, judge]) => {
      if (!here) return;
      if (!kept.ok) return setFailed(failureMessage(kept.code));
      setLoaded(opened(judge, stored.ok ? stored.value.settings : DEFAULT_SETTINGS, kept.value));
    });
    return () => {
      here = false;
    };
  }, [store, id]);
  const evaluation = useMemo(() => loaded && judged(loaded, loaded.session), [loaded]);
  const asRead = useMemo(() => loaded && judged(loaded, loaded.session, true).reading, [loaded?.session.listing]);
  if (loaded === null || evaluation === null || !find) return { open: null, failed };
  if (!find.ok) return { open: null, failed: failureMessage(find.code) };
  const change = (step: (session: Session) => Session) => {
    const session = step(loaded.session);
    const next = { ...loaded, session };
    setLoaded(next);
    const ad = { listing: session.listing, edits: packEdits(session), evaluation: judged(next, session) };
    store.finds.refresh(id, ad, host.now()).then((saved) => setFailed(saved.ok ? null : failureMessage(saved.code)));
  };
  const edits: Edits = {
    session: loaded.session,
    asRead,
    set: (correction) => change((one) => setValue(one, correction)),
    putBack: (path) => change((one) => putBack(one, path)),
    putBackItem: (item) => change((one) => putBackItem(one, item)),
    settle: (doubt, choice) => change((one) => settleDoubt(one, doubt, choice)),
    reopen: (doubt) => change((one) => reopenDoubt(one, doubt)),
  };
  return {
    open: {
      find: find.value,
      session: loaded.session,
      settings: loaded.settings,
      evaluation,
      edits,
      setDistance: (distance) => change((one) => setDistance(one, distance)),
    },
    failed,
  };
}

/** A kept find opened for work: its ad, what the buyer said about it, the answer; every change is stored with the answer that follows. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import type { Correction } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import type { Place } from '../../../src/trip/great-circle.ts';
import { type Message, message } from '../../../src/words/message.ts';
import { adKey } from '../../panel/ad-key.ts';
import { type Edits, editsOf } from '../../panel/edits.ts';
import {
  corrections,
  forAd,
  putBack,
  type Session,
  setDistance,
  setValue,
  startSession,
  type TypedDistance,
} from '../../panel/session.ts';
import { packEdits, unpackEdits } from '../../panel/stored-edits.ts';
import { type AdToKeep, type Find, failureMessage, type KeptAd } from '../../store/index.ts';
import type { Core, WorkshopHost } from '../host.ts';
import { latestWrite } from '../latest-write.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';

export interface OpenFind {
  readonly find: Find;
  readonly session: Session;
  readonly settings: Settings;
  readonly core: Core;
  readonly evaluation: Evaluation;
  /** Everything said of it, in order: what the evaluation was made with. */
  readonly said: readonly Correction[];
  readonly edits: Edits;
  /** One finding that sets several paths: what was said by hand at these paths goes, and the corrections come last, in one step. */
  readonly record: (paths: readonly string[], found: readonly Correction[]) => void;
  readonly setDistance: (distance: TypedDistance | null) => void;
  readonly setSettings: (changed: Partial<Settings>) => void;
}

interface Loaded {
  readonly core: Core;
  readonly settings: Settings;
  readonly session: Session;
  /** Where the ad says that the seller is, as found in the place lists. */
  readonly supposed: Place | null;
}

const judged = ({ core: { evaluate }, settings, supposed }: Loaded, session: Session, asRead = false): Evaluation =>
  evaluate(session.listing, forAd(settings, session, supposed), asRead ? [] : corrections(session));

const opened = (core: Core, settings: Settings, { listing, edits }: KeptAd): Loaded => {
  const fresh = startSession(adKey(listing), listing);
  return { core, settings, supposed: null, session: unpackEdits(fresh, edits, core.evaluate(listing, settings).reading.doubts) };
};

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Null while it loads; a message when it can't be opened. */
export function useFind(host: WorkshopHost, id: string): { readonly open: OpenFind | null; readonly failed: Message | null } {
  const store = useStore();
  const [loaded, setLoaded] = useState<Loaded | null>(null);
  const [failed, setFailed] = useState<Message | null>(null);
  const find = useLive<Find>((seen) => store.finds.watch(id, seen), [store, id]);
  useEffect(() => {
    let here = true;
    const load = async (): Promise<void> => {
      const [kept, stored, core] = await Promise.all([store.finds.get(id), store.settings.load(host.now()), host.core()]);
      if (!here) return;
      if (!kept.ok) return setFailed(failureMessage(kept.code));
      setLoaded(opened(core, stored.ok ? stored.value.settings : DEFAULT_SETTINGS, kept.value));
    };
    load().catch((error: unknown) => {
      console.error('Ironsift:', error);
      if (here) setFailed(message('workshop_failed'));
    });
    return () => {
      here = false;
    };
  }, [store, id]);
  const keep = useMemo(
    () =>
      latestWrite(async (ad: AdToKeep) => {
        const saved = await store.finds.refresh(id, ad, host.now(), false);
        setFailed(saved.ok ? null : failureMessage(saved.code));
      }),
    [store, id],
  );
  const changedAt = find?.ok ? find.value.changedAt : null;
  // Another window that has the same find open: what was said there is taken over, or the next change here would take it back.
  useEffect(() => {
    if (changedAt === null || keep.isBusy()) return;
    let here = true;
    store.finds.get(id).then((kept) => {
      if (!here || !kept.ok || keep.isBusy()) return;
      const { value } = kept;
      setLoaded((now) =>
        now === null || isSame(value.edits, packEdits(now.session))
          ? now
          : { ...opened(now.core, now.settings, value), supposed: now.supposed },
      );
    });
    return () => {
      here = false;
    };
  }, [changedAt]);
  const evaluation = useMemo(() => loaded && judged(loaded, loaded.session), [loaded]);
  const asRead = useMemo(() => loaded && judged(loaded, loaded.session, true).reading, [loaded?.session.listing]);
  if (loaded === null || evaluation === null || !find) return { open: null, failed };
  if (!find.ok) return { open: null, failed: failureMessage(find.code) };
  const show = (next: Loaded) => {
    setLoaded(next);
    const { session } = next;
    const ad = { listing: session.listing, edits: packEdits(session), evaluation: judged(next, session) };
    keep(ad);
  };
  const change = (step: (session: Session) => Session) => show({ ...loaded, session: step(loaded.session) });
  const setSettings = (changed: Partial<Settings>) => {
    const settings = { ...loaded.settings, ...changed };
    show({ ...loaded, settings });
    store.settings.change(() => changed, host.now()).then((saved) => setFailed(saved.ok ? null : failureMessage(saved.code)));
  };
  const suppose = (supposed: Place | null) => setLoaded((now) => now && { ...now, supposed });
  const edits = editsOf(loaded.session, asRead, change, suppose);
  return {
    open: {
      find: find.value,
      session: loaded.session,
      settings: forAd(loaded.settings, loaded.session, loaded.supposed),
      core: loaded.core,
      evaluation,
      said: corrections(loaded.session),
      edits,
      record: (paths, found) => change((one) => found.reduce(setValue, paths.reduce(putBack, one))),
      setDistance: (distance) => change((one) => setDistance(one, distance)),
      setSettings,
    },
    failed,
  };
}

/** The example judged live, by the buyer's own settings; what is said about it lives as long as the page and is never stored. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Evaluation } from '../../../src/listing/evaluation.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { type Edits, editsOf } from '../../panel/edits.ts';
import { corrections, forAd, type Session, setDistance, startSession, type TypedDistance } from '../../panel/session.ts';
import type { Core, WorkshopHost } from '../host.ts';
import { useStore } from '../use-store.tsx';
import { EXAMPLE } from './ad.ts';

export interface OpenExample {
  readonly core: Core;
  readonly session: Session;
  readonly settings: Settings;
  readonly evaluation: Evaluation;
  readonly edits: Edits;
  readonly setDistance: (distance: TypedDistance | null) => void;
  readonly setSettings: (changed: Partial<Settings>) => void;
}

/** Null while the core is fetched. */
export function useExample(host: WorkshopHost): OpenExample | null {
  const store = useStore();
  const [loaded, setLoaded] = useState<{ readonly core: Core; readonly settings: Settings } | null>(null);
  const [session, setSession] = useState(() => startSession('example', EXAMPLE));
  useEffect(() => {
    let here = true;
    Promise.all([host.core(), store.settings.load(host.now())]).then(([core, stored]) => {
      if (here) setLoaded({ core, settings: stored.ok ? stored.value.settings : DEFAULT_SETTINGS });
    });
    return () => {
      here = false;
    };
  }, [host, store]);
  const settings = useMemo(() => loaded && forAd(loaded.settings, session), [loaded, session.distance, session.sellerAt]);
  const evaluation = useMemo(
    () => loaded && settings && loaded.core.evaluate(EXAMPLE, settings, corrections(session)),
    [loaded, settings, session],
  );
  const asRead = useMemo(() => loaded && settings && loaded.core.evaluate(EXAMPLE, settings).reading, [loaded, settings]);
  if (loaded === null || settings === null || evaluation === null) return null;
  // The example stands nowhere: no place is supposed of it.
  const edits = editsOf(session, asRead, setSession, () => undefined);
  return {
    core: loaded.core,
    session,
    settings,
    evaluation,
    edits,
    setDistance: (distance) => setSession(setDistance(session, distance)),
    setSettings: (changed) => setLoaded({ ...loaded, settings: { ...loaded.settings, ...changed } }),
  };
}

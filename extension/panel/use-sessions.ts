/** One session per ad. Each change is stored at once; a panel that opens anew, or the same ad met again, finds it there. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { listingFromText } from '../../src/listing/page-listing.ts';
import type { Doubt } from '../../src/listing/reading.ts';
import { adKey } from './ad-key.ts';
import type { Capture, Host } from './host.ts';
import { type Session, startSession } from './session.ts';
import { packEdits, unpackEdits } from './stored-edits.ts';

export interface Sessions {
  readonly session: Session;
  readonly change: (step: (session: Session) => Session) => void;
  /** The last change could not be stored: it holds while this page is open. */
  readonly notKept: boolean;
}

const NOTHING = startSession('', listingFromText(''));

const report = (error: unknown) => console.error('Ironsift:', error);

/** `doubtsOf` gives the doubts of an ad as read, without any correction; null while nothing can be read yet, and then nothing is restored. */
export function useSessions(
  capture: Capture | null,
  host: Host,
  doubtsOf: ((session: Session) => readonly Doubt[]) | null,
): Sessions {
  const [notKept, setNotKept] = useState(false);
  const [sessions, setSessions] = useState<ReadonlyMap<string, Session>>(new Map());
  const session = useMemo(() => {
    if (capture?.state !== 'ready') return NOTHING;
    const key = adKey(capture.listing);
    return sessions.get(key) ?? startSession(key, capture.listing);
  }, [capture, sessions]);
  const known = session === NOTHING || sessions.has(session.key);
  useEffect(() => {
    if (known || doubtsOf === null) return;
    host.loadEdits(session.key, session.listing).then((stored) => {
      if (stored === null) return;
      const restored = unpackEdits(session, stored, doubtsOf(session));
      // Whatever the buyer has done in the meantime is newer.
      setSessions((all) => (all.has(session.key) ? all : new Map(all).set(session.key, restored)));
    }, report);
  }, [known, session.key, host, doubtsOf === null]);
  const change = (step: (session: Session) => Session) => {
    const next = step(sessions.get(session.key) ?? session);
    setSessions((all) => new Map(all).set(session.key, next));
    host.saveEdits(session.key, packEdits(next)).then(
      () => setNotKept(false),
      (error: unknown) => {
        report(error);
        setNotKept(true);
      },
    );
  };
  return { session, change, notKept };
}

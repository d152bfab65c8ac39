/** What the buyer said about the ad in front, and the evaluation that follows from it. */
import { useMemo, useRef, useState } from 'preact/hooks';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Correction } from '../../src/listing/reading.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Place } from '../../src/trip/great-circle.ts';
import { type Edits, editsOf } from './edits.ts';
import type { Capture, Host } from './host.ts';
import type { Judge } from './panel.tsx';
import { corrections, forAd, type Session, setDistance, type TypedDistance } from './session.ts';
import { useSessions } from './use-sessions.ts';

export interface EditingState {
  readonly edits: Edits;
  /** Null when nothing was taken, or the core could not judge it. */
  readonly evaluation: Evaluation | null;
  /** As the ad in front is judged by. */
  readonly settings: Settings;
  readonly distance: TypedDistance | null;
  readonly setDistance: (distance: TypedDistance | null) => void;
}

export function useEditing(capture: Capture | null, settings: Settings, host: Host, judge: Judge | null): EditingState {
  const doubtsOf = judge && (({ listing }: Session) => attempt(() => judge(listing, settings, []))?.reading.doubts ?? []);
  const { session, change } = useSessions(capture, host, doubtsOf);
  const taken = capture?.state === 'ready';
  const [supposed, suppose] = useState<{ readonly key: string; readonly place: Place | null } | null>(null);
  const here = supposed?.key === session.key ? supposed.place : null;
  const own = useMemo(() => forAd(settings, session, here), [settings, session.distance, session.sellerAt, here]);
  const judged = (listing: PageListing, made: readonly Correction[]) =>
    taken && judge ? attempt(() => judge(listing, own, made)) : null;
  const lastGood = useRef<{ readonly key: string; readonly evaluation: Evaluation } | null>(null);
  const evaluation = useMemo(() => {
    const now = judged(session.listing, corrections(session));
    if (now) lastGood.current = { key: session.key, evaluation: now };
    // An edit that the core can't follow must not take the answer away, or it could not be undone.
    return now ?? (lastGood.current?.key === session.key ? lastGood.current.evaluation : null);
  }, [session, own, judge, taken]);
  const asRead = useMemo(() => judged(session.listing, [])?.reading ?? null, [session.listing, settings, judge, taken]);
  const edits = editsOf(session, asRead, change, (place) => suppose({ key: session.key, place }));
  return {
    edits,
    evaluation,
    settings: own,
    distance: session.distance,
    setDistance: (typed) => change((one) => setDistance(one, typed)),
  };
}

function attempt(judging: () => Evaluation): Evaluation | null {
  try {
    return judging();
  } catch (error) {
    console.error('Ironsift:', error);
    return null;
  }
}

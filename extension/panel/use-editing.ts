/** What the buyer said about the ad in front, and the evaluation that follows from it. */
import { useMemo, useRef, useState } from 'preact/hooks';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { Correction, Reading } from '../../src/listing/reading.ts';
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
  /** What was said last could not be stored. */
  readonly notKept: boolean;
}

export function useEditing(capture: Capture | null, settings: Settings, host: Host, judge: Judge | null): EditingState {
  const doubtsOf = judge && (({ listing }: Session) => attempt(() => judge(listing, settings, []))?.reading.doubts ?? []);
  const { session, change, notKept } = useSessions(capture, host, doubtsOf);
  const taken = capture?.state === 'ready';
  const [supposed, suppose] = useState<{ readonly key: string; readonly place: Place | null } | null>(null);
  const here = supposed?.key === session.key ? supposed.place : null;
  const own = useMemo(() => forAd(settings, session, here), [settings, session.distance, session.sellerAt, here]);
  const judged = (said: readonly Correction[]) => (taken && judge ? attempt(() => judge(session.listing, own, said)) : null);
  const lastGood = useRef<{ readonly key: string; readonly evaluation: Evaluation } | null>(null);
  const said = corrections(session);
  const judgement = useMemo(() => judged(said), [session, own, judge, taken]);
  if (judgement) lastGood.current = { key: session.key, evaluation: judgement };
  // An edit that the core can't follow must not take the answer away, or it could not be undone.
  const evaluation = judgement ?? (lastGood.current?.key === session.key ? lastGood.current.evaluation : null);
  const asRead = useAsRead(said.length === 0 ? judgement : null, () => judged([]), [session.listing, settings, judge, taken]);
  const edits = editsOf(session, asRead, change, (place) => suppose({ key: session.key, place }));
  return {
    edits,
    evaluation,
    settings: own,
    distance: session.distance,
    setDistance: (typed) => change((one) => setDistance(one, typed)),
    notKept,
  };
}

/**
 * The reading before any correction, as long as `of` stays the same. While nothing is corrected it is that of the answer itself, for to judge an
 * ad twice would keep the buyer waiting; from then on it is kept.
 */
function useAsRead(untouched: Evaluation | null, judged: () => Evaluation | null, of: readonly unknown[]): Reading | null {
  const kept = useRef<{ readonly of: readonly unknown[]; readonly reading: Reading | null }>({ of: [], reading: null });
  const holds = kept.current.of.length > 0 && of.every((one, index) => one === kept.current.of[index]);
  if (untouched || !holds) kept.current = { of, reading: (untouched ?? judged())?.reading ?? null };
  return kept.current.reading;
}

function attempt(judging: () => Evaluation): Evaluation | null {
  try {
    return judging();
  } catch (error) {
    console.error('Ironsift:', error);
    return null;
  }
}

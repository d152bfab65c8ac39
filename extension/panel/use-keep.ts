/** Whether the ad in front is among the finds, and keeping it there. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Evaluation } from '../../src/listing/evaluation.ts';
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { Message } from '../../src/words/message.ts';
import { useOneAtATime } from '../components/use-one-at-a-time.ts';
import { failureMessage } from '../store/failure.ts';
import type { AdToKeep, Find, MetAgain, Outcome } from '../store/index.ts';
import type { KeepHost } from './keep-host.ts';
import type { Session } from './session.ts';
import { packEdits } from './stored-edits.ts';

export interface Keeping {
  /** The find that this ad is, once it was kept or said to be known. */
  readonly kept: Find | null;
  /** Finds from before that it may be; none once it is kept. */
  readonly met: readonly MetAgain[];
  readonly failed: Message | null;
  readonly keep: () => void;
  /** It is that one: kept as it is now, its status and notes stay. */
  readonly take: (find: Find) => void;
}

export function useKeep(host: KeepHost, listing: PageListing, session: Session, evaluation: Evaluation): Keeping {
  const [kept, setKept] = useState<Find | null>(null);
  const [met, setMet] = useState<readonly MetAgain[]>([]);
  const [failed, setFailed] = useState<Message | null>(null);
  const { once } = useOneAtATime();
  const ad: AdToKeep = { listing, edits: packEdits(session), evaluation };
  const seen = (outcome: Outcome<Find>) => {
    setFailed(outcome.ok ? null : failureMessage(outcome.code));
    if (outcome.ok) setKept(outcome.value);
  };
  useEffect(() => {
    let here = true;
    host.again(listing).then((again) => here && again.ok && setMet(again.value.slice(0, 3)));
    return () => {
      here = false;
    };
  }, [host, session.key]);
  /** As it was handed to the store last. What is said about the ad afterwards, also while it is being kept, is kept too. */
  const handed = useRef(session);
  const hand = (write: () => Promise<Outcome<Find>>): Promise<void> => {
    handed.current = session;
    return write().then(seen);
  };
  useEffect(() => {
    if (kept && handed.current !== session) void hand(() => host.refresh(kept.id, ad, false));
  }, [session, kept?.id]);
  return {
    kept,
    met: kept ? [] : met,
    failed,
    keep: () => once(() => hand(() => host.keep(ad))),
    take: (find) => once(() => hand(() => host.refresh(find.id, ad, true))),
  };
}

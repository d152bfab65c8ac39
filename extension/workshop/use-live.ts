/** A live query of the store as state: null until it has answered for the first time. */
import { useLayoutEffect, useState } from 'preact/hooks';
import type { Outcome, Stop } from '../store/index.ts';

/** `deps` name what the query depends on; the answer before a change stays until the new one is there. */
export function useLive<T>(watch: (seen: (outcome: Outcome<T>) => void) => Stop, deps: readonly unknown[]): Outcome<T> | null {
  const [outcome, setOutcome] = useState<Outcome<T> | null>(null);
  // Before the frame is drawn, so that the store reads while it is.
  useLayoutEffect(() => {
    let here = true;
    const stop = watch((next) => {
      if (here) setOutcome(next);
    });
    return () => {
      here = false;
      stop();
    };
  }, deps);
  return outcome;
}

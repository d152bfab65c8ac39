/** People press twice: what is pressed while the last press is still at work is not heard, or it would be done twice. */
import { useRef, useState } from 'preact/hooks';

export interface OneAtATime {
  /** Something is at work. */
  readonly busy: boolean;
  /** Begins a piece of work, unless one is at work. */
  readonly once: (work: () => Promise<unknown>) => void;
}

export function useOneAtATime(): OneAtATime {
  const [busy, setBusy] = useState(false);
  // Two presses may come before anything is drawn anew.
  const working = useRef(false);
  const run = async (work: () => Promise<unknown>): Promise<void> => {
    working.current = true;
    setBusy(true);
    try {
      await work();
    } finally {
      working.current = false;
      setBusy(false);
    }
  };
  return {
    busy,
    once: (work) => {
      if (!working.current) void run(work);
    },
  };
}

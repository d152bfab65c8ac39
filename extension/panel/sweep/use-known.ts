/** Which ads of the list are among the finds already: asked one after the other, once the rows are there, so that nothing waits for it. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Find } from '../../store/index.ts';
import type { Row } from './rows.ts';
import type { SweepHost } from './sweep-host.ts';

/** So many answers are shown at once: each one anew would draw the list as many times. */
const PIECE = 20;

export interface Known {
  /** The find that each row is, by id of the row; none where it is not kept, or nobody knows yet. */
  readonly known: ReadonlyMap<string, Find>;
  /** Asks for these rows anew: they were kept just now. */
  readonly askAgain: (ids: readonly string[]) => void;
}

/** A find that an ad may only perhaps be again is none. */
export function useKnown(again: SweepHost['again'], rows: readonly Row[]): Known {
  const [known, setKnown] = useState<ReadonlyMap<string, Find>>(new Map());
  const [round, setRound] = useState(0);
  const asked = useRef(new Set<string>());
  useEffect(() => {
    if (again === null) return;
    let here = true;
    const look = async () => {
      let found: [string, Find][] = [];
      const show = () => {
        const made = found;
        found = [];
        if (made.length > 0) setKnown((all) => new Map([...all, ...made]));
      };
      for (const { id, listing } of rows) {
        if (asked.current.has(id)) continue;
        const met = await again(listing);
        if (!here) return show();
        asked.current.add(id);
        const sure = met.ok ? met.value.find(({ how }) => how !== 'maybe') : undefined;
        if (sure) found.push([id, sure.find]);
        if (found.length >= PIECE) show();
      }
      show();
    };
    look().catch((error: unknown) => console.error('Ironsift:', error));
    return () => {
      here = false;
    };
  }, [again, rows, round]);
  return {
    known,
    askAgain: (ids) => {
      for (const id of ids) asked.current.delete(id);
      setRound((before) => before + 1);
    },
  };
}

/** The place lists as a field needs them: not read before they are wanted. */
import { useCallback, useContext, useEffect, useRef, useState } from 'preact/hooks';
import type { Gazetteer } from '../../src/places/gazetteer.ts';
import { PlaceLists } from './place-lists.ts';

export interface Places {
  /** Null until they are read. */
  readonly gazetteer: Gazetteer | null;
  readonly state: 'unread' | 'reading' | 'read' | 'failed';
  /** Reads them if they are not; a failed reading is tried anew. */
  readonly want: () => void;
}

const UNREAD = { gazetteer: null, state: 'unread' } as const;

export function usePlaces(currency: string): Places {
  const load = useContext(PlaceLists);
  const [now, setNow] = useState<Omit<Places, 'want'>>(UNREAD);
  const wanted = useRef('');
  useEffect(() => {
    setNow(UNREAD);
    return () => {
      wanted.current = '';
    };
  }, [currency]);
  const want = useCallback(() => {
    if (wanted.current === currency) return;
    wanted.current = currency;
    setNow({ gazetteer: null, state: 'reading' });
    load(currency).then(
      (gazetteer) => wanted.current === currency && setNow({ gazetteer, state: 'read' }),
      (error: unknown) => {
        console.error('Ironsift:', error);
        if (wanted.current !== currency) return;
        wanted.current = '';
        setNow({ gazetteer: null, state: 'failed' });
      },
    );
  }, [load, currency]);
  return { ...now, want };
}

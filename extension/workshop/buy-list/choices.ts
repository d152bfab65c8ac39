/** What the buyer said of single finds, kept with them, and at which prices the list is reckoned, which holds while the page is open. */
import { useMemo, useState } from 'preact/hooks';
import type { Said } from '../../../src/kit/buy-list/consider.ts';
import type { Terms } from '../../../src/kit/buy-list/market-of.ts';
import type { Find, Store, StoreCode } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';

export interface Choices {
  readonly said: ReadonlyMap<string, Said>;
  readonly paying: Terms['paying'];
}

/** A screen is built anew whenever it is opened; what was said outlives it. */
let latest: Choices['paying'] = 'asked';

export interface ChoicesMade extends Choices {
  /** Null takes the word back. */
  readonly say: (find: string, said: Said | null) => void;
  readonly pay: (paying: Terms['paying']) => void;
  /** Why the last word could not be kept. */
  readonly failed: StoreCode | null;
}

export function useChoices(store: Store, host: Pick<WorkshopHost, 'now'>, finds: readonly Find[]): ChoicesMade {
  const [paying, setPaying] = useState(latest);
  const [failed, setFailed] = useState<StoreCode | null>(null);
  const said = useMemo(() => new Map(finds.flatMap(({ id, onList }) => (onList ? [[id, onList] as const] : []))), [finds]);
  return {
    said,
    paying,
    failed,
    say: (find, word) =>
      void store.finds.update(find, { onList: word }, host.now()).then((outcome) => setFailed(outcome.ok ? null : outcome.code)),
    pay: (next) => {
      latest = next;
      setPaying(next);
    },
  };
}

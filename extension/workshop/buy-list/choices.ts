/** What the buyer said of single finds, and at which prices the list is reckoned. It holds while the page is open. */
import { useState } from 'preact/hooks';
import type { Said } from '../../../src/kit/buy-list/consider.ts';
import type { Terms } from '../../../src/kit/buy-list/market-of.ts';

export interface Choices {
  readonly said: ReadonlyMap<string, Said>;
  readonly paying: Terms['paying'];
}

/** A screen is built anew whenever it is opened; what was said outlives it. */
let latest: Choices = { said: new Map(), paying: 'asked' };

export interface ChoicesMade extends Choices {
  /** Null takes the word back. */
  readonly say: (find: string, said: Said | null) => void;
  readonly pay: (paying: Terms['paying']) => void;
}

export function useChoices(): ChoicesMade {
  const [choices, setChoices] = useState(latest);
  const change = (next: Partial<Choices>) => {
    latest = { ...latest, ...next };
    setChoices(latest);
  };
  return {
    ...choices,
    say: (find, said) => {
      const next = new Map(latest.said);
      if (said === null) next.delete(find);
      else next.set(find, said);
      change({ said: next });
    },
    pay: (paying) => change({ paying }),
  };
}

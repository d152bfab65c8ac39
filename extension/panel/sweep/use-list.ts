/** Whether the list or one ad is shown, and how the list was left. Whatever was asked for last is shown; the way back is always there. */
import { useState } from 'preact/hooks';
import type { Capture } from '../host.ts';
import { type Filter, NO_FILTER, type Order } from './arrange.ts';
import type { Row } from './rows.ts';
import type { SweepHost, Swept } from './sweep-host.ts';

/** How the list was left, so that coming back from an ad finds it so. */
export interface ListState {
  readonly order: Order;
  readonly filter: Filter;
  readonly ticked: ReadonlySet<string>;
  /** The row that was opened last. */
  readonly opened: string | null;
}

const NEW_LIST: ListState = { order: 'page', filter: NO_FILTER, ticked: new Set(), opened: null };

export interface List {
  readonly isShown: boolean;
  readonly left: ListState;
  readonly onLeft: (state: ListState) => void;
  readonly onChoose: (row: Row) => void;
  readonly onBack: () => void;
}

export function useList(host: SweepHost, swept: Swept | null, capture: Capture | null): List {
  const [left, setLeft] = useState<{ readonly run: string; readonly state: ListState }>({ run: '', state: NEW_LIST });
  /** The capture from which the buyer went back to the list. */
  const [back, setBack] = useState<number | null>(null);
  const run = swept?.run ?? '';
  const newer = swept !== null && (capture === null || swept.at > capture.at || back === capture.at);
  return {
    isShown: newer,
    left: left.run === run ? left.state : NEW_LIST,
    onLeft: (state) => setLeft({ run, state }),
    onChoose: ({ id, listing }) => {
      if (!swept) return;
      host.show(swept, id);
      host.open(swept, listing);
    },
    onBack: () => {
      setBack(capture?.at ?? null);
      if (swept) host.show(swept, null);
    },
  };
}

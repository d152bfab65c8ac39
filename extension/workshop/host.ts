/** What the Workshop needs from the browser. The platform's side is in browser-host.ts; tests bring their own. */
import type { evaluate } from '../../src/evaluate.ts';
import type { turnsOf } from '../../src/sensitivity.ts';
import type { Strings } from '../../src/words/say.ts';
import type { OpenStore } from '../store/index.ts';
import type { Solver } from './buy-list/solver.ts';

export interface Core {
  readonly evaluate: typeof evaluate;
  readonly turnsOf: typeof turnsOf;
}

export interface WorkshopHost {
  readonly strings: Strings;
  readonly locale: string;
  /** Milliseconds since 1970: the core has no clock. */
  readonly now: () => number;
  /** Opened once and shared by the screens. */
  readonly store: () => Promise<OpenStore>;
  /** The core, fetched when a screen first needs it. */
  readonly core: () => Promise<Core>;
  /** A solver of its own, started at its first program. */
  readonly solver: () => Promise<Solver>;
  /** Hands a file to the buyer. */
  readonly download: (name: string, type: string, content: string) => void;
}

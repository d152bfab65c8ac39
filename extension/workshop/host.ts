/** What the Workshop needs from the browser. The platform's side is in browser-host.ts; tests bring their own. */
import type { Strings } from '../../src/words/say.ts';

export interface WorkshopHost {
  readonly strings: Strings;
  readonly locale: string;
  /** Milliseconds since 1970: the core has no clock. */
  readonly now: () => number;
}

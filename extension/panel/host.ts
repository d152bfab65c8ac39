/** What the panel needs from the browser. The platform's side is in browser-host.ts; tests bring their own. */
import type { PageListing, Span } from '../../src/listing/page-listing.ts';
import type { Settings } from '../../src/listing/settings.ts';
import type { Strings } from '../../src/words/say.ts';
import type { KeepHost } from './keep-host.ts';
import type { SweepHost } from './sweep/sweep-host.ts';

/** What became of the last request to read a page; `at` (ms) tells one take from the next. */
export type Capture =
  | { readonly state: 'ready'; readonly listing: PageListing; readonly cut: boolean; readonly at: number }
  | { readonly state: 'picking'; readonly at: number }
  | { readonly state: 'refused' | 'failed'; readonly reason: string; readonly at: number };

export interface Host {
  readonly strings: Strings;
  readonly locale: string;
  /** Calls back with what the tab beside the panel has handed over, now and on every change; null for nothing. Returns the stop. */
  readonly watchCapture: (seen: (capture: Capture | null) => void) => () => void;
  /** Marks spans of `listing.text` in the page. A page that is gone has nothing to mark. */
  readonly highlight: (spans: readonly Span[]) => void;
  readonly clearHighlight: () => void;
  /** Starts pick mode in the page; the outcome comes back through `watchCapture`. False when the page can't be reached. */
  readonly startPick: () => Promise<boolean>;
  /** Hands a pasted text over; it comes back through `watchCapture`. False when there is no room for it. */
  readonly paste: (text: string) => Promise<boolean>;
  /** What was said about an ad before, as stored and unchecked; null for nothing. */
  readonly loadEdits: (ad: string, listing: PageListing) => Promise<unknown>;
  readonly saveEdits: (ad: string, edits: unknown) => Promise<void>;
  readonly loadSettings: () => Promise<Settings>;
  readonly saveSettings: (settings: Settings) => Promise<void>;
  /** Calls back with the settings whenever another page, such as the Workshop, has changed them. Returns the stop. */
  readonly watchSettings: (seen: (settings: Settings) => void) => () => void;
  readonly sweep: SweepHost;
  readonly keeping: KeepHost;
}

/** What the list of a page's ads needs from the browser. */
import type { PageListing, Span } from '../../../src/listing/page-listing.ts';
import type { StoreCode } from '../../store/index.ts';
import type { KeepHost } from '../keep-host.ts';
import type { AdToKeep } from './to-keep.ts';

export interface SweptAd {
  readonly id: string;
  readonly listing: PageListing;
}

export interface Tag {
  readonly id: string;
  readonly words: string;
  readonly tone: 'plain' | 'faint';
}

/** A sweep of the tab beside the panel, and all ads read so far. */
export interface Swept {
  readonly tabId: number;
  readonly run: string;
  readonly state: 'reading' | 'watching' | 'nothing' | 'ended' | 'full';
  readonly ads: readonly SweptAd[];
  /** When it began, in milliseconds. */
  readonly at: number;
}

/** What became of ads that were to be kept. */
export interface KeptMany {
  /** How many of them are among the finds now. */
  readonly kept: number;
  /** Places, from 0, of those that are not. */
  readonly left: readonly number[];
  /** Why not, by the last that failed; null when all are kept. */
  readonly code: StoreCode | null;
}

export interface SweepHost {
  /** Finds that an ad is again, the likeliest first. Null where finds are not kept. */
  readonly again: KeepHost['again'] | null;
  /** Calls back with the sweep of the tab in front, now and on every change; null for none. Returns the stop. */
  readonly watch: (seen: (swept: Swept | null) => void) => () => void;
  /** Starts reading every ad of the page. False when the page can't be reached. */
  readonly start: () => Promise<boolean>;
  readonly stop: (swept: Swept) => void;
  /** Forgets the list. */
  readonly drop: (swept: Swept) => void;
  /** What the labels beside the ads say. */
  readonly tag: (swept: Swept, tags: readonly Tag[]) => void;
  /** Brings an ad of the page into view; null takes the frame about it away. */
  readonly show: (swept: Swept, id: string | null) => void;
  /** Marks spans of an ad's `listing.text` in the page; none takes the marks away. */
  readonly mark: (swept: Swept, id: string, spans: readonly Span[]) => void;
  /** Makes it the ad that the panel shows: it comes back as a capture, or as one that failed where there is no room for it. */
  readonly open: (swept: Swept, listing: PageListing) => void;
  /** Keeps ads among the finds; null among them stands for one that could not be judged. Null where finds are not kept: then nothing can be ticked. */
  readonly keepMany: ((ads: readonly (AdToKeep | null)[]) => Promise<KeptMany>) | null;
}

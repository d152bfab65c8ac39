/** What the panel follows of a sweep: all ads so far, checked, of the tab in front. */
import * as z from 'zod/mini';
import { pageListingSchema } from '../../src/listing/page-listing.ts';
import { api } from './browser.ts';
import type { SweepState, SweptAd } from './messages.ts';
import { batchKey, headKey, onSweepChange } from './sweep-state.ts';
import { activeTabId } from './watch-capture.ts';

const headSchema = z.object({
  run: z.string(),
  state: z.enum(['reading', 'watching', 'nothing', 'ended', 'full']),
  batches: z.int().check(z.nonnegative(), z.lte(10_000)),
  at: z.number(),
});
const batchSchema = z.object({ run: z.string(), ads: z.array(z.unknown()) });
const adSchema = z.object({ id: z.string(), listing: pageListingSchema });

export interface Swept {
  readonly tabId: number;
  readonly run: string;
  readonly state: SweepState;
  /** In the order in which they were read. What does not pass its check is left out. */
  readonly ads: readonly SweptAd[];
  readonly at: number;
}

export type SweepListener = (swept: Swept | null) => void;

interface Loaded {
  readonly run: string;
  readonly batches: number;
  readonly ads: readonly SweptAd[];
}

/** Adds the batches that are not loaded yet. */
async function loadMore(tabId: number, run: string, batches: number, known: Loaded | null): Promise<Loaded> {
  const from = known?.run === run ? known.batches : 0;
  const ads = known?.run === run ? [...known.ads] : [];
  for (let batch = from; batch < batches; batch += 1) {
    const key = batchKey(tabId, batch);
    const parsed = batchSchema.safeParse((await api().storage.session.get(key))[key]);
    if (!parsed.success || parsed.data.run !== run) continue;
    for (const one of parsed.data.ads) {
      const ad = adSchema.safeParse(one);
      if (ad.success) ads.push(ad.data);
    }
  }
  return { run, batches, ads };
}

/** Calls back at once and at every change (more ads, other tab in front). Gives a function that stops it. */
export function watchSweep(listener: SweepListener): () => void {
  let watched: number | null = null;
  let loaded: Loaded | null = null;
  let round = 0;
  const refresh = async (): Promise<void> => {
    const mine = ++round;
    const tabId = await activeTabId();
    const key = tabId === null ? null : headKey(tabId);
    const head = key === null ? null : headSchema.safeParse((await api().storage.session.get(key))[key]);
    const known = tabId === watched ? loaded : null;
    const more = tabId !== null && head?.success ? await loadMore(tabId, head.data.run, head.data.batches, known) : null;
    if (mine !== round) return; // A later refresh has overtaken this one.
    watched = tabId;
    loaded = more;
    listener(tabId !== null && head?.success && more ? { tabId, ...head.data, ads: more.ads } : null);
  };
  const again = (): void => void refresh();
  const stopStorage = onSweepChange((tabId) => {
    if (watched === null || tabId === watched) again();
  });
  api().tabs.onActivated.addListener(again);
  again();
  return () => {
    round = -1;
    stopStorage();
    api().tabs.onActivated.removeListener(again);
  };
}

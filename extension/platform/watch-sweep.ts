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
  /** By number. What is not there yet may still come: the last word of a sweep overtakes a report that has to be sent again. */
  readonly batches: ReadonlyMap<number, readonly SweptAd[]>;
}

/** The ads of a batch; null when it is not there. */
async function loadBatch(tabId: number, run: string, batch: number): Promise<readonly SweptAd[] | null> {
  const key = batchKey(tabId, batch);
  const parsed = batchSchema.safeParse((await api().storage.session.get(key))[key]);
  if (!parsed.success || parsed.data.run !== run) return null;
  return parsed.data.ads.flatMap((one) => adSchema.safeParse(one).data ?? []);
}

/** Adds the batches that are not loaded yet. */
async function loadMore(tabId: number, run: string, count: number, known: Loaded | null): Promise<Loaded> {
  const batches = new Map<number, readonly SweptAd[]>();
  for (let batch = 0; batch < count; batch += 1) {
    const loaded = (known?.run === run ? known.batches.get(batch) : undefined) ?? (await loadBatch(tabId, run, batch));
    if (loaded) batches.set(batch, loaded);
  }
  return { run, batches };
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
    listener(tabId !== null && head?.success && more ? { tabId, ...head.data, ads: [...more.batches.values()].flat() } : null);
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

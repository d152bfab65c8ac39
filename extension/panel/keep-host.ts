/** Keeping ads among the finds, as the panel's parts see it; the store comes when it is first asked for. */
import type { PageListing } from '../../src/listing/page-listing.ts';
import type { AdToKeep, CapturedPrice, Find, MetAgain, Outcome, Store } from '../store/index.ts';

export type NewPrice = Omit<CapturedPrice, 'id' | 'at' | 'changedAt'>;

export interface KeepHost {
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly keep: (ad: AdToKeep) => Promise<Outcome<Find>>;
  /** The find with the ad as it is now. `met` says that it was met on a page again, not only edited. */
  readonly refresh: (id: string, ad: AdToKeep, met: boolean) => Promise<Outcome<Find>>;
  /** Finds that this ad is again, the likeliest first. */
  readonly again: (listing: PageListing) => Promise<Outcome<readonly MetAgain[]>>;
  /** Keeps a shop's price of new goods for the table of rates. */
  readonly keepPrice: (price: NewPrice) => Promise<Outcome<CapturedPrice>>;
  /** Opens the Workshop at an address of it, such as "finds/abc". */
  readonly openWorkshop: (address: string) => void;
}

const opened = async () => (await import('../store/page-store.ts')).pageStore();

async function withStore<T>(work: (store: Store) => Promise<Outcome<T>>): Promise<Outcome<T>> {
  const store = await opened();
  return store.ok ? work(store.value) : store;
}

let learning: ReturnType<typeof setTimeout> | undefined;
/** So long after the last ad that was kept, in ms: many kept at once are learned from once. */
const PAUSE = 300;

/** What was written changes the going rate, which is learned anew. */
async function andLearn<T>(work: (store: Store) => Promise<Outcome<T>>): Promise<Outcome<T>> {
  const store = await opened();
  if (!store.ok) return store;
  const written = await work(store.value);
  clearTimeout(learning);
  if (written.ok) {
    learning = setTimeout(async () => {
      const { learn } = await import('../store/learning.ts');
      await learn(store.value, Date.now());
    }, PAUSE);
  }
  return written;
}

export const keepHost = (openWorkshop: KeepHost['openWorkshop']): KeepHost => ({
  now: () => Date.now(),
  keep: (ad) => andLearn((store) => store.finds.keep(ad, Date.now())),
  refresh: (id, ad, met) => andLearn((store) => store.finds.refresh(id, ad, Date.now(), met)),
  again: (listing) => withStore((store) => store.finds.again(listing)),
  keepPrice: (price) =>
    withStore((store) => store.rates.captured.put({ ...price, id: crypto.randomUUID(), at: Date.now() }, Date.now())),
  openWorkshop,
});

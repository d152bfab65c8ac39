/** Finds that were kept before anybody asked what they offer are judged for it once, a few at a time, so that the page stays at hand. */
import { useEffect, useState } from 'preact/hooks';
import { offersOf } from '../../../src/kit/fills.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { judgedAsKept } from '../../panel/judged-as-kept.ts';
import type { Offer, Store } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useStore } from '../use-store.tsx';

const AT_ONCE = 40;
const breathe = (): Promise<unknown> => new Promise((done) => setTimeout(done, 0));

/** Judges until none is left or `stopped`. What can't be opened is passed over. */
async function completeOffers(store: Store, host: WorkshopHost, stopped: () => boolean): Promise<void> {
  const without = await store.finds.withoutOffers();
  if (!without.ok || without.value.length === 0) return;
  const [{ evaluate }, stored] = await Promise.all([host.core(), store.settings.load(host.now())]);
  const settings = stored.ok ? stored.value.settings : DEFAULT_SETTINGS;
  for (let from = 0; from < without.value.length && !stopped(); from += AT_ONCE) {
    const offers = new Map<string, readonly Offer[]>();
    for (const id of without.value.slice(from, from + AT_ONCE)) {
      const kept = await store.finds.get(id);
      if (kept.ok) offers.set(id, offersOf(judgedAsKept(evaluate, kept.value, settings).evaluation));
      await breathe();
    }
    await store.finds.putOffers(offers);
  }
}

/** Completes while `wanted`; true while it is at it. */
export function useCompleteOffers(host: WorkshopHost, wanted: boolean): boolean {
  const store = useStore();
  const [working, setWorking] = useState(false);
  useEffect(() => {
    if (!wanted) return;
    let stopped = false;
    setWorking(true);
    completeOffers(store, host, () => stopped)
      .catch((error: unknown) => console.error('Ironsift:', error))
      .then(() => stopped || setWorking(false));
    return () => {
      stopped = true;
    };
  }, [store, wanted]);
  return working;
}

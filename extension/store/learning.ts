/** The going rate follows the finds: learned anew whenever finds or settings change, and kept among the settings. */
import { pricedFinds } from '../../src/finds/priced.ts';
import type { Settings } from '../../src/listing/settings.ts';
import { learnRates } from '../../src/price/going-rate.ts';
import type { Find, ListQuery, Outcome, Stop, Store } from './index.ts';

export const EVERY_FIND: ListQuery = { order: 'kept', descending: false, from: 0, count: Number.MAX_SAFE_INTEGER };

/** "2026-05" */
const monthOf = (now: number): string => new Date(now).toISOString().slice(0, 7);

export const learnedFrom = (finds: readonly Find[], settings: Settings, now: number): Settings['learned'] =>
  learnRates(pricedFinds(finds, settings, now), settings, monthOf(now));

/** Learns from the finds as they are now. Gives the settings with what was learned. */
export async function learn(store: Store, now: number): Promise<Outcome<Settings>> {
  const all = await store.finds.list(EVERY_FIND);
  return all.ok ? store.settings.learn((settings) => learnedFrom(all.value.rows, settings, now), now) : all;
}

/** So long after the last change, in ms: many finds kept at once are learned from once. */
const PAUSE = 300;

/** Learns now and after every change of finds or settings, by whichever page. */
export function keepLearning(store: Store, clock: () => number): Stop {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = () => {
    clearTimeout(timer);
    // What can't be written now is learned at the next change: nothing is lost.
    timer = setTimeout(() => void learn(store, clock()), PAUSE);
  };
  const stops = [store.finds.watchList({ ...EVERY_FIND, count: 0 }, soon), store.settings.watch(soon)];
  return () => {
    clearTimeout(timer);
    for (const stop of stops) stop();
  };
}

/** What the screen shows, followed live, and what can be done about it. */
import { useMemo, useState } from 'preact/hooks';
import { type PriceOfFind, pricedFinds } from '../../../src/finds/priced.ts';
import type { CategoryRate, RateCategory, Settings } from '../../../src/listing/settings.ts';
import { today } from '../../components/today.ts';
import type { CapturedPrice, FindPage, Outcome, StoreCode } from '../../store/index.ts';
import { EVERY_FIND, learnedFrom } from '../../store/learning.ts';
import type { WorkshopHost } from '../host.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';

export type Column = keyof CategoryRate;

export interface Rates {
  readonly settings: Settings;
  /** Every price that the finds tell, in the buyer's currency. */
  readonly prices: readonly PriceOfFind[];
  readonly learned: Settings['learned'];
  readonly captured: readonly CapturedPrice[];
  /** The day that a cell gets which is edited now: "2026-05-31". */
  readonly date: string;
  readonly failed: StoreCode | null;
  readonly change: (step: (settings: Settings) => Partial<Settings>) => void;
  readonly putCaptured: (price: CapturedPrice) => void;
  readonly removeCaptured: (id: string) => void;
}

export const pathOf = (category: RateCategory, column: Column) => `rates.${category}.${column}` as const;

/** Null until the store has answered. */
export function useRates(host: WorkshopHost): Rates | null {
  const store = useStore();
  const [failed, setFailed] = useState<StoreCode | null>(null);
  const settings = useLive<Settings>(store.settings.watch, [store]);
  const finds = useLive<FindPage>((seen) => store.finds.watchList(EVERY_FIND, seen), [store]);
  const captured = useLive<readonly CapturedPrice[]>(store.rates.captured.watch, [store]);
  const date = today(new Date(host.now()));
  const taught = useMemo(() => {
    if (!settings?.ok || !finds?.ok) return { prices: [], learned: {} };
    const now = host.now();
    const { rows } = finds.value;
    return { prices: pricedFinds(rows, settings.value, now), learned: learnedFrom(rows, settings.value, now) };
  }, [settings, finds, date]);
  if (!settings || !finds || !captured) return null;
  const unread = [settings, finds, captured].flatMap((one) => (one.ok ? [] : [one.code]))[0];
  const tell = (outcome: Outcome<unknown>) => setFailed(outcome.ok ? null : outcome.code);
  if (!settings.ok) return null;
  return {
    settings: settings.value,
    ...taught,
    captured: captured.ok ? captured.value : [],
    date,
    failed: failed ?? unread ?? null,
    change: (step) => void store.settings.change(step, host.now()).then(tell),
    putCaptured: (price) => void store.rates.captured.put(price, host.now()).then(tell),
    removeCaptured: (id) => void store.rates.captured.remove(id, host.now()).then(tell),
  };
}

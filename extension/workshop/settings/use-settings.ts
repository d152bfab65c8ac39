/** The settings, followed live, and changing them without undoing what another page changed. */
import { useState } from 'preact/hooks';
import type { Settings } from '../../../src/listing/settings.ts';
import type { StoreCode } from '../../store/index.ts';
import type { WorkshopHost } from '../host.ts';
import { useLive } from '../use-live.ts';
import { useStore } from '../use-store.tsx';

export interface Shown {
  readonly settings: Settings;
  readonly locale: string;
  readonly change: (step: Partial<Settings> | ((settings: Settings) => Partial<Settings>)) => void;
  readonly failed: StoreCode | null;
}

/** Null until they are there. */
export function useSettings(host: WorkshopHost): Shown | null {
  const store = useStore();
  const [failed, setFailed] = useState<StoreCode | null>(null);
  const settings = useLive<Settings>(store.settings.watch, [store]);
  if (!settings?.ok) return null;
  return {
    settings: settings.value,
    locale: host.locale,
    failed,
    change: (step) =>
      void store.settings
        .change((now) => (typeof step === 'function' ? step(now) : step), host.now())
        .then((saved) => setFailed(saved.ok ? null : saved.code)),
  };
}

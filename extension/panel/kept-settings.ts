/** The buyer's settings from the store; where the browser opens none, from its plain storage. */
import type { Settings } from '../../src/listing/settings.ts';
import * as plain from '../platform/settings.ts';
import { StoreFailure } from '../store/failure.ts';

const opened = async () => (await import('../store/page-store.ts')).pageStore();

/** As they were when this page last read or wrote them: only what it changed since is written, so that no other page's change is undone. */
let known: Partial<Settings> = {};

export async function loadSettings(): Promise<Settings> {
  const store = await opened();
  const loaded = store.ok ? await store.value.settings.load(Date.now()) : store;
  const settings = loaded.ok ? loaded.value.settings : (await plain.loadSettings()).settings;
  known = settings;
  return settings;
}

/** Rejects when they could not be kept, as a rule with the store's own failure. */
export async function saveSettings(settings: Settings): Promise<void> {
  const changed = Object.fromEntries(
    Object.entries(settings).filter(([name, value]) => known[name as keyof Settings] !== value),
  ) as Partial<Settings>;
  const store = await opened();
  if (!store.ok) return plain.saveSettings(settings);
  const saved = await store.value.settings.change(() => changed, Date.now());
  if (!saved.ok) throw new StoreFailure(saved.code);
  known = settings;
}

/** Follows what is stored, by whichever page; without a store nothing comes. */
export function watchSettings(seen: (settings: Settings) => void): () => void {
  let stop: (() => void) | null = null;
  let wanted = true;
  void opened().then((store) => {
    if (!wanted || !store.ok) return;
    stop = store.value.settings.watch((outcome) => {
      if (!outcome.ok) return;
      known = outcome.value;
      seen(outcome.value);
    });
  });
  return () => {
    wanted = false;
    stop?.();
  };
}

/**
 * The ads of a results page in session storage: the hand-over from the background to the panel. A head says how far the reading is;
 * each report's ads lie under a key of their own, so that a long list is not written anew for every few ads. The panel checks what it
 * takes out (watch-sweep.ts).
 */
import { api } from './browser.ts';
import type { SweepReport } from './messages.ts';

const PREFIX = 'sweep:';

/** What is stored under the head's key. */
export interface SweepHead extends Omit<SweepReport, 'ads' | 'part' | 'state'> {
  /** `closed`: by the buyer; the panel takes it for none. */
  readonly state: SweepReport['state'] | 'closed';
  /** Reports with ads so far. */
  readonly batches: number;
  /** When the sweep began, in milliseconds since 1970. */
  readonly at: number;
}

export const headKey = (tabId: number): string => `${PREFIX}${tabId}`;
export const batchKey = (tabId: number, batch: number): string => `${PREFIX}${tabId}:${batch}`;

const headOf = async (tabId: number): Promise<SweepHead | null> => {
  const stored = await api().storage.session.get(headKey(tabId));
  return (stored[headKey(tabId)] as SweepHead | undefined) ?? null;
};

/** Removes the sweeps of some tabs. */
const remove = async (doomed: (key: string) => boolean): Promise<void> => {
  const all = await api().storage.session.get(null);
  await api().storage.session.remove(Object.keys(all).filter((key) => key.startsWith(PREFIX) && doomed(key)));
};

const isOf = (tabId: number, key: string): boolean => key === headKey(tabId) || key.startsWith(`${headKey(tabId)}:`);

export const dropSweep = (tabId: number): Promise<void> => remove((key) => isOf(tabId, key));

/** Takes a list away that the buyer closed. Its run stays noted, for reports of it that are under way would bring it back. */
export async function closeList(tabId: number, run: string): Promise<void> {
  await dropSweep(tabId);
  await api().storage.session.set({ [headKey(tabId)]: { run, state: 'closed' } });
  await dropIfGone(tabId);
}

/** A tab may be closed while its last report is being put away: nobody will ask for it any more. */
export async function dropIfGone(tabId: number): Promise<void> {
  await api()
    .tabs.get(tabId)
    .catch(() => dropSweep(tabId));
}

/** Notes that a sweep is over when its page can't say so itself any more. */
export async function endSweep(tabId: number): Promise<void> {
  const known = await headOf(tabId);
  if (known?.state !== 'reading' && known?.state !== 'watching') return;
  await api().storage.session.set({ [headKey(tabId)]: { ...known, state: 'ended' } });
  // The background may have dropped it meanwhile.
  await dropIfGone(tabId);
}

const isOver = (state: SweepHead['state']): boolean => state !== 'reading' && state !== 'watching';

/** Adds a report. False when there is no room (10 MB) even without the sweeps of other tabs; the head then says so. */
export async function storeSweep(tabId: number, { ads, part, run, state, spent }: SweepReport): Promise<boolean> {
  const known = await headOf(tabId);
  const isNew = known?.run !== run;
  if (!isNew && known?.state === 'closed') return true;
  // The last word of a sweep that was dropped, or that another has taken the place of: every sweep begins with `reading`.
  if (isNew && state !== 'reading') return true;
  if (isNew) await dropSweep(tabId);
  const batches = isNew ? 0 : (known?.batches ?? 0);
  // The last word of a sweep may overtake a report that had to be sent again.
  const head: SweepHead = {
    run,
    state: !isNew && known && isOver(known.state) ? known.state : state,
    spent,
    batches,
    at: isNew ? Date.now() : (known?.at ?? Date.now()),
  };
  if (ads.length === 0) {
    await api().storage.session.set({ [headKey(tabId)]: head });
    return true;
  }
  const entry = {
    [headKey(tabId)]: { ...head, batches: Math.max(batches, part + 1) },
    [batchKey(tabId, part)]: { run, ads },
  };
  try {
    await api().storage.session.set(entry);
  } catch {
    try {
      await remove((key) => !isOf(tabId, key));
      await api().storage.session.set(entry);
    } catch {
      await api().storage.session.set({ [headKey(tabId)]: { ...head, state: 'full' } });
      return false;
    }
  }
  return true;
}

/** Calls back whenever the sweep of a tab goes on. Gives a function that stops it. */
export function onSweepChange(listener: (tabId: number) => void): () => void {
  const changed = (changes: Record<string, unknown>, area: string): void => {
    if (area !== 'session') return;
    for (const key of Object.keys(changes)) if (/^sweep:\d+$/.test(key)) listener(Number(key.slice(PREFIX.length)));
  };
  api().storage.onChanged.addListener(changed);
  return () => api().storage.onChanged.removeListener(changed);
}

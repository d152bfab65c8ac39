/** What was captured in a tab, kept in session storage: the hand-over from the background to the panel. */
import type { Storage } from 'webextension-polyfill';
import * as z from 'zod/mini';
import { pageListingSchema } from '../../src/listing/page-listing.ts';
import { api } from './browser.ts';

const at = z.number();
const ready = z.object({
  state: z.literal('ready'),
  listing: pageListingSchema,
  /** The text was longer than the limit and its end is missing. */
  cut: z.boolean(),
  /** Milliseconds since 1970. */
  at,
});

const captureStateSchema = z.union([
  ready,
  /** `before` is what was there when picking began: leaving brings it back. */
  z.object({ state: z.literal('picking'), before: z.nullable(ready), at }),
  /** Scripts may not run on this page: offer a paste box. */
  z.object({ state: z.literal('refused'), reason: z.enum(['browser-page', 'store', 'pdf', 'no-access', 'no-tab']), at }),
  z.object({ state: z.literal('failed'), reason: z.enum(['empty', 'disturbed', 'bad-input', 'full', 'unexpected']), at }),
]);

export type CaptureState = z.infer<typeof captureStateSchema>;
export type Ready = z.infer<typeof ready>;

const PREFIX = 'capture:';
const keyOf = (tabId: number): string => `${PREFIX}${tabId}`;

function checked(stored: unknown): CaptureState | null {
  const parsed = captureStateSchema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}

/** Null when nothing was captured in this tab, or what is stored can't be read. */
export async function loadCapture(tabId: number): Promise<CaptureState | null> {
  const stored = await api().storage.session.get(keyOf(tabId));
  return checked(stored[keyOf(tabId)]);
}

export async function dropCapture(tabId: number): Promise<void> {
  await api().storage.session.remove(keyOf(tabId));
}

const dropOthers = async (tabId: number): Promise<void> => {
  const all = await api().storage.session.get(null);
  await api().storage.session.remove(Object.keys(all).filter((key) => key.startsWith(PREFIX) && key !== keyOf(tabId)));
};

/** Stores it; when session storage (10 MB) is full, other tabs' captures make room. Answers whether it is stored. */
export async function storeCapture(tabId: number, state: CaptureState): Promise<boolean> {
  const entry = { [keyOf(tabId)]: state };
  try {
    await api().storage.session.set(entry);
  } catch {
    try {
      await dropOthers(tabId);
      await api().storage.session.set(entry);
    } catch {
      return false;
    }
  }
  return true;
}

/** Calls back whenever a tab's capture changes, with a function that gives what it has become: what is of no interest is not checked. Gives a function that stops it. */
export function onCaptureChange(listener: (tabId: number, read: () => CaptureState | null) => void): () => void {
  const changed = (changes: Record<string, Storage.StorageChange>, area: string): void => {
    if (area !== 'session') return;
    for (const [key, { newValue }] of Object.entries(changes)) {
      if (key.startsWith(PREFIX)) listener(Number(key.slice(PREFIX.length)), () => checked(newValue));
    }
  };
  api().storage.onChanged.addListener(changed);
  return () => api().storage.onChanged.removeListener(changed);
}

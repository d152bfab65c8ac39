/** What the buyer said about an ad, kept for as long as the browser runs: closing the panel or changing tabs loses nothing. */
import { api } from './browser.ts';

const keyOf = (ad: string): string => `edits:${ad}`;

/** As stored and unchecked; null when there is nothing. */
export async function loadEdits(ad: string): Promise<unknown> {
  const stored = await api().storage.session.get(keyOf(ad));
  return stored[keyOf(ad)] ?? null;
}

/** Rejects when session storage is full. */
export const saveEdits = (ad: string, edits: unknown): Promise<void> => api().storage.session.set({ [keyOf(ad)]: edits });

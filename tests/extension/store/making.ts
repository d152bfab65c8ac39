/** Ads to keep, and a store to keep them in. */
import { expect } from 'vitest';
import {
  type AdToKeep,
  type OpenOptions,
  type Outcome,
  openStore,
  type Seen,
  type Stop,
  type Store,
} from '../../../extension/store/index.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';

export const NO_EDITS = { changes: [], distance: null };

export function ad(text: string, address: string | null = null, title = ''): AdToKeep {
  const listing = { ...listingFromText(text), title, address };
  return { listing, edits: NO_EDITS, evaluation: evaluate(listing, DEFAULT_SETTINGS) };
}

export const PLATES = '4 x 45 lb olympic plates, cast iron, $150 for all, pick up in Elmwick';

/** Databases outlive this module where files share a worker. */
const run = Math.random().toString(36).slice(2);
let made = 0;

/** Anything that JSON or a database gave, to be spoiled. */
// biome-ignore lint/suspicious/noExplicitAny: spoiled records have no type
export type Loose = Record<string, any>;

export const freshName = (): string => `test-${run}-${++made}`;

/** The value of what must have worked. */
export function value<T>(outcome: Outcome<T> | { readonly ok: false; readonly code: string }): T {
  if (!outcome.ok) throw new Error(`failed: ${outcome.code}`);
  return outcome.value;
}

export async function freshStore(options: OpenOptions = {}): Promise<Store> {
  return value(await openStore({ name: freshName(), ...options }));
}

export const failed = (code: string): unknown => expect.objectContaining({ ok: false, code });

/** Collects what a live query shows; `next` waits for one that fits. */
export function gather<T>(watch: (seen: Seen<T>) => Stop) {
  const all: T[] = [];
  const stop = watch((outcome) => {
    if (outcome.ok) all.push(outcome.value);
  });
  const next = async (fits: (shown: T) => boolean): Promise<T> => {
    for (let tries = 0; tries < 200; tries += 1) {
      const found = all.findLast(fits);
      if (found !== undefined) return found;
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    throw new Error(`never shown; last: ${JSON.stringify(all.at(-1))}`);
  };
  return { all, stop, next };
}

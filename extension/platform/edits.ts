/** What the buyer said about an ad, kept while the browser runs: closing the panel or changing tabs loses nothing. With a find it is kept for good. */
import { api } from './browser.ts';

const KEY = 'edits';
/** The latest ads that are remembered: well under a megabyte. */
const MOST = 300;

interface Remembered {
  readonly ad: string;
  readonly edits: unknown;
}

/** Latest last. Anything unreadable counts as nothing remembered. */
async function remembered(): Promise<Remembered[]> {
  const stored: unknown = (await api().storage.session.get(KEY))[KEY];
  return Array.isArray(stored)
    ? stored.filter((one): one is Remembered => typeof one === 'object' && one !== null && typeof one.ad === 'string')
    : [];
}

/** As stored and unchecked; null when there is nothing. */
export async function loadEdits(ad: string): Promise<unknown> {
  return (await remembered()).find((one) => one.ad === ad)?.edits ?? null;
}

let last: Promise<void> = Promise.resolve();

/** Saves one after the other, so that none overwrites another. Rejects when storage is full. */
export function saveEdits(ad: string, edits: unknown): Promise<void> {
  const save = async (): Promise<void> => {
    const others = (await remembered()).filter((one) => one.ad !== ad);
    await api().storage.session.set({ [KEY]: [...others, { ad, edits }].slice(-MOST) });
  };
  const saved = last.then(save);
  last = saved.catch(() => undefined);
  return saved;
}

/** The Workshop in jsdom over a store in memory. */
import 'fake-indexeddb/auto';
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { vi } from 'vitest';
import { type AdToKeep, type Find, openStore, type Store } from '../../../extension/store/index.ts';
import type { WorkshopHost } from '../../../extension/workshop/host.ts';
import { Workshop } from '../../../extension/workshop/workshop.tsx';
import { evaluate } from '../../../src/evaluate.ts';
import { turnsOf } from '../../../src/sensitivity.ts';
import { highsSolver } from '../../tools/buy-list/solvers.ts';
import { stringsOf } from '../panel/fixtures/strings.ts';
import { freshName, value } from '../store/making.ts';

export const NOW = Date.UTC(2026, 4, 1);

/** Keeps the ads, a minute apart, and opens the Workshop at an address, with a host that is otherwise as in `over`. */
export async function openWorkshop(
  ads: readonly AdToKeep[],
  hash = '',
  over: Partial<WorkshopHost> = {},
): Promise<{ store: Store; finds: Find[]; host: WorkshopHost }> {
  const opened = await openStore({ name: freshName() });
  const store = value(opened);
  const finds: Find[] = [];
  for (const [index, ad] of ads.entries()) finds.push(value(await store.finds.keep(ad, NOW + index * 60_000)));
  const host: WorkshopHost = {
    strings: stringsOf('en'),
    locale: 'en-US',
    now: () => NOW + 3 * 86_400_000,
    store: async () => opened,
    core: async () => ({ evaluate, turnsOf }),
    solver: async () => ({ solve: await highsSolver(), stop: () => undefined }),
    download: vi.fn(),
    ...over,
  };
  location.hash = hash;
  document.body.replaceChildren(document.createElement('div'));
  await act(async () => render(<Workshop host={host} />, document.body.firstElementChild as Element));
  return { store, finds, host };
}

/** So long a busy machine may take, in ms. */
const PATIENCE = 20_000;

/** Waits until something is there, while what was started in the background goes on. */
export const shown = async <T extends Element = HTMLElement>(
  selector: string,
  fits: (found: T) => boolean = () => true,
): Promise<T> => {
  for (const end = performance.now() + PATIENCE; performance.now() < end; ) {
    const found = [...document.querySelectorAll<T>(selector)].find(fits);
    if (found) return found;
    await act(() => new Promise((resolve) => setTimeout(resolve, 10)));
  }
  throw new Error(`never shown: ${selector}\n${document.body.textContent?.slice(0, 2000)}`);
};

export const says = (words: string | RegExp) => (element: Element) =>
  typeof words === 'string' ? (element.textContent ?? '').includes(words) : words.test(element.textContent ?? '');

export const go = (hash: string) =>
  act(async () => {
    location.hash = hash;
    dispatchEvent(new Event('hashchange'));
  });

export const press = (element: Element, key: string) =>
  act(async () => void element.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })));

export const clickOn = (element: HTMLElement) => act(async () => element.click());

export const setTo = (element: HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement, text: string) =>
  act(async () => {
    element.value = text;
    element.dispatchEvent(new Event(element instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }));
  });

/** What goes on behind a screen does not keep it waiting: the rows come first, then the finds are learned from and the kit followed. */
import { expect, it, vi } from 'vitest';
import { ad, PLATES } from '../store/making.ts';
import { go, openWorkshop, shown } from './open.tsx';

it('reads no find but those that are shown before they are, and learns, follows and deletes after', async () => {
  const { store } = await openWorkshop([ad(PLATES)], '#weigh');
  const purge = vi.spyOn(store.finds, 'purge');
  const lists = vi.spyOn(store.finds, 'watchList');
  // Another screen: what is begun behind it begins anew.
  await go('#finds');
  await shown('[data-find]');
  expect(purge).not.toHaveBeenCalled();
  expect(lists.mock.calls.map(([{ count }]) => count)).not.toContain(0);
  await vi.waitFor(() => expect(lists.mock.calls.map(([{ count }]) => count)).toContain(0), { timeout: 3000 });
  expect(purge).toHaveBeenCalledTimes(1);
});

it('a screen that is left before begins nothing', async () => {
  const { store } = await openWorkshop([ad(PLATES)], '#weigh');
  const purge = vi.spyOn(store.finds, 'purge');
  await go('#finds');
  await shown('[data-find]');
  await go('#weigh');
  await shown('[data-screen=weigh]');
  await vi.waitFor(() => expect(purge).toHaveBeenCalled(), { timeout: 3000 });
  await new Promise((resolve) => setTimeout(resolve, 700));
  expect(purge).toHaveBeenCalledTimes(1);
});

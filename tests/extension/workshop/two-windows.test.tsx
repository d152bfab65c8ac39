/** One find in two windows: each follows the other, and what was said in one is not taken back by the other's next word. */
import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import type { Store } from '../../../extension/store/index.ts';
import { ad, PLATES, value } from '../store/making.ts';
import { NOW, openWorkshop, setTo, shown } from './open.tsx';

const priceOf = async (store: Store, id: string): Promise<string> =>
  JSON.stringify(value(await store.finds.get(id)).edits.changes);

it('takes over what another window said, and adds its own', async () => {
  const { store, finds } = await openWorkshop([ad(PLATES)]);
  const id = finds[0]?.id ?? '';
  location.hash = `#finds/${id}`;
  dispatchEvent(new Event('hashchange'));
  const amount = await shown<HTMLInputElement>('[data-path="asking.amount"]');
  const before = amount.value;
  // The other window: the same ad with another price.
  const other = { by: 'hand' as const, correction: { path: 'asking.amount', value: 77 } };
  const there = value(await store.finds.get(id));
  value(
    await store.finds.refresh(
      id,
      { listing: there.listing, edits: { changes: [other], distance: null }, evaluation: ad(PLATES).evaluation },
      NOW + 9 * 86_400_000,
    ),
  );
  const followed = await shown<HTMLInputElement>('[data-path="asking.amount"]', ({ value: now }) => now === '77');
  expect(before).not.toBe('77');
  expect(followed).toBe(amount);
  await setTo(await shown<HTMLInputElement>('[data-path="distance"]'), '12');
  for (let tries = 0; tries < 100 && !value(await store.finds.get(id)).edits.distance; tries += 1)
    await new Promise((resolve) => setTimeout(resolve, 10));
  expect(value(await store.finds.get(id)).edits.distance).toMatchObject({ value: 12 });
  expect(await priceOf(store, id)).toContain('77');
});

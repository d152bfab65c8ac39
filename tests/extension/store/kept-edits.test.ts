/** What was said about an ad, when it is met again: gone with the browser's session, but for finds. */
import 'fake-indexeddb/auto';
import { beforeEach, expect, it } from 'vitest';
import { adKey } from '../../../extension/panel/ad-key.ts';
import { keepHost } from '../../../extension/panel/keep-host.ts';
import { editsFor } from '../../../extension/panel/kept-edits.ts';
import type { StoredEdits } from '../../../extension/panel/stored-edits.ts';
import { saveEdits } from '../../../extension/platform/edits.ts';
import { pageStore } from '../../../extension/store/page-store.ts';
import { fakeBrowser } from '../capture-platform/fake-browser.ts';
import { ad, value } from './making.ts';

const host = keepHost(() => undefined);
const said = (count: number): StoredEdits => ({
  changes: [{ by: 'hand', correction: { path: 'plate-1.count', value: count } }],
  distance: { value: 12, unit: 'mi' },
});
const met = (words: string, address: string | null = null) => {
  const { listing } = ad(words, address);
  return editsFor(adKey(listing), listing);
};
/** Long enough to be known by its words alone. */
const PLATES =
  '4 x 45 lb olympic plates, cast iron, that stood dry in a garage for ten years without a spot of rust, $150 for all, pick up in Elmwick';
const HERE = 'https://quillbrook.example/ad/7';

let fake: ReturnType<typeof fakeBrowser>;

/** What the browser holds for a session is gone; what lies on the machine stays. */
async function restart(): Promise<void> {
  const onMachine = await fake.storage.local.get(null);
  fake = fakeBrowser();
  await fake.storage.local.set(onMachine);
}

beforeEach(async () => {
  fake = fakeBrowser();
  const { finds } = value(await pageStore());
  const { rows } = value(await finds.list({ order: 'kept', descending: false, from: 0, count: 9 }));
  value(
    await finds.removeMany(
      rows.map(({ id }) => id),
      1,
    ),
  );
});

it('is there while the browser runs, and gone when it is started again', async () => {
  const { listing } = ad(PLATES);
  await saveEdits(adKey(listing), said(6));
  expect(await met(PLATES)).toEqual(said(6));
  await restart();
  expect(await met(PLATES)).toBeNull();
});

it('is there with a find for as long as it is kept', async () => {
  const { id } = value(await host.keep({ ...ad(PLATES, HERE), edits: said(6) }));
  await restart();
  expect(await met(PLATES, HERE)).toEqual(said(6));
  expect(await met(PLATES, 'https://quillbrook.example/elsewhere')).toEqual(said(6));
  value(await value(await pageStore()).finds.remove(id, 2));
  expect(await met(PLATES, HERE)).toBeNull();
});

it('is the latest word where both are there', async () => {
  value(await host.keep({ ...ad(PLATES, HERE), edits: said(6) }));
  await saveEdits(adKey(ad(PLATES).listing), said(8));
  expect(await met(PLATES, HERE)).toEqual(said(8));
});

it('of other words at the same address is not taken: their lines may be others', async () => {
  value(await host.keep({ ...ad(PLATES, HERE), edits: said(6) }));
  expect(await met(`Bench, $40. ${PLATES}`, HERE)).toBeNull();
});

it('is nothing where nothing was said of the find', async () => {
  value(await host.keep(ad(PLATES, HERE)));
  expect(await met(PLATES, HERE)).toBeNull();
});

/** axe over the screens; colours are not drawn here and are looked at in real browsers. */
import 'fake-indexeddb/auto';
import axe from 'axe-core';
import { expect, it, vi } from 'vitest';
import { ad, PLATES } from '../store/making.ts';
import { clickOn, go, openWorkshop, shown } from './open.tsx';

// The checker takes its time over a page of a hundred fields.
vi.setConfig({ testTimeout: 90_000 });

async function violations(): Promise<readonly string[]> {
  const { violations: found } = await axe.run(document.body, { rules: { 'color-contrast': { enabled: false } } });
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`));
}

it('rates, with a cell open and something learned', async () => {
  await openWorkshop([ad(PLATES)], '#rates');
  await shown('[data-learned]');
  await clickOn(await shown('[data-change="rates.iron.used"]'));
  expect(await violations()).toEqual([]);
});

it('settings', async () => {
  await openWorkshop([], '#settings');
  await shown('[data-setting]');
  expect(await violations()).toEqual([]);
});

it('finds with the example', async () => {
  await openWorkshop([]);
  await shown('[data-example] .call');
  expect(await violations()).toEqual([]);
});

it('the kit, before and after it is set up, its loads and its platform', async () => {
  await openWorkshop([], '#kit');
  await clickOn(await shown('[data-set-up]'));
  await shown('[data-need]');
  expect(await violations()).toEqual([]);
  for (const part of ['loads', 'platform']) {
    await go(`#kit/${part}`);
    await shown(`[data-part=${part}] h2`);
    expect(await violations()).toEqual([]);
  }
});

it('the buy list, with ads bought, left out and told apart', async () => {
  await openWorkshop(
    [
      ad(PLATES),
      ad('Olympic barbell, 20 kg, 28.5 mm, straight, $120, pick up in Elmwick'),
      ad('45 lb olympic plates, $900 a pair'),
    ],
    '#buy-list',
  );
  await shown('[data-stage=done]');
  await shown('[data-buy]');
  expect(await violations()).toEqual([]);
});

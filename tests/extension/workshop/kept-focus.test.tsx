/** Buttons that go away with what they did leave the focus where one goes on, in every screen that has such. */
import 'fake-indexeddb/auto';
import { act } from 'preact/test-utils';
import { describe, expect, it, vi } from 'vitest';
import type { Store } from '../../../extension/store/index.ts';
import { ad, freshStore, PLATES, value } from '../store/making.ts';
import { clickOn, NOW, openWorkshop, shown } from './open.tsx';

const wait = (ms: number) => act(() => new Promise((resolve) => setTimeout(resolve, ms)));

/** Presses a button by key, waits until it is gone, and tells where the focus is then. */
async function pressed(selector: string): Promise<Element> {
  const button = await shown(selector);
  button.focus();
  await clickOn(button);
  await vi.waitFor(() => expect(button.isConnected && button.matches(selector)).toBe(false));
  await wait(150);
  await vi.waitFor(() => expect(document.activeElement === document.body).toBe(false));
  return document.activeElement as Element;
}

const ADS = [ad(PLATES), ad('Olympic barbell, 20 kg, 28.5 mm, straight, $120')];
const importing = async () => {
  const file = value(await (await freshStore()).exportAll(NOW));
  const input = await shown('[data-path=import]');
  Object.defineProperty(input, 'files', { configurable: true, value: [new File([file], 'a.json')] });
  Object.defineProperty(input, 'value', { configurable: true, value: '', writable: true });
  await act(async () => void input.dispatchEvent(new Event('change', { bubbles: true })));
};
const price = (store: Store) =>
  store.rates.captured.put(
    {
      id: 'a',
      category: 'iron',
      title: 'Plates',
      address: null,
      price: { minor: 100, currency: 'USD' },
      pounds: 1,
      shipping: null,
      at: NOW,
    },
    NOW,
  );

describe('the focus after', () => {
  it('removing finds, and bringing them back', async () => {
    await openWorkshop(ADS);
    await clickOn(await shown('[data-find] input'));
    expect((await pressed('[data-remove]')).matches('[data-undo]')).toBe(true);
    await pressed('[data-undo]');
  });

  it('a file was looked at and left, or taken', async () => {
    await openWorkshop([], '#settings');
    await importing();
    expect((await pressed('[data-leave]')).matches('[data-path=import]')).toBe(true);
    await importing();
    expect((await pressed('[data-take]')).matches('[data-path=import]')).toBe(true);
  });

  it('a caution is shown again', async () => {
    const { store } = await openWorkshop([], '#settings');
    await store.settings.change(() => ({ hiddenCautions: ['meet'] }), NOW);
    await pressed('[data-show=meet]');
  });

  it('a price of a shop is removed', async () => {
    const { store } = await openWorkshop([], '#rates');
    value(await price(store));
    expect((await pressed('[data-captured] [data-remove]')).matches('[data-undo]')).toBe(true);
    await pressed('[data-undo]');
  });

  it('the buy list is stopped and begun anew', async () => {
    // Enough to be judged that it can be stopped.
    await openWorkshop(
      Array.from({ length: 20 }, (_, at) => ad(`${PLATES} number ${at}`)),
      '#buy-list',
    );
    expect((await pressed('[data-stop]')).matches('[data-again]')).toBe(true);
    await pressed('[data-again]');
  });

  it('looking through the finds for loads', async () => {
    const { store } = await openWorkshop(ADS, '#kit/loads');
    const own = { weighed: [], boreMm: null, shaftMm: null, sleeveMm: null, lengthMm: null, note: '', paid: null };
    value(await store.kit.owned.put({ id: 'plates', kind: 'plate', weight: { value: 45, unit: 'lb' }, pieces: 4, ...own }, 1));
    const after = await pressed('[data-additions]');
    expect(after.closest('section')?.getAttribute('aria-labelledby')).toBe('kit-additions');
  });

  it('a click on the empty page is left where it is', async () => {
    await openWorkshop(ADS);
    await clickOn(await shown('[data-find] input'));
    const button = await shown('[data-remove]');
    button.focus();
    button.blur();
    await wait(10);
    await clickOn(await shown('[data-all]'));
    await vi.waitFor(() => expect(button.isConnected).toBe(false));
    await wait(150);
    expect(document.activeElement).toBe(document.body);
  });
});

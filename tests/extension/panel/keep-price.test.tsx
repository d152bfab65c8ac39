/** Keeping a shop's price from the panel. */
import { act } from 'preact/test-utils';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { keepHost } from './fixtures/keep-host.ts';
import { click, fetched, find, mount, ready, text } from './fixtures/mount.tsx';

const OFFER = {
  name: null,
  price: '149.00',
  currency: 'USD',
  condition: null,
  availability: null,
  description: null,
  weight: null,
};
const page = (over = {}) =>
  ready({
    origin: 'page',
    title: '<b>Plates</b>',
    address: 'https://shop.example/plates',
    text: 'Pair of 45 lb olympic plates, cast iron\n$149.00',
    priceText: null,
    offers: [OFFER],
    ...over,
  });
const open = async (capture = page(), keeping = keepHost()) => {
  mount(capture, evaluate, new Map(), null, undefined, keeping);
  // The reckoning of a shop's price is fetched only for a page that marks one up.
  await act(async () => void (await import('../../../src/price/shop-price.ts')));
  return keeping;
};
const offered = () => fetched('[data-keep-price]');

describe('a shop’s page', () => {
  it('is kept as a new price, with its weight', async () => {
    const host = await open();
    await offered();
    await click('[data-keep-price]');
    expect(host.keepPrice).toHaveBeenCalledWith({
      category: 'iron',
      price: { minor: 149_00, currency: 'USD' },
      pounds: 90,
      shipping: null,
      title: '<b>Plates</b>',
      address: 'https://shop.example/plates',
    });
    expect(text('.keep-price')).toContain('Kept: $149 for plain iron, new.');
    await click('[data-open-rates]');
    expect(host.openWorkshop).toHaveBeenCalledWith('rates');
  });

  it('is kept once though the button is pressed twice', async () => {
    const host = await open();
    await offered();
    await act(async () => {
      for (const _ of [1, 2]) find('[data-keep-price]').click();
    });
    expect(host.keepPrice).toHaveBeenCalledOnce();
  });

  it('says when it could not be kept', async () => {
    await open(page(), keepHost([], { ok: false, code: 'full' }));
    await offered();
    await click('[data-keep-price]');
    expect(find('.keep-price [role=alert]').textContent).not.toBe('');
  });

  it('is offered only where the page marks up a price', async () => {
    await open(page({ offers: [] }));
    expect(document.querySelector('[data-keep-price]')).toBeNull();
  });
});

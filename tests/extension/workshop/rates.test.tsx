import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { marksOf } from '../../../extension/components/price-strip.tsx';
import type { Store } from '../../../extension/store/index.ts';
import type { Settings } from '../../../src/listing/settings.ts';
import { ad, value } from '../store/making.ts';
import { clickOn, NOW, openWorkshop, says, setTo, shown } from './open.tsx';

const PLATES = (price: number, title = `Plates ${price}`) =>
  ad(`4 x 45 lb olympic plates, cast iron, $${price} for all`, null, title);
const HOSTILE = '<img src=x onerror=alert(1)>';

const settingsIn = async (store: Store) => value(await store.settings.load(NOW)).settings;
/** Waits until the stored settings fit. */
async function stored(store: Store, fits: (settings: Settings) => boolean): Promise<Settings> {
  for (let tries = 0; tries < 200; tries += 1) {
    const settings = await settingsIn(store);
    if (fits(settings)) return settings;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  throw new Error(`never stored: ${JSON.stringify(await settingsIn(store))}`);
}

async function openRates(...ads: Parameters<typeof openWorkshop>[0]) {
  const opened = await openWorkshop(ads, '#rates');
  await shown('.rates-table');
  return opened;
}
const cell = (path: string) => shown(`[data-cell="${path}"]`);
const field = (path: string) => shown<HTMLInputElement>(`[data-path="${path}"]`);

it('has every category with used, new and shipping, and says where each figure is from', async () => {
  await openRates();
  expect(document.querySelectorAll('.rates-table tbody tr')).toHaveLength(18);
  expect(document.querySelectorAll('[data-cell]')).toHaveLength(54);
  expect((await cell('rates.iron.used')).textContent).toMatch(
    /\$0\.75 \$0\.50 to \$1\.00Common practice, no source \(Jan 2026\)/,
  );
});

it('takes a figure of the buyer’s own, with its day and its source, and puts it back', async () => {
  const { store } = await openRates();
  await clickOn(await shown('[data-change="rates.iron.used"]'));
  await setTo(await field('rates.iron.used.likely'), '0.60');
  await shown('[data-cell="rates.iron.used"]', says('Your own figure (May 4, 2026)'));
  const { rates } = await stored(store, (now) => now.rates.iron?.used !== undefined);
  expect(rates.iron?.used).toEqual({ low: 0.5, likely: 0.6, high: 1, source: 'own', date: '2026-05-04' });
  const source = await field('rates.iron.used.source');
  source.value = HOSTILE;
  source.dispatchEvent(new Event('change', { bubbles: true }));
  await shown('[data-cell="rates.iron.used"] .rates-source', says(HOSTILE));
  expect(document.querySelector('main img')).toBeNull();
  await clickOn(await shown('[data-put-back="rates.iron.used"]'));
  await shown('[data-cell="rates.iron.used"]', says('Common practice'));
  expect((await stored(store, (now) => now.rates.iron === undefined)).rates).toEqual({});
});

it('waits while the three are out of order, and says so', async () => {
  const { store } = await openRates();
  await clickOn(await shown('[data-change="rates.bar.used"]'));
  const low = await field('rates.bar.used.low');
  await setTo(low, '200');
  low.dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
  await shown('[data-cell="rates.bar.used"] [role=alert]', says('Not counted yet'));
  expect((await settingsIn(store)).rates).toEqual({});
  await setTo(await field('rates.bar.used.likely'), '220');
  expect((await stored(store, (now) => now.rates.bar?.used !== undefined)).rates.bar?.used).toMatchObject({
    low: 200,
    likely: 220,
    high: 300,
  });
  expect(document.querySelector('[data-cell="rates.bar.used"] [role=alert]')).toBeNull();
});

it('in kilograms and another currency takes all three from scratch', async () => {
  const { store } = await openRates();
  await store.settings.change(() => ({ unit: 'kg', currency: 'EUR' }), NOW);
  await shown('[data-cell="rates.iron.new"]', says('No figure in your currency yet'));
  await clickOn(await shown('[data-change="rates.iron.new"]'));
  await setTo(await field('rates.iron.new.low'), '2');
  await setTo(await field('rates.iron.new.likely'), '3');
  await setTo(await field('rates.iron.new.high'), '4');
  const { rates } = await stored(store, (now) => now.rates.iron?.new !== undefined);
  // A pound is 0.45359237 kg.
  expect(rates.iron?.new?.likely).toBeCloseTo(3 * 0.45359237, 9);
});

it('draws what the finds taught, with the finds behind it and those far off', async () => {
  const { store } = await openRates(PLATES(120), PLATES(110), PLATES(130), PLATES(125, HOSTILE), PLATES(2000, 'Dear ones'));
  const learned = await shown('[data-learned=iron]', says('Learned from 5 of your finds'));
  expect(learned.textContent).toContain('One price lies outside the range');
  expect(learned.querySelectorAll('.chart-bar')).toHaveLength(2);
  expect(learned.querySelectorAll('circle')).toHaveLength(4);
  expect(learned.querySelectorAll('path.strip-far')).toHaveLength(1);
  const behind = [...learned.querySelectorAll('details li')];
  expect(behind).toHaveLength(5);
  expect(behind.filter((one) => one.hasAttribute('data-far')).map((one) => one.querySelector('a')?.textContent)).toEqual([
    'Dear ones',
  ]);
  expect(learned.querySelector('img')).toBeNull();
  expect(learned.querySelector('details a')?.getAttribute('href')).toMatch(/^#finds\/[\w-]+$/);
  expect((await stored(store, (now) => now.learned.iron?.finds === 5)).learned.iron?.likely).toBeLessThan(0.75);
  await shown('[data-cell="rates.iron.used"]', says('Learned from 5 of your finds'));
});

it('says that a figure of the buyer’s own holds against what was learned', async () => {
  await openRates(PLATES(120));
  await shown('[data-learned=iron]');
  await clickOn(await shown('[data-change="rates.iron.used"]'));
  await setTo(await field('rates.iron.used.likely'), '0.60');
  await shown('[data-learned=iron]', says('Your own figure for the used price counts'));
});

it('lists prices from shops, uses them, removes them, and brings them back', async () => {
  const { store } = await openRates();
  const price = (id: string, major: number, over = {}) =>
    store.rates.captured.put(
      {
        id,
        category: 'iron' as const,
        title: `Plates at ${major}`,
        address: 'https://shop.example/plates',
        price: { minor: major * 100, currency: 'USD' },
        pounds: 100,
        shipping: { minor: 2000, currency: 'USD' },
        at: NOW,
        ...over,
      },
      NOW,
    );
  await price('a', 140);
  await price('b', 180, { title: HOSTILE, address: 'javascript:alert(1)' });
  await price('c', 100, { price: { minor: 9000, currency: 'EUR' }, title: 'Abroad', address: 'https://[' });
  const first = await shown('[data-captured=a]', says('$140'));
  expect(first.textContent).toMatch(/plain iron · \$140 · 100 lb · \$1\.40 a pound · shipping \$20 · May 1, 2026/);
  await shown('[data-captured=b]', says(HOSTILE));
  expect(document.querySelector('main img')).toBeNull();
  expect([...document.querySelectorAll('a')].filter(({ protocol }) => protocol === 'javascript:')).toEqual([]);
  expect((await shown('[data-captured=c]')).textContent).toContain('no rate of exchange');
  await clickOn(await shown('[data-captured=a] [data-use]'));
  const { rates } = await stored(store, (now) => now.rates.iron?.new !== undefined);
  expect(rates.iron).toEqual({
    new: { low: 1.4, likely: 1.4, high: 1.4, source: 'shop.example', date: '2026-05-04' },
    shipping: { low: 0.2, likely: 0.2, high: 0.2, source: 'shop.example', date: '2026-05-04' },
  });
  await clickOn(await shown('[data-use-all=iron]'));
  const ofAll = (await stored(store, (now) => now.rates.iron?.new?.high === 1.8)).rates.iron?.new;
  expect(ofAll?.likely).toBeCloseTo(1.6, 12);
  // What is no address tells no shop.
  expect(ofAll?.source?.split(', ').sort()).toEqual(['own', 'shop.example']);
  await clickOn(await shown('[data-captured=a] [data-remove]'));
  await shown('[role=status]', says('Removed'));
  await shown('.captured', (list) => list.querySelector('[data-captured=a]') === null);
  await clickOn(await shown('[data-undo]'));
  await shown('[data-captured=a]');
});

it('marks that would lie over each other are one, and what is beyond the scale stands at its end', () => {
  const prices = [0.5, 0.5001, 1, 7, 9].map((at) => ({ value: at, far: at > 2 }));
  expect(marksOf(prices, 2).map(({ share }) => share)).toEqual([0.25, 0.5, null]);
});

import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { EXAMPLE } from '../../../extension/workshop/example/ad.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { ad, PLATES, value } from '../store/making.ts';
import { NOW, openWorkshop, says, setTo, shown } from './open.tsx';

it('the first screen shows a made-up ad with its live answer, and stores nothing of it', async () => {
  const { store } = await openWorkshop([]);
  const example = await shown('[data-example]', says('This ad is made up'));
  await shown('[data-example] .call');
  expect(example.textContent).toContain('4 x 45 lb olympic plates');
  await shown('[data-example] .usable', says('270'));
  await setTo(await shown<HTMLInputElement>('[data-example] [data-path="plate-1.count"]'), '2');
  await shown('[data-example] .usable', says('180'));
  const file = JSON.parse(value(await store.exportAll(NOW)));
  expect([file.finds, file.settings]).toEqual([[], null]);
});

it('is gone once something is kept', async () => {
  await openWorkshop([ad(PLATES, null, 'Iron plates')]);
  await shown('[data-find]');
  expect(document.querySelector('[data-example]')).toBeNull();
});

it('is an ad that has an answer: plates, a bar, a price', () => {
  const { reading, worth } = evaluate(EXAMPLE, DEFAULT_SETTINGS);
  expect(reading.asking.amount?.value).toEqual({ minor: 240_00, currency: 'USD' });
  expect(worth.usable.likely).toBe(270);
  expect(reading.items.map(({ kind }) => kind.value)).toContain('bar');
});

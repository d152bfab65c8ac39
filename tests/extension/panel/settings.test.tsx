/** The buyer's settings in an open panel: followed when the Workshop changes them, and never undone by what is being written here. */
import { act } from 'preact/test-utils';
import { expect, test, vi } from 'vitest';
import { StoreFailure } from '../../../extension/store/failure.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { DEFAULT_SETTINGS, type Settings } from '../../../src/listing/settings.ts';
import { mount, ready, text, type } from './fixtures/mount.tsx';

const AD = { title: '', text: 'Olympic plates:\n4 x 45 lb\n2 x 25 lb\n$180 for everything' };
const settle = () => act(() => new Promise((resolve) => setTimeout(resolve, 0)));

async function open() {
  const panel = mount(ready(AD), evaluate);
  await settle();
  const [follow] = panel.host.watchSettings.mock.lastCall as unknown as [(settings: Settings) => void];
  return {
    ...panel,
    stored: (settings: Settings) => act(async () => follow(settings)),
    last: () => panel.judge.mock.lastCall?.[1],
  };
}

test('what the Workshop changes is judged by at once', async () => {
  const panel = await open();
  await panel.stored({ ...DEFAULT_SETTINGS, margin: 0.4 });
  expect(panel.last()?.margin).toBe(0.4);
});

test('the same settings again judge nothing anew', async () => {
  const panel = await open();
  const times = panel.judge.mock.calls.length;
  await panel.stored(structuredClone(DEFAULT_SETTINGS));
  expect(panel.judge.mock.calls).toHaveLength(times);
});

test('an ad is judged once, with stored settings that are as they were taken to be', async () => {
  const panel = await open();
  expect(panel.judge.mock.calls).toHaveLength(1);
});

test('what is stored while a change is being written does not undo it', async () => {
  const panel = await open();
  panel.host.saveSettings.mockImplementation(() => new Promise(() => undefined));
  await type('[data-path="settings.perMile"]', '0.5');
  await settle();
  expect(panel.host.saveSettings).toHaveBeenCalled();
  await panel.stored(structuredClone(DEFAULT_SETTINGS));
  expect(panel.last()?.perMile).toBe(0.5);
});

test('what could not be kept is said, until the next change is', async () => {
  const panel = await open();
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  panel.host.saveSettings.mockRejectedValueOnce(new StoreFailure('full'));
  await type('[data-path="settings.perMile"]', '0.5');
  await settle();
  expect(text('[role=alert] [data-not-kept=settings]')).toMatch(/^There is no room left for this on this machine/);
  // It holds here all the same.
  expect(panel.last()?.perMile).toBe(0.5);
  await type('[data-path="settings.perMile"]', '0.6');
  await settle();
  expect(document.querySelector('[data-not-kept]')).toBeNull();
});

/** The line that says what would turn the answer. */
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Turning } from '../../../extension/panel/panel.tsx';
import { evaluate } from '../../../src/evaluate.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { turnsOf } from '../../../src/sensitivity.ts';
import { mount, ready, text, type } from './fixtures/mount.tsx';

const AD = { title: '', text: 'Olympic plates 4 x 45 lb with 2 inch holes, $150' };

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const stand = () => act(() => void vi.advanceTimersByTime(1000));
const line = () => document.querySelector('[data-turns]');

test('it stands under the reasons, once the answer has stood for a moment', () => {
  mount(ready(AD), evaluate, new Map(), turnsOf);
  expect(line()).toBeNull();
  stand();
  expect(text('[data-turn="used"]')).toMatch(
    /^This turns to “Worth it for less” if the going rate \(plain iron\) is less than \$0\.\d\d\/lb\.$/,
  );
  expect(line()?.previousElementSibling?.getAttribute('aria-labelledby')).toBe('reasons-heading');
});

test('it is worked out with the distance that was typed, and not between two key strokes', () => {
  const turning = vi.fn<Turning>(() => []);
  mount(ready(AD), evaluate, new Map(), turning);
  type('[data-distance]', '1');
  act(() => void vi.advanceTimersByTime(50));
  type('[data-distance]', '12');
  expect(turning).not.toHaveBeenCalled();
  stand();
  expect(turning).toHaveBeenCalledTimes(1);
  expect(turning.mock.lastCall?.[1]).toEqual({ ...DEFAULT_SETTINGS, distance: { value: 12, unit: 'mi' } });
  expect(text('[data-turns="0"]')).toBe('No single assumption within its range changes this.');
});

test('there is none where nothing can turn, and where it can not be worked out the answer stands', () => {
  mount(ready(AD), evaluate, new Map(), () => null);
  stand();
  expect(line()).toBeNull();
  const complained = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  mount(ready(AD), evaluate, new Map(), () => {
    throw new Error('broken');
  });
  stand();
  expect(line()).toBeNull();
  expect(complained).toHaveBeenCalledOnce();
  expect(document.querySelector('[data-call]')).toBeTruthy();
});

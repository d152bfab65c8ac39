/** Home and the seller's place in the panel: looked up in lists of invented places. */
import { act } from 'preact/test-utils';
import { describe, expect, test, vi } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { makeGazetteer } from '../../../src/places/gazetteer.ts';
import { list } from '../../unit/places/list.ts';
import { click, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';

const GOODS = 'Olympic plates:\n4 x 45 lb\n2 x 25 lb\n$180 for everything';
const adIn = (place: string) => ({ title: '', text: `${GOODS}\nPickup in ${place}.` });
const gazetteer = makeGazetteer([
  list(
    'US',
    [
      ['Quillby', 'IL', 40, -90, 90_000],
      ['Quillby', 'MO', 39.5, -91, 80_000],
      ['Tarn', 'IL', 40.2, -90, 20_000],
      ['Tarnhill', 'IL', 40.4, -90, 2_000],
    ],
    [[62_701, 40.39, -90]],
  ),
]);
const HOME = '[data-path="settings.home"]';
const SELLER = '[data-path="sellerAt"]';
const read = vi.fn(async () => gazetteer);

const open = (ad: { title: string; text: string }, stored = new Map<string, unknown>(), places = read) =>
  mount(ready(ad), evaluate, stored, null, undefined, undefined, places);
const settle = () => act(async () => void (await new Promise((resolve) => setTimeout(resolve, 0))));
const press = (selector: string, key: string) =>
  act(() => void find(selector).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })));
const enter = async (selector: string, words: string) => {
  await type(selector, words);
  await settle();
  await press(selector, 'Enter');
  await settle();
};
const options = () => [...document.querySelectorAll('[role="option"]')].map((one) => one.textContent?.trim());
const lastSettings = (panel: ReturnType<typeof mount>) => panel.judge.mock.lastCall?.[1];

describe('where the buyer sets out', () => {
  test('is asked for without reading any list, and kept when it is clear', async () => {
    read.mockClear();
    const panel = open({ title: '', text: GOODS });
    await settle();
    expect(read).not.toHaveBeenCalled();
    expect(document.querySelector(SELLER)).toBeNull();
    await enter(HOME, 'tarn il');
    expect(read).toHaveBeenCalledTimes(1);
    expect(panel.host.saveSettings.mock.lastCall?.at(0)).toMatchObject({ home: { name: 'Tarn, IL', lat: 40.2, lon: -90 } });
    expect(find<HTMLInputElement>(HOME).value).toBe('Tarn, IL');
    expect(find(SELLER)).toBeTruthy();
  });

  test('is taken out by emptying the field', async () => {
    const panel = open({ title: '', text: GOODS });
    await enter(HOME, '62701');
    expect(find<HTMLInputElement>(HOME).value).toBe('62701 (Tarnhill, IL)');
    await type(HOME, '');
    await leave(HOME);
    expect(panel.host.saveSettings.mock.lastCall?.at(0)).toMatchObject({ home: null });
  });

  test.each([
    ['Nowhere', 'No such place in the list.'],
    ['62799', 'No such postal code in the list.'],
    ['Quillby', 'This can mean several places'],
  ])('%s is not taken, and the field says why', async (words, why) => {
    const panel = open({ title: '', text: GOODS });
    await enter(HOME, words);
    await leave(HOME);
    expect(text('.place-field .complaint')).toContain(why);
    expect(find(HOME).getAttribute('aria-invalid')).toBe('true');
    expect(lastSettings(panel)).toMatchObject({ home: null });
  });

  test('a list that cannot be read is told, and tried anew on the next visit', async () => {
    const complaint = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const failing = vi.fn(async () => gazetteer).mockRejectedValueOnce(new Error('gone'));
    open({ title: '', text: GOODS }, new Map(), failing);
    await type(HOME, 'Tarn');
    await settle();
    expect(text('.place-field .complaint')).toContain('The list of places could not be read.');
    await leave(HOME);
    await enter(HOME, 'Tarn');
    expect(failing).toHaveBeenCalledTimes(2);
    expect(find<HTMLInputElement>(HOME).value).toBe('Tarn, IL');
    complaint.mockRestore();
  });
});

describe('the list under the field', () => {
  test('is chosen from with the keys alone, as a combobox is', async () => {
    const panel = open({ title: '', text: GOODS });
    await type(HOME, 'Quillby');
    await settle();
    const field = find(HOME);
    expect(field.getAttribute('role')).toBe('combobox');
    expect(field.getAttribute('aria-expanded')).toBe('true');
    expect(document.getElementById(field.getAttribute('aria-controls') ?? '')?.getAttribute('role')).toBe('listbox');
    expect(options()).toEqual(['Quillby, IL', 'Quillby, MO']);
    const active = () => document.getElementById(find(HOME).getAttribute('aria-activedescendant') ?? '')?.dataset.place;
    await press(HOME, 'ArrowDown');
    expect(active()).toBe('Quillby, IL');
    expect(document.querySelectorAll('[aria-selected="true"]')).toHaveLength(1);
    await press(HOME, 'ArrowUp');
    expect(active()).toBe('Quillby, MO');
    await press(HOME, 'Enter');
    expect(lastSettings(panel)).toMatchObject({ home: { name: 'Quillby, MO' } });
    expect(find(HOME).getAttribute('aria-expanded')).toBe('false');
  });

  test('goes away with Escape, and the draft with the next one', async () => {
    open({ title: '', text: GOODS });
    await type(HOME, 'Tar');
    await settle();
    expect(options()).toEqual(['Tarn, IL', 'Tarnhill, IL']);
    await press(HOME, 'Escape');
    expect(options()).toEqual([]);
    expect(find<HTMLInputElement>(HOME).value).toBe('Tar');
    await press(HOME, 'Escape');
    expect(find<HTMLInputElement>(HOME).value).toBe('');
  });
});

describe('where the seller is', () => {
  test('comes from the ad where it can mean but one place, and the drive is counted in', async () => {
    const panel = open(adIn('Tarnhill, IL'));
    await settle();
    expect(lastSettings(panel)).toMatchObject({ sellerAt: null });
    await enter(HOME, 'Tarn, IL');
    await settle();
    expect(lastSettings(panel)).toMatchObject({ sellerAt: { name: 'Tarnhill, IL' } });
    expect(text('[data-drive]')).toContain('The distance is worked out from Tarn, IL to Tarnhill, IL.');
  });

  test('is asked where the ad can mean several, and kept with the ad', async () => {
    const stored = new Map<string, unknown>();
    const panel = open(adIn('Quillby'), stored);
    await enter(HOME, 'Tarn, IL');
    await settle();
    expect(find<HTMLInputElement>(SELLER).value).toBe('Quillby');
    expect(text('.place-field .complaint[role=status]')).toContain('This can mean several places');
    expect(lastSettings(panel)).toMatchObject({ sellerAt: null });
    await press(SELLER, 'ArrowDown');
    await press(SELLER, 'ArrowDown');
    expect(options()).toEqual(['Quillby, IL 14 mi in a straight line', 'Quillby, MO 72 mi in a straight line']);
    await press(SELLER, 'Enter');
    expect(lastSettings(panel)).toMatchObject({ sellerAt: { lat: 39.5, lon: -91 } });
    expect([...stored.values()]).toMatchObject([{ sellerAt: { name: 'Quillby, MO' } }]);
    const again = open(adIn('Quillby'), stored);
    await settle();
    expect(lastSettings(again)).toMatchObject({ sellerAt: { name: 'Quillby, MO' } });
  });

  test('can be taken out, and the ad is not asked again', async () => {
    const panel = open(adIn('Tarnhill, IL'));
    await enter(HOME, 'Tarn, IL');
    await settle();
    await type(SELLER, '');
    await leave(SELLER);
    await settle();
    expect(lastSettings(panel)).toMatchObject({ sellerAt: null });
    expect(find<HTMLInputElement>(SELLER).value).toBe('');
  });

  test('does not go over to the next ad', async () => {
    const panel = open(adIn('Tarnhill, IL'));
    await enter(HOME, 'Tarn, IL');
    await settle();
    await panel.take(ready({ title: '', text: GOODS }, 2));
    await settle();
    expect(lastSettings(panel)).toMatchObject({ sellerAt: null });
  });

  test('a choice pressed with the pointer counts too', async () => {
    const panel = open(adIn('Quillby'));
    await enter(HOME, 'Tarn, IL');
    await settle();
    await press(SELLER, 'ArrowDown');
    await act(
      () =>
        void find('[data-place="Quillby, IL"]').dispatchEvent(new MouseEvent('mousedown', { bubbles: true, cancelable: true })),
    );
    expect(lastSettings(panel)).toMatchObject({ sellerAt: { name: 'Quillby, IL' } });
  });
});

test('the real list is read out of its own module', async () => {
  mount(ready({ title: '', text: GOODS }), evaluate);
  await type(HOME, '00000');
  await vi.waitFor(() => expect(text('.place-field [data-says]')).not.toContain('Reading'), 15_000);
  await leave(HOME);
  expect(text('.place-field .complaint')).toContain('No such postal code');
  await click('[data-drive] summary');
});

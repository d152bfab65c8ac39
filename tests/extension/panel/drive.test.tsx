/** The drive in the panel: what is told of it, and what the buyer sets once for every ad. */
import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../extension/components/speech.ts';
import { settingOut } from '../../../extension/panel/setting-out.ts';
import { evaluate } from '../../../src/evaluate.ts';
import type { Prospect } from '../../../src/listing/evaluation.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { speaker } from '../../../src/words/say.ts';
import { trip } from './fixtures/evaluation.ts';
import { choose, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';
import { stringsOf } from './fixtures/strings.ts';

const AD = { title: '', text: 'Olympic plates:\n4 x 45 lb\n2 x 25 lb\nBar, 7 ft, 45 lb\n$180 for everything' };
const usd = (minor: number) => ({ minor, currency: 'USD' });
const prospect = (over: Partial<Prospect> = {}): Prospect => ({
  saving: usd(6000),
  afterDrive: usd(4240),
  refusal: 0,
  knowingAll: usd(0),
  breakEvenPrice: usd(22200),
  breakEvenDistance: { value: 61, unit: 'mi' },
  byDistance: [],
  ...over,
});

describe('setting out, in words', () => {
  const words = wordsOf(speaker(stringsOf('en'), 'en-US'));
  const told = (over: Partial<Prospect>) => settingOut(words, trip(), prospect(over)).join(' ');

  test('what is saved on average, and how far and up to which price it pays', () =>
    expect(told({})).toBe('On average you save $42, the drive counted in. It pays up to 61 mi one way, or up to $222 asked.'));

  test.each([
    [0.01, ''],
    [0.15, 'About 1 time in 7 you would refuse'],
    [0.3, 'About 1 time in 3 you would refuse'],
    [0.44, 'About 4 times in 10 you would refuse'],
    [0.97, 'Almost certainly you would refuse'],
  ])('a chance of %s to drive for nothing', (refusal, said) => {
    if (said === '') expect(told({ refusal })).not.toContain('refuse');
    else expect(told({ refusal })).toContain(said);
  });

  test('a drive that costs more than it saves', () =>
    expect(told({ afterDrive: usd(-350) })).toContain(
      'On average the drive costs $3.50 more than you save: it is not worth it.',
    ));

  test('no distance, no saving, no price', () => {
    expect(settingOut(words, null, prospect({ afterDrive: null, breakEvenPrice: null })).join(' ')).toBe(
      'On average you save $60, less the drive. It pays up to 61 mi one way.',
    );
    expect(told({ saving: usd(0), afterDrive: usd(-1760), refusal: 1, breakEvenDistance: null })).toBe(
      'At this price there is no saving to spend on a drive. It pays up to an asking price of $222.',
    );
    expect(settingOut(words, null, null)).toEqual([]);
  });
});

describe('the drive in the panel', () => {
  const lastSaved = (panel: ReturnType<typeof mount>) => panel.host.saveSettings.mock.lastCall?.at(0);

  test('shows its parts, which follow what the buyer sets', async () => {
    const panel = mount(ready(AD), evaluate);
    await type('[data-distance]', '20');
    // 40 miles at 20.5 cents, and at 35 mph with $10 an hour.
    expect(text('[data-parts]')).toBe('$8.20 driving, $11.43 your time.');
    await type('[data-path="settings.tolls"]', '3.50');
    await type('[data-path="settings.hourWorth"]', '0');
    expect(text('[data-parts]')).toBe('$8.20 driving, $3.50 tolls.');
    await type('[data-path="settings.van"]', '40');
    await type('[data-path="settings.longestMm"]', '6 ft');
    expect(text('[data-parts]')).toBe('$8.20 driving, $3.50 tolls, $40 van.');
    expect(text('[data-drive]')).toContain('a van is counted in');
    expect(lastSaved(panel)).toMatchObject({
      tolls: 3.5,
      hourWorth: 0,
      van: { cost: 40, per: 'trip' },
      longestMm: expect.closeTo(1828.8, 6),
    });
    await type('[data-path="settings.van"]', '');
    await type('[data-path="settings.longestMm"]', '');
    expect(lastSaved(panel)).toMatchObject({ van: null, longestMm: null });
  });

  test('a cost per kilometre is kept per mile; a published one can be chosen', async () => {
    const panel = mount(ready(AD), evaluate);
    await choose('[data-path="distance.unit"]', 'km');
    await type('[data-path="settings.perMile"]', '0.5');
    expect(lastSaved(panel)).toMatchObject({ perMile: 0.804672 });
    await leave('[data-path="settings.perMile"]');
    expect(find<HTMLSelectElement>('[data-path="settings.perMile.published"]').value).toBe('');
    await choose('[data-path="settings.perMile.published"]', 'irs-full-2026');
    expect(lastSaved(panel)).toMatchObject({ perMile: 0.725 });
    expect(find<HTMLInputElement>('[data-path="settings.perMile"]').value).toBe('0.4505');
  });

  test('a bad amount is not taken, and nothing else is lost with it', async () => {
    const panel = mount(ready(AD), evaluate);
    await type('[data-path="settings.tolls"]', 'many');
    await leave('[data-path="settings.tolls"]');
    expect(text('.complaint')).toContain('Write an amount of money');
    expect(panel.judge.mock.lastCall?.[1]).toMatchObject({ tolls: 0, perMile: DEFAULT_SETTINGS.perMile });
  });

  test('a distance between two places says so', () => {
    const places = {
      home: { name: 'Quillby Ford', lat: 40, lon: -80 },
      sellerAt: { name: 'Saltbox Hill', lat: 40.2, lon: -80 },
    };
    mount(ready(AD), (listing, settings, made) => evaluate(listing, { ...settings, ...places }, made));
    expect(text('[data-drive]')).toContain('The distance is worked out from Quillby Ford to Saltbox Hill.');
    expect(find<HTMLInputElement>('[data-distance]').value).toBe('18.4');
  });
});

import { beforeEach, describe, expect, it } from 'vitest';
import { loadSettings, readSettings, saveSettings } from '../../../extension/platform/settings.ts';
import { getMessage, locale, strings } from '../../../extension/platform/words.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { fakeBrowser } from './fake-browser.ts';

let fake: ReturnType<typeof fakeBrowser>;
beforeEach(() => {
  fake = fakeBrowser();
});

describe('settings', () => {
  it('are the defaults when nothing is stored', async () =>
    expect(await loadSettings()).toEqual({ settings: DEFAULT_SETTINGS, unreadable: [] }));
  it('come back as they were saved, the last one last', async () => {
    await Promise.all([saveSettings({ ...DEFAULT_SETTINGS, margin: 0.1 }), saveSettings({ ...DEFAULT_SETTINGS, margin: 0.2 })]);
    expect((await loadSettings()).settings.margin).toBe(0.2);
  });
  it('that are bad stand at their defaults; the others and the old record stay', async () => {
    const stored = { ...DEFAULT_SETTINGS, unit: 'kg', perMile: -3, sleeveMm: 'x' };
    await fake.storage.local.set({ settings: stored });
    const { settings, unreadable } = await loadSettings();
    expect(settings).toEqual({ ...DEFAULT_SETTINGS, unit: 'kg' });
    expect([...unreadable].sort()).toEqual(['perMile', 'sleeveMm']);
    expect(await fake.storage.local.get('settings-unreadable')).toEqual({ 'settings-unreadable': stored });
  });
  it('of an older version get the defaults of what is new', () =>
    expect(readSettings({ unit: 'kg' })).toEqual({ settings: { ...DEFAULT_SETTINGS, unit: 'kg' }, unreadable: [] }));
  it.each([['text'], [3], [null]])('%j is unreadable as a whole', (stored) =>
    expect(readSettings(stored)).toEqual({ settings: DEFAULT_SETTINGS, unreadable: ['settings'] }),
  );
});

describe('words', () => {
  it('are looked up as asked; a missing one is seen', () => {
    expect(strings().capture_menu_pick).toBe('Pick');
    expect(strings().nothing).toBeUndefined();
    expect(getMessage('nothing')).toBe('[nothing]');
  });
  it('take the numbers of the browser where it speaks the same language', () => expect(locale()).toBe('en-GB'));
});

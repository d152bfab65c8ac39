/** The buyer's settings in local storage: checked when read; what can't be read is set aside, not lost. */
import { DEFAULT_SETTINGS, type Settings, settingsSchema } from '../../src/listing/settings.ts';
import { api } from './browser.ts';

const KEY = 'settings';
const SET_ASIDE = 'settings-unreadable';

export interface LoadedSettings {
  readonly settings: Settings;
  /** Names of the settings that could not be read and stand at their defaults. */
  readonly unreadable: readonly string[];
}

/** Each setting on its own: one bad value does not take the others with it. Settings that are absent are not unreadable. */
export function readSettings(stored: unknown): LoadedSettings {
  if (stored === undefined) return { settings: DEFAULT_SETTINGS, unreadable: [] };
  if (typeof stored !== 'object' || stored === null) return { settings: DEFAULT_SETTINGS, unreadable: [KEY] };
  const given: Record<string, unknown> = { ...DEFAULT_SETTINGS, ...stored };
  const whole = settingsSchema.safeParse(given);
  if (whole.success) return { settings: whole.data, unreadable: [] };
  const unreadable = [...new Set(whole.error.issues.map((issue) => String(issue.path[0])))];
  const defaults: Record<string, unknown> = DEFAULT_SETTINGS;
  for (const name of unreadable) given[name] = defaults[name];
  const mended = settingsSchema.safeParse(given);
  return { settings: mended.success ? mended.data : DEFAULT_SETTINGS, unreadable };
}

export async function loadSettings(): Promise<LoadedSettings> {
  const { [KEY]: stored } = await api().storage.local.get(KEY);
  const loaded = readSettings(stored);
  if (loaded.unreadable.length > 0) await api().storage.local.set({ [SET_ASIDE]: stored });
  return loaded;
}

let last: Promise<unknown> = Promise.resolve();

/** Saves in the order of the calls. Rejects when the browser can't store it. */
export function saveSettings(settings: Settings): Promise<void> {
  const saving = last.catch(() => undefined).then(() => api().storage.local.set({ [KEY]: settingsSchema.parse(settings) }));
  last = saving;
  return saving;
}

/** Settings as they were kept here before there was a store: read for the last time, then dropped. */
export const oldSettings = {
  read: async (): Promise<LoadedSettings | null> =>
    (await api().storage.local.get(KEY))[KEY] === undefined ? null : loadSettings(),
  drop: (): Promise<void> => api().storage.local.remove(KEY),
};

/** The buyer's settings from JSON: any part of them, over the defaults, checked. */
import * as z from 'zod/mini';
import { DEFAULT_SETTINGS, type Settings, settingsSchema } from '../../../src/listing/settings.ts';
import { Complaint } from './complaint.ts';

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Throws a complaint that names the setting at fault. */
export function settingsFrom(json: string, name: string): Settings {
  let given: unknown;
  try {
    given = JSON.parse(json);
  } catch {
    throw new Complaint(`settings ${name} can't be read: not JSON`);
  }
  if (!isObject(given)) throw new Complaint(`settings ${name} can't be read: not a JSON object`);
  const strange = Object.keys(given).find((key) => !(key in DEFAULT_SETTINGS));
  if (strange !== undefined) {
    throw new Complaint(`settings ${name}: there is no "${strange}"; there are ${Object.keys(DEFAULT_SETTINGS).join(', ')}`);
  }
  const parsed = z.safeParse(settingsSchema, { ...DEFAULT_SETTINGS, ...given });
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new Complaint(`settings ${name}: ${issue?.path.join('.') || 'value'}: ${issue?.message ?? 'not valid'}`);
}

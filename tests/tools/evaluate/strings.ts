/** The extension's English sentences, for tools. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Speaker, type Strings, speaker } from '../../../src/words/say.ts';

const FOLDER = new URL('../../../extension/_locales/en/', import.meta.url);

/** All part files as one table. Browsers want "$$" for a dollar sign; here it is one again. */
export function readStrings(folder = FOLDER): Strings {
  const strings: Record<string, string> = {};
  for (const file of readdirSync(fileURLToPath(folder)).filter((name) => name.endsWith('.json'))) {
    const part: Record<string, { message: string }> = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
    for (const [key, { message }] of Object.entries(part)) strings[key] = message.replaceAll('$$', '$');
  }
  return strings;
}

export const english = (): Speaker => speaker(readStrings(), 'en-US');

/** Every string of the rates and the settings exists, and every one that exists is named. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const code = ['extension/workshop', 'extension/panel']
  .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file)))
  .filter((path) => /\.tsx?$/.test(path))
  .map((path) => readFileSync(path, 'utf8'))
  .join('\n');
/** Settings by their names: their strings are "settings_NAME" and "settings_NAME_why". */
const named = [
  ...code.matchAll(/(?:number|optional)\('(\w+)', '/g),
  ...code.matchAll(/\bname[=:] ?["'](\w+)["']/g),
  ...readFileSync('src/flags/limits.ts', 'utf8').matchAll(/^ {2}'?(\w+)'?,$/gm),
].map(([, name = '']) => name);

describe.each([
  ['rates-screen.json', 'rates_'],
  ['settings.json', 'settings_'],
])('%s', (file, beginning) => {
  const keys = Object.keys(JSON.parse(readFileSync(`extension/_locales/en/${file}`, 'utf8')));
  const whole = [...code.matchAll(new RegExp(`'(${beginning}\\w+)'`, 'g'))].map(([, key = '']) => key);
  const beginnings = [...code.matchAll(new RegExp(`\`(${beginning}\\w+_)\\$\\{`, 'g'))].map(([, key = '']) => key);

  it('has all that are named', () => {
    expect(whole.length).toBeGreaterThan(20);
    expect(whole.filter((key) => !keys.includes(key))).toEqual([]);
    expect(beginnings.filter((one) => !keys.some((key) => key.startsWith(one)))).toEqual([]);
  });

  it('has none that nothing names', () => {
    const settings = named.flatMap((name) => [`settings_${name}`, `settings_${name}_why`]);
    const limits = named.flatMap((name) => [`settings_limit_${name}`, `settings_limit_${name}_why`]);
    const isNamed = (key: string) =>
      [...whole, ...settings, ...limits].includes(key.replace(/_one$/, '')) ||
      whole.includes(key) ||
      beginnings.some((one) => key.startsWith(one));
    expect(keys.filter((key) => !isNamed(key))).toEqual([]);
  });
});

/** The strings of the reader, of the capture and of the add-on itself: none is missing, none is left over. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const codeIn = (folder: string): string =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8'))
    .join('\n');

const PARTS = [
  ['read.json', codeIn('src/read')],
  ['amended.json', codeIn('src/read')],
  ['guessed.json', codeIn('src/read')],
  ['capture.json', codeIn('extension/capture') + codeIn('extension/background') + codeIn('extension/platform')],
  ['drive.json', codeIn('src/trip') + codeIn('extension/panel')],
  ['rates.json', codeIn('src/price')],
  ['working.json', codeIn('src/price') + codeIn('src/trip') + codeIn('extension/panel') + codeIn('extension/components')],
  ['add-on.json', readFileSync('manifest.template.json', 'utf8') + codeIn('extension/platform')],
] as const;

const keysOf = (part: string): string[] => Object.keys(JSON.parse(readFileSync(`extension/_locales/en/${part}`, 'utf8')));

/** What stands before a value of the contract in a key that is put together. */
const stemsIn = (code: string): string[] => [...code.matchAll(/`(working_\w+_)\$\{/g)].map(([, stem = '']) => stem);

/** A key is named in full, by `__MSG_`, or by what stands behind "doubt_" where a doubt is pushed. */
const isNamed = (key: string, code: string): boolean =>
  [
    key,
    key.replace(/_one$/, ''),
    key.replace(/^doubt_/, ''),
    key.replace(/^step_/, ''),
    key.replace(/^step_/, '').replaceAll('_', '-'),
  ].some((name) => code.includes(`'${name}'`) || code.includes(`__MSG_${name}__`)) ||
  stemsIn(code).some((stem) => key.startsWith(stem));

describe.each(PARTS)('%s', (part, code) => {
  const keys = keysOf(part);

  it('holds no string that nothing names', () => {
    expect(keys.length).toBeGreaterThan(2);
    expect(keys.filter((key) => !isNamed(key, code))).toEqual([]);
  });
});

it('has every string that the reader and the capture name', () => {
  const known = readdirSync('extension/_locales/en').flatMap(keysOf);
  const named = PARTS.flatMap(([, code]) => [...code.matchAll(/(?:message|getMessage)\('(\w+)'/g)]).map(([, key = '']) => key);
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter((key) => !known.includes(key))).toEqual([]);
});

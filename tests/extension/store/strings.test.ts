/** Every string that the store names exists, and every one that exists is named. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import strings from '../../../extension/_locales/en/store.json' with { type: 'json' };

const code = readdirSync('extension/store')
  .map((file) => readFileSync(`extension/store/${file}`, 'utf8'))
  .join('\n');

it('names and strings of the store are the same', () => {
  const named = new Set([...code.matchAll(/\bstore_\w+/g)].map(([key]) => key));
  expect(named.size).toBeGreaterThan(30);
  expect([...named].sort()).toEqual(Object.keys(strings).sort());
});

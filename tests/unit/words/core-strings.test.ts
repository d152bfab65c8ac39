import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { adRules, itemRules } from '../../../src/flags/index.ts';
import { RATE_CATEGORIES } from '../../../src/listing/settings.ts';
import { readStrings } from '../../tools/evaluate/strings.ts';

const strings: Record<string, { message: string }> = JSON.parse(readFileSync('extension/_locales/en/core.json', 'utf8'));
const FOLDERS = ['src/flags', 'src/price', 'src/trip'];
const source = FOLDERS.flatMap((folder) => readdirSync(folder).map((file) => readFileSync(join(folder, file), 'utf8'))).join(
  '\n',
);

/** Keys that the code puts together from names of its own. */
const put = (key: string): boolean =>
  [...itemRules, ...adRules].some((rule) => key.startsWith(`flag_${rule.id.replaceAll('-', '_')}_`)) ||
  RATE_CATEGORIES.some((category) => key === `category_${category.replaceAll('-', '_')}`) ||
  /^(?:source|step|because_unknown)_/.test(key);

describe('strings of the core', () => {
  it('are all used', () => {
    const unused = Object.keys(strings).filter(
      (key) => !put(key) && !source.includes(`'${key}'`) && !source.includes(`${key.replace(/_(?:bar|iron)$/, '')}'`),
    );
    expect(unused).toEqual([]);
  });

  it('are there, in one part file or another, for every key that the code names', () => {
    const strings = readStrings();
    const named = [...source.matchAll(/message\('([a-z_]+)'/g)].map((found) => found[1] ?? '');
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((key) => !(key in strings))).toEqual([]);
  });

  it('write every dollar twice, as browsers want it', () => {
    for (const { message } of Object.values(strings)) expect(message.replaceAll('$$', '')).not.toContain('$');
  });
});

/**
 * A browser may send what is typed to a spelling service, and so our pages have none check anything. Every field goes by its page (HTML
 * Living Standard, "Spelling and grammar checking": what says nothing of its own does as its parent; from memory, and seen in Chromium 156
 * and Firefox ESR 153).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const FOLDER = 'extension';
const files = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' });
const naming = (pattern: RegExp): string[] => files.filter((file) => pattern.test(file));
const textOf = (file: string): string => readFileSync(join(FOLDER, file), 'utf8');

it.each(naming(/\.html$/))('%s lets nothing check what is typed', (page) =>
  expect(textOf(page)).toMatch(/<html [^>]*\bspellcheck="false"/),
);

it('no field has it checked all the same', () => {
  const code = naming(/\.tsx?$/);
  expect(code.length).toBeGreaterThan(100);
  expect(code.filter((file) => /spellcheck/i.test(textOf(file)))).toEqual([]);
});

/** No file is too long to be read, and what is exported is used by some other file; what no file uses is deleted, not kept. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const files = ['src', 'extension', 'tests']
  .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file)))
  .filter((file) => /\.(?:tsx?|mjs)$/.test(file))
  .concat('build.mjs')
  .map((file) => ({ file, text: readFileSync(file, 'utf8') }));

/** In how many files each word stands. */
const standsIn = new Map<string, number>();
for (const { text } of files)
  for (const word of new Set(text.match(/[A-Za-z_$][\w$]*/g))) standsIn.set(word, (standsIn.get(word) ?? 0) + 1);

it('exports no value that nobody else names', () => {
  const exported = files.flatMap(({ file, text }) =>
    [...text.matchAll(/^export (?:async )?(?:const|let|function\*?|class) (\w+)/gm)].map(([, name = '']) => ({ file, name })),
  );
  expect(exported.length).toBeGreaterThan(800);
  expect(exported.filter(({ name }) => (standsIn.get(name) ?? 0) < 2)).toEqual([]);
});

/** Tests that share a browser or a store may be longer: parted, they would start it anew. */
it('has no file of more than 300 lines', () => {
  const long = files.filter(({ text }) => text.split('\n').length > 301).map(({ file }) => file);
  expect(long.filter((file) => file.endsWith('.test.ts'))).toContain('tests/browser/sweep.test.ts');
  expect(long.filter((file) => !/\.test\.tsx?$/.test(file))).toEqual([]);
});

/** Every string that any code names in full exists. A missing one would be shown as its key in brackets. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const LOCALE = 'extension/_locales/en';
const known = new Set(readdirSync(LOCALE).flatMap((part) => Object.keys(JSON.parse(readFileSync(join(LOCALE, part), 'utf8')))));
const code = ['extension', 'src'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => ({ file: join(folder, file), text: readFileSync(join(folder, file), 'utf8') })),
);

it('is there, wherever it is named', () => {
  const named = code.flatMap(({ file, text }) =>
    [...text.matchAll(/(?<![\w.])(?:t|message)\(\s*'([a-z]\w*)'/g)].map(([, key = '']) => ({ file, key })),
  );
  expect(named.length).toBeGreaterThan(500);
  expect(named.filter(({ key }) => !known.has(key))).toEqual([]);
});

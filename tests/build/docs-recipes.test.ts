/** What DEVELOPERS.md and the corpus' README say of the code, held against it: folders, letters, the example of a notation, labels. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ENGLISH } from '../../src/read/language/en/index.ts';
import { scanText } from '../../src/read/text/scan.ts';
import { loadCases } from '../corpus/case.ts';
import { goods } from '../unit/read/goods.ts';

const textOf = (file: string): string => readFileSync(file, 'utf8');
const DEVELOPERS = textOf('DEVELOPERS.md');
const lettersOf = (text: string): string => scanText(text, ENGLISH).plain;

it.each(['src', 'extension', 'tests'])('has a row for every folder of %s/', (top) => {
  const table = DEVELOPERS.split('\n## Folders\n')[1]?.split('\n## ')[0] ?? '';
  const rows = table
    .split('\n')
    .map((line) => line.split('|')[1] ?? '')
    .join('\n');
  const folders = readdirSync(top, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.length).toBeGreaterThan(7);
  expect(folders.map(({ name }) => `${top}/${name}/`).filter((folder) => !rows.includes(`\`${folder}\``))).toEqual([]);
});

it('tells each thing to add once', () => {
  const things = [...DEVELOPERS.matchAll(/^- \*\*(.+?)\.\*\*/gm)].map(([, thing]) => thing);
  expect(things.length).toBeGreaterThan(30);
  expect(things.filter((thing, index) => things.indexOf(thing) !== index)).toEqual([]);
});

describe('how the reader works', () => {
  it('gives the letters of its examples', () => {
    const told = [...DEVELOPERS.matchAll(/"([^"]+)" is\s+`([^`]+)`/g)];
    expect(told.length).toBeGreaterThan(1);
    for (const [, text = '', letters] of told) expect(lettersOf(text), text).toBe(letters);
  });

  it('the head of classes.ts lists every letter of the dictionaries', () => {
    const [head = ''] = textOf('src/read/text/classes.ts').split('*/');
    const files = ['en', 'de'].flatMap((code) =>
      readdirSync(`src/read/language/${code}`).map((file) => `src/read/language/${code}/${file}`),
    );
    const codes = new Set(files.flatMap((file) => [...textOf(file).matchAll(/\bcode: '(.)'/g)].map(([, code = '']) => code)));
    expect(codes.size).toBeGreaterThan(40);
    const listed = [...head.matchAll(/(?:^ \* [\w ]+: | · )(\S) /gm)].map(([, letter]) => letter);
    expect([...codes].filter((code) => !listed.includes(code))).toEqual([]);
  });

  it('reads the example of a notation as the example says', () => {
    const rows = [...DEVELOPERS.matchAll(/^ +\['(.+?)', \['(.+?)'\]\],$/gm)];
    expect(rows.length).toBeGreaterThan(1);
    for (const [, text = '', said] of rows) expect(goods(text), text).toEqual([said]);
  });
});

it('the rules for labels tell every field of a label', () => {
  const rules = textOf('tests/corpus/README.md').split('## Rules for labels')[1] ?? '';
  const told = new Set([...rules.matchAll(/`"?([\w.]+)/g)].map(([, name = '']) => name.replace('asking.', '')));
  const cases = loadCases('tests/corpus/ads');
  const fields = cases.flatMap(({ label }) => [
    ...Object.keys(label),
    ...Object.keys(label.asking ?? {}),
    ...(label.items ?? []).flatMap((item) => Object.keys(item)),
  ]);
  expect(cases.length).toBeGreaterThan(500);
  expect([...new Set(fields)].filter((field) => field !== 'asking' && !told.has(field))).toEqual([]);
});

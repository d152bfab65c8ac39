/** What the statement of privacy says against what the code can write: every key of the browser's storage, and every table of the database. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { partOf } from '../tools/for-stores.ts';

const STATEMENT = partOf(readFileSync('README.md', 'utf8'), 'Privacy');

/** Where it is told what lies under a key or in a table. */
const TOLD: Readonly<Record<string, string>> = {
  'session capture:': "What was read, with the page's address, and what you changed about it",
  'session sweep:': "What was read, with the page's address",
  'session edits':
    "what you changed about it (corrections, the distance, the seller's place) is kept in the browser's session storage",
  'sessionStorage weighings': 'Weighings that you typed are gone with their tab',
  'local settings': "Where the browser opens no database, your settings alone are kept, in the extension's plain storage",
  'local settings-unreadable': 'with a copy of what of them could not be read',
  'table finds': "your finds, each with the ad's words and address, what you changed about it, your notes and what you paid",
  'table ads': "your finds, each with the ad's words and address",
  // Hashes of an ad's words, and its address.
  'table marks': "your finds, each with the ad's words and address",
  'table removed': 'A find that you remove can be brought back for 30 days',
  'table owned': 'your kit',
  'table needs': 'your kit',
  'table rates': 'your rates',
  'table captured': "prices that you kept of shops' pages and their addresses",
  'table settings': 'your settings, the place that you set out from among them',
  'table aside': "A record that can't be read is set aside as it was, until you delete it",
  'table tombs': "Of what is deleted only the record's name",
};

const sources = readdirSync('extension', { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => ({ file, code: readFileSync(join('extension', file), 'utf8') }));

/** Names and beginnings of keys stand as constants at the top of the file that writes them. */
const constants = (code: string): string[] => [...code.matchAll(/^const [A-Z_]+ = '([^']+)';$/gm)].map(([, text = '']) => text);

const areas = (code: string): ReadonlySet<string | undefined> =>
  new Set([...code.matchAll(/\b(?:storage\.(\w+)\.set|(sessionStorage)\.setItem)\(/g)].map(([, own, page]) => own ?? page));

/** "session edits": an area of the extension's storage, or the page's own, and a key; of a file that names no key its own name. */
const keys = sources.flatMap(({ file, code }) => {
  const named = constants(code);
  return [...areas(code)].flatMap((area) => (named.length > 0 ? named : [file]).map((key) => `${area} ${key}`));
});

const tables = [
  ...(/\.stores\(\{([\s\S]+?)\}\)/.exec(readFileSync('extension/store/database.ts', 'utf8'))?.[1] ?? '').matchAll(
    /^\s*(\w+): '/gm,
  ),
].map(([, table]) => `table ${table}`);

describe('the statement of privacy', () => {
  it('tells every key and every table, and no other', () => {
    // Two numbers, which say how often something was written.
    const untold = ['table counters'];
    expect([...keys, ...tables].sort()).toEqual([...Object.keys(TOLD), ...untold].sort());
  });

  it.each(Object.entries(TOLD))('tells of %s', (_, words) => expect(STATEMENT).toContain(words));

  it('would see a key that is named nowhere else', () => {
    for (const { file, code } of sources)
      for (const [, given = ''] of code.matchAll(/storage\.\w+\.set\(([^)]{0,20})/g))
        expect(given, file).toMatch(/^(?:entry$|\{ \[(?:[A-Z_]+\]|\w+\())/);
  });

  // No copy of the API's storage under another name, no other place, and the database in its own folder.
  it.each([
    [/\.storage\b(?!\.(?:session|local)\.(?:get|set|remove)\(|\.onChanged\.)|\{[^{}]*\bstorage\b[^{}]*\} = /, []],
    [/\bsessionStorage\b/, ['workshop/weigh/draft.ts']],
    [/\blocalStorage\b|\bdocument\.cookie\b|\bcookieStore\b|\bcaches\./, []],
    [/\bindexedDB\b|\bstorageBuckets\b|\bextends Dexie\b/, ['store/copy.ts', 'store/database.ts']],
  ])('%s is written about nowhere else', (way, files) => {
    const withoutComments = (code: string): string => code.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
    expect(
      sources
        .filter(({ code }) => way.test(withoutComments(code)))
        .map(({ file }) => file)
        .sort(),
    ).toEqual(files);
  });
});

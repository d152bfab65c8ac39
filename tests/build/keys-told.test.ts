/** README's table of keys against the code: a file that hears keys has a row there, and the row names each of them. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const HEARS = /\bonKeyDown=\{|\bkeydown\b|KeyboardEvent/;
const NAMES = /\b(?:Enter|Escape|Arrow(?:Up|Down|Left|Right)|Page(?:Up|Down)|Home|End)\b(?=['":])|(?<==== )' '/g;

/** As the table says it. */
const WORDS: Readonly<Record<string, RegExp>> = {
  Enter: /\bEnter\b/,
  Escape: /\bEscape\b/,
  ArrowUp: /\bArrow (?:\w+ and )?up\b/i,
  ArrowDown: /\bArrow (?:\w+ and )?down\b/i,
  ArrowLeft: /\barrow left\b/,
  ArrowRight: /\barrow left and right\b/,
  PageUp: /\bPage up\b/,
  PageDown: /\bPage up and down\b/,
  Home: /\bHome\b/,
  End: /\bEnd\b/,
  "' '": /\bSpace\b/,
};

/** Which row tells of a file's keys; null where it only passes them on, or hears that one was pressed. */
const ROWS: Readonly<Record<string, string | null>> = {
  'capture/pick/listen.ts': 'while you pick',
  'capture/sweep/watch.ts': 'while a page’s ads are read',
  'panel/sweep/sweep-list.tsx': 'list of a page’s ads',
  'panel/another.tsx': 'box for a pasted ad',
  'panel/seller-draft.tsx': 'message to the seller',
  'components/number-field.tsx': 'field for a number, or for several',
  'components/list-field.tsx': 'field for a number, or for several',
  'components/place-field.tsx': 'field for a place',
  'workshop/finds/rows.tsx': 'finds',
  'workshop/finds/window.ts': 'finds',
  'workshop/finds/row.tsx': null,
  'components/whole-fields.ts': null,
  'workshop/bought-form.tsx': '“I bought it”, and “are you sure”',
  'workshop/sure.tsx': '“I bought it”, and “are you sure”',
};

const section = readFileSync('README.md', 'utf8').split('\n## Keys\n')[1]?.split('\n## ')[0] ?? '';
const rows = new Map(
  [...section.matchAll(/^\| (.*?) *\| (.*?) *\|$/gm)].map(([, where = '', keys = '']) => [where.replaceAll("'", '’'), keys]),
);
const code = new Map(
  readdirSync('extension', { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => [file, readFileSync(join('extension', file), 'utf8')]),
);
const hearing = [...code].filter(([file, text]) => HEARS.test(text) || file === 'workshop/finds/window.ts');

describe('README tells every key that is heard', () => {
  it('of every file that hears any, and of no other', () =>
    expect(hearing.map(([file]) => file).sort()).toEqual(Object.keys(ROWS).sort()));

  it.each(hearing)('%s', (file, text) => {
    const where = ROWS[file];
    const named = [...new Set([...text.matchAll(NAMES)].map(([name]) => name))];
    if (where === null || where === undefined) return expect(named).toEqual([]);
    const told = rows.get(where) ?? '';
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((name) => !WORDS[name]?.test(told))).toEqual([]);
  });

  it('and no row that nothing hears', () => {
    const known = new Set(['where', 'any page', ...Object.values(ROWS)]);
    expect([...rows.keys()].filter((where) => !known.has(where) && !/^-+$/.test(where))).toEqual([]);
  });
});

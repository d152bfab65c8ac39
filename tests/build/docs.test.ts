/** README.md and DEVELOPERS.md against the tree: every path is there, every command and option is told, and the example is what is printed. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { toContract } from '../../src/contract.ts';
import { evaluate } from '../../src/evaluate.ts';
import { listingFromText } from '../../src/listing/page-listing.ts';
import { settingsFrom } from '../tools/evaluate/settings.ts';
import { english } from '../tools/evaluate/strings.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8');
const README = textOf('README.md');

/** What a build or a run makes, and so is not in a fresh clone. */
const MADE = ['dist/', 'out/', 'node_modules/'];
const TOP = readdirSync(ROOT);
const PATH = /^\.?[\w-]+(?:[./][\w.-]+)*\/?$/;

/** Paths in backticks: what begins with a folder of the project, and bare file names that it could have at its top. */
const pathsIn = (text: string): string[] =>
  [...text.replaceAll(/^ *```[\s\S]*?^ *```/gm, '').matchAll(/`([^`\n]+)`/g)]
    .map(([, quoted = '']) => quoted)
    .filter((quoted) => PATH.test(quoted) && !MADE.some((made) => `${quoted}/`.startsWith(made)))
    .filter((quoted) =>
      quoted.includes('/') ? TOP.includes(quoted.split('/')[0] ?? '') : /\.(?:m?[jt]sx?|md|json)$/.test(quoted),
    );

/** Part files of strings and the reader's example files go by their bare names. */
const BARE = ['settings.json', ...readdirSync(join(ROOT, 'extension/_locales/en'))];

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (file) => {
  const paths = pathsIn(textOf(file));

  it('names paths', () => expect(paths.length).toBeGreaterThan(file === 'README.md' ? 4 : 80));

  it('names none that is not there', () =>
    expect(paths.filter((path) => !BARE.includes(path) && !existsSync(join(ROOT, path)))).toEqual([]));
});

describe('README.md', () => {
  it('tells every command of package.json', () => {
    const scripts = Object.keys(JSON.parse(textOf('package.json')).scripts).filter((name) => !name.startsWith('pre'));
    expect(scripts.length).toBeGreaterThan(7);
    const told = (name: string): boolean => new RegExp(`\`npm (?:run (?:-s )?)?${name}[ \`]`).test(README);
    expect(scripts.filter((name) => !told(name))).toEqual([]);
  });

  it('tells every option of the commands, and none that they lack', () => {
    const tools = ['build.mjs', ...readdirSync(join(ROOT, 'tests/tools')).map((file) => `tests/tools/${file}`)];
    const code = tools
      .filter((file) => /\.(?:ts|mjs)$/.test(file))
      .map(textOf)
      .join('\n');
    const known = [
      /argv\.(?:includes|indexOf)\('--([\w-]+)'\)/g,
      /\basked\('([\w-]+)'\)/g,
      /\b([\w-]+): \{ type: '(?:string|boolean)' \}/g,
    ]
      .flatMap((pattern) => [...code.matchAll(pattern)])
      .map(([, name]) => `--${name}`);
    expect(known).toEqual(expect.arrayContaining(['--watch', '--url', '--settings', '--batch', '--letters']));
    const told = [...README.matchAll(/(?<![\w-])--[a-z][\w-]*/g)].map(([option]) => option);
    expect([...new Set(told)].sort()).toEqual([...new Set(known)].sort());
  });

  it('tells every permission and every setting', () => {
    const template: { permissions: string[] } = JSON.parse(textOf('manifest.template.json'));
    const settings = Object.keys(settingsFrom('{}', 'none'));
    for (const name of [...template.permissions, 'sidePanel', ...settings]) expect(README, name).toContain(`\`${name}\``);
  });

  it('shows an example that is what `evaluate` prints today', () => {
    const fenced = (language: string): string => README.split(`\`\`\`${language}\n`)[1]?.split('```')[0] ?? '';
    const settings = /`settings\.json` holds `([^`]+)`/.exec(README)?.[1] ?? '';
    const printed = toContract(evaluate(listingFromText(fenced('text')), settingsFrom(settings, 'settings.json')), english());
    expect(printed).toMatchObject(JSON.parse(fenced('json')));
  });
});

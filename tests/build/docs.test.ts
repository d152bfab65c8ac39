/** README.md, DEVELOPERS.md and BUILDING.md against the tree: every path is there, every command and option is told, and the example is what is printed. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { makeManifest } from '../../build.mjs';
import { SCREENS } from '../../extension/workshop/screens.ts';
import { adRules, itemRules } from '../../src/flags/index.ts';
import { LIMITS } from '../../src/flags/limits.ts';
import { settingsSchema } from '../../src/listing/settings.ts';
import { settingsFrom } from '../tools/evaluate/settings.ts';
import { readStrings } from '../tools/evaluate/strings.ts';
import { forStores } from '../tools/for-stores.ts';
import { PICTURES } from '../tools/picture-names.ts';
import { RENAMED, WORKERS } from './bundles.mjs';
import { TOLD_ONLY } from './checks.mjs';

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

/** Code of files, and of folders with all that is in them. */
const codeIn = (...places: string[]): string[] =>
  places
    .flatMap((place) =>
      place.includes('.')
        ? place
        : readdirSync(join(ROOT, place), { recursive: true, encoding: 'utf8' }).map((file) => join(place, file)),
    )
    .filter((file) => /\.(?:tsx?|mjs)$/.test(file))
    .map(textOf);

/** Names of properties, and of keys that a map is held to, anywhere in a JSON schema. */
function namesIn(schema: unknown): string[] {
  if (Array.isArray(schema)) return schema.flatMap(namesIn);
  if (typeof schema !== 'object' || schema === null) return [];
  const {
    properties = {},
    propertyNames = {},
    ...rest
  } = schema as {
    properties?: object;
    propertyNames?: { enum?: string[] };
  };
  return [
    ...Object.keys(properties),
    ...(propertyNames.enum ?? []),
    ...[...Object.values(properties), ...Object.values(rest)].flatMap(namesIn),
  ];
}

const FOR_STORES = Object.keys(forStores(ROOT));
/** Part files of strings, the reader's example files, what is built and what is packed go by their bare names. */
const BARE = [
  'settings.json',
  ...WORKERS.map(({ to }) => to),
  ...FOR_STORES,
  ...readdirSync(join(ROOT, 'extension/_locales/en')),
];

describe.each(['README.md', 'DEVELOPERS.md', 'BUILDING.md'])('%s', (file) => {
  const paths = pathsIn(textOf(file));

  it('names paths', () => expect(paths.length).toBeGreaterThan(file === 'DEVELOPERS.md' ? 80 : 4));

  it('names none that is not there', () =>
    expect(paths.filter((path) => !BARE.includes(path) && !existsSync(join(ROOT, path)))).toEqual([]));
});

it('DEVELOPERS.md tells into which field every text for the stores goes', () => {
  const recipe = textOf('DEVELOPERS.md').split('\n## Publish a version\n')[1]?.split('\n## ')[0] ?? '';
  const texts = FOR_STORES.filter((name) => name.endsWith('.md'));
  expect(texts.length).toBeGreaterThan(6);
  expect(texts.filter((name) => !recipe.includes(`\`${name}\``))).toEqual([]);
});

describe('BUILDING.md', () => {
  const BUILDING = textOf('BUILDING.md');

  it('tells every name that becomes another in libraries, and none that does not', () => {
    const told = [...BUILDING.matchAll(/((?:`[^`]+`(?: and )?)+) becomes? `([^`]+)`/g)].flatMap(([, names = '', to]) =>
      [...names.matchAll(/`([^`]+)`/g)].map(([, from]) => `${from} becomes ${to}`),
    );
    const made = Object.values(RENAMED).flatMap((names) => Object.entries(names).map(([from, to]) => `${from} becomes ${to}`));
    expect(told.sort()).toEqual(made.sort());
  });

  it('tells how many addresses are left in libraries, and README.md the same', () => {
    const number = ['No', 'One', 'Two', 'Three', 'Four', 'Five'][TOLD_ONLY.length];
    expect(BUILDING).toContain(`\n${number} addresses are left in error messages of libraries`);
    expect(README).toContain(` ${number?.toLowerCase()} in error messages of libraries`);
  });
});

describe('README.md', () => {
  it('tells every command of package.json', () => {
    const scripts = Object.keys(JSON.parse(textOf('package.json')).scripts).filter((name) => !name.startsWith('pre'));
    expect(scripts.length).toBeGreaterThan(7);
    const told = (name: string): boolean => new RegExp(`\`npm (?:run (?:-s )?)?${name}[ \`]`).test(README);
    expect(scripts.filter((name) => !told(name))).toEqual([]);
  });

  it.each(['README.md', 'DEVELOPERS.md', 'BUILDING.md'])('%s tells no command that package.json lacks', (file) => {
    const { scripts } = JSON.parse(textOf('package.json'));
    const told = [...textOf(file).matchAll(/`npm (?:run (?:-s )?([\w:]+)|(start|test)\b)/g)].map(
      ([, run, short]) => run ?? short,
    );
    expect(told.length).toBeGreaterThan(0);
    expect(told.filter((name) => !(String(name) in scripts))).toEqual([]);
  });

  it('tells every option of the commands, and none that they lack', () => {
    const code = codeIn('build.mjs', 'tests/tools', 'tests/bench').join('\n');
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

  it('tells every setting', () => {
    // Some names stand in other parts too, as what `evaluate` prints.
    const told = README.split('\nSettings, all optional:\n')[1]?.split('\n`src/listing/settings.ts` says')[0] ?? '';
    expect(told.length).toBeLessThan(4000);
    for (const name of Object.keys(settingsFrom('{}', 'none'))) expect(told, name).toContain(`\`${name}\``);
    // And the names within them. What finds teach is written by the extension alone.
    const { properties } = z.toJSONSchema(settingsSchema, { io: 'input' });
    const within = namesIn({ properties: { ...properties, learned: {} } });
    expect(within).toEqual(expect.arrayContaining(['olympicLifts', 'lat', 'hex-bar', 'straightness', 'pieces', 'basis']));
    expect(within.filter((name) => !told.includes(`\`${name}\``))).toEqual([]);
  });

  it('tells every variable of the environment that anything goes by', () => {
    /** What the system, npm and our own commands set. */
    const given = ['PATH', 'DISPLAY', 'INIT_CWD', 'IRONSIFT_ROOT', 'npm_execpath'];
    const named = codeIn('tests', 'build.mjs')
      .flatMap((text) => [...text.matchAll(/process\.env(?:\.(\w+)|\[[`']([\w$]+))/g)])
      .map(([, plain, quoted]) => plain ?? quoted ?? '')
      // `IRONSIFT_${…}` of the two browsers.
      .flatMap((name) => (name === 'IRONSIFT_$' ? ['IRONSIFT_CHROMIUM', 'IRONSIFT_FIREFOX'] : name));
    expect(named).toEqual(expect.arrayContaining(['CI', 'IRONSIFT_FIREFOX', 'EVERY_AD']));
    const told = README + textOf('DEVELOPERS.md');
    expect([...new Set(named)].filter((name) => !given.includes(name) && !told.includes(`\`${name}`))).toEqual([]);
  });

  it('tells every entry of the page’s menu by its name', () => {
    const strings = readStrings();
    const titles = [...textOf('extension/background/menus.ts').matchAll(/getMessage\('(\w+)'\)/g)].map(
      ([, key = '']) => strings[key],
    );
    expect(titles).toHaveLength(3);
    for (const title of titles) expect(README).toContain(`"${title}"`);
  });

  it('has a row for every permission of either browser and no other, with what it is for and why not less', () => {
    const asked = (target: 'chrome' | 'firefox'): string[] =>
      makeManifest(JSON.parse(textOf('manifest.template.json')), target).permissions;
    const rows = (README.split('\n## Permissions\n')[1]?.split('\n## ')[0] ?? '')
      .split('\n')
      .filter((line) => line.startsWith('| `'))
      .map((line) => line.split('|').map((cell) => cell.trim()));
    const told = (chromeOnly: boolean): string[] =>
      rows.filter(([, name = '']) => name.endsWith('(Chrome only)') === chromeOnly).map(([, name]) => name?.split('`')[1] ?? '');
    expect(told(false).sort()).toEqual([...asked('firefox')].sort());
    expect([...told(false), ...told(true)].sort()).toEqual([...asked('chrome')].sort());
    for (const [, name, what = '', why = ''] of rows) {
      expect(what.length, `${name}: what for`).toBeGreaterThan(20);
      expect(why.length, `${name}: why not less`).toBeGreaterThan(20);
    }
  });

  it('tells every shortcut and every screen of the Workshop, by the name it has there', () => {
    const { commands }: { commands: Record<string, { suggested_key: { default: string } }> } = JSON.parse(
      textOf('manifest.template.json'),
    );
    const shortcuts = Object.values(commands).map((command) => command.suggested_key.default);
    expect(shortcuts.length).toBeGreaterThan(1);
    for (const shortcut of shortcuts) expect(README).toContain(`**${shortcut}**`);
    const workshop = README.split('## The Workshop')[1]?.split('\n## ')[0] ?? '';
    const strings = readStrings();
    for (const { id } of SCREENS) expect(workshop, id).toContain(`**${strings[`workshop_${id.replaceAll('-', '_')}`]}**`);
  });
});

/** docs/flags.md as it must be. After a change of flags or limits: `npx vitest run --config tests/vitest.config.ts --project build docs -u`. */
function flagTables(): string {
  const strings = readStrings();
  const said = (key: string): string => {
    const text = strings[key];
    if (text === undefined) throw new Error(`there is no string ${key}`);
    return text.replaceAll('|', '\\|');
  };
  const source = (name: string): string => said(`source_${name.replaceAll('-', '_')}`);
  const flags = [...adRules, ...itemRules].map(({ id, weight, source: from }) => {
    const stem = `flag_${id.replaceAll('-', '_')}_`;
    // A rule may say something else by degree: flag_rust_heavy instead of flag_rust_says.
    const keys = strings[`${stem}says`] ? [`${stem}says`] : Object.keys(strings).filter((key) => key.startsWith(stem));
    const says = keys
      .filter((key) => !/_(?:found|limit|one)$/.test(key))
      .map(said)
      .join(' / ');
    if (says === '') throw new Error(`flag ${id} says nothing`);
    return `| \`${id}\` | ${weight} | ${says} | ${source(from)} |`;
  });
  const limits = Object.entries(LIMITS).map(
    ([name, { value, unit, source: from }]) => `| \`${name}\` | ${value} ${unit} | ${source(from)} |`,
  );
  return [
    '# Flags and their limits',
    '',
    'Made from the code, and checked against it. A word in braces is a figure of the ad or of your settings.',
    '',
    '| flag | weight | what it says | where its limit comes from |',
    '| --- | --- | --- | --- |',
    ...[...new Set(flags)],
    '',
    '| limit | value | source |',
    '| --- | --- | --- |',
    ...limits,
    '',
  ].join('\n');
}

it('docs/flags.md tells every flag and every limit', async () => {
  expect(itemRules.length).toBeGreaterThan(20);
  // What is not there would be written, and pass.
  expect(existsSync(join(ROOT, 'docs/flags.md'))).toBe(true);
  await expect(flagTables()).toMatchFileSnapshot('../../docs/flags.md');
});

it('CHANGELOG.md begins with the version of package.json', () => {
  const { version } = JSON.parse(textOf('package.json'));
  expect(/^## (\S+) \(\d{1,2} [A-Z][a-z]+ 20\d\d\)$/m.exec(textOf('CHANGELOG.md'))?.[1]).toBe(version);
});

describe('what the stores allow', () => {
  // Chrome for Developers, "Manifest - Description": 132 characters at most; "Manifest - Name": 75, short ones in menus (from memory).
  it.each(['en', 'de'])('keeps name and description short enough in %s', (language) => {
    const { extName, extDescription } = JSON.parse(textOf(`extension/_locales/${language}/add-on.json`));
    expect(extName.message.length).toBeLessThanOrEqual(45);
    expect(extDescription.message.length).toBeLessThanOrEqual(132);
  });

  it('has icons of the sizes that they are named for', () => {
    const { icons }: { icons: Record<string, string> } = JSON.parse(textOf('manifest.template.json'));
    expect(Object.keys(icons)).toEqual(['16', '32', '48', '128']);
    for (const [size, path] of Object.entries(icons)) {
      // PNG specification, 11.2.1: the header chunk holds width and height, big-endian, from byte 16.
      const picture = readFileSync(join(ROOT, 'extension', path));
      expect([picture.readUInt32BE(16), picture.readUInt32BE(20)], path).toEqual([Number(size), Number(size)]);
    }
  });
});

it.each(PICTURES)('the README shows %s, and it is a small picture', (name) => {
  expect(textOf('README.md')).toContain(`(docs/pictures/${name})`);
  const picture = readFileSync(join(ROOT, 'docs/pictures', name));
  expect(picture.subarray(1, 4).toString()).toBe('PNG');
  expect(picture.length).toBeLessThan(250_000);
});

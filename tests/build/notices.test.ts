// @vitest-environment node
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import highs from 'highs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bundledPackages, notices } from './notices.mjs';
import { PLACE_PACKAGES } from './place-lists.mjs';
import { SIGNS, SOLVER_PARTS } from './solver-notice.mjs';

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'ironsift-notices-'));
});
afterAll(() => rmSync(root, { recursive: true }));

/** A package as it lies in node_modules. */
function installed(name: string, license: string | undefined, files: Readonly<Record<string, string>>): void {
  const folder = join(root, 'node_modules', name);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name, version: '1.2.3', license }));
  for (const [file, text] of Object.entries({ 'index.js': 'export const a = 1;', ...files }))
    writeFileSync(join(folder, file), text);
}

const bundleOf = (inputs: Readonly<Record<string, number>>, output = 'panel.js') => ({
  outputs: {
    [`dist/${output}`]: {
      bytes: 1,
      imports: [],
      exports: [],
      inputs: Object.fromEntries(Object.entries(inputs).map(([path, bytesInOutput]) => [path, { bytesInOutput }])),
    },
  },
});

it('knows which package is really in which file', () => {
  const bundle = bundleOf({
    'src/evaluate.ts': 10,
    'node_modules/used/index.js': 5,
    'node_modules/@scope/part/a.js': 5,
    'node_modules/shaken-off/index.js': 0,
  });
  expect([...bundledPackages(bundle)]).toEqual([
    ['@scope/part', { inputs: ['node_modules/@scope/part/a.js'], files: ['panel.js'] }],
    ['used', { inputs: ['node_modules/used/index.js'], files: ['panel.js'] }],
  ]);
});

it('gives version, licence, file and text, and passes a NOTICE on', () => {
  installed('used', 'Apache-2.0', { LICENSE: 'The text', NOTICE: 'Made by many' });
  const text = notices(root, bundleOf({ 'node_modules/used/index.js': 5 }));
  const carried = 'Unchanged but for minifying; its source is the npm package used, version 1.2.3.';
  expect(text).toContain(`used 1.2.3 (Apache-2.0)\nin panel.js\n${carried}\n\nThe text\n\nMade by many\n`);
});

it('tells what the build changes in a package, and where', () => {
  installed('changed', 'MPL-2.0', { LICENSE: 'The text', 'index.js': 'e.innerHTML = fetch(x)' });
  const of = (output: string) => notices(root, bundleOf({ 'node_modules/changed/index.js': 5 }, output));
  const source = 'Minified; its source is the npm package changed, version 1.2.3.\n\nThe text';
  const markup = 'Changed: innerHTML to noMarkup';
  expect(of('panel.js')).toContain(`\n${markup}. ${source}`);
  expect(of('solver-worker.js')).toContain(`\n${markup}; fetch to noFetch. ${source}`);
});

it('takes the licence from its text where package.json names none', () => {
  installed('unnamed', undefined, { 'LICENSE.md': 'ISC License\n\nPermission' });
  expect(notices(root, bundleOf({ 'node_modules/unnamed/index.js': 5 }))).toContain('unnamed 1.2.3 (ISC)');
});

it('refuses a package without a licence text, or under a licence that is not allowed', () => {
  installed('textless', 'MIT', {});
  installed('strict', 'GPL-3.0-only', { LICENSE: 'The text' });
  installed('silent', undefined, { LICENSE: 'All rights reserved' });
  const of = (name: string) => () => notices(root, bundleOf({ [`node_modules/${name}/index.js`]: 5 }));
  expect(of('textless')).toThrow('textless is bundled, but comes without a licence text');
  expect(of('strict')).toThrow('its licence (GPL-3.0-only) is not allowed');
  expect(of('silent')).toThrow('its licence (none named) is not allowed');
});

it('names what is compiled into the solver, where the solver is carried', () => {
  installed('highs', 'MIT', { LICENSE: 'The text' });
  expect(notices(root, bundleOf({ 'node_modules/highs/index.js': 5 }))).toContain(SOLVER_PARTS);
  expect(notices(root, bundleOf({ 'node_modules/used/index.js': 5 }))).not.toContain('IPX');
});

it('carries the licence of each package that the place lists are taken from', () => {
  expect(PLACE_PACKAGES.length).toBeGreaterThan(1);
  const text = notices(root, bundleOf({}));
  for (const name of PLACE_PACKAGES) {
    const [holder = 'none'] = readFileSync(`node_modules/${name}/LICENSE`, 'utf8').match(/^Copyright \(c\) .+$/m) ?? [];
    const [, its = ''] = text.split(`\n${name}:\n\n`);
    expect(its).toMatch(/^MIT License\n/);
    expect(its.split('\nSOFTWARE.')[0]).toContain(`\n${holder.trim()}\n`);
  }
});

it('knows by the solver that is installed what is compiled into it', async () => {
  const compiled = readFileSync('node_modules/highs/build/highs.wasm', 'latin1');
  expect([...SIGNS.inside, ...SIGNS.leftOut].filter((sign) => !compiled.includes(sign))).toEqual([]);
  const { solve } = await highs();
  const solveBy = (solver: 'ipx' | 'hipo') => () => solve('Maximize\n x\nSubject To\n c: x <= 4\nEnd', { solver }).Status;
  expect(solveBy('ipx')()).toBe('Optimal');
  expect(solveBy('hipo')).toThrow("Unable to set option 'solver'");
  // What the package says of itself: the licence that all of this stands beside.
  expect(readFileSync('node_modules/highs/LICENSE', 'utf8')).toMatch(/^MIT License\n[\s\S]*HiGHS/);
  expect(SOLVER_PARTS).toContain('IPX, Copyright (c) 2018-2020 ERGO-Code. Used in Ironsift under the MIT license.');
});

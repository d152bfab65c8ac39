/** Files that are loaded together become one, and the program stays the same: run in Node, which loads modules as a browser does. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import esbuild from 'esbuild';
import { afterAll, expect, test } from 'vitest';
import { bundleAll, PAGES } from './bundles.mjs';
import { groupsOf } from './chunk-groups.mjs';
import { type Made, mergeChunks } from './merge-chunks.mjs';

const root = mkdtempSync(join(tmpdir(), 'ironsift-merged-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** Two pages, what comes behind both, and screens of the second. Every module says when it is run; one counts, which only works where it is there once. */
const SOURCES = {
  'count.js': "ran('count'); let n = 0; export const next = () => ++n;",
  'words.js': "ran('words'); import { next } from './count.js'; export const word = () => 'word ' + next();",
  'sum.js': "ran('sum'); import { next } from './count.js'; export const sum = (a, b) => a + b + next();",
  'rare.js': "ran('rare'); export const rare = 'rare';",
  'large.js': `ran('large'); export const large = ${JSON.stringify('x'.repeat(9000))};`,
  'core.js':
    "ran('core'); import { word } from './words.js'; import { rare } from './rare.js'; export const core = () => word() + rare;",
  'one.js':
    "ran('one'); import { sum } from './sum.js'; import { word } from './words.js'; export default [word(), sum(1, 2), (await import('./core.js')).core()];",
  'two.js':
    "ran('two'); import { sum } from './sum.js'; import { next } from './count.js'; export const open = async (name) => name === 'a' ? (await import('./a.js')).a() : (await import('./b.js')).b(); export default [next(), sum(3, 4)];",
  'a.js':
    "ran('a'); import { rare } from './rare.js'; import { large } from './large.js'; import { word } from './words.js'; export const a = () => rare + large.length + word();",
  'b.js':
    "ran('b'); import { large } from './large.js'; import { word } from './words.js'; export const b = () => large.length + word();",
};
const FIRST = { page: 'dist/one.js', behind: ['core.js'] };

async function split(): Promise<Made> {
  for (const [name, code] of Object.entries(SOURCES)) writeFileSync(join(root, name), code);
  const form = { absWorkingDir: root, outdir: 'dist', write: false, metafile: true } as const;
  return esbuild.build({
    ...form,
    entryPoints: ['one.js', 'two.js'],
    bundle: true,
    format: 'esm',
    splitting: true,
    chunkNames: 'chunks/[name]-[hash]',
  });
}

/** Runs both pages and both screens; what they give, and which modules ran in which order. */
async function play(made: Made, folder: string) {
  const path = (one: string) => join(root, folder, relative(join(root, 'dist'), one));
  for (const { path: one, contents } of made.outputFiles ?? []) {
    mkdirSync(dirname(path(one)), { recursive: true });
    writeFileSync(path(one), contents);
  }
  writeFileSync(join(root, folder, 'package.json'), '{"type":"module"}');
  const order: string[] = [];
  Object.assign(globalThis, { ran: (name: string) => order.push(name) });
  const page = (name: string) => import(/* @vite-ignore */ pathToFileURL(join(root, folder, name)).href);
  const one = (await page('one.js')).default;
  const two = await page('two.js');
  return { said: [one, two.default, await two.open('a'), await two.open('b')], order: order.sort() };
}

test('a program of merged files says the same, and runs every module once', async () => {
  const made = await split();
  const merged = await mergeChunks(made, FIRST, 'dist/two.js', { absWorkingDir: root, minify: true, format: 'esm' });
  expect(merged.outputFiles?.length).toBeLessThan(made.outputFiles?.length ?? 0);
  const [before, after] = [await play(made, 'before'), await play(merged, 'after')];
  expect(after).toEqual(before);
  expect(after.order).toEqual(
    Object.keys(SOURCES)
      .map((name) => name.slice(0, -3))
      .sort(),
  );
});

test('what one page never needs, and what is large, is in no file that it loads', async () => {
  const { metafile } = await split();
  const outputs = metafile?.outputs ?? {};
  const group = groupsOf(outputs, FIRST, 'dist/two.js');
  const outputOf = (source: string) =>
    Object.keys(outputs).find((one) => outputs[one]?.inputs[source] && !outputs[one]?.entryPoint) ?? '';
  expect(group.has(outputOf('large.js'))).toBe(false);
  expect(group.get(outputOf('rare.js'))).not.toBe(group.get(outputOf('words.js')) ?? 'none');
});

test('the pages begin with few files, and the account of each adds up', async () => {
  const { metafile, outputFiles } = await bundleAll(process.cwd(), false);
  const load = (one: string, seen = new Set([one])): Set<string> => {
    for (const { path, kind } of metafile.outputs[one]?.imports ?? [])
      if (kind === 'import-statement' && !seen.has(path)) load(path, seen.add(path));
    return seen;
  };
  const written = new Set(outputFiles.map(({ path }) => relative(process.cwd(), path)));
  for (const { to } of PAGES) {
    const loaded = load(`dist/${to}`);
    expect([...loaded].filter((one) => !written.has(one))).toEqual([]);
    expect(loaded.size, to).toBeLessThanOrEqual(6);
  }
});

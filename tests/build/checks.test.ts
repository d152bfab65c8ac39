import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  bannedCalls,
  bytes,
  gzipped,
  impurities,
  markupWriters,
  missingMessages,
  missingPaths,
  overBudget,
  remoteAddresses,
} from './checks.mjs';

const sound = {
  'manifest.json': '{"default_locale":"en","name":"__MSG_name__","icons":{"16":"icons/a.png"},"background":{"scripts":["a.js"]}}',
  '_locales/en/messages.json': '{"name":{"message":"N"}}',
  'icons/a.png': '',
  'a.js':
    'a.retrieval(1);typeof x=="function";const svg="http://www.w3.org/2000/svg",t="https://schema.org/Offer";x.innerHTML==y;o.fetch(1);import("./chunks/c.js")',
  'a.html': '<link rel="stylesheet" href="styles/a.css"><script src="a.js"></script><a href="#top">up</a>',
  'styles/a.css': '@import "b.css"; p { background: url(../icons/a.png) } q { background: url("data:image/png;base64,AA") }',
  'styles/b.css': '',
  'chunks/c.js': 'import{d}from"./d.js"',
  'chunks/d.js': '',
};
const built = (changes: Record<string, string | null> = {}) =>
  Object.fromEntries(
    Object.entries<string | null>({ ...sound, ...changes }).flatMap(([path, content]) =>
      content === null ? [] : [[path, bytes(content)]],
    ),
  );
const checks = { missingPaths, missingMessages, bannedCalls, remoteAddresses };

it.each(Object.entries(checks))('%s finds nothing in a sound build', (_name, check) => {
  expect(check(built())).toEqual([]);
});

describe('missingPaths', () => {
  it.each([
    ['a.js', 'manifest.json names a.js'],
    ['icons/a.png', 'manifest.json names icons/a.png'],
    ['styles/a.css', 'a.html names styles/a.css'],
    ['styles/b.css', 'styles/a.css names styles/b.css'],
    ['chunks/c.js', 'a.js names chunks/c.js'],
    ['chunks/d.js', 'chunks/c.js names chunks/d.js'],
  ])('misses %s', (path, why) => {
    expect(missingPaths(built({ [path]: null })).join('\n')).toContain(why);
  });
});

describe('missingMessages', () => {
  it('misses a string that the manifest wants', () => {
    expect(missingMessages(built({ '_locales/en/messages.json': '{}' }))).toEqual([expect.stringContaining('"name"')]);
    expect(missingMessages(built({ '_locales/en/messages.json': null }))).toHaveLength(1);
  });
});

describe('bannedCalls', () => {
  it.each([
    'eval("1")',
    'x=eval (y)',
    'new Function("a")',
    'Function("a")()',
    'new  Function(y)',
    'new Function',
    'e.innerHTML=x',
    'e.outerHTML = x',
    'e.insertAdjacentHTML("a",x)',
    'document.write(x)',
    'setTimeout("go()",1)',
  ])('finds %s', (code) => {
    expect(bannedCalls(built({ 'a.js': code }))).toHaveLength(1);
  });
});

describe('remoteAddresses', () => {
  it.each([
    ['a.js', 'import("https://ads.example/x.js")'],
    ['chunks/c.js', 'x="https://tinyurl.com/y2uuvskbx"'],
    ['a.js', 'new WebSocket(x)'],
    ['a.js', 'fetch("/x")'],
    ['a.js', 'window.fetch(x)'],
    ['a.js', 'navigator.sendBeacon(x)'],
    ['a.js', 'new XMLHttpRequest'],
    ['a.html', '<script src="https://ads.example/x.js"></script>'],
    ['a.html', '<img src="//ads.example/x.png">'],
    ['styles/a.css', '@import "https://ads.example/x.css"'],
    ['styles/a.css', 'p { background: url(//ads.example/x.png) }'],
  ])('in %s finds %s', (path, content) => {
    expect(remoteAddresses(built({ [path]: content })).length).toBeGreaterThan(0);
  });
});

it.each([
  ['the solver', 'solver-worker.js', '"see http://web.mit.edu/lpsolve/doc/CPLEX-format.htm)"'],
  ['the store', 'chunks/c.js', '"See http://bit.ly/2kdckMn"'],
  ['the store', 'chunks/c.js', '"See https://tinyurl.com/y2uuvskb"'],
])('lets %s tell where to read on, in %s and nowhere else', (_whose, path, told) => {
  expect(remoteAddresses(built({ [path]: told }))).toEqual([]);
  expect(remoteAddresses(built({ 'a.js': told }))).toHaveLength(1);
});

it('lets through no other address of the same site', () => {
  const told = '"see http://web.mit.edu/lpsolve/doc/CPLEX-format.htm)"';
  expect(remoteAddresses(built({ 'solver-worker.js': `${told};fetch("http://web.mit.edu/lpsolve/doc/")` }))).toHaveLength(2);
});

describe('overBudget', () => {
  const noise = Array.from({ length: 4000 }, (_, i) => Math.sin(i).toString(36)).join('');

  it('lets a small bundle through and stops a large or a growing one', () => {
    const held = (budget: number) => [{ name: 'a', paths: ['a.js'], budget }];
    expect(overBudget(built({ 'a.js': noise }), held(1_000_000))).toEqual([]);
    expect(overBudget(built({ 'a.js': noise }), held(1000))).toEqual([expect.stringMatching(/^a is \d+ bytes gzipped/)]);
  });

  it('counts what is loaded with it, and misses what is gone', () => {
    const files = built({ 'a.js': noise, 'chunks/b.js': noise });
    const alone = gzipped(files['a.js']);
    expect(overBudget(files, [{ name: 'a', paths: ['a.js'], budget: alone }])).toEqual([]);
    expect(overBudget(files, [{ name: 'a', paths: ['a.js', 'chunks/b.js'], budget: alone }])).toHaveLength(1);
    expect(overBudget(files, [{ name: 'a', paths: ['c.js'], budget: alone }])).toEqual([expect.stringContaining('c.js')]);
    expect(overBudget(files, [{ name: 'a', paths: [], budget: alone }])).toHaveLength(1);
  });
});

describe('on a source tree', () => {
  let root: string;
  const write = (path: string, content: string) => {
    mkdirSync(join(root, path, '..'), { recursive: true });
    writeFileSync(join(root, path), content);
  };
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), 'ironsift-'));
  });
  afterEach(() => rmSync(root, { recursive: true }));

  it('impurities passes a core that stands alone', async () => {
    write('src/evaluate.ts', 'import { a } from "./a.ts"; export const b = a;');
    write('src/a.ts', 'export const a: number = 1;');
    expect(await impurities(root)).toEqual([]);
  });

  it('impurities finds a module of the extension, a platform module, a stray package and a missing core', async () => {
    expect(await impurities(root)).toEqual(['src/evaluate.ts is missing']);
    write('extension/x.ts', 'export const a = 1;');
    write('src/evaluate.ts', 'export { a } from "../extension/x.ts";');
    expect(await impurities(root)).toEqual(['src/ reaches outside itself: extension/x.ts']);
    write('src/evaluate.ts', 'import { readFileSync } from "node:fs"; export const a = readFileSync;');
    expect((await impurities(root)).join()).toContain('does not bundle on its own');
    write('node_modules/stray/index.js', 'export const a = 1;');
    write('node_modules/stray/package.json', '{"name":"stray","exports":"./index.js"}');
    write('src/evaluate.ts', 'export { a } from "stray";');
    expect((await impurities(root)).join()).toContain('node_modules/stray/index.js');
  });

  it('markupWriters names our modules that write markup, and leaves packages to the bundler', () => {
    write('extension/x.tsx', 'e.innerHTML = ad;');
    write('extension/y.ts', 'e.textContent = ad;');
    write('node_modules/p/x.ts', 'e.innerHTML = ad;');
    expect(markupWriters(root, ['extension/x.tsx', 'extension/y.ts', 'node_modules/p/x.ts'])).toEqual([
      expect.stringContaining('extension/x.tsx'),
    ]);
  });
});

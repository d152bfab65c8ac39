// @vitest-environment node
/** A reviewer's way: unpack the source somewhere else, build it with the same packages, and compare. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { build } from '../../build.mjs';
import { sourceFiles, sourcePackage } from './source-package.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const ZIPS = ['ironsift-chrome.zip', 'ironsift-firefox.zip'];

let source: Uint8Array;
let elsewhere: string;
beforeAll(() => {
  source = sourcePackage(ROOT);
  elsewhere = mkdtempSync(join(tmpdir(), 'ironsift-reviewer-'));
  for (const [path, content] of Object.entries(unzipSync(source))) {
    mkdirSync(dirname(join(elsewhere, path)), { recursive: true });
    writeFileSync(join(elsewhere, path), content, { mode: path === '.ci/run' ? 0o755 : 0o644 });
  }
  symlinkSync(join(ROOT, 'node_modules'), join(elsewhere, 'node_modules'));
});
afterAll(() => rmSync(elsewhere, { recursive: true }));

it('holds what is needed to build and to test, and nothing that is made', () => {
  const paths = Object.keys(unzipSync(source));
  expect(paths).toEqual(expect.arrayContaining(['BUILDING.md', 'LICENSE', 'build.mjs', 'package-lock.json', '.ci/run']));
  expect(paths.filter((path) => /^(?:node_modules|dist|out|\.git)\//.test(path))).toEqual([]);
});

it('builds elsewhere, in another time zone, into the same bytes', async () => {
  await build();
  execFileSync(process.execPath, ['build.mjs'], { cwd: elsewhere, env: { ...process.env, TZ: 'Pacific/Auckland' } });
  for (const zip of ZIPS) {
    const ours = readFileSync(join(ROOT, 'dist', zip));
    expect(ours.length).toBeGreaterThan(100_000);
    expect(readFileSync(join(elsewhere, 'dist', zip)).equals(ours), zip).toBe(true);
  }
});

it('can be packed again out of what was unpacked, after the build too', () => {
  expect(sourceFiles(elsewhere)).toEqual(sourceFiles(ROOT));
  expect(Buffer.from(sourcePackage(elsewhere)).equals(source)).toBe(true);
});

// @vitest-environment node
/** A reviewer's way: unpack the source somewhere else, build it with the same packages, and compare. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync, unzipSync } from 'fflate';
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

it('carries the solver as its package has it, by the command that BUILDING.md gives a reviewer', () => {
  const manual = readFileSync(join(elsewhere, 'BUILDING.md'), 'utf8');
  const code = readFileSync(join(ROOT, 'node_modules/highs/build/highs.wasm'));
  const print = createHash('sha256').update(code).digest('hex');
  const { version } = JSON.parse(readFileSync(join(ROOT, 'node_modules/highs/package.json'), 'utf8')) as { version: string };
  expect(manual).toContain(`the npm package \`highs\`, version ${version},`);
  expect(manual).toContain(`${code.length.toLocaleString('en-US')} bytes and the SHA-256\n\`${print}\``);
  const [, command = ''] = /^node -e "(.+)"$/m.exec(manual) ?? [];
  const compare = () => execFileSync(process.execPath, ['-e', command], { cwd: elsewhere, encoding: 'utf8' }).trim();
  expect(compare()).toBe(`the same ${print}`);
  // Told apart from a code of one byte more.
  const built = join(elsewhere, 'dist/firefox/solver-worker.js');
  const script = readFileSync(built, 'utf8');
  writeFileSync(
    built,
    script.replace(/H4sI[\w+/=]+/, Buffer.from(gzipSync(Buffer.concat([code, Buffer.of(0)]), { level: 1 })).toString('base64')),
  );
  expect(compare()).toMatch(/^DIFFERENT/);
});

it('can be packed again out of what was unpacked, after the build too', () => {
  expect(sourceFiles(elsewhere)).toEqual(sourceFiles(ROOT));
  expect(Buffer.from(sourcePackage(elsewhere)).equals(source)).toBe(true);
});

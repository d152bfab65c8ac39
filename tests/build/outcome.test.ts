/** The build as a whole, run as a person runs it, in copies of this checkout. */
import { execFile } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const PARTS = [
  'build.mjs',
  'manifest.template.json',
  'package.json',
  'tsconfig.json',
  'LICENSE',
  'extension',
  'src',
  'tests/build',
];
const run = promisify(execFile);

const folders: string[] = [];
function copyOfCheckout(prefix: string): string {
  const folder = mkdtempSync(join(tmpdir(), prefix));
  folders.push(folder);
  for (const part of PARTS) cpSync(join(ROOT, part), join(folder, part), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'));
  return folder;
}
const build = (folder: string) => run(process.execPath, ['build.mjs'], { cwd: folder });

let first: string;
beforeAll(async () => {
  first = copyOfCheckout('ironsift-a-');
  await build(first);
});
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});

describe('the build', () => {
  it('packs what stands in the folders', () => {
    for (const target of ['chrome', 'firefox']) {
      const files = unzipSync(readFileSync(join(first, `dist/ironsift-${target}.zip`)));
      expect(Object.keys(files)).toEqual(Object.keys(files).sort());
      expect(files['manifest.json']).toEqual(new Uint8Array(readFileSync(join(first, 'dist', target, 'manifest.json'))));
      const manifest = JSON.parse(new TextDecoder().decode(files['manifest.json']));
      expect(manifest.version).toBe(JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')).version);
    }
  });

  it('names the licences of what it bundles', () => {
    const notices = readFileSync(join(first, 'dist/chrome/NOTICES.txt'), 'utf8');
    for (const name of ['preact', 'zod']) expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+ \\(MIT\\)$`, 'm'));
    expect(notices).toMatch(/^csv42 [\d.]+ \(ISC\)$/m);
    expect(notices).toMatch(/^highs [\d.]+ \(MIT\)\nin solver-worker\.js$/m);
    expect(notices).toContain('Creative Commons Attribution 4.0');
    expect(notices).toContain('Permission is hereby granted');
  });

  it('holds no `innerHTML`, which its library has', () => {
    expect(readFileSync(join(ROOT, 'node_modules/preact/dist/preact.mjs'), 'utf8')).toContain('innerHTML');
    expect(readFileSync(join(first, 'dist/chrome/panel.js'), 'utf8')).not.toMatch(/innerHTML|outerHTML|insertAdjacentHTML/);
  });

  it('stops with a reason, and leaves the last build alone, when something is missing', async () => {
    const broken = copyOfCheckout('ironsift-broken-');
    cpSync(join(first, 'dist'), join(broken, 'dist'), { recursive: true });
    rmSync(join(broken, 'extension/icons'), { recursive: true });
    await expect(build(broken)).rejects.toMatchObject({ code: 1, stderr: expect.stringContaining('manifest.json names icons/') });
    expect(existsSync(join(broken, 'dist/chrome/manifest.json'))).toBe(true);
    rmSync(join(broken, 'extension/capture/index.ts'));
    await expect(build(broken)).rejects.toMatchObject({ stderr: expect.stringContaining('missing: extension/capture/index.ts') });
  });

  it('stops when two parts of a language hold the same key', async () => {
    const broken = copyOfCheckout('ironsift-double-');
    writeFileSync(join(broken, 'extension/_locales/en/zz.json'), '{"extName":{"message":"Twice"}}');
    await expect(build(broken)).rejects.toMatchObject({ stderr: expect.stringContaining('key "extName" is in') });
  });
});

describe('the Firefox zip', () => {
  it('passes the linter of the add-on store with no error, warning or notice', async () => {
    // Mozilla's addons-linter, the check that every upload passes; it works on the file alone, without the network.
    const zip = join(first, 'dist/ironsift-firefox.zip');
    const linter = join(ROOT, 'node_modules/addons-linter/bin/addons-linter');
    const { stdout } = await run(process.execPath, [linter, '--output', 'json', zip]).catch((error: { stdout: string }) => error);
    const { summary, errors, warnings, notices } = JSON.parse(stdout);
    expect([...errors, ...warnings, ...notices].map(({ code, file, message }) => `${code} ${file ?? ''} ${message}`)).toEqual([]);
    expect(summary).toMatchObject({ errors: 0, warnings: 0, notices: 0 });
  });
});

/**
 * `npm run package`: everything that an add-on store wants, in out/package/: a zip for each browser, the source that a reviewer builds
 * them from, the notices, the texts of its forms and pictures. Packs nothing when a test of the build fails; those tests lint the Firefox zip and build from the source.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { sourcePackage } from '../build/source-package.mjs';
import { forStores } from './for-stores.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const OUT = join(ROOT, 'out/package');

function must(what: string, ...args: readonly string[]): void {
  if (spawnSync(process.execPath, args, { cwd: ROOT, stdio: 'inherit' }).status === 0) return;
  process.stderr.write(`nothing is packed: ${what} failed\n`);
  process.exit(1);
}

// What an earlier run packed must not stand there as if this one had.
rmSync(OUT, { recursive: true, force: true });
must('the build', 'build.mjs');
must('a test of the build', 'node_modules/vitest/vitest.mjs', 'run', '--config', 'tests/vitest.config.ts', '--project', 'build');

const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version: string };
mkdirSync(OUT, { recursive: true });
for (const browser of ['chrome', 'firefox'])
  copyFileSync(join(ROOT, `dist/ironsift-${browser}.zip`), join(OUT, `ironsift-${version}-${browser}.zip`));
writeFileSync(join(OUT, `ironsift-${version}-source.zip`), sourcePackage(ROOT));
copyFileSync(join(ROOT, 'dist/chrome/NOTICES.txt'), join(OUT, 'NOTICES.txt'));
const more = forStores(ROOT);
for (const [name, content] of Object.entries(more)) writeFileSync(join(OUT, name), content);

const made = [
  ...['chrome', 'firefox', 'source'].map((part) => `ironsift-${version}-${part}.zip`),
  'NOTICES.txt',
  ...Object.keys(more),
];
for (const file of made) {
  const content = readFileSync(join(OUT, file));
  const print = createHash('sha256').update(content).digest('hex');
  console.log(`${file.padEnd(32)} ${String(content.length).padStart(9)} B  sha256 ${print}`);
}

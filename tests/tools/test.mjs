// @ts-check
/**
 * `npm test`: types, lint, build, then every test; the last line is "N passed, M failed" (", K skipped" when there are any),
 * counted from the tools' own reports. Types, lint and build count as one check each. Exit code 0 only when nothing failed.
 */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { whyNoBrowserTests } from './needs.mjs';
import { count } from './report.mjs';

const ROOT = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const REPORT = join(ROOT, 'out/tests.json');
/** How long all of it may take without a word on it; a slow machine is no failure. */
const MOST_MINUTES = 10;
/** Folders of tests, each counted by itself. */
const FOLDERS = ['unit', 'outside', 'corpus', 'extension', 'build', 'browser'];

const tool = (/** @type {string} */ path, /** @type {string[]} */ ...args) =>
  spawnSync(process.execPath, [join(ROOT, path), ...args], { cwd: ROOT, stdio: ['ignore', 'inherit', 'inherit'] }).status ?? 1;

/** @type {Record<string, string[]>} */
const CHECKS = {
  types: ['node_modules/typescript/bin/tsc', '-p', '.'],
  'types of the core without a DOM': ['node_modules/typescript/bin/tsc', '-p', 'src'],
  lint: ['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings', '--max-diagnostics=50'],
  build: ['build.mjs'],
};

/**
 * All checks at once, each with what it said and its exit code: alone, none keeps every core busy.
 * @returns {Promise<[name: string, said: string, code: number][]>}
 */
const checked = () =>
  Promise.all(
    Object.entries(CHECKS).map(async ([name, [path = '', ...args]]) => {
      const child = spawn(process.execPath, [join(ROOT, path), ...args], { cwd: ROOT, stdio: ['ignore', 'pipe', 'pipe'] });
      let said = '';
      for (const stream of [child.stdout, child.stderr])
        stream.setEncoding('utf8').on('data', (part) => {
          said += part;
        });
      const [code] = await once(child, 'close');
      return [name, said, code ?? 1];
    }),
  );

/** @type {string[]} */
const failures = [];
let passed = 0;
for (const [name, said, code] of await checked()) {
  console.log(`\n— ${name}`);
  process.stdout.write(said);
  if (code === 0) passed += 1;
  else failures.push(name);
}

/** Test files by folder: one whose tests are there but never ran must not pass for green. */
const files = Object.fromEntries(
  FOLDERS.map((name) => {
    const folder = join(ROOT, 'tests', name);
    const found = existsSync(folder) ? readdirSync(folder, { recursive: true }).map(String) : [];
    return [name, found.filter((file) => /\.test\.tsx?$/.test(file)).length];
  }),
);
const noBrowser = files.browser === 0 ? null : whyNoBrowserTests();
const wanted = FOLDERS.filter((name) => files[name] !== 0 && !(name === 'browser' && noBrowser !== null));

console.log(`\n— tests: ${wanted.join(', ')}`);
mkdirSync(dirname(REPORT), { recursive: true });
rmSync(REPORT, { force: true });
const code = tool(
  'node_modules/vitest/vitest.mjs',
  ...['run', '--config', 'tests/vitest.config.ts'],
  ...['--reporter=default', '--reporter=tests/tools/second-try.mjs', '--reporter=json', `--outputFile.json=${REPORT}`],
  ...(wanted.includes('browser') ? [] : ['--project=!browser']),
);
const report = existsSync(REPORT) ? JSON.parse(readFileSync(REPORT, 'utf8')) : { testResults: [] };
const folderOf = (/** @type {string} */ file) => relative(join(ROOT, 'tests'), file).split(sep)[0] ?? '';
const tests = count(report, code, wanted, folderOf);

let skipped = tests.skipped;
if (noBrowser !== null) {
  const line = `tests/browser: ${files.browser} files not run: ${noBrowser}`;
  // On a CI machine a missing browser is a fault of the set-up, not a reason to skip.
  if (process.env.CI) failures.push(line);
  else {
    console.log(line);
    skipped += files.browser ?? 0;
  }
}
failures.push(...tests.failures);
const minutes = performance.now() / 60_000;
console.log(
  `\ntook ${minutes.toFixed(1)} minutes${minutes > MOST_MINUTES ? `, more than the ${MOST_MINUTES} that it should on two cores` : ''}`,
);
if (failures.length > 0) console.log(`\nfailed:\n${failures.map((line) => `  ${line}`).join('\n')}`);
console.log(`\n${passed + tests.passed} passed, ${failures.length} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failures.length === 0 ? 0 : 1;

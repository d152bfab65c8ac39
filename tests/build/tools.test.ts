/** The command tooling itself: a runner or a count that lies would hide everything else. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { missingNeeds } from '../tools/needs.mjs';
import { count } from '../tools/report.mjs';
import { wholeNumber } from '../tools/whole-number.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

describe('a whole number on the command line', () => {
  it.each([
    [undefined, 200],
    ['3', 3],
    ['2147483647', 2_147_483_647],
  ])('%s is %s', (text, number) => expect(wholeNumber(text, 200, 1)).toBe(number));
  it.each(['0', 'many', '-1', '2.5', '1e3', ''])('"%s" is refused: nothing would be tried, and nothing found', (text) => {
    expect(() => wholeNumber(text, 200, 1)).toThrow('is no whole number');
  });
});

describe('run.mjs', () => {
  let folder: string;
  beforeAll(() => {
    folder = realpathSync(mkdtempSync(join(tmpdir(), 'ironsift-run-')));
    writeFileSync(join(folder, 'beside.ts'), 'export const where: string = import.meta.url;');
    writeFileSync(
      join(folder, 'entry.ts'),
      `import { readFileSync } from 'node:fs';
       import { where } from './beside.ts';
       const given: string = readFileSync(0, 'utf8');
       console.log(JSON.stringify({ args: process.argv.slice(2), given, where, folder: process.cwd() }));
       process.exitCode = 7;`,
    );
    writeFileSync(join(folder, 'broken.ts'), 'const = 1;');
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  const run = (args: string[], env: NodeJS.ProcessEnv = {}) =>
    spawnSync(process.execPath, [join(ROOT, 'tests/tools/run.mjs'), ...args], {
      cwd: ROOT,
      input: 'two plates\n',
      encoding: 'utf8',
      env: { ...process.env, INIT_CWD: undefined, ...env },
    });

  it('hands arguments, standard input and exit code through, in the folder where the person stands', () => {
    const { stdout, stderr, status } = run([join(folder, 'entry.ts'), '--batch', 'a b.jsonl'], { INIT_CWD: folder });
    expect(stderr).toBe('');
    expect(JSON.parse(stdout)).toEqual({
      args: ['--batch', 'a b.jsonl'],
      given: 'two plates\n',
      where: pathToFileURL(join(folder, 'beside.ts')).href,
      folder,
    });
    expect(status).toBe(7);
  });

  it('says in one line what is wrong with the entry, and ends with 2', () => {
    const missing = run(['tests/tools/none.ts']);
    expect(missing).toMatchObject({ status: 2, stdout: '', stderr: 'there is no tests/tools/none.ts\n' });
    expect(run([])).toMatchObject({ status: 2, stderr: expect.stringContaining('usage') });
    expect(run([join(folder, 'broken.ts')])).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('could not be bundled'),
    });
  });
});

describe.each([
  ['Chromium', 'IRONSIFT_CHROMIUM'],
  ['Firefox', 'IRONSIFT_FIREFOX'],
])('a %s that %s names', (browser, variable) => {
  afterEach(() => vi.unstubAllEnvs());
  const missing = (): string[] => missingNeeds('test').map(({ what }) => what);

  it('is not missed where there is no other', () => {
    vi.stubEnv('PATH', '');
    vi.stubEnv(variable, process.execPath);
    expect(missing()).not.toContain(browser);
    vi.stubEnv(variable, '');
    // Elsewhere no browser is driven by the tests.
    if (process.platform === 'linux') expect(missing()).toContain(browser);
  });

  it.runIf(process.platform === 'linux')('is missed where it is not, whichever other is there', () => {
    vi.stubEnv(variable, join(ROOT, 'no-such-browser'));
    expect(missing()).toContain(browser);
  });
});

it.each([
  [undefined, '1 test --silent'],
  ['true', 'true test --silent'],
  ['', ' test --silent'],
])('.ci/run counts as failed what can not run: CI as %j', (CI, told) => {
  const folder = mkdtempSync(join(tmpdir(), 'ironsift-ci-'));
  cpSync(join(ROOT, '.ci/run'), join(folder, '.ci/run'));
  writeFileSync(join(folder, 'npm'), '#!/bin/sh\necho "$CI $*"\n', { mode: 0o755 });
  const { stdout, status } = spawnSync('bash', [join(folder, '.ci/run')], {
    encoding: 'utf8',
    env: { PATH: `${folder}:${process.env.PATH}`, ...(CI !== undefined && { CI }) },
  });
  expect([stdout.trimEnd(), status]).toEqual([told, 0]);
  rmSync(folder, { recursive: true });
});

it('`npm run corpus -- WORD` does not pass for ads that are not there', () => {
  const args = ['tests/tools/run.mjs', 'tests/tools/corpus.ts', 'no-such-ad'];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: ROOT, encoding: 'utf8' });
  expect({ status, stdout, stderr }).toEqual({ status: 2, stdout: '', stderr: 'no ad has "no-such-ad" in its name\n' });
});

describe('count', () => {
  const test = (status: string) => ({
    status,
    fullName: `a ${status} one`,
    failureMessages: status === 'failed' ? ['Error: no\n  at x'] : [],
  });
  const file = (name: string, ...statuses: string[]) => ({
    name,
    status: statuses.includes('failed') ? 'failed' : 'passed',
    assertionResults: statuses.map(test),
  });
  const projectOf = (name: string) => name.split('/')[0] ?? '';
  const counted = (testResults: Parameters<typeof count>[0]['testResults'], code = 0, wanted = ['unit']) =>
    count({ testResults }, code, wanted, projectOf);

  it('counts what passed, failed and was skipped', () => {
    expect(counted([file('unit/a', 'passed', 'passed', 'skipped', 'todo'), file('unit/b', 'failed')], 1)).toEqual({
      passed: 2,
      skipped: 2,
      failures: ['unit: a failed one: Error: no'],
    });
  });

  it('takes a file that could not run for a failure', () => {
    expect(
      counted([file('unit/a', 'passed'), { ...file('unit/b'), status: 'failed', message: 'no such module' }], 1).failures,
    ).toEqual(['unit/b did not run: no such module']);
  });

  it('takes a folder of which nothing ran for a failure', () => {
    expect(counted([file('unit/a', 'passed')], 0, ['unit', 'browser']).failures).toEqual([
      'browser: has test files, but no test ran',
    ]);
    expect(counted([file('unit/a', 'skipped')], 0).failures).toEqual([]);
  });

  it('takes an error outside every test for a failure', () => {
    expect(counted([file('unit/a', 'passed')], 1).failures).toEqual(['the test runner ended with code 1 though no test failed']);
  });
});

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { contractSchema } from '../../../src/listing/contract.ts';
import { isHtml } from '../../tools/evaluate/input.ts';
import { main } from '../../tools/evaluate/main.ts';
import { settingsFrom } from '../../tools/evaluate/settings.ts';

const folder = mkdtempSync(join(tmpdir(), 'ironsift-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
type Input = string | Uint8Array;
/** As the command itself runs it, with streams that are looked at. */
const run = async (args: string[], input: Input = '') => {
  let stdout = '';
  let stderr = '';
  const status = await main(args, {
    input: (async function* () {
      yield Buffer.from(input);
    })(),
    print: async (line) => {
      stdout += `${line}\n`;
    },
    complain: (line) => {
      stderr += `${line}\n`;
    },
  });
  return { stdout, stderr, status };
};
const refused = async (args: string[], input: Input = ''): Promise<string> => {
  const { stdout, stderr, status } = await run(args, input);
  expect(status).toBe(2);
  expect(stdout).toBe('');
  expect(stderr.trim().split('\n')).toHaveLength(1);
  return stderr;
};

const AD = 'Olympic plates, 2 inch holes\n4x45 lb\n2 x 25 lb\n$120\n';

describe('one ad', () => {
  it('prints the contract, from a file or standard input', async () => {
    const fromFile = await run([file('ad.txt', AD)]);
    expect(fromFile.status).toBe(0);
    expect(fromFile.stderr).toBe('');
    expect(contractSchema.safeParse(JSON.parse(fromFile.stdout)).success).toBe(true);
    expect((await run([], AD)).stdout).toBe(fromFile.stdout);
  });

  it('reads HTML as a page, without what its scripts would do', async () => {
    const page = `<!doctype html><title>x</title><body><article><h1>Plates</h1><p>Olympic plates 4x45 lb</p><p>$120</p></article><script>document.body.innerHTML = ''</script>`;
    const { stdout, status } = await run([file('ad.html', page)]);
    expect(status).toBe(0);
    expect(contractSchema.safeParse(JSON.parse(stdout)).success).toBe(true);
  });

  it('says in one line what is wrong with the input', async () => {
    expect(await refused([], new Uint8Array([65, 0, 66]))).toMatch(/NUL/);
    expect(await refused([], new Uint8Array([0xff, 0xfe, 65]))).toMatch(/UTF-8/);
    expect(await refused([file('big.txt', 'a'.repeat(1_000_001))])).toMatch(/too large/);
    expect(await refused([join(folder, 'absent.txt')])).toMatch(/can't be opened/);
    expect(await refused([folder])).toMatch(/folder/);
    expect(await refused(['--nonsense'])).toMatch(/usage/);
  });

  it('takes settings in part, and refuses ones that can’t be', async () => {
    const near = await run(['--settings', file('near.json', '{"distance": {"value": 12, "unit": "mi"}}')], AD);
    expect(near.status).toBe(0);
    for (const bad of [
      '{',
      '[]',
      '{"margin": 3}',
      '{"colour": 1}',
      '{"rates": {"iron": {"used": {"low": 2, "likely": 1, "high": 3}}}}',
    ]) {
      expect(await refused(['--settings', file('bad.json', bad)], AD)).toMatch(/settings/);
    }
    expect(await refused(['--settings', join(folder, 'absent.json')], AD)).toMatch(/settings/);
  });
});

describe('a batch', () => {
  it('answers line by line in the same order, and goes on after a bad one', async () => {
    const lines = [
      { id: 'a', text: AD },
      'not json',
      { id: 'b' },
      { id: 'c', html: '<p>Olympic plates 4x45 lb $100</p>' },
      { id: 'd', text: 'x\u0000y' },
      { id: 5, text: 'x'.repeat(1_000_001) },
      { id: 'e', text: '' },
    ];
    const input = `${lines.map((line) => (typeof line === 'string' ? line : JSON.stringify(line))).join('\n\n')}\r\n`;
    const { stdout, status, stderr } = await run(['--batch', file('batch.jsonl', input)]);
    expect([status, stderr]).toEqual([0, '']);
    const answers = stdout
      .trim()
      .split('\n')
      .map((line): Record<string, unknown> => JSON.parse(line));
    expect(answers.map((answer) => answer.id)).toEqual(['a', null, 'b', 'c', 'd', 5, 'e']);
    expect(answers.map((answer) => 'error' in answer)).toEqual([false, true, true, false, true, true, false]);
    for (const answer of answers) if (!('error' in answer)) expect(contractSchema.safeParse(answer).success).toBe(true);
  });

  it('gives the same answer as one by one', async () => {
    const { id, ...batched } = JSON.parse((await run(['--batch', '-'], JSON.stringify({ id: 1, text: AD }))).stdout);
    expect(id).toBe(1);
    expect(batched).toEqual(JSON.parse((await run([], AD)).stdout));
  });

  it('marks a line that is not UTF-8 and goes on', async () => {
    const input = Buffer.concat([Buffer.from([0x22, 0xff, 0x22, 0x0a]), Buffer.from(JSON.stringify({ id: 2, text: AD }))]);
    const answers = (await run(['--batch', '-'], input)).stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(answers[0]).toHaveProperty('error');
    expect(answers[1]).toMatchObject({ id: 2 });
  });
});

describe('the program itself', () => {
  // Each run starts Node.
  const started = (input: Input, ...args: string[]) =>
    spawnSync(process.execPath, ['tests/tools/run.mjs', 'tests/tools/evaluate.ts', ...args], { input, encoding: 'utf8' });

  it('reads standard input, prints what it should, and tells by its exit code how it went', async () => {
    const { stdout, stderr, status } = started(AD);
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toBe((await run([], AD)).stdout);
    const bad = started('', '--nonsense');
    expect([bad.status, bad.stdout]).toEqual([2, '']);
    expect(bad.stderr).toBe((await run(['--nonsense'])).stderr);
  });
}, 60_000);

describe('text or HTML', () => {
  it('goes by ending or by tags, not by a mere angle', () => {
    expect(isHtml('plates', 'ad.html')).toBe(true);
    expect(isHtml('<!DOCTYPE html><p>x')).toBe(true);
    expect(isHtml('hello <b>plates</b>')).toBe(true);
    expect(isHtml('<3 these plates, <45 lb each, 5 > 3')).toBe(false);
  });
});

describe('settings', () => {
  it('fill in source and date of a rate', () => {
    const { rates } = settingsFrom('{"rates": {"iron": {"used": {"low": 0.4, "likely": 0.6, "high": 0.9}}}}', 'x');
    expect(rates.iron?.used).toMatchObject({ likely: 0.6, source: 'own', date: '' });
  });
});

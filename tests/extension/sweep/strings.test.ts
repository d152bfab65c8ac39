/** Every string of the list exists, and every one that exists is named. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ORDERS, VERDICTS } from '../../../extension/panel/sweep/arrange.ts';

const sources = ['extension/panel', 'extension/background', 'extension/capture']
  .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((file) => join(folder, file)))
  .filter((path) => /\.tsx?$/.test(path))
  .concat('manifest.template.json');
const code = sources.map((path) => readFileSync(path, 'utf8')).join('\n');
const keys = Object.keys(JSON.parse(readFileSync('extension/_locales/en/sweep.json', 'utf8')));
const whole = [...code.matchAll(/['_](sweep_[a-z_]+?)(?:'|__")/g)].map(([, key = '']) => key);
const beginnings = [...code.matchAll(/`(sweep_\w*_)\$\{/g)].map(([, key = '']) => key);

it('all that are named are there', () => {
  expect(whole.length).toBeGreaterThan(25);
  expect(beginnings.length).toBeGreaterThan(4);
  expect(whole.filter((key) => !keys.includes(key))).toEqual([]);
  expect(beginnings.filter((beginning) => !keys.some((key) => key.startsWith(beginning)))).toEqual([]);
});

it('all that are there are named', () => {
  const named = (key: string) =>
    [key, key.replace(/_one$/, '')].some((one) => whole.includes(one)) ||
    beginnings.some((beginning) => key.startsWith(beginning));
  expect(keys.filter((key) => !named(key))).toEqual([]);
});

it.each([
  ['sweep_order_', ORDERS],
  ['sweep_call_', ['all', ...VERDICTS]],
  ['sweep_state_', ['reading', 'watching', 'nothing', 'ended', 'full']],
  ['sweep_verdict_', ['unsaid', 'wanted', 'other', 'failed']],
  ['sweep_tag_per_', ['lb', 'kg', 'lot']],
])('%s has one for each value', (beginning, values) => {
  expect(values.filter((value) => !keys.includes(beginning + value))).toEqual([]);
});

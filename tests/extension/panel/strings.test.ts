/** Every string that the panel's code names exists, and every string that exists is named: none is missing, none is left over. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CONDITIONS, GRADES, KINDS, MATERIALS } from '../../../src/listing/reading.ts';

const code = ['extension/panel', 'extension/components']
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file))
      .map((file) => readFileSync(join(folder, file), 'utf8')),
  )
  .join('\n');
const keys = Object.keys(JSON.parse(readFileSync('extension/_locales/en/panel.json', 'utf8')));
const whole = [...code.matchAll(/'(panel_\w+)'/g)].map(([, key = '']) => key);
const beginnings = [...code.matchAll(/`(panel_\w*_)\$\{/g)].map(([, key = '']) => key);

describe('strings of the panel', () => {
  test('were found in the code', () => {
    expect(whole.length).toBeGreaterThan(50);
    expect(beginnings.length).toBeGreaterThan(10);
  });

  test('named in full: all there', () => expect(whole.filter((key) => !keys.includes(key))).toEqual([]));

  test('named by their beginning: something is there', () =>
    expect(beginnings.filter((beginning) => !keys.some((key) => key.startsWith(beginning)))).toEqual([]));

  /** Named by a state of the panel or a field of an item alone. */
  const VARYING = /^panel_(?:refused|failed)(?:_|$)|^panel_opening$|^panel_(?:bore|shaft|length)Mm$/;

  test('none is left over', () => {
    const named = (key: string) =>
      whole.includes(key) || VARYING.test(key) || beginnings.some((beginning) => key.startsWith(beginning));
    expect(keys.filter((key) => !named(key))).toEqual([]);
  });

  test.each([
    ['panel_kind_', KINDS],
    ['panel_condition_', CONDITIONS],
    ['panel_material_', MATERIALS],
    ['panel_grade_', GRADES],
    [
      'panel_loss_',
      [
        'wrong-bore',
        'odd',
        'cracked',
        'cement',
        'sloppy',
        'unknown-count',
        'unknown-weight',
        'unknown-bore',
        'sold-on',
        'unwanted',
      ],
    ],
    ['panel_price_', ['lot', 'per-pound', 'per-kilogram', 'each', 'pair', 'range', 'none']],
    ['panel_basis_', ['stated', 'measured', 'implied', 'assumed']],
    ['panel_step_', ['stated', 'implied', 'assumed', 'measured', 'worked-out']],
    ['panel_per_', ['lb', 'kg', 'lot']],
    ['panel_', ['empty', 'opening', 'picking', 'refused', 'failed', 'nothing']],
  ])('%s has one for each value of the contract', (beginning, values) => {
    expect(values.filter((value) => !keys.includes(beginning + value.replaceAll('-', '_')))).toEqual([]);
  });
});

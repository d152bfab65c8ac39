/** Bundles in the panel with the real core: plans, what is sold on, weighed plates, the split, and a price below what the goods are worth. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { choose, click, fetched, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';

const BUNDLE = { title: '', text: 'Olympic plates 4 x 45 lb\nStraight bar 7 ft, 45 lb\nFlat bench\n$400 for everything' };
const start = async (ad: Parameters<typeof ready>[0] = BUNDLE) => mount(ready(ad), evaluate);
// Fetched when it is first shown, and there at once from then on.
beforeAll(async () => {
  await start();
  await fetched('[data-share]');
});
const row = (id: string): string[] => [...find(`[data-share="${id}"]`).children].map((cell) => cell.textContent ?? '');

describe('what the buyer would do with each thing', () => {
  test('is asked where an ad has several things, and not where it has one', async () => {
    await start();
    expect(document.querySelectorAll('select[data-path$=".plan"]')).toHaveLength(3);
    const select = find<HTMLSelectElement>('[data-path="bar-1.plan"]');
    expect([...select.options].map((one) => one.textContent)).toEqual(['I’d keep it', 'I’d sell it on', 'worth nothing to me']);
    expect(select.labels?.[0]?.textContent).toBe('For you');
    await start({ title: '', text: 'Olympic plates 4 x 45 lb, $100' });
    expect(document.querySelector('[data-path$=".plan"]')).toBeNull();
  });

  test('nothing takes no share and lowers the most to pay', async () => {
    await start();
    const before = text('.call-line');
    await choose('[data-path="bench-1.plan"]', 'nothing');
    expect(row('bench-1')).toEqual([expect.stringMatching(/bench/i), '$0', 'not counted', 'not counted']);
    expect(text('.call-line')).not.toBe(before);
    expect(text('[data-line="bench-1"] .set-by-you')).toContain('what you’d do with it');
    await click('[data-put-back="bench-1.plan"]');
    expect(text('.call-line')).toBe(before);
  });

  test('what is sold on has a sum of its own, in the buyer’s currency, and a default where it is left empty', async () => {
    const { judge } = await start();
    expect(document.querySelector('[data-path="bar-1.resale"]')).toBeNull();
    await choose('[data-path="bar-1.plan"]', 'sell');
    expect(row('bar-1')[2]).toBe('sold on at $80');
    await type('[data-path="bar-1.resale"]', '120');
    expect(judge.mock.lastCall?.[2]).toContainEqual({ path: 'bar-1.resale', value: 120, unit: 'USD' });
    expect(row('bar-1')[2]).toBe('sold on at $120');
    await type('[data-path="bar-1.resale"]', 'lots');
    leave('[data-path="bar-1.resale"]');
    expect(text('[data-line="bar-1"] .complaint')).toBe('A sum from 0 to 1,000,000.');
    expect(row('bar-1')[2]).toBe('sold on at $120');
    await type('[data-path="bar-1.resale"]', '');
    expect(row('bar-1')[2]).toBe('sold on at $80');
  });
});

describe('the split', () => {
  test('says what each costs when the rest is taken at the going rate', async () => {
    await start();
    // $400 less 180 lb at $0.75 and a bench at $75.
    expect(row('bar-1')[3]).toBe('$190');
    expect([...document.querySelectorAll('.split thead th')].map((cell) => cell.textContent)).toEqual([
      'Item',
      'Its share',
      'Worth used',
      'Costs you, the rest at going rate',
    ]);
  });

  test('names no price below nothing', async () => {
    await start({ ...BUNDLE, text: BUNDLE.text.replace('$400', '$150') });
    expect(row('bar-1')[3]).toBe('nothing: the rest is worth $60 more than the price');
  });
});

describe('plates on the buyer’s scale', () => {
  test('count with what they weigh', async () => {
    const { judge } = await start();
    await type('[data-path="plate-1.weighed"]', '46.2, 44.8, 47, 46');
    expect(judge.mock.lastCall?.[2]).toContainEqual({
      path: 'plate-1.weighed',
      value: '46.2, 44.8, 47, 46',
      unit: 'lb',
      basis: 'measured',
    });
    expect(text('.usable')).toContain('184 lb of 184 lb');
    expect(text('[data-line="plate-1"] .set-by-you')).toContain('weighings');
  });

  test('are told when they are no weights; the last good ones keep counting', async () => {
    await start();
    await type('[data-path="plate-1.weighed"]', '50, 50, 50, 50');
    await type('[data-path="plate-1.weighed"]', '50, x');
    leave('[data-path="plate-1.weighed"]');
    const field = find<HTMLInputElement>('[data-path="plate-1.weighed"]');
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(find(`[id="${field.getAttribute('aria-describedby')}"]`).textContent).toMatch(/^Weights with commas/);
    expect(text('.usable')).toContain('200 lb of 200 lb');
  });
});

describe('a price below what the goods are worth', () => {
  test('is said to be fair: nobody offers more than is asked', async () => {
    await start();
    expect(text('.call-line')).toMatch(
      /^Asked: \$400\. As described it is worth up to \$\d+ to you\. That is more than is asked: never offer above the price; open at \$\d+\.$/,
    );
    expect(text('.call-line')).not.toContain('Pay at most');
    // A steal: there is nothing to open with but the price itself.
    await start({ ...BUNDLE, text: BUNDLE.text.replace('$400', '$150') });
    expect(text('.call-line')).toMatch(/: never offer above the price\.$/);
  });

  test('is not said of a price that is no price, nor of one above the worth', async () => {
    await start({ ...BUNDLE, text: BUNDLE.text.replace('$400 for everything', '$900 for everything') });
    expect(text('.call-line')).toContain('Pay at most');
    await start({ ...BUNDLE, text: BUNDLE.text.replace('$400 for everything', '$1, make an offer') });
    expect(text('.call-line')).not.toContain('than is asked');
  });
});

test('plates beyond the kit’s need have a line of their own', () => {
  const need = [{ weight: { value: 45, unit: 'lb' as const }, pieces: 2 }];
  mount(ready(BUNDLE), (ad, _settings, made) => evaluate(ad, { ...DEFAULT_SETTINGS, need }, made));
  expect(text('.surplus')).toMatch(/45 lb: 90 lb beyond what your kit lacks/);
  expect(text('.usable')).toContain('180 lb of 180 lb');
});

test('every string of bundles is there and used', () => {
  const code = ['extension/panel', 'extension/components']
    .flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((file) => /\.tsx?$/.test(file))
        .map((file) => readFileSync(join(folder, file), 'utf8')),
    )
    .join('\n');
  const keys = Object.keys(JSON.parse(readFileSync('extension/_locales/en/bundles.json', 'utf8')));
  const whole = [...code.matchAll(/'(bundle_\w+)'/g)].map(([, key = '']) => key);
  const beginnings = [...code.matchAll(/`(bundle_\w*_)\$\{/g)].map(([, key = '']) => key);
  expect(whole.length).toBeGreaterThan(10);
  expect(whole.filter((key) => !keys.includes(key))).toEqual([]);
  expect(keys.filter((key) => !whole.includes(key) && !beginnings.some((beginning) => key.startsWith(beginning)))).toEqual([]);
});

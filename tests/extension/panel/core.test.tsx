/** The panel with the real core: what its fields send is understood there. */
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { choose, click, find, mount, ready, text, type } from './fixtures/mount.tsx';

const AD = { title: '', text: 'Olympic plates:\n4 x 45 lb\n2 x 25 lb\nStraight bar, 7 ft, 45 lb\n$180 for everything' };

const start = () => {
  const panel = mount(ready(AD), evaluate);
  const applied = () =>
    panel.judge.mock.results
      .map((one) => one.value.corrections)
      .filter((made) => made.length > 0)
      .at(-1) ?? [];
  const sent = () =>
    panel.judge.mock.calls
      .map((one) => one[2])
      .filter((made) => made.length > 0)
      .at(-1) ?? [];
  return { ...panel, applied, sent };
};

const perPound = (): number => JSON.parse(find('[data-per-usable-pound]').dataset.perUsablePound ?? 'null')?.likely;

describe('with the real core', () => {
  test('the ad is read and no string is missing', () => {
    start();
    for (const details of document.querySelectorAll('details')) details.open = true;
    expect(find('[data-state]').dataset.state).toBe('answer');
    expect(document.querySelectorAll('[data-line^="plate-"]')).toHaveLength(2);
    expect(text('main')).not.toMatch(/\[\w+\]|\{\w+\}/);
  });

  test('every correction that the fields send is applied', async () => {
    const { applied, sent } = start();
    await type('[data-path="asking.amount"]', '200');
    await choose('[data-path="asking.basis"]', 'each');
    await type('[data-path="asking.unitAmount"]', '20');
    await type('[data-path="plate-1.count"]', '6');
    await type('[data-path="plate-1.unitWeight"]', '20');
    await choose('[data-path="plate-1.unitWeight.unit"]', 'kg');
    await choose('[data-path="plate-1.fits"]', '');
    await type('[data-path="plate-1.boreMm"]', '53');
    await type('[data-path="bar-1.shaftMm"]', '28.5');
    await type('[data-path="bar-1.lengthMm"]', '7 ft 2 in');
    await choose('[data-path="bar-1.kind"]', 'hex-bar');
    await click('[data-remove="plate-2"]');
    await click('[data-add="bumper"]');
    await type('[data-path="added-1.count"]', '2');
    expect(sent()).toHaveLength(13);
    expect(applied()).toEqual(sent());
    expect(document.querySelector('[data-line="plate-2"]')).toBeNull();
    expect(find<HTMLInputElement>('[data-path="added-1.count"]').value).toBe('2');
  });

  test('an added line that is taken out leaves nothing behind', async () => {
    const { sent, judge } = start();
    await click('[data-add="bumper"]');
    await type('[data-path="added-1.count"]', '2');
    expect(sent()).toHaveLength(2);
    await click('[data-remove="added-1"]');
    expect(judge.mock.lastCall?.[2]).toEqual([]);
    expect(text('main')).not.toContain('taken out by you');
  });

  test('twice the price is about twice the cost of a usable pound; a hole too small leaves none', async () => {
    start();
    const before = perPound();
    await type('[data-path="asking.amount"]', '360');
    expect(perPound() / before).toBeCloseTo(2, 1);
    await type('[data-path="plate-1.boreMm"]', '26');
    await type('[data-path="plate-2.boreMm"]', '26');
    expect(find('[data-per-usable-pound]').dataset.perUsablePound).toBe('null');
  });

  test('an ad of another trade: nothing to lift, and a line added by hand makes it an answer', async () => {
    mount(ready({ title: '', text: 'Oak dining table with six chairs, $150.' }), evaluate);
    expect(find('[data-state]').dataset.state).toBe('nothing');
    await click('[data-add="bar"]');
    expect(find('[data-state]').dataset.state).toBe('answer');
  });
});

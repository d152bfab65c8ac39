import { act } from 'preact/test-utils';
import { describe, expect, test, vi } from 'vitest';
import { adKey } from '../../../extension/panel/ad-key.ts';
import { at, evaluation, judge, listing, trip } from './fixtures/evaluation.ts';
import { choose, click, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';

type Mounted = ReturnType<typeof mount>;

/** What the core was last given for the corrected ad (it may also be asked for the uncorrected reading, with none). */
const passed = ({ judge: judging }: Mounted) => judging.mock.calls.filter(([, , made]) => made.length > 0).at(-1)?.[2] ?? [];

const another = ready({ text: 'Quite another ad, 4x45 lb, $90' }, 2);

describe('editing the reading', () => {
  test('a changed value goes to the core at once and is shown as set by the buyer', async () => {
    const panel = mount(ready());
    await type('[data-path="plate-1.count"]', '6');
    expect(passed(panel)).toEqual([{ path: 'plate-1.count', value: 6 }]);
    expect(text('[data-line="plate-1"] .line-total')).toBe('= 270 lb');
    expect(text('[data-line="plate-1"] .set-by-you')).toContain('Set by you: count (ad: 4)');
  });

  test('a changed value can be put back', async () => {
    const panel = mount(ready());
    await type('[data-path="plate-1.count"]', '6');
    await leave('[data-path="plate-1.count"]');
    await click('[data-put-back="plate-1.count"]');
    expect(panel.judge.mock.lastCall?.[2]).toEqual([]);
    expect(find<HTMLInputElement>('[data-path="plate-1.count"]').value).toBe('4');
  });

  test('an ad is judged once, and once more for what it says uncorrected only where it comes with corrections', async () => {
    const stored = new Map<string, unknown>();
    const panel = mount(ready(), judge, stored);
    expect(panel.judge).toHaveBeenCalledTimes(1);
    await type('[data-path="plate-1.count"]', '6');
    expect(panel.judge).toHaveBeenCalledTimes(2);
    expect(text('[data-line="plate-1"] .set-by-you')).toContain('(ad: 4)');
    panel.take(another);
    expect(panel.judge).toHaveBeenCalledTimes(3);
    panel.take(ready({}, 3));
    expect(panel.judge).toHaveBeenCalledTimes(5);
    expect(text('[data-line="plate-1"] .set-by-you')).toContain('(ad: 4)');
  });

  test('bad input gets a message at the field, and the last good value keeps counting', async () => {
    const panel = mount(ready());
    const field = '[data-path="plate-1.count"]';
    await type(field, '6');
    await type(field, '6 plates');
    await leave(field);
    expect(passed(panel)).toEqual([{ path: 'plate-1.count', value: 6 }]);
    expect(find(field).getAttribute('aria-invalid')).toBe('true');
    const message = document.getElementById(find(field).getAttribute('aria-describedby') ?? '');
    expect(message?.textContent).toContain('whole number');
    expect(find<HTMLInputElement>(field).value).toBe('6 plates');
    await type(field, '7');
    expect(find(field).getAttribute('aria-invalid')).toBeNull();
  });

  test.each([
    ['asking.amount', '$1,250.50', { path: 'asking.amount', value: 1250.5 }],
    ['plate-1.unitWeight', '2 1/2', { path: 'plate-1.unitWeight', value: 2.5, unit: 'lb' }],
    ['plate-1.boreMm', '2 in', { path: 'plate-1.boreMm', value: 50.8 }],
    ['bar-1.shaftMm', '28,5', { path: 'bar-1.shaftMm', value: 28.5 }],
    ['bar-1.lengthMm', '7 ft 2 in', { path: 'bar-1.lengthMm', value: 2184.4 }],
    ['bar-1.lengthMm', '2.2 m', { path: 'bar-1.lengthMm', value: 2200 }],
  ])('%s takes "%s"', async (path, typed, correction) => {
    const panel = mount(ready());
    await type(`[data-path="${path}"]`, typed);
    expect(passed(panel)).toEqual([correction]);
  });

  test.each([
    ['asking.amount', '-5'],
    ['plate-1.count', '2.5'],
    ['plate-1.count', '0'],
    ['plate-1.unitWeight', '45 50'],
    ['plate-1.boreMm', '2000'],
    ['bar-1.shaftMm', '1/0 in'],
    ['bar-1.lengthMm', ''],
  ])('%s does not take "%s"', async (path, typed) => {
    const panel = mount(ready());
    await type(`[data-path="${path}"]`, typed);
    expect(passed(panel)).toEqual([]);
  });

  test('Escape gives a field its last good value back', async () => {
    mount(ready());
    const field = '[data-path="plate-1.count"]';
    await type(field, 'many');
    await act(() => void find(field).dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true })));
    expect(find<HTMLInputElement>(field).value).toBe('4');
  });

  test('the unit of a weight that the ad does not give can be chosen before it is typed', async () => {
    const panel = mount(ready());
    await choose('[data-path="bar-1.unitWeight.unit"]', 'kg');
    await type('[data-path="bar-1.unitWeight"]', '20');
    expect(passed(panel)).toEqual([{ path: 'bar-1.unitWeight', value: 20, unit: 'kg' }]);
  });

  test('choices: price basis, unit of weight, sleeve, kind', async () => {
    const panel = mount(ready());
    await choose('[data-path="asking.basis"]', 'each');
    await choose('[data-path="plate-1.unitWeight.unit"]', 'kg');
    await choose('[data-path="plate-1.fits"]', '25mm');
    await choose('[data-path="bar-1.kind"]', 'curl-bar');
    expect(passed(panel)).toEqual([
      { path: 'asking.basis', value: 'each' },
      { path: 'plate-1.unitWeight', value: 45, unit: 'kg' },
      { path: 'plate-1.fits', value: '25mm' },
      { path: 'bar-1.kind', value: 'curl-bar' },
    ]);
  });

  test('a line taken out stays in view and can be put back', async () => {
    const panel = mount(ready());
    await click('[data-remove="bar-1"]');
    expect(passed(panel)).toEqual([{ path: 'bar-1', value: null }]);
    expect(text('.line-gone')).toContain('Straight bar: taken out by you.');
    await click('[data-put-back="bar-1"]');
    expect(find('[data-line="bar-1"]')).toBeTruthy();
  });

  test('lines are added with numbers of their own', async () => {
    const panel = mount(ready());
    await click('[data-add="plate"]');
    await click('[data-add="bar"]');
    expect(passed(panel)).toEqual([
      { path: 'added-1.kind', value: 'plate' },
      { path: 'added-2.kind', value: 'bar' },
    ]);
  });

  test('every basis is said in words', () => {
    mount(ready());
    expect(text('[data-line="plate-1"] .line-basis')).toBe('· stated: count, hole · implied: weight · assumed: sleeve');
    expect(text('[data-line="bar-1"] .line-basis')).toBe('· all stated');
  });

  test('an edit that the core can not follow leaves the answer and its undo', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    mount(ready(), (listing, settings, made) => {
      if (made.length > 0) throw new Error('no');
      return judge(listing, settings, made);
    });
    await type('[data-path="plate-1.count"]', '6');
    expect(find('[data-state]').dataset.state).toBe('answer');
    expect(find('[data-put-back="plate-1.count"]')).toBeTruthy();
  });

  test('edits belong to one ad, and are there again when it is in front again', async () => {
    const panel = mount(ready());
    await type('[data-path="plate-1.count"]', '6');
    panel.take(another);
    expect(find<HTMLInputElement>('[data-path="plate-1.count"]').value).toBe('4');
    panel.take(ready({}, 3));
    expect(find<HTMLInputElement>('[data-path="plate-1.count"]').value).toBe('6');
  });
});

describe('a panel that opens anew', () => {
  test('says of what could not be stored that it will not find it, until the next change is', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const { host } = mount(ready());
    host.saveEdits.mockRejectedValueOnce(new Error('QUOTA_BYTES quota exceeded'));
    await type('[data-path="plate-1.count"]', '6');
    await vi.waitFor(() => expect(text('[role=alert] [data-not-kept=edits]')).toContain('while this panel is open'));
    expect(text('[data-line="plate-1"] .line-total')).toBe('= 270 lb');
    await type('[data-path="plate-1.count"]', '8');
    await vi.waitFor(() => expect(document.querySelector('[data-not-kept]')).toBeNull());
  });

  test('finds what was said about the ad: values, settled doubts, the distance', async () => {
    const stored = new Map<string, unknown>();
    mount(ready(), judge, stored);
    await type('[data-path="plate-1.count"]', '6');
    await click('[data-doubt="bar-included"] [data-choice="1"]');
    await type('[data-distance]', '30');
    const again = mount(ready(), judge, stored);
    await vi.waitFor(() => expect(find<HTMLInputElement>('[data-path="plate-1.count"]').value).toBe('6'));
    expect(find('[data-doubt="bar-included"] [data-choice="1"]').getAttribute('aria-pressed')).toBe('true');
    expect(find<HTMLInputElement>('[data-distance]').value).toBe('30');
    again.take(another);
    expect(find<HTMLInputElement>('[data-path="plate-1.count"]').value).toBe('4');
  });

  test.each([[{ changes: 'x' }], ['x'], [{ changes: [{ by: 'doubt', doubt: 'gone', choice: 7 }], distance: null }]])(
    'leaves aside what it can not read: %j',
    async (edits) => {
      mount(ready(), judge, new Map([[adKey(listing()), edits]]));
      await click('h1');
      expect(find<HTMLInputElement>('[data-path="plate-1.count"]').value).toBe('4');
    },
  );
});

describe('doubts', () => {
  test('one click applies the corrections of a choice, shows it, and can be undone', async () => {
    const panel = mount(ready());
    await click('[data-doubt="bar-included"] [data-choice="1"]');
    expect(passed(panel)).toEqual([{ path: 'bar-1', value: null }]);
    expect(find('[data-doubt="bar-included"] [data-choice="1"]').getAttribute('aria-pressed')).toBe('true');
    await click('[data-undo="bar-included"]');
    expect(panel.judge.mock.lastCall?.[2]).toEqual([]);
    expect(find('[data-doubt="bar-included"] [data-choice="1"]').getAttribute('aria-pressed')).toBe('false');
  });

  test('the other choice replaces the first', async () => {
    const panel = mount(ready());
    await click('[data-doubt="bar-included"] [data-choice="1"]');
    await click('[data-doubt="bar-included"] [data-choice="0"]');
    expect(passed(panel)).toEqual([{ path: 'bar-1.count', value: 1 }]);
  });
});

describe('the drive', () => {
  test('a typed distance goes to the core and its unit is remembered, the distance itself not for the next ad', async () => {
    const panel = mount(ready());
    expect(text('main')).toContain('Type how far it is');
    await type('[data-distance]', '30');
    expect(panel.judge.mock.lastCall?.[1].distance).toEqual({ value: 30, unit: 'mi' });
    expect(text('main')).toContain('There and back costs $12.00 ($9.00 to $15.00).');
    expect(text('main')).toContain('It pays up to 42 mi one way.');
    await choose('[data-path="distance.unit"]', 'km');
    expect(panel.judge.mock.lastCall?.[1].distance).toEqual({ value: 30, unit: 'km' });
    panel.take(another);
    expect(panel.judge.mock.lastCall?.[1].distance).toBeNull();
    expect(find<HTMLSelectElement>('[data-path="distance.unit"]').value).toBe('km');
  });

  test('bad distances are not taken', async () => {
    const panel = mount(ready());
    await type('[data-distance]', '30');
    await type('[data-distance]', 'far');
    await leave('[data-distance]');
    expect(panel.judge.mock.lastCall?.[1].distance).toEqual({ value: 30, unit: 'mi' });
    expect(text('.complaint')).toContain('Write a distance');
  });

  test('a distance of the ad is shown as such', () => {
    mount(ready(), () => ({
      ...evaluation(),
      trip: trip({ distance: { value: 12, unit: 'km' }, basis: 'stated', breakEven: null }),
    }));
    expect(find<HTMLInputElement>('[data-distance]').value).toBe('12');
    expect(text('main')).toContain('The distance is from the ad.');
  });
});

describe('evidence', () => {
  test('hover and focus mark the words in the page, by the spans of its own text', async () => {
    const { host } = mount(ready());
    find('[data-flag="shaft-thick"]').dispatchEvent(new MouseEvent('mouseenter'));
    const start = at('32 mm').start - 'Barbell plates and bar\n'.length;
    expect(host.highlight).toHaveBeenLastCalledWith([{ start, end: start + 5 }]);
    find('[data-flag="shaft-thick"]').dispatchEvent(new MouseEvent('mouseleave'));
    expect(host.clearHighlight).toHaveBeenCalled();
    find('[data-line="plate-1"] input').dispatchEvent(new FocusEvent('focusin', { bubbles: true }));
    expect(host.highlight).toHaveBeenLastCalledWith([{ start: 0, end: 8 }]);
  });

  test('evidence that stands in the title only marks nothing', () => {
    const { host } = mount(ready(), () => {
      const base = evaluation();
      return { ...base, flags: base.flags.map((flag) => ({ ...flag, evidence: [{ start: 0, end: 7 }] })) };
    });
    find('[data-flag="shaft-thick"]').dispatchEvent(new MouseEvent('mouseenter'));
    expect(host.highlight).not.toHaveBeenCalled();
  });
});

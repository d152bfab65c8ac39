import { act } from 'preact/test-utils';
import { describe, expect, test, vi } from 'vitest';
import { evaluation, judge as judgeByHand, reading } from './fixtures/evaluation.ts';
import { click, find, mount, ready, text, type } from './fixtures/mount.tsx';

const state = (): string | undefined => find<HTMLElement>('[data-state]').dataset.state;

describe('states of the panel', () => {
  test('nothing taken yet: says how, offers picking and pasting', async () => {
    const { host } = mount(null);
    expect(state()).toBe('empty');
    expect(text('main')).toContain('Alt+Shift+U');
    await click('[data-pick]');
    expect(host.startPick).toHaveBeenCalledOnce();
  });

  test('picking, leaving, taking', () => {
    const { take } = mount({ state: 'picking', at: 1 });
    expect(state()).toBe('picking');
    take(null);
    expect(state()).toBe('empty');
    take(ready());
    expect(state()).toBe('answer');
  });

  test('an answer: first what is in sight, in the next frame the rest; of the next ad likewise', async () => {
    const { hear, take } = mount(null);
    const drawn = () => [state(), document.querySelector('.call') !== null, document.querySelector('[data-line]') !== null];
    for (const ad of [ready(), ready({ text: 'Quite another ad, 4x45 lb, $90' }, 2)]) {
      hear(ad);
      await Promise.resolve();
      expect(drawn()).toEqual(['answering', true, false]);
      await vi.waitFor(() => expect(drawn()).toEqual(['answer', true, true]));
    }
    take(null);
    expect(state()).toBe('empty');
  });

  test('an answer that nobody looks at waits for no frame', async () => {
    const { hear } = mount(null);
    const hidden = vi.spyOn(document, 'hidden', 'get').mockReturnValue(true);
    hear(ready());
    await Promise.resolve();
    expect(state()).toBe('answer');
    hidden.mockRestore();
  });

  test.each(['browser-page', 'store', 'pdf', 'no-access', 'no-tab', 'a reason of the future'])('refused: %s', (reason) => {
    mount({ state: 'refused', reason, at: 1 });
    expect(state()).toBe('refused');
    expect(text('h1')).toBe('This page can’t be read');
    expect(text('.notice p')).toMatch(/paste/);
    expect(text('main')).not.toMatch(/\[\w+\]/);
    expect(find('[data-paste]')).toBeTruthy();
    expect(document.querySelector('[data-pick]')).toBeNull();
  });

  test.each(['empty', 'bad-input', 'full', 'unexpected', 'a reason of the future'])('failed: %s', (reason) => {
    mount({ state: 'failed', reason, at: 1 });
    expect(state()).toBe('failed');
    expect(text('main')).not.toMatch(/\[\w+\]/);
  });

  test('before the core is there: the ad is named, and what was said about it before is kept', async () => {
    const stored = new Map<string, unknown>();
    mount(ready(), judgeByHand, stored);
    await click('[data-doubt="bar-included"] [data-choice="1"]');
    const { coreArrives } = mount(ready(), null, stored);
    expect(state()).toBe('opening');
    expect(text('h1')).toBe('Reading the ad');
    await act(async () => undefined);
    await act(async () => coreArrives());
    expect(state()).toBe('answer');
    const choice = find('[data-doubt="bar-included"] [data-choice="1"]');
    await vi.waitFor(() => expect(choice.getAttribute('aria-pressed')).toBe('true'));
  });

  test('a core that throws is a failure that leaves the ways to the next ad', () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    mount(ready(), () => {
      throw new Error('broken');
    });
    expect(state()).toBe('failed');
    expect(find('[data-judge]')).toBeTruthy();
  });

  test('not about this trade: says so and lets a line be added', () => {
    mount(ready(), () => evaluation({ reading: reading({ aboutThisTrade: false, items: [], doubts: [] }) }));
    expect(state()).toBe('nothing');
    expect(find('[data-add="plate"]')).toBeTruthy();
  });

  test('the end of a long text was left out: says so', () => {
    mount({ ...ready(), cut: true } as ReturnType<typeof ready>);
    expect(text('main')).toContain('its end was left out');
  });

  test('pasted text is handed over and the box is empty for the next', async () => {
    const { host } = mount(null);
    await type('[data-paste]', '4 x 45 lb $100');
    await click('[data-judge]');
    expect(host.paste).toHaveBeenCalledWith('4 x 45 lb $100');
    expect(find<HTMLTextAreaElement>('[data-paste]').value).toBe('');
  });

  test('pasted text is judged by a key too, which the field tells', async () => {
    const { host } = mount(null);
    await type('[data-paste]', '4 x 45 lb $100');
    const box = find('[data-paste]');
    expect(text(`[id="${box.getAttribute('aria-describedby')}"]`)).toBe('or press Ctrl+Enter (Cmd+Enter) in the field');
    const press = (over: KeyboardEventInit) =>
      act(async () => void box.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, ...over })));
    await press({});
    // Enter that ends a word of an input method is not meant for us.
    await press({ ctrlKey: true, isComposing: true });
    expect(host.paste).not.toHaveBeenCalled();
    await press({ ctrlKey: true });
    await press({ metaKey: true });
    expect(host.paste).toHaveBeenCalledTimes(1);
  });

  test('nothing pasted, or no room: a message at the box, and the text stays', async () => {
    const { host } = mount(null);
    await click('[data-judge]');
    expect(text('[role=alert]')).toBe('Paste the text of an ad first.');
    expect(host.paste).not.toHaveBeenCalled();
    host.paste.mockResolvedValue(false);
    await type('[data-paste]', 'two 45s');
    await click('[data-judge]');
    expect(text('[role=alert]')).toContain('no room');
    expect(find<HTMLTextAreaElement>('[data-paste]').value).toBe('two 45s');
  });

  test('a page out of reach: says to use the shortcut', async () => {
    const { host } = mount(null);
    host.startPick.mockResolvedValue(false);
    await click('[data-pick]');
    expect(text('[role=alert]')).toContain('Alt+Shift+U');
  });

  test('the live region says the call once, after it has stood still', async () => {
    vi.useFakeTimers();
    try {
      mount(ready());
      await act(async () => void vi.advanceTimersByTime(100));
      expect(text('[aria-live]')).toBe('');
      await act(async () => void vi.advanceTimersByTime(1000));
      expect(text('[aria-live]')).toBe('Worth it at $150 or less');
      expect(document.querySelectorAll('[aria-live], [role=alert]')).toHaveLength(1);
    } finally {
      vi.useRealTimers();
    }
  });
});

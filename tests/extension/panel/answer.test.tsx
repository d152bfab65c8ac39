import { describe, expect, test, vi } from 'vitest';
import { axisTo } from '../../../extension/components/axis.ts';
import { evaluation, TITLE } from './fixtures/evaluation.ts';
import { click, find, mount, ready, text } from './fixtures/mount.tsx';

describe('the answer', () => {
  test('begins with the call in words and its line of numbers', () => {
    mount(ready());
    expect(find('[data-call]').dataset.call).toBe('haggle');
    expect(text('h1')).toBe('Worth it at $150 or less');
    expect(text('.call-line')).toBe('Asked: $180. Pay at most $150; open at $110.');
    const headings = [...document.querySelectorAll('h1, h2')].map((one) => one.textContent);
    expect(headings[0]).toBe('Worth it at $150 or less');
    expect(headings[1]).toBe('Cost of a usable pound');
  });

  test('gives the cost with its range, and what it stands beside, for tools and for screen readers', () => {
    mount(ready());
    expect(text('.cost-figure')).toBe('$0.97 $0.88 to $1.04');
    expect(JSON.parse(find('[data-per-usable-pound]').dataset.perUsablePound ?? '')).toEqual({
      low: 88,
      likely: 97,
      high: 104,
      currency: 'USD',
      per: 'lb',
    });
    expect(JSON.parse(find('[data-new-delivered]').dataset.newDelivered ?? '').likely).toBe(190);
    const rows = [...document.querySelectorAll('.chart tbody tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent),
    );
    expect(rows).toEqual([
      ['This ad', '$0.88', '$0.97 a usable pound', '$1.04'],
      ['Going rate, used', '$0.50', '$0.75 a usable pound', '$1.00'],
      ['New, delivered', '$1.40', '$1.90 a usable pound', '$2.50'],
    ]);
  });

  test('the chart is drawn to scale from zero', () => {
    mount(ready());
    const bars = [...document.querySelectorAll('.chart-bar')].map((one) => [one.getAttribute('x'), one.getAttribute('width')]);
    // The axis ends at $2.50; 88, 50 and 140 cents of it, and widths of 16, 50 and 110 cents, by hand.
    expect(bars).toEqual([
      ['35.200%', '6.400%'],
      ['20.000%', '20.000%'],
      ['56.000%', '44.000%'],
    ]);
  });

  test.each([
    [250, [0, 100, 200]],
    [200, [0, 50, 100, 150, 200]],
    [1, [0, 0.5, 1]],
    [0.97, [0, 0.5]],
    [93000, [0, 20000, 40000, 60000, 80000]],
    [0, [0, 0.5, 1]],
    [Number.NaN, [0, 0.5, 1]],
  ])('axis up to %d', (highest, ticks) => {
    expect(axisTo(highest).ticks).toEqual(ticks);
  });

  test('without plates the figures are those of the whole lot', () => {
    mount(ready(), () => {
      const base = evaluation();
      return { ...base, worth: { ...base.worth, perUsablePound: null, goingRate: null, newDelivered: null } };
    });
    expect(text('.cost h2')).toBe('Cost of everything, all in');
    expect(text('.cost-figure')).toBe('$180');
    expect(text('.chart tbody')).toContain('$342 for everything');
    expect(find('[data-per-usable-pound]').dataset.perUsablePound).toBe('null');
  });

  test('without a price there is no cost, but what it is worth stands', () => {
    mount(ready(), () => {
      const base = evaluation();
      return { ...base, worth: { ...base.worth, perUsablePound: null, allIn: null } };
    });
    expect(text('.cost')).toContain('Not known without a price.');
    expect(document.querySelectorAll('.chart-bar').length).toBe(2);
  });

  test('flags come by weight, each with what was found, the limit, why, and where the limit comes from', () => {
    mount(ready());
    const flags = [...document.querySelectorAll<HTMLElement>('[data-flag]')];
    expect(flags.map((flag) => flag.dataset.weight)).toEqual(['deal-breaker', 'caution', 'note']);
    const words = flags[0]?.textContent ?? '';
    for (const part of ['Deal-breaker', 'Straight bar', 'Found shaft-thick.', 'at most shaft-thick', 'in use', 'Source of']) {
      expect(words).toContain(part);
    }
    for (const flag of flags) expect(flag.querySelector('summary')).toBeTruthy();
  });

  test('a flag that says the same of several lines stands once, with their names', () => {
    mount(ready(), () => {
      const base = evaluation();
      const [first] = base.flags;
      return { ...base, flags: first ? ['plate-1', 'bar-1', 'plate-1'].map((item) => ({ ...first, item })) : [] };
    });
    expect(document.querySelectorAll('[data-flag]')).toHaveLength(1);
    expect(text('.flag-item')).toBe('Plates, 45 lb; Straight bar');
  });

  test('the summary is plain text with call, numbers, flags and address', async () => {
    const written: string[] = [];
    Object.defineProperty(navigator, 'clipboard', {
      configurable: true,
      value: { writeText: async (words: string) => void written.push(words) },
    });
    mount(ready());
    await click('[data-copy="summary"]');
    await vi.waitFor(() => expect(text('[data-copy="summary"]')).toBe('Copied'));
    const lines = written[0]?.split('\n') ?? [];
    expect(lines[0]).toBe('Worth it at $150 or less');
    expect(lines).toContain('$0.97 ($0.88 to $1.04) a usable pound, all in.');
    expect(lines).toContain('Deal-breaker (Straight bar): Found shaft-thick. What shaft-thick means in use.');
    expect(lines.slice(-2)).toEqual([TITLE, 'http://board.invalid/ad/7']);
  });

  test('a closed clipboard shows the text to be copied by hand', async () => {
    Object.defineProperty(navigator, 'clipboard', {
      configurable: true,
      value: { writeText: async () => Promise.reject(new Error('closed')) },
    });
    mount(ready());
    await click('[data-copy="summary"]');
    await vi.waitFor(() => expect(find<HTMLTextAreaElement>('.copy-by-hand textarea').value).toContain('Worth it'));
  });
});

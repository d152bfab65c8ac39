import { act } from 'preact/test-utils';
import { describe, expect, it, vi } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { fetched, find, mount, ready } from './fixtures/mount.tsx';

const ADS = {
  english: { title: 'Plates', text: '4 x 45 lb plates, $400' },
  german: {
    title: 'Hantelscheiben',
    text: 'Verkaufe 4 Hantelscheiben mit je 20 kg aus Guss, Lochdurchmesser 50 mm, Abholung, 300 €',
  },
};
const open = async (one: (typeof ADS)[keyof typeof ADS]) => {
  mount(ready(one), evaluate);
  await act(async () => {
    const details = find<HTMLDetailsElement>('.seller-message');
    details.open = true;
    details.dispatchEvent(new Event('toggle'));
  });
  await fetched('[data-path=message]');
};
const text = () => find<HTMLTextAreaElement>('[data-path=message]').value;
const type = (words: string) =>
  act(async () => {
    const area = find<HTMLTextAreaElement>('[data-path=message]');
    area.value = words;
    area.dispatchEvent(new Event('input', { bubbles: true }));
  });

describe('the message in the panel', () => {
  it('is put together, without what is ticked off', async () => {
    await open(ADS.english);
    expect(text()).toMatch(/^Hello,.*“Plates”.*could offer \$.*When would suit you/s);
    await act(async () => find<HTMLInputElement>('[data-part=offer]').click());
    expect(text()).not.toContain('$');
  });

  it('speaks the ad’s language, or the one chosen', async () => {
    await open(ADS.german);
    expect(text()).toMatch(/^Guten Tag/);
    expect(find('[data-path=message]').lang).toBe('de');
    await act(async () => {
      const select = find<HTMLSelectElement>('[data-path=message-language]');
      select.value = 'en';
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(text()).toMatch(/^Hello/);
  });

  it('is changed by hand, copied as it stands, and written afresh', async () => {
    const copied = vi.fn(async (_text: string) => undefined);
    vi.stubGlobal('navigator', { ...navigator, clipboard: { writeText: copied } });
    await open(ADS.english);
    const first = text();
    await type('Still there?');
    await act(async () => find('[data-copy=message]').click());
    expect(copied).toHaveBeenCalledWith('Still there?');
    await act(async () => find('[data-afresh]').click());
    expect(text()).toBe(first);
    vi.unstubAllGlobals();
  });

  it.each([{ ctrlKey: true }, { metaKey: true }])('is copied by one key in the field, as its hint says: %o', async (held) => {
    const copied = vi.fn(async (_text: string) => undefined);
    vi.stubGlobal('navigator', { ...navigator, clipboard: { writeText: copied } });
    await open(ADS.english);
    const area = find<HTMLTextAreaElement>('[data-path=message]');
    expect(document.getElementById(area.getAttribute('aria-describedby') ?? '')?.textContent).toContain('Ctrl+Enter');
    area.focus();
    const enter = (more: KeyboardEventInit) =>
      act(
        async () =>
          void area.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true, ...more })),
      );
    await enter({});
    expect(copied).not.toHaveBeenCalled();
    await enter(held);
    expect(copied).toHaveBeenCalledExactlyOnceWith(text());
    expect(document.activeElement).toBe(area);
    expect(find('.seller-message [role=status]').textContent).toBe('Copied');
    // What is written further is not what was copied.
    await type('More');
    expect(find('.seller-message [role=status]').textContent).toBe('');
    vi.unstubAllGlobals();
  });
});

/** Buttons of the panel that go away with what they did leave the focus where one goes on. */
import { act } from 'preact/test-utils';
import { expect, test } from 'vitest';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { evaluation, judge } from './fixtures/evaluation.ts';
import { find, mount, ready } from './fixtures/mount.tsx';
import { sweepHost } from './fixtures/sweep-host.ts';

async function pressed(selector: string): Promise<string> {
  const button = find(selector);
  button.focus();
  await act(async () => button.click());
  await act(() => new Promise((resolve) => setTimeout(resolve, 150)));
  expect(button.isConnected && button.matches(selector)).toBe(false);
  expect(document.activeElement).not.toBe(document.body);
  return document.activeElement?.outerHTML ?? '';
}

test('an ad is kept: on the way to it', async () => {
  mount(ready(), judge);
  await act(async () => undefined);
  expect(await pressed('[data-keep]')).toContain('data-open-find');
});

test('a caution is put away: on having it again, and back', async () => {
  const caution = { kind: 'collars', says: { key: 'caution_collars' }, bound: false } as const;
  mount(ready(), () => evaluation({ cautions: [caution] }));
  expect(await pressed('[data-caution=collars] button')).toContain('data-show-cautions');
  await pressed('[data-show-cautions]');
});

test('what settled a doubt is taken back: among its choices', async () => {
  mount(ready(), judge);
  await act(async () => find('[data-doubt="bar-included"] [data-choice="1"]').click());
  expect(await pressed('[data-undo="bar-included"]')).toContain('data-choice');
});

test('reading a page is stopped: on reading it again', async () => {
  const swept = { tabId: 1, run: 'run', at: 1, ads: [{ id: 'ad-1', listing: listingFromText('Squat rack, $150', 'sweep') }] };
  const sweep = sweepHost({ ...swept, state: 'watching' });
  mount(null, judge, new Map(), null, sweep);
  await act(() => new Promise((resolve) => setTimeout(resolve, 200)));
  sweep.host.stop.mockImplementation(() => sweep.go({ ...swept, state: 'ended' }));
  expect(await pressed('[data-stop]')).toContain('data-again');
});

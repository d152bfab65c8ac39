/** The panel's list of a page's ads, judged by the core as it ships. */
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Swept } from '../../../extension/panel/sweep/sweep-host.ts';
import type { AdToKeep } from '../../../extension/panel/sweep/to-keep.ts';
import type { MetAgain } from '../../../extension/store/index.ts';
import { evaluate } from '../../../src/evaluate.ts';
import type { PageListing } from '../../../src/listing/page-listing.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { findOf } from '../panel/fixtures/keep-host.ts';
import { choose, click, fetched, find, mount, text, type } from '../panel/fixtures/mount.tsx';
import { sweepHost } from '../panel/fixtures/sweep-host.ts';
import { ad } from '../store/making.ts';

const TEXTS = [
  'Iron plates 4 x 45 lb\n2 inch holes, no rust\n$250',
  'Iron plates 4 x 35 lb\n2 inch holes, no rust\n$60',
  'Olympic plates\n$120',
  'Squat rack\n$150',
  'Sofa, blue\n$50',
  'Wanted: 45 lb plates, paying $40 each',
  'Bumper plates 2 x 45 lb, 2 inch, like new\nMake me an offer',
] as const;

const listing = (words: string, n: number): PageListing => ({
  ...listingFromText(words, 'sweep'),
  address: `http://board.invalid/ad/${n}`,
  title: words.split('\n', 1)[0] ?? '',
});
const swept = (texts: readonly string[] = TEXTS, over: Partial<Swept> = {}): Swept => ({
  tabId: 1,
  run: 'run-1',
  state: 'watching',
  at: 10,
  ads: texts.map((words, index) => ({ id: `ad-${index + 1}`, listing: listing(words, index + 1) })),
  ...over,
});
/** Judging goes on in pieces; lets it, until all rows are there. */
const countOf = async (selector: string, count: number): Promise<void> => {
  const found = () => document.querySelectorAll(selector).length;
  for (let tries = 0; tries < 100 && found() !== count; tries += 1) await act(() => new Promise((go) => setTimeout(go, 20)));
  expect(found()).toBe(count);
};
const rowsOf = (count: number) => countOf('[data-row]', count);
const knownOf = (count: number) => countOf('[data-known]', count);
const shown = (): string[] => [...document.querySelectorAll('[data-row]')].map((row) => row.getAttribute('data-row') ?? '');
const press = (key: string, on: Element | Window = document.activeElement ?? window) =>
  act(() => void on.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })));

async function show(
  over: Partial<Swept> = {},
  keepMany: Parameters<typeof sweepHost>[1] = null,
  texts: readonly string[] = TEXTS,
) {
  const sweep = sweepHost(swept(texts, over), keepMany);
  const mounted = mount(null, evaluate, new Map(), null, sweep);
  await rowsOf(texts.length);
  return { ...mounted, sweep };
}
const verdicts = (): Record<string, string> =>
  Object.fromEntries(
    [...document.querySelectorAll('[data-row]')].map((row) => [row.getAttribute('data-row'), row.getAttribute('data-verdict')]),
  );

afterEach(() => document.body.replaceChildren());

describe('what is said of each ad', () => {
  it('is its call with its cost, or that too little is said; never a made-up number', async () => {
    const { sweep } = await show();
    expect(verdicts()).toMatchObject({
      'ad-3': 'unsaid',
      'ad-4': 'unsaid',
      'ad-5': 'other',
      'ad-6': 'wanted',
    });
    for (const id of ['ad-3', 'ad-4', 'ad-5', 'ad-6']) expect(text(`[data-row="${id}"]`)).not.toMatch(/usable|going rate/);
    expect(text('[data-row="ad-2"]')).toMatch(/Worth the drive.*\$0\.\d\d a usable pound.*asked \$60/);
    const tags = sweep.host.tag.mock.calls.flatMap(([, given]) => given);
    expect(tags.map(({ id }) => id).sort()).toEqual(TEXTS.map((_, index) => `ad-${index + 1}`));
    expect(tags.find(({ id }) => id === 'ad-3')).toEqual({ id: 'ad-3', words: 'Not enough said', tone: 'faint' });
    expect(tags.find(({ id }) => id === 'ad-2')).toMatchObject({
      words: expect.stringMatching(/^Worth the drive.* · \$0\.\d\d a usable lb$/),
      tone: 'plain',
    });
  });
  it('goes on as ads come in, and begins anew with another run', async () => {
    const { sweep } = await show({}, null, TEXTS.slice(0, 2));
    sweep.go(swept(TEXTS.slice(0, 4)));
    await rowsOf(4);
    expect(sweep.host.tag.mock.calls.flatMap(([, tags]) => tags)).toHaveLength(4);
    sweep.go(swept(TEXTS.slice(4, 6), { run: 'run-2', at: 20 }));
    await rowsOf(2);
    expect(text('.sweep h1')).toBe('2 ads on this page');
  });
  it('an ad that the core can not judge stays in the list', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const sweep = sweepHost(swept(TEXTS.slice(0, 2)));
    mount(
      null,
      (given, ...rest) => {
        if (given.text.includes('4 x 45')) throw new Error('defect');
        return evaluate(given, ...rest);
      },
      new Map(),
      null,
      sweep,
    );
    await rowsOf(2);
    expect(text('[data-row="ad-1"]')).toContain('Could not be judged');
    vi.restoreAllMocks();
  });
  it('hostile words stay words', async () => {
    const evil = '<img src=x onerror=alert(1)> 4 x 45 lb plates {price} $100';
    const { sweep } = await show({}, null, [evil, evil.repeat(300), '']);
    expect(document.querySelector('main img')).toBeNull();
    expect(text('[data-choose="ad-1"]')).toBe(evil);
    expect(sweep.host.tag).toHaveBeenCalled();
  });
});

describe('the list', () => {
  it('is sorted by cost, call, saving; what is not known comes last', async () => {
    await show();
    expect(shown()).toEqual(TEXTS.map((_, index) => `ad-${index + 1}`));
    choose('[data-path="sweep.order"]', 'cost');
    expect(shown().slice(0, 2)).toEqual(['ad-2', 'ad-1']);
    choose('[data-path="sweep.order"]', 'saving');
    expect(shown().slice(0, 2)).toEqual(['ad-2', 'ad-1']);
    choose('[data-path="sweep.order"]', 'call');
    expect(shown().at(0)).toBe('ad-2');
    expect(shown().at(-1)).toBe('ad-5');
  });
  it('is filtered by words, call and equipment', async () => {
    await show();
    type('[data-path="sweep.text"]', 'HOLES plates');
    expect(shown()).toEqual(['ad-1', 'ad-2']);
    type('[data-path="sweep.text"]', '');
    choose('[data-path="sweep.kind"]', 'bumper');
    expect(shown()).toEqual(['ad-7']);
    choose('[data-path="sweep.kind"]', 'all');
    choose('[data-path="sweep.verdict"]', 'unsaid');
    expect(shown()).toEqual(['ad-3', 'ad-4']);
    type('[data-path="sweep.text"]', 'no such words');
    expect(shown()).toEqual([]);
    expect(text('.sweep')).toContain('No ad matches the filter');
  });
  it('opens an ad as a full answer and in the page, and comes back to where it was', async () => {
    const { sweep, take } = await show();
    choose('[data-path="sweep.order"]', 'cost');
    await click('[data-choose="ad-1"]');
    expect(sweep.host.show).toHaveBeenLastCalledWith(expect.objectContaining({ run: 'run-1' }), 'ad-1');
    const [, opened] = sweep.host.open.mock.calls[0] ?? [];
    if (!opened) throw new Error('not opened');
    await take({ state: 'ready', listing: opened, cut: false, at: 30 });
    expect(find('main').getAttribute('data-state')).toBe('answer');
    expect(document.activeElement).toBe(find('[data-back]'));
    await click('[data-back]');
    expect(shown().slice(0, 2)).toEqual(['ad-2', 'ad-1']);
    expect(document.activeElement).toBe(find('[data-choose="ad-1"]'));
    expect(sweep.host.show).toHaveBeenLastCalledWith(expect.anything(), null);
  });
  it('marks the words of an opened ad by the sweep, not by the page of another capture', async () => {
    const { sweep, host, take } = await show();
    await take({ state: 'ready', listing: listing(TEXTS[0], 1), cut: false, at: 30 });
    act(() => void find('[data-line="plate-1"]').dispatchEvent(new MouseEvent('mouseenter', { bubbles: true })));
    expect(sweep.host.mark).toHaveBeenCalledWith(
      expect.objectContaining({ run: 'run-1' }),
      'ad-1',
      expect.arrayContaining([{ start: 12, end: 21 }]),
    );
    expect(host.highlight).not.toHaveBeenCalled();
  });
  it('follows what the buyer says about an opened ad', async () => {
    const { sweep, take } = await show();
    await take({ state: 'ready', listing: listing(TEXTS[0], 1), cut: false, at: 30 });
    sweep.host.tag.mockClear();
    type('[data-path="asking.amount"]', '20');
    await vi.waitFor(() => expect(sweep.host.tag).toHaveBeenCalled());
    await click('[data-back]');
    expect(text('[data-row="ad-1"]')).toContain('asked $20');
  });
  it('is walked by arrow keys', async () => {
    await show();
    find('[data-choose="ad-1"]').focus();
    press('ArrowDown');
    expect(document.activeElement).toBe(find('[data-choose="ad-2"]'));
    press('End');
    expect(document.activeElement).toBe(find('[data-choose="ad-7"]'));
    press('ArrowDown');
    expect(document.activeElement).toBe(find('[data-choose="ad-7"]'));
    press('Home');
    expect(document.activeElement).toBe(find('[data-choose="ad-1"]'));
  });
});

describe('stopping', () => {
  it('is done by button and by Esc, while it runs', async () => {
    const { sweep } = await show();
    await click('[data-stop]');
    press('Escape', window);
    expect(sweep.host.stop).toHaveBeenCalledTimes(2);
    sweep.go(swept(TEXTS, { state: 'ended' }));
    expect(document.querySelector('[data-stop]')).toBeNull();
    press('Escape', window);
    expect(sweep.host.stop).toHaveBeenCalledTimes(2);
    expect(shown()).toHaveLength(TEXTS.length);
  });
  it('says when there is nothing to sweep, and closes', async () => {
    const sweep = sweepHost(swept([], { state: 'nothing' }));
    mount(null, evaluate, new Map(), null, sweep);
    await fetched('.sweep h1');
    expect(text('.sweep h1')).toBe('No list of ads here');
    await click('[data-close-list]');
    expect(sweep.host.drop).toHaveBeenCalled();
    sweep.go(null);
    expect(find('main').getAttribute('data-state')).toBe('empty');
  });
  it('a page that can not be reached is said', async () => {
    const { sweep } = await show({ state: 'ended' });
    sweep.host.start.mockResolvedValueOnce(false);
    await click('[data-again]');
    expect(text('[role=alert]')).toContain('Alt+Shift+L');
  });
});

describe('keeping', () => {
  it('keeps what is ticked, many at once', async () => {
    const keepMany = vi.fn(async (kept: readonly (AdToKeep | null)[]) => ({ kept: kept.length, left: [], code: null }));
    const { take } = await show({}, keepMany);
    // What was said about an ad is kept with it.
    await take({ state: 'ready', listing: listing(TEXTS[1], 2), cut: false, at: 30 });
    type('[data-path="asking.amount"]', '55');
    await click('[data-back]');
    expect(find<HTMLButtonElement>('[data-keep]').disabled).toBe(true);
    await click('[data-tick="ad-2"]');
    choose('[data-path="sweep.verdict"]', 'unsaid');
    await click('[data-tick-all]');
    await click('[data-keep]');
    await act(() => vi.waitFor(() => expect(keepMany).toHaveBeenCalled()));
    const kept = keepMany.mock.calls[0]?.[0] ?? [];
    expect(kept.map((one) => one?.listing.address)).toEqual([2, 3, 4].map((n) => `http://board.invalid/ad/${n}`));
    expect(kept.map((one) => one?.edits.changes.length)).toEqual([1, 0, 0]);
    expect(kept[0]?.evaluation.reading.asking.amount?.value.minor).toBe(5500);
    expect(text('.sweep-keep')).toContain('3 ads are among your finds now');
    expect(find<HTMLButtonElement>('[data-keep]').disabled).toBe(true);
  });
  it('says when it fails, and keeps the ticks', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    await show({}, async () => Promise.reject(new Error('full')));
    await click('[data-tick="ad-2"]');
    await click('[data-keep]');
    await act(() => new Promise((go) => setTimeout(go, 50)));
    expect(text('.sweep-keep [role=status]')).toBe('');
    expect(text('.sweep-keep [role=alert]')).toBe(
      'One ad was not kept and stays selected. Something went wrong in Ironsift, and nothing was kept. Please try again.',
    );
    expect(find<HTMLInputElement>('[data-tick="ad-2"]').checked).toBe(true);
    vi.restoreAllMocks();
  });
  it('keeps the ticks of those alone that were not kept, and says why in the words of the store', async () => {
    await show({}, async () => ({ kept: 1, left: [1, 2], code: 'full' as const }));
    for (const id of ['ad-1', 'ad-2', 'ad-7']) await click(`[data-tick="${id}"]`);
    await click('[data-keep]');
    await fetched('.sweep-keep [role=alert]');
    expect(text('.sweep-keep [role=status]')).toBe('One ad is among your finds now.');
    expect(text('.sweep-keep [role=alert]')).toMatch(/^2 ads were not kept and stay selected\. There is no room left/);
    const ticked = [...document.querySelectorAll<HTMLInputElement>('[data-tick]')].filter(({ checked }) => checked);
    expect(ticked.map((box) => box.getAttribute('data-tick'))).toEqual(['ad-2', 'ad-7']);
    expect(text('[data-keep]')).toBe('Keep 2 ads');
  });
  it('an ad that can not be judged is left, the others are kept', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const keepMany = vi.fn(async (_: readonly (AdToKeep | null)[]) => ({ kept: 1, left: [0], code: 'bad-input' as const }));
    const sweep = sweepHost(swept(TEXTS.slice(0, 2)), keepMany);
    const judge: typeof evaluate = (given, ...rest) => {
      if (given.text.includes('4 x 45')) throw new Error('defect');
      return evaluate(given, ...rest);
    };
    mount(null, judge, new Map(), null, sweep);
    await rowsOf(2);
    await click('[data-tick-all]');
    await click('[data-keep]');
    await act(() => vi.waitFor(() => expect(keepMany).toHaveBeenCalled()));
    expect(keepMany.mock.calls[0]?.[0].map((one) => one?.listing.address ?? null)).toEqual([null, 'http://board.invalid/ad/2']);
    vi.restoreAllMocks();
  });
  it('says of each row whether it is kept already, and what it cost then', async () => {
    const kept = ad(TEXTS[0], 'http://board.invalid/ad/1', 'Iron plates');
    const met: Record<string, MetAgain> = {
      'http://board.invalid/ad/1': {
        find: findOf(kept, { id: 'dear', prices: [{ at: 1, minor: 50_000, currency: 'USD' }] }),
        how: 'address',
        likeness: 1,
      },
      'http://board.invalid/ad/2': {
        find: findOf(kept, { id: 'same', prices: [{ at: 1, minor: 6000, currency: 'USD' }] }),
        how: 'words',
        likeness: 0.9,
      },
      'http://board.invalid/ad/4': { find: findOf(kept, { id: 'perhaps' }), how: 'maybe', likeness: 0.9 },
      'http://board.invalid/ad/7': {
        find: findOf(kept, { id: 'open', prices: [{ at: 1, minor: 9000, currency: 'USD' }] }),
        how: 'words',
        likeness: 0.9,
      },
    };
    const again = vi.fn(async ({ address }: PageListing) => ({
      ok: true as const,
      value: [met[address ?? '']].filter((one) => one !== undefined),
    }));
    const sweep = sweepHost(swept(), async (ads) => ({ kept: ads.length, left: [], code: null }), again);
    mount(null, evaluate, new Map(), null, sweep);
    await rowsOf(TEXTS.length);
    await knownOf(3);
    expect(text('[data-row="ad-1"] [data-known]')).toBe('Kept before. Asked $500 then, $250 now: 50% less.');
    expect(text('[data-row="ad-2"] [data-known]')).toBe('Kept before. The price is the same.');
    expect(text('[data-row="ad-7"] [data-known]')).toBe('Kept before. Asked $90 then.');
    expect(again).toHaveBeenCalledTimes(TEXTS.length);
    // What is kept from the list is known from then on.
    met['http://board.invalid/ad/3'] = { find: findOf(kept, { id: 'new' }), how: 'address', likeness: 1 };
    await click('[data-tick="ad-3"]');
    await click('[data-keep]');
    await knownOf(4);
    expect(text('[data-row="ad-3"] [data-known]')).toBe('Kept before.');
    expect(again).toHaveBeenCalledTimes(TEXTS.length + 1);
  });
  it('offers no ticks where ads can not be kept', async () => {
    await show();
    expect(document.querySelector('[data-tick], [data-keep]')).toBeNull();
  });
});

it('starts from the panel', async () => {
  const sweep = sweepHost();
  mount(null, evaluate, new Map(), null, sweep);
  await click('[data-start-sweep]');
  expect(sweep.host.start).toHaveBeenCalled();
});

it('draws a long list in pieces, whole in the end, and orders it anew', { timeout: 30_000 }, async () => {
  const many = Array.from({ length: 150 }, (_, n) => `Iron plates ${2 + (n % 7)} x 45 lb\n2 inch holes\n$${100 + n}`);
  await show({}, null, many);
  choose('[data-path="sweep.order"]', 'cost');
  await act(() => new Promise((go) => setTimeout(go, 50)));
  expect(shown()).toHaveLength(150);
  // 8 pieces of 45 lb, the cheapest of them: $106.
  expect(shown()[0]).toBe('ad-7');
  choose('[data-path="sweep.verdict"]', 'leave');
  expect(shown().length).toBeLessThan(150);
});

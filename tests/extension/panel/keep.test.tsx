import { act } from 'preact/test-utils';
import { describe, expect, test, vi } from 'vitest';
import { keepMany } from '../../../extension/panel/sweep/keep-many.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { ad } from '../store/making.ts';
import { judge } from './fixtures/evaluation.ts';
import { DAY, findOf, keepHost } from './fixtures/keep-host.ts';
import { click, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';
import { sweepHost } from './fixtures/sweep-host.ts';

const AD = ad('4 x 45 lb plates $150');
const KEPT = findOf(AD, {
  id: 'old',
  title: 'Plates of spring',
  status: 'asked',
  keptAt: 88 * DAY,
  prices: [{ at: 88 * DAY, minor: 25_000, currency: 'USD' }],
  notes: 'ring <b>after</b> six',
});

async function open(keeping = keepHost()) {
  const panel = mount(ready(), judge, new Map(), null, sweepHost(), keeping);
  await act(async () => undefined);
  return { ...panel, keeping };
}

describe('keeping an ad', () => {
  test('one press keeps it with its answer, and says so', async () => {
    const { keeping } = await open();
    await click('[data-keep]');
    expect(keeping.keep).toHaveBeenCalledOnce();
    expect(keeping.keep.mock.calls[0]?.[0].evaluation.call.kind).toBe('haggle');
    expect(text('.keep [role=status]')).toContain('Kept.');
    await click('[data-open-find]');
    expect(keeping.openWorkshop).toHaveBeenCalledWith('finds/find-1');
  });

  test('pressed twice it is kept once', async () => {
    const { keeping } = await open();
    await act(async () => {
      for (const _ of [1, 2]) find('[data-keep]').click();
    });
    expect(keeping.keep).toHaveBeenCalledOnce();
  });

  test('what is said while it is being kept is kept too', async () => {
    const { keeping } = await open();
    const keep = keeping.keep.getMockImplementation() as typeof keeping.keep;
    let written = (): void => undefined;
    keeping.keep.mockImplementationOnce(async (given) => {
      await new Promise<void>((resolve) => (written = resolve));
      return keep(given);
    });
    await click('[data-keep]');
    await type('[data-path="plate-1.count"]', '6');
    expect(keeping.refresh).not.toHaveBeenCalled();
    written();
    await vi.waitFor(async () => {
      await act(async () => undefined);
      expect(keeping.refresh).toHaveBeenCalled();
    });
    expect(keeping.refresh.mock.calls.map(([id, { edits }]) => [id, edits.changes.length])).toEqual([['find-1', 1]]);
  });

  test('what is said about it afterwards is kept too', async () => {
    const { keeping } = await open();
    await click('[data-keep]');
    await type('[data-path="plate-1.count"]', '6');
    await leave('[data-path="plate-1.count"]');
    await act(() => vi.waitFor(() => expect(keeping.refresh).toHaveBeenCalled()));
    expect(keeping.refresh.mock.lastCall?.[1].edits.changes).toHaveLength(1);
    expect(keeping.refresh.mock.lastCall?.[2]).toBe(false);
  });

  test('a store that is full says so, and the button stays', async () => {
    await open(keepHost([], { ok: false, code: 'full' }));
    await click('[data-keep]');
    expect(text('.keep [role=alert]').length).toBeGreaterThan(20);
    expect(find('[data-keep]')).toBeTruthy();
  });

  test('an ad met again shows what was kept, the change of price and the days', async () => {
    const { keeping } = await open(keepHost([{ find: KEPT, how: 'words', likeness: 0.9 }]));
    const met = text('[data-met]');
    expect(met).toContain('You kept this ad before, under another address: “Plates of spring”.');
    expect(met).toMatch(/Asked \$250 then, \$\d+ now: \d+% less\. Known for 12 days\. Status: asked\./);
    expect(document.querySelector('[data-met] b')).toBeNull();
    await click('[data-take]');
    expect(keeping.refresh.mock.lastCall?.[0]).toBe('old');
    expect(keeping.refresh.mock.lastCall?.[2]).toBe(true);
    expect(text('.keep')).toContain('Kept.');
  });

  test.each([
    [
      '4 x 45 lb olympic plates, $150\nListed 3 weeks ago',
      /^The ad says “Listed 3 weeks ago”: about 21 days on the market by its own account\./,
    ],
    [
      '4 x 45 lb olympic plates, $150\nposted: 1970-04-08',
      /^The ad says “posted: 1970-04-08”: [23] days on the market by its own account, since Apr/,
    ],
  ])('says as a claim since when the ad stands, with the words: %s', async (words, said) => {
    mount(ready({ text: words }), evaluate, new Map(), null, sweepHost(), keepHost());
    await vi.waitFor(() => find('[data-posted]'), 10_000);
    expect(text('[data-posted]')).toMatch(said);
  });

  test('says nothing of the kind where something was bought then, and shows words as words', async () => {
    const plates = '4 x 45 lb olympic plates, $150';
    mount(ready({ text: `${plates}, bought 3 weeks ago` }), evaluate, new Map(), null, sweepHost(), keepHost());
    await act(async () => void (await import('../../../extension/panel/posted-line.tsx')));
    expect(document.querySelector('[data-posted]')).toBeNull();
    mount(ready({ text: `${plates}\n<b>posted 2 days ago</b>` }), evaluate, new Map(), null, sweepHost(), keepHost());
    await vi.waitFor(() => find('[data-posted]'), 10_000);
    expect(document.querySelector('[data-posted] b')).toBeNull();
  });

  test('says nothing of an ad of today, for it has stood for no time yet', async () => {
    const plates = '4 x 45 lb olympic plates, $150';
    mount(ready({ text: `${plates}\nposted 2 days ago` }), evaluate, new Map(), null, sweepHost(), keepHost());
    await vi.waitFor(() => find('[data-posted]'), 10_000);
    mount(ready({ text: `${plates}\nposted today` }), evaluate, new Map(), null, sweepHost(), keepHost());
    await vi.waitFor(() => find('[data-keep]'), 10_000);
    await act(async () => void (await import('../../../extension/panel/posted-line.tsx')));
    expect(document.querySelector('[data-posted]')).toBeNull();
  });

  test('an ad that names no price any more is not said to cost the same', async () => {
    const keeping = keepHost([{ find: KEPT, how: 'words', likeness: 0.9 }]);
    mount(ready({ text: '4 x 45 lb olympic plates, make me an offer' }), evaluate, new Map(), null, sweepHost(), keeping);
    await act(async () => undefined);
    expect(text('[data-met]')).toContain('“Plates of spring”. Asked $250 then. Known for 12 days.');
  });

  test('an ad kept an hour ago is not known for 0 days', async () => {
    await open(keepHost([{ find: { ...KEPT, keptAt: 99.5 * DAY }, how: 'words', likeness: 0.9 }]));
    expect(text('[data-met]')).toContain('Known for less than a day. Status: asked.');
  });

  test('many at once: known ones are brought up to date, doubtful ones are new', async () => {
    const host = keepHost([{ find: KEPT, how: 'address', likeness: 1 }]);
    expect(await keepMany(host, [AD, AD])).toEqual({ kept: 2, left: [], code: null });
    expect(host.refresh).toHaveBeenCalledTimes(2);
    const doubtful = keepHost([{ find: KEPT, how: 'maybe', likeness: 0.5 }]);
    expect(await keepMany(doubtful, [AD])).toEqual({ kept: 1, left: [], code: null });
    expect(doubtful.keep).toHaveBeenCalledOnce();
  });

  test('many at once: where the store has no room for more, the rest is left and not even tried', async () => {
    const host = keepHost();
    const full = { ok: false, code: 'full' } as const;
    host.keep.mockImplementationOnce(host.keep.getMockImplementation() as typeof host.keep).mockResolvedValueOnce(full);
    expect(await keepMany(host, [AD, AD, AD, AD])).toEqual({ kept: 1, left: [1, 2, 3], code: 'full' });
    expect(host.keep).toHaveBeenCalledTimes(2);
  });

  test('many at once: one that is bad by itself keeps none of the others away', async () => {
    const host = keepHost();
    host.keep.mockResolvedValueOnce({ ok: false, code: 'bad-input' });
    expect(await keepMany(host, [AD, AD, null, AD])).toEqual({ kept: 2, left: [0, 2], code: 'bad-input' });
    const blind = keepHost();
    blind.again.mockResolvedValue({ ok: false, code: 'outdated' });
    expect(await keepMany(blind, [AD])).toEqual({ kept: 0, left: [0], code: 'outdated' });
    expect(blind.keep).not.toHaveBeenCalled();
  });
});

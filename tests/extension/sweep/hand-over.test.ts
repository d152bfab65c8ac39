/** From the buyer's wish to the page and back to the panel, through the background and session storage. */
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { loadCapture } from '../../../extension/platform/capture-state.ts';
import type { SweepReport, SweptAd } from '../../../extension/platform/messages.ts';
import { openSwept, startSweep, stopSweep, tagSwept } from '../../../extension/platform/sweep.ts';
import { type Swept, watchSweep } from '../../../extension/platform/watch-sweep.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { fakeBrowser, settled } from '../capture-platform/fake-browser.ts';

let fake: ReturnType<typeof fakeBrowser>;
let onSwept: typeof import('../../../extension/background/ask-for-sweep.ts').onSwept;
let onListClosed: typeof import('../../../extension/background/ask-for-sweep.ts').onListClosed;
const from = (id: number) => ({ id: 'ironsift', tab: { id } }) as never;
const ads = (...names: readonly string[]): SweptAd[] =>
  names.map((id) => ({ id, listing: { ...listingFromText(`4 x 45 lb plates, ad ${id}`, 'sweep'), title: id } }));
/** Parts of each run so far, by the ads in them: the same ads come again as the same part. */
let parts: Record<string, string[]> = {};
function partOf(run: string, given: readonly SweptAd[]): number {
  parts[run] ??= [];
  const name = given.map(({ id }) => id).join();
  if (name !== '' && !parts[run].includes(name)) parts[run].push(name);
  return name === '' ? parts[run].length : parts[run].indexOf(name);
}
const report = (state: SweepReport['state'], given: readonly SweptAd[] = [], run = 'one'): Promise<null> =>
  onSwept({ run, state, ads: given, part: partOf(run, given), spent: 1 }, from(1));

async function follow() {
  const seen: (Swept | null)[] = [];
  const stop = watchSweep((swept) => seen.push(swept));
  await settled();
  return { seen, stop, last: () => seen.at(-1) };
}
const names = (swept: Swept | null | undefined) => swept?.ads.map(({ id }) => id);

beforeAll(async () => {
  fakeBrowser();
  ({ onSwept, onListClosed } = await import('../../../extension/background/ask-for-sweep.ts'));
});
beforeEach(() => {
  parts = {};
  fake = fakeBrowser();
});

describe('what the page reports', () => {
  it('comes to the panel, batch by batch, also when the panel opens late', async () => {
    await report('reading');
    await report('reading', ads('a', 'b'));
    const panel = await follow();
    expect(panel.last()).toMatchObject({ tabId: 1, run: 'one', state: 'reading' });
    expect(names(panel.last())).toEqual(['a', 'b']);
    await report('watching', ads('c'));
    await settled();
    expect(names(panel.last())).toEqual(['a', 'b', 'c']);
    expect(panel.last()?.state).toBe('watching');
    await report('ended');
    await settled();
    expect(panel.last()?.state).toBe('ended');
    expect(names(panel.last())).toEqual(['a', 'b', 'c']);
    panel.stop();
  });
  it('counts once when it comes again, for the background may be ended before it has answered', async () => {
    const panel = await follow();
    await report('reading');
    for (const part of [ads('a', 'b'), ads('a', 'b'), ads('c', 'd'), ads('c', 'd')]) await report('reading', part);
    await report('watching', ads('e'));
    await settled();
    expect(names(panel.last())).toEqual(['a', 'b', 'c', 'd', 'e']);
    await report('ended');
    await report('watching', ads('e'));
    await settled();
    expect(panel.last()?.state).toBe('ended');
    panel.stop();
  });
  it('keeps its order when the last word overtakes a report that had to be sent again', async () => {
    const panel = await follow();
    await report('reading');
    const [late, early] = [ads('a', 'b'), ads('c')].map((given) => ({
      ads: given,
      part: partOf('one', given),
      run: 'one',
      spent: 1,
    }));
    if (early) await onSwept({ ...early, state: 'ended' }, from(1));
    await settled();
    expect(names(panel.last())).toEqual(['c']);
    if (late) await onSwept({ ...late, state: 'reading' }, from(1));
    await settled();
    expect(names(panel.last())).toEqual(['a', 'b', 'c']);
    expect(panel.last()?.state).toBe('ended');
    panel.stop();
  });
  it('begins anew with a new run, and an old run has no last word', async () => {
    const panel = await follow();
    await report('reading');
    await report('watching', ads('a'));
    await report('reading', [], 'two');
    await report('ended', [], 'one');
    await report('watching', ads('b'), 'two');
    await settled();
    expect(panel.last()).toMatchObject({ run: 'two', state: 'watching' });
    expect(names(panel.last())).toEqual(['b']);
    panel.stop();
  });
  it('is gone when its list is closed, and does not come back with what was under way, but with the next sweep', async () => {
    const panel = await follow();
    await report('reading');
    void report('reading', ads('a'));
    await onListClosed({ tabId: 1, run: 'one' });
    await report('reading', ads('b'));
    await report('ended');
    await settled();
    expect(panel.last()).toBeNull();
    await report('reading', [], 'two');
    await report('watching', ads('c'), 'two');
    await settled();
    expect(names(panel.last())).toEqual(['c']);
    panel.stop();
  });
  it('is checked: what is no ad is left out', async () => {
    const bad = { id: 'x', listing: { text: 3 } } as never;
    await report('reading');
    await report('watching', [bad, ...ads('a')]);
    const panel = await follow();
    expect(names(panel.last())).toEqual(['a']);
    panel.stop();
  });
  it('of another tab is not shown', async () => {
    const panel = await follow();
    await onSwept({ run: 'two', state: 'reading', ads: [], part: 0, spent: 0 }, from(2));
    await settled();
    expect(panel.last()).toBeNull();
    panel.stop();
  });
  it('takes the room of other tabs when storage is full, and says so when there is none', async () => {
    fake.world.room = 3000;
    await onSwept({ run: 'other', state: 'reading', ads: [], part: 0, spent: 0 }, from(2));
    await onSwept({ run: 'other', state: 'watching', ads: ads('a', 'b', 'c', 'd', 'e'), part: 0, spent: 0 }, from(2));
    await report('reading');
    await report('watching', ads('a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'));
    await expect(report('watching', ads(...'abcdefghijklmnopq'))).rejects.toThrow('full');
    const panel = await follow();
    expect(panel.last()?.state).toBe('full');
    expect(panel.last()?.ads).toHaveLength(8);
    panel.stop();
  });
});

describe('the panel', () => {
  it('starts a sweep where it may, and says so where it may not', async () => {
    expect((await startSweep()).ok).toBe(true);
    expect(fake.calls).toEqual(['inject sweep.js into 1', 'to page 1: sweep']);
    fake.world.mayInject = false;
    expect(await startSweep()).toEqual({ ok: false, code: 'no-page' });
  });
  it('learns that a sweep is over when its page is gone', async () => {
    await report('reading');
    await report('watching', ads('a'));
    fake.world.pageAnswers = () => undefined;
    await tagSwept(1, 'one', []);
    const panel = await follow();
    expect(panel.last()?.state).toBe('ended');
    await stopSweep(1);
    panel.stop();
  });
  it('makes an ad of the list its own capture', async () => {
    const [ad] = ads('a');
    if (ad) await openSwept(1, ad.listing);
    expect(await loadCapture(1)).toMatchObject({ state: 'ready', listing: { origin: 'sweep', title: 'a' } });
  });
  it('says so where there is no room for that', async () => {
    fake.world.room = 1000;
    await openSwept(1, listingFromText('x'.repeat(2000), 'sweep'));
    expect(await loadCapture(1)).toMatchObject({ state: 'failed', reason: 'full' });
  });
});

describe('the background', () => {
  const tab = { id: 1, windowId: 3 };
  beforeEach(async () => {
    vi.resetModules();
    await import('../../../extension/background/index.ts');
  });
  it.each([
    ['the menu', () => fake.events.onMenu.fire({ menuItemId: 'read-every-ad' }, tab)],
    ['the shortcut', () => fake.events.onCommand.fire('read-every-ad', tab)],
  ])('opens the panel before all else at %s, then has the page read', async (_, ask) => {
    ask();
    // At once, while the browser still counts it as the buyer's own wish.
    expect(fake.calls[0]).toBe('side panel {"tabId":1}');
    await settled();
    expect(fake.calls.slice(1)).toEqual(['inject sweep.js into 1', 'to page 1: sweep']);
  });
  it('tells the panel where scripts may not run', async () => {
    fake.world.mayInject = false;
    fake.world.activeTab = { id: 1, url: 'chrome://settings/' };
    fake.events.onCommand.fire('read-every-ad', tab);
    await vi.waitFor(async () => expect(await loadCapture(1)).toMatchObject({ state: 'refused', reason: 'browser-page' }));
  });
  it('forgets the list with its tab', async () => {
    await report('reading');
    await report('watching', ads('a'));
    fake.events.onRemoved.fire(1);
    await settled();
    expect(Object.keys(await fake.storage.session.get(null))).toEqual([]);
  });
});

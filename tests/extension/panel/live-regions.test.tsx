/** What a screen reader is told by the panel: each result once, when it stands, and not every step on the way. */
import { act } from 'preact/test-utils';
import { afterEach, beforeAll, beforeEach, expect, it, vi } from 'vitest';
import type { Swept } from '../../../extension/panel/sweep/sweep-host.ts';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { heard as heardWith } from '../heard.ts';
import { choose, click, fetched, find, leave, mount, ready, text, type } from './fixtures/mount.tsx';
import { sweepHost } from './fixtures/sweep-host.ts';

beforeAll(async () => {
  // Fetched when it is first shown, and there at once from then on.
  mount(null, evaluate, new Map(), null, sweepHost(swept(1)));
  await fetched('[data-row]');
});
// Whether letters come fast enough is no matter of the machine.
beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const wait = (ms: number) => act(async () => void (await vi.advanceTimersByTimeAsync(ms)));
const heard = (doing: () => Promise<unknown>) => heardWith(doing, wait);

const AD = ready({ title: '', text: 'Olympic plates 4 x 45 lb with 2 inch holes, $150' });
const call = () => text('[data-call] h1, h1');

/** Types letter by letter, as fast as people do. */
const typed = (path: string, letters: string) => async () => {
  for (let count = 1; count <= letters.length; count += 1) {
    await type(`[data-path="${path}"]`, letters.slice(0, count));
    await wait(40);
  }
};

/** An answer that has been said. */
async function answered() {
  const mounted = mount(AD, evaluate);
  await heard(async () => undefined);
  return mounted;
}

it('an answer is said once, however often it is worked out before it stands', async () => {
  const said = await heard(async () => {
    const { take } = mount({ state: 'picking', at: 1 }, evaluate);
    await wait(50);
    take(AD);
  });
  expect(said).toEqual([call()]);
});

it('a price that is typed says the answer to all of it, and not to each of its figures', async () => {
  await answered();
  const said = await heard(typed('asking.amount', '1900'));
  expect(said).toEqual([call()]);
});

it('what makes no sense is said when the field is left, once, and the answer stays as it was', async () => {
  await answered();
  const said = await heard(async () => {
    await typed('asking.amount', 'lots')();
    leave('[data-path="asking.amount"]');
  });
  expect(said).toEqual([text('.complaint')]);
});

it('an ad is kept: said once, and nothing of the answer again', async () => {
  await answered();
  const said = await heard(async () => {
    await click('[data-keep]');
    await wait(100);
    find('[data-open-find]');
  });
  expect(said).toEqual([expect.stringMatching(/^Kept\./)]);
});

const TEXTS = ['Iron plates 4 x 45 lb, $250', 'Squat rack, $150', 'Bumper plates 2 x 45 lb, $90', 'Sofa, blue, $50'];
const swept = (count: number, state: Swept['state'] = 'watching'): Swept => ({
  tabId: 1,
  run: 'run-1',
  state,
  at: 10,
  ads: TEXTS.slice(0, count).map((words, at) => ({ id: `ad-${at + 1}`, listing: listingFromText(words, 'sweep') })),
});
const keepsAll = async (ads: readonly unknown[]) => ({ kept: ads.length, left: [], code: null });

async function list(count: number) {
  const sweep = sweepHost(swept(count), keepsAll);
  mount(null, evaluate, new Map(), null, sweep);
  await heard(async () => undefined);
  find(`[data-row="ad-${count}"]`);
  return sweep;
}

it('ads that come in one after the other are counted once they have stopped coming', async () => {
  const sweep = await list(1);
  const said = await heard(async () => {
    for (const count of [2, 3, 4]) {
      sweep.go(swept(count));
      await wait(60);
    }
  });
  expect(said).toEqual(['4 ads on this page']);
});

it('the end of reading is said with its reason, for nobody may have asked for it', async () => {
  const sweep = await list(3);
  const said = await heard(async () => sweep.go(swept(3, 'full')));
  expect(said).toEqual(['3 ads on this page. Stopped: there is no room for more ads.']);
});

it('a filter says how many it leaves', async () => {
  await list(4);
  expect(await heard(typed('sweep.text', 'plates'))).toEqual(['2 of 4 ads']);
  expect(await heard(async () => choose('[data-path="sweep.verdict"]', 'other'))).toEqual(['0 of 4 ads']);
});

it('ticked ads are kept: said once, and nothing at each tick', async () => {
  await list(4);
  const said = await heard(async () => {
    for (const id of ['ad-1', 'ad-3']) await click(`[data-tick="${id}"]`);
    await click('[data-keep]');
    await wait(20);
    find('[data-keep]:disabled');
  });
  expect(said).toEqual(['2 ads are among your finds now.']);
});

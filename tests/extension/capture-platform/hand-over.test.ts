import { beforeEach, describe, expect, it, vi } from 'vitest';
import { onCaptured, onCaptureFailed, onPicking, onPickLeft } from '../../../extension/background/hand-over.ts';
import { type CaptureState, loadCapture } from '../../../extension/platform/capture-state.ts';
import { answerMessages, Failure, sendToBackground, sendToTab } from '../../../extension/platform/messages.ts';
import { activeTabId, capturePaste, watchCapture } from '../../../extension/platform/watch-capture.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { fakeBrowser, settled } from './fake-browser.ts';

let fake: ReturnType<typeof fakeBrowser>;
const from = (id: number) => ({ id: 'ironsift', tab: { id } }) as never;
const listing = listingFromText('4 x 45', 'pick');

beforeEach(() => {
  fake = fakeBrowser();
});

describe('what the page reports', () => {
  it('is stored for its tab', async () => {
    await onCaptured({ listing, cut: true }, from(7));
    expect(await loadCapture(7)).toMatchObject({ state: 'ready', listing, cut: true });
    expect(await loadCapture(8)).toBeNull();
  });
  it('is refused when it is no listing', async () => {
    await expect(onCaptured({ listing: { ...listing, text: 3 } as never, cut: false }, from(7))).rejects.toThrow('bad-input');
    expect(await loadCapture(7)).toMatchObject({ state: 'failed', reason: 'bad-input' });
  });
  it('says so when a block is empty', async () => {
    await onCaptureFailed({ reason: 'empty' }, from(7));
    expect(await loadCapture(7)).toMatchObject({ state: 'failed', reason: 'empty' });
  });
  it('comes back when picking is left, and is forgotten when there was nothing', async () => {
    await onCaptured({ listing, cut: false }, from(7));
    for (const tab of [7, 8]) {
      await onPicking({}, from(tab));
      await onPicking({}, from(tab));
      expect(await loadCapture(tab)).toMatchObject({ state: 'picking' });
      await onPickLeft({}, from(tab));
    }
    expect(await loadCapture(7)).toMatchObject({ state: 'ready', listing });
    expect(await loadCapture(8)).toBeNull();
  });
  it('leaves alone what came after leaving', async () => {
    await onCaptured({ listing, cut: false }, from(7));
    await onPickLeft({}, from(7));
    expect(await loadCapture(7)).toMatchObject({ state: 'ready' });
  });
  it('makes room when storage is full, and fails aloud when there is none', async () => {
    fake.world.room = 1500;
    await onCaptured({ listing: listingFromText('x'.repeat(900)), cut: false }, from(1));
    await onCaptured({ listing: listingFromText('y'.repeat(900)), cut: false }, from(2));
    expect([await loadCapture(1), (await loadCapture(2))?.state]).toEqual([null, 'ready']);
    await expect(onCaptured({ listing: listingFromText('z'.repeat(2000)), cut: false }, from(3))).rejects.toThrow('full');
    expect(await loadCapture(3)).toMatchObject({ state: 'failed', reason: 'full' });
  });
});

describe('the panel', () => {
  const follow = (tab: number | 'active') => {
    const seen: [string | undefined, number | null][] = [];
    const stop = watchCapture(tab, (state: CaptureState | null, tabId) => seen.push([state?.state, tabId]));
    return { seen, stop };
  };
  it('sees what is there, what comes, and the tab that comes to the front', async () => {
    await capturePaste(2, '4 x 45');
    const { seen, stop } = follow('active');
    await settled();
    await onPicking({}, from(1));
    await onPicking({}, from(9));
    await settled();
    fake.world.activeTab = { id: 2 };
    fake.events.onActivated.fire({ tabId: 2 });
    await settled();
    expect(seen).toEqual([
      [undefined, 1],
      ['picking', 1],
      ['ready', 2],
    ]);
    stop();
    await onPicking({}, from(2));
    await settled();
    expect(seen).toHaveLength(3);
    expect(fake.events.onActivated.count).toBe(0);
  });
  it('is not taken back by an answer that comes late', async () => {
    let late = (): void => undefined;
    fake.world.beforeQuery = () => new Promise((resolve) => (late = resolve));
    const { seen } = follow('active');
    await settled();
    fake.world.beforeQuery = async () => undefined;
    fake.world.activeTab = { id: 2 };
    fake.events.onActivated.fire({ tabId: 2 });
    await settled();
    late(); // With the tab that was in front before.
    await settled();
    expect(seen).toEqual([[undefined, 2]]);
  });
  it('takes a capture from the change that brings it, and asks for nothing', async () => {
    const { seen } = follow('active');
    await settled();
    const asked = vi.fn(async () => undefined);
    fake.world.beforeQuery = asked;
    const got = vi.spyOn(fake.storage.session, 'get');
    await onCaptured({ listing, cut: false }, from(1));
    await onCaptureFailed({ reason: 'empty' }, from(1));
    expect(seen.slice(1)).toEqual([
      ['ready', 1],
      ['failed', 1],
    ]);
    expect(asked).not.toHaveBeenCalled();
    expect(got).not.toHaveBeenCalled();
  });
  it('takes what is no capture for none', async () => {
    await onCaptured({ listing, cut: false }, from(1));
    const { seen } = follow(1);
    await settled();
    await fake.storage.session.set({ 'capture:1': { state: 'ready', listing: { ...listing, text: 3 } } });
    expect(seen.at(-1)).toEqual([undefined, 1]);
  });
  it('shows the tab that comes to the front, whatever is captured meanwhile in this one or that', async () => {
    const { seen } = follow('active');
    await settled();
    let late = (): void => undefined;
    fake.world.beforeQuery = () => new Promise((resolve) => (late = resolve));
    fake.world.activeTab = { id: 2 };
    fake.events.onActivated.fire({ tabId: 2 });
    await onCaptured({ listing, cut: false }, from(1));
    fake.world.beforeQuery = async () => undefined;
    await onCaptured({ listing, cut: false }, from(2));
    late();
    await settled();
    expect(seen.slice(1)).toEqual([['ready', 2]]);
  });
  it('forgets that a page refused or failed once the tab goes elsewhere', async () => {
    await onCaptureFailed({ reason: 'empty' }, from(1));
    const { seen } = follow('active');
    await settled();
    fake.events.onUpdated.fire(1, { status: 'loading' });
    await settled();
    expect(seen.at(-1)).toEqual([undefined, 1]);
  });
  it('keeps an ad that was read when the tab goes elsewhere', async () => {
    await onCaptured({ listing, cut: false }, from(1));
    const { seen } = follow(1);
    await settled();
    fake.events.onUpdated.fire(1, { status: 'loading' });
    await settled();
    expect(seen.at(-1)).toEqual(['ready', 1]);
  });
  it('cuts a paste that is too long, and says so', async () => {
    await capturePaste(1, 'x'.repeat(1_000_001));
    const state = await loadCapture(1);
    expect(state).toMatchObject({ state: 'ready', cut: true });
    expect(state?.state === 'ready' && state.listing.text.length).toBe(1_000_000);
  });
  it('knows when there is no tab', async () => {
    fake.world.activeTab = undefined;
    expect(await activeTabId()).toBeNull();
  });
});

describe('a message to the background', () => {
  const sending = (answer: () => unknown) => {
    const sendMessage = vi.fn(async (_message: object) => answer());
    Object.assign((globalThis as unknown as { browser: { runtime: object } }).browser.runtime, { sendMessage });
    return sendMessage;
  };
  it('is sent again when the background is ended before it answers', async () => {
    let times = 0;
    const sent = sending(() => {
      times += 1;
      if (times === 1) throw new Error('the message channel closed before a response was received');
      if (times === 2) return undefined;
      return { ok: true, value: null };
    });
    expect(await sendToBackground('captured', { listing, cut: false })).toEqual({ ok: true, value: null });
    expect(sent.mock.calls.map(([message]) => message)).toEqual(Array(3).fill({ type: 'captured', listing, cut: false }));
  });
  it('is not sent again when it was answered, whatever the answer', async () => {
    const sent = sending(() => ({ ok: false, code: 'full' }));
    expect(await sendToBackground('captured', { listing, cut: false })).toEqual({ ok: false, code: 'full' });
    expect(sent).toHaveBeenCalledTimes(1);
  });
});

describe('messages', () => {
  const send = (message: unknown, sender: unknown) =>
    new Promise((resolve) => fake.events.onMessage.fire(message, sender, resolve));
  it('answer with what the handler gives, with its failure, or with "unexpected"', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    answerMessages({
      highlight: ({ spans }) => {
        if (spans.length === 0) throw new Failure('gone');
        return spans.length;
      },
      'clear-highlight': () => {
        throw new TypeError('defect');
      },
    });
    const ours = { id: 'ironsift' };
    expect(await send({ type: 'highlight', spans: [{}] }, ours)).toEqual({ ok: true, value: 1 });
    expect(await send({ type: 'highlight', spans: [] }, ours)).toEqual({ ok: false, code: 'gone' });
    expect(await send({ type: 'clear-highlight' }, ours)).toEqual({ ok: false, code: 'unexpected' });
  });
  it('of others, or unknown, are left to others', () => {
    answerMessages({ highlight: () => 1 });
    const respond = () => expect.unreachable();
    expect(fake.events.onMessage.fire({ type: 'highlight', spans: [] }, { id: 'stranger' }, respond)).toEqual([undefined]);
    for (const message of [{ type: 'toString' }, { type: 'nothing' }, null, 'highlight']) {
      expect(fake.events.onMessage.fire(message, { id: 'ironsift' }, respond)).toEqual([undefined]);
    }
  });
  it('fail with "no-page" when nobody listens', async () => {
    fake.world.pageAnswers = () => {
      throw new Error('Receiving end does not exist');
    };
    expect(await sendToTab(1, 'highlight', { spans: [] })).toEqual({ ok: false, code: 'no-page' });
    fake.world.pageAnswers = () => undefined;
    expect(await sendToTab(1, 'highlight', { spans: [] })).toEqual({ ok: false, code: 'no-page' });
  });
});

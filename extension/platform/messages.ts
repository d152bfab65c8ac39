/** Every message between the page, the background and the panel: its input, its answer, and what can go wrong. */
import type { Runtime } from 'webextension-polyfill';
import type { PageListing, Span } from '../../src/listing/page-listing.ts';
import { api, isConnected } from './browser.ts';

/** How the page is read: the selection when there is one, else by picking; or picking in any case. */
export type TakeMode = 'selection-or-pick' | 'selection' | 'pick';

export interface MessageMap {
  /** Page to background: an ad was read. `cut` says that its text was longer than the limit. */
  captured: { input: { listing: PageListing; cut: boolean }; output: null };
  /** Page to background: the buyer is choosing a block. */
  picking: { input: object; output: null };
  /** Page to background: the buyer left without choosing. */
  'pick-left': { input: object; output: null };
  /** Page to background: the block could not be read. `disturbed`: the page keeps taking away what shows the choice. */
  'capture-failed': { input: { reason: 'empty' | 'disturbed' | 'unexpected' }; output: null };
  /** To the page: read it. Answers which way was taken. */
  take: { input: { mode: TakeMode }; output: 'selection' | 'pick' | 'nothing' };
  /** To the page: mark these spans of `listing.text`. Answers how many could be marked. */
  highlight: { input: { spans: readonly Span[] }; output: number };
  'clear-highlight': { input: object; output: null };
  /** To the page: read every ad on it, and go on with what is added, until it is stopped. */
  sweep: { input: object; output: null };
  /** To the page: end the reading and leave nothing behind. */
  'sweep-stop': { input: object; output: null };
  /** To the page: what its ads' labels say. */
  'sweep-tags': { input: { run: string; tags: readonly SweepTag[] }; output: null };
  /** To the page: bring this ad into view and put a frame about it; null takes the frame away. */
  'sweep-show': { input: { run: string; id: string | null }; output: null };
  /** To the page: mark spans of this ad's `listing.text`; none takes the marks away. Answers how many could be marked. */
  'sweep-mark': { input: { run: string; id: string; spans: readonly Span[] }; output: number };
  /** Panel to background: the buyer closed the list of this sweep. */
  'list-closed': { input: { tabId: number; run: string }; output: null };
  /** Page to background: ads that were read since the last report, and how far the reading is. */
  swept: { input: SweepReport; output: null };
}

/** One ad of a results page; `id` is unique within its run. */
export interface SweptAd {
  readonly id: string;
  readonly listing: PageListing;
}

/**
 * `reading`: more may follow at once. `watching`: all that is there was read; the page is watched for more. `nothing`: no ads were
 * found, and it is over. `ended`: stopped, or the page was left. `full`: no room to store more, and it is over.
 */
export type SweepState = 'reading' | 'watching' | 'nothing' | 'ended' | 'full';

export interface SweepReport {
  readonly run: string;
  readonly state: SweepState;
  readonly ads: readonly SweptAd[];
  /** Reports with ads of this run before this one: a report that comes again takes its own place again. */
  readonly part: number;
  /** Time that the page's own script has used so far, in milliseconds. */
  readonly spent: number;
}

/** A label: `plain` for an ad with an answer, `faint` where there is none. */
export interface SweepTag {
  readonly id: string;
  readonly words: string;
  readonly tone: 'plain' | 'faint';
}

export type MessageType = keyof MessageMap;
export type Input<T extends MessageType> = MessageMap[T]['input'];
export type Output<T extends MessageType> = MessageMap[T]['output'];

/**
 * `no-page`: nobody listens there (the tab has navigated, which ends the extension's access, or scripts may not run).
 * `no-tab`: no such tab. `gone`: the words are no longer on the page. `bad-input`: it did not pass its check.
 * `full`: no room to store it. `unexpected`: a defect.
 */
export type FailCode = 'no-page' | 'no-tab' | 'gone' | 'bad-input' | 'full' | 'unexpected';
export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly code: FailCode };

/** Thrown by a handler to answer with a code other than `unexpected`. */
export class Failure extends Error {
  constructor(readonly code: FailCode) {
    super(code);
  }
}

export type Sender = Runtime.MessageSender;
export type Handlers = { readonly [T in MessageType]?: (input: Input<T>, sender: Sender) => Output<T> | Promise<Output<T>> };

const typeOf = (message: unknown): string | null =>
  typeof message === 'object' && message !== null && 'type' in message && typeof message.type === 'string' ? message.type : null;

/** Runs a handler; whatever it throws becomes an answer, so that no caller is left waiting. */
export async function settle<T>(work: () => T | Promise<T>): Promise<Answer<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    if (error instanceof Failure) return { ok: false, code: error.code };
    console.error('Ironsift:', error);
    return { ok: false, code: 'unexpected' };
  }
}

/** Answers messages from our own extension; others' and unknown ones are left to other listeners. Gives a function that stops it. */
export function answerMessages(handlers: Handlers): () => void {
  const own = api().runtime.id;
  const byType: Readonly<Record<string, ((input: never, sender: Sender) => unknown) | undefined>> = handlers;
  const listener = (message: unknown, sender: Sender, respond: (answer: unknown) => void): true | undefined => {
    const type = typeOf(message);
    const handler = type !== null && Object.hasOwn(byType, type) ? byType[type] : undefined;
    if (!handler || sender.id !== own) return undefined;
    void settle(() => handler(message as never, sender)).then(respond);
    return true;
  };
  const event = api().runtime.onMessage;
  event.addListener(listener as Parameters<typeof event.addListener>[0]);
  return () => event.removeListener(listener as Parameters<typeof event.addListener>[0]);
}

const isAnswer = <T>(given: unknown): given is Answer<T> => typeof given === 'object' && given !== null && 'ok' in given;

/** A background that is ended while it answers is started by asking again, after these waits in ms: each of its messages may come twice. */
const WAITS = [0, 50, 200, 1000, 3000];

export async function sendToBackground<T extends MessageType>(type: T, input: Input<T>): Promise<Answer<Output<T>>> {
  for (const wait of WAITS) {
    if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
    if (!isConnected()) break;
    try {
      const answer = await api().runtime.sendMessage({ ...input, type });
      if (isAnswer<Output<T>>(answer)) return answer;
    } catch {
      // The next try.
    }
  }
  return { ok: false, code: 'no-page' };
}

/** Sends to the page in a tab (its top frame). */
export async function sendToTab<T extends MessageType>(tabId: number, type: T, input: Input<T>): Promise<Answer<Output<T>>> {
  try {
    const answer = await api().tabs.sendMessage(tabId, { ...input, type }, { frameId: 0 });
    if (isAnswer<Output<T>>(answer)) return answer;
  } catch {
    // As without an answer.
  }
  return { ok: false, code: 'no-page' };
}

/** One sweep of a page, from its start to its end: reads, reports, watches, labels; and leaves nothing behind. */
import type { Span } from '../../../src/listing/page-listing.ts';
import { isConnected } from '../../platform/browser.ts';
import { Failure, type SweepState, type SweepTag, type SweptAd, sendToBackground } from '../../platform/messages.ts';
import { browserSight } from '../browser-sight.ts';
import { clearMarks, showMarks } from '../marks.ts';
import { pageAddress } from '../readers/index.ts';
import { isThere, own } from '../readers/own.ts';
import { gather, MOST_ADS, rootOfPage } from './gather.ts';
import { showOverlay } from './overlay.ts';
import { offersOf, readBlock } from './read-block.ts';
import { inSlices } from './slices.ts';
import { watchPage } from './watch.ts';

export interface Sweep {
  readonly run: string;
  tag(tags: readonly SweepTag[]): void;
  /** Throws `gone` when the page no longer has the ad. */
  show(id: string | null): void;
  mark(id: string, spans: readonly Span[]): number;
  stop(): void;
}

/** Ads in one report. */
const BATCH = 20;
/** A page that is still filling gets so long, in milliseconds, before it counts as one without ads. */
const PATIENCE = 3000;
/** Waits before the page is read again after a change, in milliseconds: longer each time that nothing new was found. */
const SOONEST = 200;
const LATEST = 5000;

/** Starts at once. `ended` is called when it is over, in whatever way. */
export function startSweep(ended: () => void): Sweep {
  const run = String(Math.random());
  const sight = browserSight();
  const gathered = gather(() => pageAddress(window.location.href) ?? '');
  const overlay = showOverlay();
  const spending = { spent: 0 };
  const started = performance.now();
  const tags = new Map<string, SweepTag>();
  let unsent: SweptAd[] = [];
  let framed: string | null = null;
  let over = false;
  let busy = false;
  let stale = false;
  let wait = SOONEST;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let drawing: number | undefined;

  let parts = 0;
  let sent: Promise<unknown> = Promise.resolve();
  const report = (state: SweepState): Promise<unknown> => {
    const ads = unsent;
    unsent = [];
    const part = ads.length > 0 ? parts++ : parts;
    const send = async (): Promise<void> => {
      const answer = await sendToBackground('swept', { run, state, ads, part, spent: Math.round(spending.spent) });
      if (!answer.ok && answer.code === 'full') stop('full');
    };
    // In their order, though one may have to be sent twice. A page that is left has no time for that.
    sent = over ? send() : sent.then(send);
    return sent;
  };

  const draw = (): void => {
    drawing = undefined;
    // Cut off by an update of the extension: nobody could take the labels away later.
    if (!isConnected()) {
      stop(null);
      return;
    }
    const start = performance.now();
    const tagged = new Map<Element, SweepTag>();
    for (const element of watch.inView) {
      const tag = tags.get(gathered.at.get(element)?.id ?? '');
      if (tag && isThere(element)) tagged.set(element, tag);
    }
    overlay.draw(tagged, placeOf(framed));
    spending.spent += performance.now() - start;
  };
  const drawSoon = (): void => {
    if (!over) drawing ??= requestAnimationFrame(draw);
  };
  const placeOf = (id: string | null): Element | null => {
    const places = id === null ? undefined : gathered.byId.get(id)?.places;
    return [...(places?.keys() ?? [])].find(isThere) ?? null;
  };

  const read = async (): Promise<void> => {
    if (!isConnected()) return stop(null);
    busy = true;
    stale = false;
    const before = gathered.byId.size;
    for (const element of gathered.forgetGone()) watch.unwatch(element);
    // Another than before where the page has put a new body in its place.
    watch.root(rootOfPage());
    const work = gathered.read(sight, watch.root, watch.element, (ad) => {
      unsent.push(ad);
      if (unsent.length >= BATCH) void report('reading');
    });
    await inSlices(work, () => over, spending);
    busy = false;
    if (over) return;
    const found = gathered.byId.size;
    wait = found > before ? SOONEST : Math.min(wait * 2, LATEST);
    if (found === 0 && performance.now() - started >= PATIENCE) return stop('nothing');
    if (found > before) await report('watching');
    drawSoon();
    if (stale) readSoon();
    else if (found === 0) timer ??= setTimeout(again, PATIENCE);
  };
  const again = (): void => {
    timer = undefined;
    if (busy) stale = true;
    else if (!over && gathered.byId.size < MOST_ADS) void read();
  };
  const readSoon = (): void => {
    if (!over) timer ??= setTimeout(again, wait);
  };

  const stop = (state: SweepState | null): void => {
    if (over) return;
    over = true;
    clearTimeout(timer);
    if (drawing !== undefined) cancelAnimationFrame(drawing);
    watch.stop();
    overlay.remove();
    clearMarks();
    ended();
    if (state !== null && isConnected()) void report(state);
  };

  const watch = watchPage({
    changed: () => {
      drawSoon();
      readSoon();
    },
    seen: (elements) => {
      drawSoon();
      // Was hidden when it was met, and is seen now.
      if (elements.some((element) => !gathered.at.has(element))) readSoon();
    },
    moved: drawSoon,
    leave: () => stop('ended'),
  });
  watch.root(rootOfPage());
  void report('reading').then(() => (over ? undefined : read()));

  return {
    run,
    tag: (given) => {
      for (const tag of given) tags.set(tag.id, tag);
      drawSoon();
    },
    show: (id) => {
      framed = id;
      clearMarks();
      drawSoon();
      if (id === null) return;
      const place = placeOf(id);
      if (!place) throw new Failure('gone');
      own(place).scrollIntoView({ block: 'center' });
    },
    mark: (id, spans) => {
      const place = placeOf(id);
      const block = place ? gathered.byId.get(id)?.places.get(place) : undefined;
      if (!block) throw new Failure('gone');
      if (spans.length === 0) {
        clearMarks();
        return 0;
      }
      return showMarks(readBlock(block, window.location.href, offersOf(document), sight), spans);
    },
    stop: () => stop('ended'),
  };
}

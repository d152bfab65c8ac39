/** Picking: a frame follows the pointer or the arrow keys; click or Enter takes the block, Esc leaves. */
import { isConnected } from '../../platform/browser.ts';
import { sendToBackground } from '../../platform/messages.ts';
import { getMessage } from '../../platform/words.ts';
import { browserSight } from '../browser-sight.ts';
import { type Captured, findMainBlock, readElement } from '../readers/index.ts';
import { isThere, own } from '../readers/own.ts';
import { frameDocument } from '../readers/rendered.ts';
import type { Sight } from '../readers/sight.ts';
import { boxOf, elementAt, type Point, pointOf, within } from './geometry.ts';
import { isFinger, listen } from './listen.ts';
import { showOutline } from './outline.ts';
import { beside, blockAround, type Choice, choose, narrow, widen } from './steps.ts';

export interface Outcome {
  take(captured: Captured): void;
  leave(): void;
}

const WORDS_SAID = 120;

/** This window and those of the frames of the same origin in it. */
function windowsIn(document: Document): Window[] {
  const frames = [...own(document).querySelectorAll('iframe, frame')].map(frameDocument).filter((inside) => inside !== null);
  const view = own(document).defaultView;
  return [...(view ? [view] : []), ...frames.flatMap(windowsIn)];
}

const firstChoice = (sight: Sight): Choice => choose(findMainBlock(document, sight) ?? own(document).documentElement);

/** How often picking begins anew when the page takes away what shows the choice. */
const MOST_TRIES = 3;

/** Starts picking at the likeliest block. Gives a function that ends it without a choice. */
export function startPicking(outcome: Outcome): () => void {
  let tries = 0;
  let leave = (): void => undefined;
  const begin = (): void => {
    try {
      if (tries < MOST_TRIES) {
        tries += 1;
        leave = pickOnce(outcome, begin);
        return;
      }
    } catch {
      // A document without a root element has no place for our frame.
    }
    outcome.leave();
    void sendToBackground('capture-failed', { reason: 'disturbed' });
  };
  begin();
  return () => leave();
}

/** `lost` is called, in place of an outcome, when the page has taken our frame away. */
function pickOnce(outcome: Outcome, lost: () => void): () => void {
  const sight = browserSight();
  const outline = showOutline(getMessage('capture_pick_label'), getMessage('capture_pick_start'));
  let choice = firstChoice(sight);
  /** A finger chose it: the next tap on it takes it. Before, a tap chooses, for it may have been meant for the page. */
  let tapped = false;
  let ended = false;
  const forTouch = () => outline.forTouch(getMessage('touch_label'));
  let bar = matchMedia('(pointer: coarse)').matches ? forTouch() : null;

  const end = (): void => {
    ended = true;
    outline.hide();
    // The pane that has the keyboard stays until the key is released, or the page would see the release.
    stopListening(outline.remove);
    window.removeEventListener('pagehide', leave);
  };
  const leave = (): void => {
    if (ended) return;
    end();
    outcome.leave();
    if (isConnected()) void sendToBackground('pick-left', {});
  };
  const take = (): void => {
    end();
    try {
      outcome.take(readElement(choice.block, { origin: 'pick', sight, address: window.location.href }));
    } catch (error) {
      console.error('Ironsift:', error);
      outcome.leave();
      void sendToBackground('capture-failed', { reason: 'unexpected' });
    }
  };
  const move = (next: Choice): void => {
    choice = next;
    own(choice.block).scrollIntoView({ block: 'nearest' });
    const words = (own(choice.block).textContent ?? '').replace(/\s+/g, ' ').trim().slice(0, WORDS_SAID);
    outline.say(getMessage('capture_pick_now').replace('{words}', () => words));
  };
  const wishes = {
    take: () => take(),
    leave: () => leave(),
    widen: () => move(widen(choice, sight)),
    narrow: () => move(narrow(choice, sight)),
  };
  const tap = (point: Point): void => {
    const again = tapped && within(boxOf(choice.block), point);
    const element = elementAt(point, sight, outline.host);
    tapped = true;
    if (again) take();
    else if (element) move(choose(blockAround(element, sight)));
  };
  const press = (event: PointerEvent): void => {
    const point = pointOf(event, outline.glass);
    const wish = bar?.wishAt(event, point);
    if (wish) {
      tapped = true;
      wishes[wish]();
    } else if (isFinger(event)) {
      bar ??= forTouch();
      tap(point);
    } else take();
  };
  /** A script that an update of the extension has cut off can't report what it takes. */
  const unlessCutOff = (wish: () => void) => (): void => (isConnected() ? wish() : leave());

  const stopListening = listen([...windowsIn(document), ...(outline.glass ? [outline.glass] : [])], {
    point: (event) => {
      const element = elementAt(pointOf(event, outline.glass), sight, outline.host);
      if (element) choice = choose(blockAround(element, sight));
    },
    press: (event) => unlessCutOff(() => press(event))(),
    take: unlessCutOff(wishes.take),
    leave: wishes.leave,
    widen: unlessCutOff(wishes.widen),
    narrow: unlessCutOff(wishes.narrow),
    before: unlessCutOff(() => move(beside(choice, -1, sight))),
    after: unlessCutOff(() => move(beside(choice, 1, sight))),
  });
  window.addEventListener('pagehide', leave);

  const follow = (): void => {
    if (ended) return;
    if (!isThere(outline.host)) {
      end();
      lost();
      return;
    }
    outline.keepFocus();
    // The document of a frame that was taken away keeps its elements, but has no window.
    if (!isThere(choice.block) || !own(own(choice.block).ownerDocument).defaultView) choice = firstChoice(sight);
    outline.draw(boxOf(choice.block));
    requestAnimationFrame(follow);
  };
  follow();
  move(choice);
  void sendToBackground('picking', {});
  return leave;
}

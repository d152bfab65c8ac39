/**
 * Four large buttons along the lower edge, for fingers: what the keys do. What is seen lies in our shadow root, where nothing hears it; what is
 * pressed are twins of the same shape in the pane over the page, which is not seen, so that the page hears nothing of it either.
 */
import { getMessage } from '../../platform/words.ts';
import { boxOf, type Point, within } from './geometry.ts';

export type TouchWish = 'widen' | 'narrow' | 'take' | 'leave';

const WISHES: readonly TouchWish[] = ['widen', 'narrow', 'take', 'leave'];

const SHARE = 100 / WISHES.length;

/**
 * Written through the style object, which no policy of the page forbids. `medium` is the reader's own size of text, 16 px unless they chose
 * another: the buttons are 56 px high then. 48 is the least that makers of phones advise for a finger (from memory).
 */
const place = (element: HTMLElement, at: number): void => {
  Object.assign(element.style, {
    position: 'fixed',
    bottom: '0',
    left: `${at * SHARE}%`,
    width: `${SHARE}%`,
    height: '3.5em',
    font: 'medium/1.25 system-ui',
    margin: '0',
    border: '0',
    boxSizing: 'border-box',
  });
};

export interface TouchBar {
  /** What a press at this point of the top window is for; null beside the bar. */
  wishAt(event: MouseEvent, point: Point): TouchWish | null;
  /** Nothing of it is to be seen any more. */
  hide(): void;
}

export function showTouchBar(shadow: ShadowRoot, glass: Window | null): TouchBar {
  const seen = WISHES.map((wish, at) => {
    const button = document.createElement('div');
    button.className = 'touch';
    button.textContent = getMessage(`touch_${wish}`);
    button.setAttribute('aria-hidden', 'true');
    place(button, at);
    shadow.append(button);
    return button;
  });
  // A screen reader finds these, and presses them without a point.
  const pressed = WISHES.map((wish, at) => {
    const button = glass?.document.createElement('button');
    if (!button) return null;
    button.textContent = getMessage(`touch_${wish}`);
    button.tabIndex = -1;
    place(button, at);
    glass?.document.body.append(button);
    return button;
  });
  return {
    wishAt: (event, point) => {
      const at = pressed.findIndex((button) => button !== null && button === event.target);
      const under = seen.findIndex((button) => within(boxOf(button), point));
      return WISHES[at === -1 ? under : at] ?? null;
    },
    // Those that are pressed go with the pane.
    hide: () => {
      for (const button of seen) button.remove();
    },
  };
}

/** What picking shows: a frame about the chosen block, how to go on, and the same for screen readers. All in a closed shadow root of ours. */
import { getMessage } from '../../platform/words.ts';
import { markHost } from '../generation.ts';
import { own } from '../readers/own.ts';
import { showTouchBar, type TouchBar } from './touch-bar.ts';

/**
 * The frame's two colours have a contrast of 9 : 1, so that one of them has 3 : 1 with any page (WCAG 2.2, technique C40). Sizes of text are
 * parts of the host's, which is the reader's own: no font of the page reaches it.
 */
const STYLE = `
:host { all: initial !important; position: fixed !important; inset: 0 !important; width: auto !important; height: auto !important;
  display: block !important; overflow: hidden !important; pointer-events: none !important; z-index: 2147483647 !important; }
.frame { position: absolute; box-sizing: border-box; border: 3px solid #0842a0; border-radius: 3px; box-shadow: 0 0 0 2px #fff;
  background: #0842a014; }
.label { position: absolute; top: 8px; left: 50%; transform: translateX(-50%); max-width: calc(100% - 32px); padding: 6px 10px;
  font: .875em/1.43 system-ui; color: #fff; background: #1a1a1a; border: 1px solid #fff; border-radius: 4px; }
.touch { display: flex; align-items: center; justify-content: center; padding: 0 2px; text-align: center; overflow-wrap: anywhere;
  color: #fff; background: #1a1a1a; outline: 1px solid #fff; outline-offset: -1px; }
.spoken { position: absolute; clip-path: inset(50%); }
iframe { position: absolute; top: 0; left: 0; width: 100%; height: 100%; border: 0; opacity: 0; pointer-events: auto; cursor: crosshair; }
`;

export interface Outline {
  /** Draws the frame about these boxes' hull, in CSS pixels of the top window. */
  draw(box: { left: number; top: number; width: number; height: number }): void;
  /** Says it to screen readers. */
  say(text: string): void;
  /** The element that holds it all. */
  readonly host: Element;
  /** A window of our own over the page that takes pointer and keys, so that no handler of the page comes before ours; null where it can't be had. */
  readonly glass: Window | null;
  /** Takes the keyboard back from a page that has taken it. */
  keepFocus(): void;
  /** Shows the buttons for fingers, with words that say so; the same ones when they are there. */
  forTouch(words: string): TouchBar;
  /** Nothing is to be seen any more. */
  hide(): void;
  /** Nothing is left in the page. */
  remove(): void;
}

/** A frame without address in our shadow root: what is pressed and clicked in it never reaches the page's window. */
function makeGlass(title: string): HTMLIFrameElement {
  const frame = own(document).createElement('iframe');
  frame.title = title;
  frame.lang = getMessage('locale_tag');
  // Without it screen readers keep the arrow keys to themselves.
  frame.role = 'application';
  frame.tabIndex = -1;
  return frame;
}

/** Adds one host element to the page's root element; `remove` takes it away and gives the focus back. */
export function showOutline(label: string, spoken: string): Outline {
  const host = own(document).createElement('div');
  markHost(host, 'capture');
  const shadow = host.attachShadow({ mode: 'closed' });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(STYLE);
  shadow.adoptedStyleSheets = [sheet];
  const part = (name: string): HTMLElement => {
    const element = own(document).createElement('div');
    element.className = name;
    shadow.append(element);
    return element;
  };
  const [frame, hint, live] = [part('frame'), part('label'), part('spoken')];
  hint.textContent = label;
  hint.setAttribute('aria-hidden', 'true');
  live.setAttribute('role', 'status');
  const pane = makeGlass(spoken);
  shadow.append(pane);
  const focused = own(document).activeElement;
  own(document).documentElement.append(host);
  // Above dialogs of the page, which the browser shows on top of everything else.
  host.popover = 'manual';
  host.showPopover?.();
  // A sandboxed page has no access to its own frames: then our pane is of no use, and in the way.
  const glass = pane.contentDocument ? pane.contentWindow : null;
  if (!glass) pane.remove();
  glass?.focus();
  const keepFocus = (): void => {
    if (host.isConnected && document.hasFocus() && own(document).activeElement !== host) glass?.focus();
  };
  // Not within the event, or a page that answers it in kind would never come to an end.
  glass?.addEventListener('blur', () => setTimeout(keepFocus));
  let bar: TouchBar | null = null;
  return {
    host,
    glass,
    draw: ({ left, top, width, height }) => {
      Object.assign(frame.style, {
        left: `${left - 3}px`,
        top: `${top - 3}px`,
        width: `${width + 6}px`,
        height: `${height + 6}px`,
      });
    },
    say: (text) => {
      live.textContent = text;
    },
    keepFocus,
    forTouch: (words) => {
      hint.textContent = words;
      bar ??= showTouchBar(shadow, glass);
      return bar;
    },
    hide: () => {
      bar?.hide();
      frame.remove();
      hint.remove();
    },
    remove: () => {
      host.remove();
      if (focused && focused !== own(document).body) own(focused as HTMLElement).focus?.({ preventScroll: true });
    },
  };
}

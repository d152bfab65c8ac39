/**
 * Takes pointer and keys while picking: in our own pane over the page, where no handler of the page can come first, and, in case the page
 * keeps the pane from them (a modal dialog), in the capture phase of its own windows.
 */

export interface Wishes {
  point(event: PointerEvent): void;
  /** Clicked with a mouse, or tapped with a finger. */
  press(event: PointerEvent): void;
  take(): void;
  leave(): void;
  widen(): void;
  narrow(): void;
  before(): void;
  after(): void;
}

const KEYS: Readonly<Record<string, keyof Omit<Wishes, 'point' | 'press'>>> = {
  Enter: 'take',
  Escape: 'leave',
  ArrowUp: 'widen',
  ArrowDown: 'narrow',
  ArrowLeft: 'before',
  ArrowRight: 'after',
};

const MOVES = ['pointermove', 'pointerover', 'mousemove', 'mouseover', 'pointerout', 'mouseout', 'pointerenter', 'mouseenter'];
const PRESSES = ['pointerdown', 'mousedown', 'pointerup', 'mouseup', 'click', 'dblclick', 'auxclick', 'contextmenu'];
/** Kept from the page, but let go on: without them the browser neither scrolls nor makes a click of a tap. */
const TOUCHES = ['touchstart', 'touchmove', 'touchend', 'touchcancel'];
const TYPING = ['keydown', 'keypress', 'keyup'];

/** How long the release of a key is waited for, in milliseconds. */
const RELEASE = 1500;

export const isFinger = (event: Event): boolean => (event as PointerEvent).pointerType === 'touch';

/** Browsers report a move when only the page moved under a pointer at rest; the pointer's place on the screen tells. */
function pointerMoves(): (event: Event) => boolean {
  let last: readonly [number, number] | null = null;
  return (event) => {
    const { screenX, screenY } = event as PointerEvent;
    const moved = last !== null && (last[0] !== screenX || last[1] !== screenY);
    last = [screenX, screenY];
    return moved;
  };
}

/**
 * Listens in these windows. Gives a function that stops it; the release of a key that is held down is still kept from the page, and
 * `released` is called when that is done.
 */
export function listen(windows: readonly Window[], wishes: Wishes): (released: () => void) => void {
  let stopped = false;
  let held: string | null = null;
  let afterRelease = (): void => undefined;
  const isMove = pointerMoves();

  const onMove = (event: Event): void => {
    if (!event.isTrusted || stopped) return;
    event.stopImmediatePropagation();
    // A finger that moves scrolls.
    if (event.type === 'pointermove' && !isFinger(event) && isMove(event)) wishes.point(event as PointerEvent);
  };
  const onPress = (event: Event): void => {
    if (!event.isTrusted || stopped) return;
    event.stopImmediatePropagation();
    event.preventDefault();
    if (event.type === 'click' && (event as MouseEvent).button === 0) wishes.press(event as PointerEvent);
  };
  const onTouch = (event: Event): void => {
    if (event.isTrusted && !stopped) event.stopImmediatePropagation();
  };
  const onKey = (event: Event): void => {
    if (!event.isTrusted) return;
    const { key, type, ctrlKey, altKey, metaKey } = event as KeyboardEvent;
    const wish = ctrlKey || altKey || metaKey ? undefined : KEYS[key];
    if (stopped) {
      if (type !== 'keyup' || key !== held) return;
      event.stopImmediatePropagation();
      finish();
      return;
    }
    // Other keys keep their meaning for the browser (scrolling, shortcuts), but the page does not see them.
    event.stopImmediatePropagation();
    if (!wish) return;
    event.preventDefault();
    if (type === 'keyup') held = null;
    if (type !== 'keydown') return;
    held = key;
    wishes[wish]();
  };

  const each = (change: (target: Window, types: readonly string[], listener: (event: Event) => void) => void): void => {
    for (const target of windows) {
      try {
        change(target, MOVES, onMove);
        change(target, PRESSES, onPress);
        change(target, TOUCHES, onTouch);
        change(target, TYPING, onKey);
      } catch {
        // In Firefox the window of a frame that was taken away is dead: whatever is asked of it throws.
      }
    }
  };
  const options = { capture: true, passive: false };
  const attach = (): void =>
    each((target, types, listener) => {
      for (const type of types) target.addEventListener(type, listener, options);
    });
  const detach = (): void =>
    each((target, types, listener) => {
      for (const type of types) target.removeEventListener(type, listener, options);
    });

  const finish = (): void => {
    detach();
    afterRelease();
    afterRelease = () => undefined;
  };

  attach();
  return (released) => {
    stopped = true;
    afterRelease = released;
    if (held === null) finish();
    else setTimeout(finish, RELEASE);
  };
}

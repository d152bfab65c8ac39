/**
 * Firefox ends the window of a frame that was taken away some moments later: what a script still holds of it throws whatever it is asked.
 * jsdom has nothing of the kind, so that a stand-in throws here; the real thing is in tests/browser/hostile-in-firefox.ts, as chance has it.
 */
import { expect, it, vi } from 'vitest';
import { clearMarks, showMarks } from '../../../extension/capture/marks.ts';
import { listen, type Wishes } from '../../../extension/capture/pick/listen.ts';
import { isThere } from '../../../extension/capture/readers/own.ts';
import { rangesOf } from '../../../extension/capture/span-ranges.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';

/** What answers until it dies. */
function mortal<T extends object>(target: T): { readonly it: T; die(): void } {
  let dead = false;
  const it = new Proxy(target, {
    get: (_, name) => {
      if (dead) throw new TypeError("can't access dead object");
      const value: unknown = Reflect.get(target, name);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
  return {
    it,
    die: () => {
      dead = true;
    },
  };
}

it('an element is there, has gone, or is dead', () => {
  const element = document.body.appendChild(document.createElement('p'));
  const { it: held, die } = mortal(element);
  expect(isThere(held)).toBe(true);
  element.remove();
  expect(isThere(held)).toBe(false);
  die();
  expect(isThere(held)).toBe(false);
});

it('picking ends in the windows that are left', () => {
  const inner = document.body.appendChild(document.createElement('iframe')).contentWindow as Window;
  const { it: frame, die } = mortal(inner);
  const names = ['point', 'press', 'take', 'leave', 'widen', 'narrow', 'before', 'after'] as const;
  const wishes = Object.fromEntries(names.map((name) => [name, vi.fn()])) as unknown as Wishes;
  const released = vi.fn();
  const remove = vi.spyOn(window, 'removeEventListener');
  const stop = listen([frame, window], wishes);
  die();
  stop(released);
  expect(released).toHaveBeenCalledOnce();
  expect(remove.mock.calls.map(([type]) => type)).toEqual(expect.arrayContaining(['keydown', 'click', 'pointermove']));
});

const WORDS = '4 x 45 lb\n7 ft bar';
const listing = listingFromText(WORDS);
const nodeIn = (page: Document, words: string): Text => page.body.appendChild(page.createTextNode(words));
const stretchesOf = (first: Text, second: Text) => [
  { start: 0, end: 9, node: first, offset: 0 },
  { start: 10, end: 18, node: second, offset: 0 },
];

it('words in a dead frame are left out, those of the page are found', () => {
  const { it: node, die } = mortal(nodeIn(document, '4 x 45 lb'));
  die();
  const found = rangesOf({ listing, stretches: stretchesOf(node, nodeIn(document, '7 ft bar')) }, { start: 0, end: 18 });
  expect(found.map(String)).toEqual(['7 ft bar']);
});

/** A frame with what jsdom lacks of styles, highlights and layout. `sheets` is what its document has adopted. */
function styledFrame() {
  const frame = document.body.appendChild(document.createElement('iframe'));
  const view = frame.contentWindow as Window & typeof globalThis;
  const held = { sheets: [] as unknown, dead: false };
  const adoptedStyleSheets: PropertyDescriptor = {
    get: () => {
      if (held.dead) throw new TypeError("can't access dead object");
      return held.sheets;
    },
    set: (next: unknown) => {
      held.sheets = next;
    },
  };
  Object.defineProperty(view.Document.prototype, 'adoptedStyleSheets', adoptedStyleSheets);
  const Highlight = class {};
  const CSSStyleSheet = class {
    readonly replaceSync = (): void => undefined;
  };
  Object.assign(view.Range.prototype, { getBoundingClientRect: () => new DOMRect(0, 0, 10, 10) });
  Object.assign(view, { CSS: { highlights: new Map() }, Highlight, CSSStyleSheet });
  return { frame, page: view.document, held };
}

it('marks are taken away from the page though a frame with some of them is dead', () => {
  const [dying, staying] = [styledFrame(), styledFrame()];
  const stretches = stretchesOf(nodeIn(dying.page, '4 x 45 lb'), nodeIn(staying.page, '7 ft bar'));
  expect(showMarks({ listing, stretches, cut: false }, [{ start: 0, end: 18 }])).toBe(1);
  expect([dying.held.sheets, staying.held.sheets]).toMatchObject([{ length: 1 }, { length: 1 }]);
  dying.held.dead = true;
  clearMarks();
  expect(staying.held.sheets).toEqual([]);
  for (const { frame } of [dying, staying]) frame.remove();
});

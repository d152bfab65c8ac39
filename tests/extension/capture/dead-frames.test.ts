/**
 * Firefox ends the window of a frame that was taken away some moments later: what a script still holds of it throws whatever it is asked.
 * jsdom has nothing of the kind, so that a stand-in throws here; the real thing is in tests/browser/hostile-in-firefox.ts, as chance has it.
 */
import { expect, it, vi } from 'vitest';
import { listen, type Wishes } from '../../../extension/capture/pick/listen.ts';
import { isThere } from '../../../extension/capture/readers/own.ts';

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

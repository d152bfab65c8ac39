/** What is done beforehand while nobody asks: on ads that the core understands, where nobody sees it, and no longer than nobody asks. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { warmUp } from '../../../extension/panel/warm-up.tsx';
import { evaluate } from '../../../src/evaluate.ts';
import { mount } from './fixtures/mount.tsx';

let idle: (() => void)[] = [];
const go = () => idle.splice(0).map((piece) => piece());

beforeEach(() => {
  idle = [];
  vi.stubGlobal('requestIdleCallback', (piece: () => void) => idle.push(piece));
});
afterEach(() => {
  vi.unstubAllGlobals();
});

function start(locale: string) {
  const { host, root } = mount(null);
  const judge = vi.fn(evaluate);
  const asked = { isAsked: false };
  warmUp({ ...host, locale }, judge, () => asked.isAsked);
  return { judge, asked, root };
}

test.each(['en-GB', 'de-AT'])('in %s: a piece at a time, each when the page is idle, and nothing is seen of it', (locale) => {
  const { judge, root } = start(locale);
  const before = root.innerHTML;
  expect(judge).not.toHaveBeenCalled();
  let pieces = 0;
  for (; idle.length > 0; pieces += 1) {
    expect(idle).toHaveLength(1);
    go();
    expect(root.innerHTML).toBe(before);
  }
  expect(pieces).toBe(3);
  expect(judge).toHaveBeenCalledTimes(2);
  // An ad that is not understood warms up little.
  for (const { value } of judge.mock.results) {
    expect(value.reading).toMatchObject({ language: locale.slice(0, 2), aboutThisTrade: true });
    expect(value.reading.items.length).toBeGreaterThan(0);
    expect(value.reading.asking.amount).not.toBeNull();
  }
});

test('ends when the buyer asks', () => {
  const { judge, asked } = start('en');
  go();
  asked.isAsked = true;
  go();
  expect(idle).toHaveLength(0);
  expect(judge).toHaveBeenCalledTimes(1);
});

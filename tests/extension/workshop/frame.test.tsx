import { render } from 'preact';
import { act } from 'preact/test-utils';
import { beforeEach, expect, it, vi } from 'vitest';
import { addressOf, routeOf } from '../../../extension/workshop/route.ts';
import type { ScreenEntry } from '../../../extension/workshop/screens.ts';
import { Workshop } from '../../../extension/workshop/workshop.tsx';
import { stringsOf } from '../panel/fixtures/strings.ts';

const unused = () => Promise.reject(new Error('not asked for here'));
const host = {
  strings: stringsOf('en'),
  locale: 'en-US',
  now: () => 0,
  store: unused,
  core: unused,
  solver: unused,
  download: unused,
};
const screens: readonly ScreenEntry[] = [
  { id: 'finds', load: async () => ({ default: ({ rest }) => <p data-open="finds">{rest}</p> }) },
  { id: 'side-by-side', load: async () => ({ default: () => <p data-open="side-by-side" /> }) },
  { id: 'kit', load: () => Promise.reject(new Error('gone')) },
];

const open = (selector: string) => vi.waitFor(() => expect(document.querySelector(selector)).not.toBeNull());
const go = (hash: string) =>
  act(() => {
    location.hash = hash;
    dispatchEvent(new Event('hashchange'));
  });

beforeEach(() => {
  location.hash = '';
  document.body.replaceChildren(document.createElement('div'));
  act(() => render(<Workshop host={host} screens={screens} />, document.body.firstElementChild as Element));
});

// What is still mounted when the test's page is gone would run its effects without one.

it('opens the first screen, and every other by its name', async () => {
  await open('[data-open=finds]');
  expect(document.querySelector('[aria-current]')?.textContent).toBe('Finds');
  expect(document.title).toBe('Finds: Ironsift');
  go('#side-by-side/a');
  await open('[data-open=side-by-side]');
  expect(document.querySelector('h1')?.textContent).toBe('Side by side');
  expect(document.activeElement).toBe(document.querySelector('h1'));
});

it('hands on what stands behind the name', async () => {
  go('#finds/one/two');
  await vi.waitFor(() => expect(document.querySelector('[data-open=finds]')?.textContent).toBe('one/two'));
});

it('an unknown name opens the first screen', async () => {
  go('#nowhere/x');
  await open('[data-open=finds]');
  expect(document.querySelector('[data-open=finds]')?.textContent).toBe('');
});

it('says so when a screen can not be fetched', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  go('#kit');
  await open('[role=alert]');
  expect(document.querySelector('h1')?.textContent).toBe('Kit');
});

it('addresses and routes are each other’s reverse', () => {
  for (const [screen, rest, only] of [
    ['finds', '', null],
    ['pickup', 'ab/cd', null],
    ['pickup', 'ab/cd', []],
    ['pickup', 'ab', ['plate-1', 'added-2']],
  ] as const)
    expect(routeOf(addressOf(screen, rest, only))).toEqual({ screen, rest, only });
});

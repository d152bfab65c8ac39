import { expect, it } from 'vitest';
import { PAGES } from './pages.ts';
import { played, playHostile } from './play.ts';

it('in all there are at least 150 pages, each with a name of its own', () => {
  const names = Object.values(PAGES).flatMap((groups) => played(groups).map(({ name }) => name));
  expect(names.length).toBeGreaterThanOrEqual(150);
  expect(new Set(names).size).toBe(names.length);
});

playHostile(PAGES.words);

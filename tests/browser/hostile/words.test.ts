import { expect, it } from 'vitest';
import { ALIKE } from './alike.ts';
import { type Groups, PAGES } from './pages.ts';
import { played, playHostile } from './play.ts';

it('in all there are at least 150 pages, each with a name of its own', () => {
  const names = Object.values(PAGES).flatMap((groups) => played(groups).map(({ name }) => name));
  expect(names.length).toBeGreaterThanOrEqual(150);
  expect(new Set(names).size).toBe(names.length);
});

it('each page that is left out has a like that is played', () => {
  const all = Object.values<Groups>(PAGES).flatMap((groups) =>
    Object.values(groups)
      .flat()
      .map(({ name }) => name),
  );
  const names = Object.values(PAGES).flatMap((groups) => played(groups).map(({ name }) => name));
  expect(Object.keys(ALIKE).filter((name) => !all.includes(name))).toEqual([]);
  expect(Object.values(ALIKE).filter((like) => !names.includes(like))).toEqual([]);
});

playHostile(PAGES.words);

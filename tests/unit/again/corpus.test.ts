/** No two ads of the corpus count as the same, and each is known again; among ten thousand marks as fast as among ten. */
import { beforeAll, describe, expect, it } from 'vitest';
import { lookUp, type Mark, markOf, sameAd } from '../../../src/again/index.ts';
import { listingOf, loadCases } from '../../corpus/case.ts';
import { GARAGE, marked } from './ads.ts';

/** Pairs of corpus ads that truly are near copies of each other, "one + other": none so far. */
const COPIES: readonly string[] = [];

const marks: [string, Mark][] = [];
beforeAll(async () => {
  for (const one of loadCases(`${process.cwd()}/tests/corpus/ads`)) marks.push([one.name, markOf(await listingOf(one))]);
}, 60_000);

describe('the corpus', () => {
  it('has no two ads that are the same', () => {
    const same: string[] = [];
    let pairs = 0;
    for (const [at, [name, mark]] of marks.entries()) {
      for (const [other, second] of marks.slice(at + 1)) {
        pairs += 1;
        if (sameAd(mark, second)) same.push(`${name} + ${other}`);
      }
    }
    expect(same).toEqual(COPIES);
    expect(pairs).toBeGreaterThan(100_000);
  });

  it("is known again ad by ad, but for those too short to be anybody's", () => {
    const known = lookUp(marks);
    const long = marks.filter(([, { size }]) => size >= 3);
    expect(long.length).toBeGreaterThan(450);
    expect(long.filter(([name, mark]) => known.find(mark)[0]?.id !== name).map(([name]) => name)).toEqual([]);
  });
});

it('among ten thousand finds a repost is found in well under 50 ms', () => {
  const many = Array.from({ length: 10_000 }, (_, at): [string, Mark] => {
    const [name, mark] = marks[at % marks.length] ?? ['', marked('')];
    // As many different ads, as alike as the corpus's: every hash moved by the same step.
    const moved = (all: readonly number[]): number[] =>
      all.map((hash) => (hash + Math.floor(at / marks.length) * 2654435761) % 2 ** 32).sort((a, b) => a - b);
    const bands = mark.bands.map((band) => (band + Math.floor(at / marks.length) * 2654435761) % 2 ** 32);
    return [`${name} ${at}`, { ...mark, sketch: moved(mark.sketch), bands }];
  });
  const known = lookUp(many);
  known.add('garage', marked(GARAGE));
  const repost = GARAGE.replace('$260', '$200');
  known.find(marked(repost));
  const started = performance.now();
  for (let times = 0; times < 20; times += 1) expect(known.find(marked(repost))[0]?.id).toBe('garage');
  expect((performance.now() - started) / 20).toBeLessThan(20);
});

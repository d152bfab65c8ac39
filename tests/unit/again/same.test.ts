/** Reposts are known again, and ads that only look alike are not. Invented; thresholds are ours. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keysOf, lookUp, sameAd } from '../../../src/again/index.ts';
import { GARAGE, GERMAN, marked, OTHERS, RACK, REPOSTS } from './ads.ts';

const ADS = { GARAGE, RACK, GERMAN };
const TITLE = 'Home gym clear out';

describe.each(Object.entries(ADS))('%s posted again', (_, text) => {
  const first = marked(text, TITLE);

  it.each(REPOSTS)('with %s', (_name, edit) => {
    const again = marked(edit(text), TITLE);
    expect(sameAd(first, again)).toMatchObject({ how: 'words' });
    expect(sameAd(again, first)).toEqual(sameAd(first, again));
    expect(lookUp([['first', first]]).find(again)).toMatchObject([{ id: 'first' }]);
  });

  it.each(['', 'Weights!!', 'Gym stuff, must go', 'Plates and bars, great for beginners'])('with the title "%s"', (title) =>
    expect(sameAd(first, marked(text, title))).toMatchObject({ how: 'words' }),
  );

  it('with every change of wording at once', () => {
    const all = REPOSTS.reduce((edited, [, edit]) => edit(edited), text);
    expect(sameAd(first, marked(all, 'Weights'))).toMatchObject({ how: 'words' });
  });

  it('with a line sold', () => {
    const lines = text.split('\n');
    expect(
      sameAd(
        first,
        marked(
          lines.filter((line) => !line.includes('7 ft') && !line.includes('Langhantel') && !line.includes('Bench')).join('\n'),
        ),
      ),
    ).not.toBeNull();
  });
});

describe('ads that look alike are different', () => {
  it.each(OTHERS)('%#', (one, other) => expect(sameAd(marked(one, TITLE), marked(other, TITLE))).toBeNull());

  it.each([
    ['4 x 45 lb plates', '2 x 45 lb plates'],
    ['Olympic bar', 'Olympic bar'],
    ['Flat bench, good shape', 'Flat bench, good shape'],
    ['300 lb olympic weight set with bar', '300 lb weight set, olympic bar included'],
  ])("too short for anybody's own words: %s", (one, other) =>
    expect(sameAd(marked(one), marked(other))?.how ?? null).not.toBe('words'),
  );

  it('a short ad that agrees in full is said to be the same only perhaps', () => {
    const text = 'Olympic bar 7 ft, 45 lb. Straight. Spins well. $90';
    expect(sameAd(marked(text), marked(text.replace('90', '80')))).toMatchObject({ how: 'maybe', likeness: 1 });
    expect(sameAd(marked(text), marked(text.replace('45', '35')))).toBeNull();
  });

  it('an empty one is like nothing', () => {
    expect(sameAd(marked(''), marked(''))).toBeNull();
    expect(keysOf(marked(''))).toEqual([]);
  });
});

describe('by address', () => {
  const at = (address: string, text: string) => marked(text, '', address);
  const AD = 'https://ads.invalid/item/1234567';

  it('an edited ad is the same, also with other numbers', () =>
    expect(sameAd(at(AD, GARAGE), at(`${AD}?utm_source=x`, GARAGE.replace('Six', 'Four').replace('$260', '$200')))).toMatchObject(
      { how: 'address' },
    ));
  it('another block of the page is not', () =>
    expect(sameAd(at(AD, GARAGE), at(AD, 'Kitchen table, oak, seats eight, no scratches'))).toBeNull());
  it('two ads on one page of results are told apart by their words', () => {
    const results = 'https://ads.invalid/search?q=plates';
    expect(sameAd(at(results, GARAGE), at(results, GARAGE.replace('Six', 'Four')))).toBeNull();
    expect(sameAd(at(results, GARAGE), at(results, RACK))).toBeNull();
    expect(sameAd(at(results, GARAGE), at(AD, GARAGE))).toMatchObject({ how: 'words' });
  });
  it('comes before a repost', () => {
    const known = lookUp([
      ['repost', at('https://ads.invalid/item/7654321', GARAGE)],
      ['edited', at(AD, GARAGE.replace('dry', 'in a shed'))],
    ]);
    expect(known.find(at(AD, GARAGE)).map(({ id, how }) => [id, how])).toEqual([
      ['edited', 'address'],
      ['repost', 'words'],
    ]);
  });
});

describe('whatever is posted', () => {
  const words = fc
    .array(fc.constantFrom(...GARAGE.split(/\s+/), 'rack', '7', '$90', '\n'), { minLength: 40, maxLength: 120 })
    .map((all) => all.join(' '));

  it('is the same as itself, and marks do not depend on when they are made', () =>
    fc.assert(
      fc.property(words, (text) => {
        const mark = marked(text);
        expect(marked(text)).toEqual(mark);
        expect(sameAd(mark, mark)?.likeness ?? 0).toBe(mark.size < 3 ? 0 : 1);
      }),
    ));

  it('is compared the same either way round, and never taken out of its range', () =>
    fc.assert(
      fc.property(words, words, (one, other) => {
        const same = sameAd(marked(one), marked(other));
        expect(sameAd(marked(other), marked(one))).toEqual(same);
        if (same) expect(same.likeness).toSatisfy((value: number) => value >= 0.5 && value <= 1);
      }),
    ));
});

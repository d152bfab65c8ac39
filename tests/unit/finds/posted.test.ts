/** Forms in which ads and the pages around them tell since when they stand: common practice, no source. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysBetween, postedOf } from '../../../src/finds/posted.ts';

const SEEN = { day: '2026-11-26', monthFirst: true };
const days = (text: string, seen = SEEN) => {
  const posted = postedOf(text, seen);
  return posted && daysBetween(posted.day, seen.day);
};

describe('since when an ad stands', () => {
  it.each([
    ['posted 3 weeks ago', 21],
    ['Listed 12 days ago in Elmwick', 12],
    ['Listed over a week ago', 7],
    ['Posted about 2 months ago', 61],
    ['posted a couple of days ago', 2],
    ['Listed 30+ days ago', 30],
    ['Posted: 5 hrs ago', 0],
    ['posted 3w ago', 21],
    ['First listed two weeks ago', 14],
    ['I listed this here 10 days ago', 10],
    ['posted: 2026-10-02', 55],
    ['posted: 2026-10-02 14:05', 55],
    ['Date posted\n2026-10-02', 55],
    ['Date listed:\t10/2/2026', 55],
    ['Listed on Oct 2, 2026', 55],
    ['Listing date: 2nd of October 2026', 55],
    ['Posted on 2 October', 55],
    ['posted Dec 24', 337],
    ['Posted yesterday', 1],
    ['Ad posted today', 0],
    ['Has been for sale for 3 weeks', 21],
    ['These have been up for two months, make me an offer', 61],
    ['on the market since 10/2/2026', 55],
    ['Days on the market: 12', 12],
    ['Time listed: 12 days', 12],
    ['Vor 3 Wochen inseriert', 21],
    ['Eingestellt vor 3 Wochen', 21],
    ['Vor einer Woche eingestellt', 7],
    ['Die Anzeige wurde vor 12 Tagen eingestellt', 12],
    ['Ich habe das Inserat vor zwei Wochen aufgegeben', 14],
    ['Online seit 12 Tagen', 12],
    ['seit über 2 Monaten online', 61],
    ['Anzeige vom 02.10.2026', 55],
    ['Eingestellt am 2.10.', 55],
    ['Anzeigendatum: 2. Oktober 2026', 55],
    ['Veröffentlicht am 2. Oktober', 55],
    ['Online seit dem 02.10.2026', 55],
    ['seit dem 2.10.2026 im Angebot', 55],
    ['Gestern, 18:20 Uhr eingestellt', 1],
    ['Heute inseriert', 0],
  ])('%s: %i days', (words, count) => {
    expect(days(words)).toBe(count);
    expect(days(`4 x 45 lb plates, $120\n${words}\npick up in Elmwick`)).toBe(count);
  });

  it.each([
    'bought 3 years ago',
    'Bought new 3 weeks ago, hardly used',
    'used twice in 2019',
    'used twice, last 2 months ago',
    'made 2026-10-02',
    'Repainted on Oct 2, 2026',
    'relisted 2 days ago',
    're-listed 2 days ago',
    'Updated 3 days ago',
    'Can be posted today',
    'the parcel posted 3 days ago came back',
    'never posted on Oct 2, 2026',
    'Will be posted 3 days from now',
    'Posted today if paid by noon',
    'Condition listed: 9/10',
    'as listed: 2-10-25 lb plates',
    'on sale for 3 days',
    'for sale for 2 days only',
    'listed weight 45 lb, 2 years old',
    'posted 15 years ago',
    'Posted: 2026-12-24',
    'posted 2026-02-31',
    'I have trained for 3 years',
    '3 weeks ago',
    'vor 3 Jahren gekauft',
    '2019 zweimal benutzt',
    'Habe das Training vor 2 Jahren eingestellt',
    'Studio vor 3 Monaten aufgegeben',
    'seit 3 Jahren im Keller',
    'hergestellt am 02.10.2019',
    'Auf 45 cm eingestellt am 2.10.',
    'Wird heute noch verschickt',
    'am 2.10.2026 gekauft',
  ])('nothing of it is said by: %s', (words) => expect(days(words)).toBeNull());

  it('goes by the words, and shows them', () => {
    const text = 'Plates\n\nListed  3 weeks   ago · Elmwick';
    const posted = postedOf(text, SEEN);
    expect(posted).toEqual({ words: 'Listed 3 weeks ago', start: 8, end: 29, day: '2026-11-05', rough: 6 });
    expect(text.slice(posted?.start, posted?.end)).toBe('Listed  3 weeks   ago');
  });

  it('a named day tells more than a round number, and two that contradict each other tell nothing', () => {
    expect(postedOf('Listed 3 weeks ago. Posted on Nov 2, 2026', SEEN)?.day).toBe('2026-11-02');
    expect(postedOf('Listed 3 weeks ago. Posted on Oct 2, 2026', SEEN)).toBeNull();
    expect(postedOf('Posted 2 days ago. Another: posted 3 months ago', SEEN)).toBeNull();
  });

  it('takes the order of day and month from the country, unless only the other makes sense', () => {
    const british = { ...SEEN, monthFirst: false };
    expect(postedOf('posted 10/2/2026', SEEN)?.day).toBe('2026-10-02');
    expect(postedOf('posted 10/2/2026', british)?.day).toBe('2026-02-10');
    expect(postedOf('posted 13/10/2026', SEEN)?.day).toBe('2026-10-13');
    // The second of December is to come.
    expect(postedOf('posted 12/2/2026', SEEN)?.day).toBe('2026-02-12');
  });

  it('over any text never throws, never lies ahead, and takes time by the length', () => {
    const word = fc.constantFrom(
      'posted',
      'listed',
      '3',
      'weeks',
      'ago',
      ':',
      'on',
      '2026-10-02',
      'seit',
      'vor',
      'online',
      'eingestellt',
      '\n',
      'for',
      'Oct',
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 40 }), (words) => {
        const posted = postedOf(words.join(' '), SEEN);
        expect(posted === null || posted.day <= SEEN.day).toBe(true);
      }),
    );
    const long = 'posted on the ad here '.repeat(5000);
    const begun = performance.now();
    expect(postedOf(long, SEEN)).toBeNull();
    expect(performance.now() - begun).toBeLessThan(2000);
  });
});

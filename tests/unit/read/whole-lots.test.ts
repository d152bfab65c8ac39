/** A price for the whole lot in the many words that sellers have for it, beside prices of the single goods. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer, readText } from './goods.ts';

const SINGLY = 'Home gym\nSquat rack $200\nBench $80\nOlympic bar $100\n';

describe('for all', () => {
  it.each([
    'or take the whole thing for 325',
    'all 3 for 325',
    'all three for 325',
    'or all for 325',
    'Will do the whole bunch for 325',
    'Everything for 325 if gone today',
    '$325 if one person takes the lot',
    'Whole enchilada $325',
    'the works: $325',
    'If you clear me out its 325',
    '325 gets you the works',
    'Buy the three together $325',
    '$325 for the entire setup',
    'Would let the whole setup go for 325',
    'Take all three, $325',
    "If the whole lot goes to one person I'd take $325",
    'If someone takes every last thing away in one go the committee would accept $325',
  ])('%s', (words) => expect(offer(SINGLY + words)).toBe('325 lot | 1 rack =200, 1 bench =80, 1 bar =100'));

  it.each([
    'All in good shape',
    'The whole gym used it for 20 years',
    'everything must go by 8',
    'Would take $150 for the rack today',
    'The whole setup cost me $900',
  ])('but not: %s', (words) => expect(offer(SINGLY + words)).toBe('380 lot | 1 rack =200, 1 bench =80, 1 bar =100'));

  it('is haggling beside a price for all', () =>
    expect(offer("Squat rack, bench and olympic bar, $400 for everything. I'd take 350 for all today")).toMatch(/^400 lot/));

  it('leaves the unit price of one line to that line', () =>
    expect(offer('Olympic plates\npair 45 lb $90\n2 pair 10 lb $20 a pair\nWill do the whole bunch for 110')).toBe(
      '110 lot | 2 plate 45 lb =90, 4 plate 10 lb =40',
    ));
});

const terms = (text: string): string => {
  const { firm, openToOffers } = readText(`Olympic plates 2x45 $90. ${text}`).asking;
  return `${firm ? 'firm ' : ''}${openToOffers ? 'open' : ''}`.trim();
};

describe('terms', () => {
  it.each([
    'I can be talked down a little',
    'some wiggle room',
    'We might do a little better if you come today',
    'Willing to deal',
    'Could come down a bit for a quick sale',
    'Room to move on price',
    'will entertain offers',
    'throw me a number',
    'fairly flexible',
    'Open to sensible offers',
    'o.b.o.',
  ])('%s: open to offers', (text) => expect(terms(text)).toBe('open'));

  it.each([
    'no wiggle room',
    'Prices are the prices',
    "Price isn't moving",
    'not taking a penny less',
    "Don't bother haggling",
    'Price is set',
    "Already priced low so don't ask for less",
    'Wont budge',
    'not flexible on the price',
    "no i won't do 60",
    'Lowball offers will be ignored',
    'Not interested in offers',
    'no lowballing',
    'not taking offers',
  ])('%s: firm', (text) => expect(terms(text)).toBe('firm'));

  it.each(['Room 12 at the back', 'Priced to sell', 'There is room in the garage to try them', 'My wife can show you'])(
    '%s: neither',
    (text) => expect(terms(text)).toBe(''),
  );
});

it.each([
  ['Bench $50 Rack $100 bar (olympic) $60 or $180 all', '180 lot | 1 bench =50, 1 rack =100, 1 bar =60'],
  ['Rack: 200\nBench: 75\nOlympic bar: 90\nall: 300', '300 lot | 1 rack =200, 1 bench =75, 1 bar =90'],
  ['Rack $200. Bench $75. All in good shape', '275 lot | 1 rack =200, 1 bench =75'],
])('%s', (text, said) => expect(offer(text)).toBe(said));

it.each([
  ['Olympic plates, $100 for all 4 45 lb plates', '100 lot | 4 plate 45 lb'],
  ['Olympic plates, $100 for the 2 45 lb plates', '100 lot | 2 plate 45 lb'],
  ['Olympic plates. $200 takes all four 45s', '200 lot | 4 plate 45 lb'],
  ['Olympic barbell, get all 3 25 lb plates for $50', '50 lot | 1 bar, 3 plate 25 lb'],
  ['Kettlebells 35 lb x 4, $25 each or $90 for all 4', '90 lot of 25 | 4 kettlebell 35 lb'],
  ['3 olympic bars 45 lb, $60 each, take all three, $150', '150 lot of 60 | 3 bar 45 lb'],
])('%s: the count is that of the goods, where goods follow', (text, said) => expect(offer(text)).toBe(said));

describe('so many for so much', () => {
  it.each([
    ['Olympic plates 4x45 lb. 2 for $80, 4 for $150', '150 lot | 4 plate 45 lb'],
    ['Olympic plates 4x45 lb. 4 for $150, 2 for $80', '150 lot | 4 plate 45 lb'],
    ['Olympic plates 4x45 lb. $50 each, 2 for $90, all 4 for $160', '160 lot of 50 | 4 plate 45 lb'],
    ['Four 45 lb olympic plates, two for $90 or all four for $170', '170 lot | 4 plate 45 lb'],
    ['Olympic barbells, I have 3. One for $80, two for $150, all three for $200', '200 lot | 3 bar'],
    ['Hantelscheiben 50 mm 4x 20 kg. 2 für 80 €, alle 4 für 150 €', '150 lot | 4 plate 20 kg'],
    ['2 olympic bars, 1 for $80 or both for $140', '140 lot | 2 bar'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
  it.each([
    ['Olympic 45 lb plates, have 6. 2 for $100', '300 pair of 100 | 6 plate 45 lb'],
    ['Kettlebells 35 lb, have 4. $30 each, 2 for $50', '100 pair of 50 | 4 kettlebell 35 lb'],
  ])('with no price for all: %s', (text, said) => expect(offer(text)).toBe(said));
});

describe('German', () => {
  const german = (text: string): string =>
    offer(`Kniebeugenständer 200 €, Hantelbank 80 €, Langhantel 50 mm 100 €\n${text}`).split(' |')[0] ?? '';
  it.each(['Alle drei für 325', 'Das ganze Paket 325 €', 'Wer alles auf einmal nimmt zahlt 325 €'])('%s', (words) =>
    expect(german(words)).toBe('325 lot'),
  );
  it('but not: alles in gutem Zustand', () => expect(german('Alles in gutem Zustand')).toBe('380 lot'));

  const said = (text: string): string => {
    const { firm, openToOffers } = readText(`Olympia Hantelscheiben 2x20 kg 90 €. ${text}`).asking;
    return `${firm ? 'firm ' : ''}${openToOffers ? 'open' : ''}`.trim();
  };
  it.each([
    ['Am Preis lässt sich noch was machen', 'open'],
    ['Etwas Spielraum ist da', 'open'],
    ['Kein Spielraum', 'firm'],
    ['Preis steht', 'firm'],
    ['Platz steht zum Aufbau bereit', ''],
  ])('%s', (words, what) => expect(said(words)).toBe(what));
});

describe('gone by a day', () => {
  it.each(['need it gone by the 30th', 'need this stuff gone today', 'want them out', 'need everything moved'])(
    '%s seeks nothing',
    (words) => expect(readText(`Garage gym - ${words}\n4 45 lb olympic plates $160`).wanted).toBe(false),
  );
  it.each(['need 4 45 lb olympic plates', 'need it: olympic plates 45 lb'])('%s seeks', (words) =>
    expect(readText(words).wanted).toBe(true),
  );
});

/** Which goods a price is for: several joined by "and", prices in a row, goods that nobody knows, parts, extras. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer, readText } from './goods.ts';

describe('prices of goods', () => {
  it.each([
    // Joined goods have one price together, which is none of their own.
    [
      'Olympic bar 45 lb and 4x45. $300 for plates and bar. Stands $60. Holder $25.',
      '385 lot | 1 bar 45 lb, 4 plate 45 lb, 2 stands =60',
    ],
    ['$200 for the rack, $100 for the bar and the clips. Olympic', '300 lot | 1 rack =200, 1 bar =100, 2 collars'],
    // As many prices in a row as goods before them.
    ['Hex dumbbells 40s and 50s (pairs) $90 & $110', '200 lot | 2 dumbbell 40 lb =90, 2 dumbbell 50 lb =110'],
    [
      'Hex dumbbells, pairs: 20s, 30s, 40s - $30, $45, $60',
      '135 lot | 2 dumbbell 20 lb =30, 2 dumbbell 30 lb =45, 2 dumbbell 40 lb =60',
    ],
    // Goods that no dictionary knows add up with those that are known.
    ['Adjustable weight bench and more\nBench $100, dip widget $40.', '140 lot | 1 bench =100'],
    // Parts beside the price for all.
    ['Half rack, olympic bar, 4x45\nAsking 700. For just the half rack 300', '700 lot | 1 rack =300, 1 bar, 4 plate 45 lb'],
    ['Flat bench & plate tree $60 each or $100 both', '100 lot of 60 | 1 bench =60, 1 storage =60'],
    ['Two 45 lb plates and two 25 lb plates, $30 each or $100 for all', '100 lot of 30 | 2 plate 45 lb, 2 plate 25 lb'],
    // Takers of one part only have their own rate.
    ["Olympic 4x45, bar. $300 for all. If anyone wants plates only I'd do $0.90/lb", '300 lot | 4 plate 45 lb, 1 bar'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it.each([
    ['Squat rack $100, tomorrow $80', /^100 lot/],
    ['Squat rack $100, firm until friday', /^100 lot \| 1 rack$/],
    ['4x45 olympic plates 90, 80', /^\S+ \S+ \| 4 plate 45 lb$/],
  ])('but %s', (text, said) => expect(offer(text)).toMatch(said));
});

describe('a list of all sorts of things', () => {
  const list =
    'Barn sale\nSaddle, needs work, 150\nBarbell, 6 ft, with 160 lb of weights 40\nBench, torn, 5\nWater trough no leaks 60\nChest freezer 50';
  it('adds up', () => expect(offer(list)).toMatch(/^305 lot .*1 bench =5/));
  it('does not where a line asks for offers', () =>
    expect(offer(list.replace('Water trough no leaks 60', 'Woven wire, offer'))).toMatch(/^\? lot/));
  it('is none where the numbers are counts', () =>
    expect(offer('Olympic plates for sale\nplates of 45 lb 4\nplates of 25 lb 4\nplates of 10 lb 8\nplates of 5 lb 4')).toMatch(
      /^\? none/,
    ));
});

describe('terms of some of the goods', () => {
  const open = (text: string): boolean => readText(text).asking.openToOffers !== null;
  it.each([
    ['Olympic plates 2x45 $90. Rack $200. I am flexible on the rack', false],
    ['Olympic plates 2x45 $90. Rack $200. I am flexible on the price', true],
    ['Squat rack. I am flexible on the rack', true],
    ['Gym sale\nOlympic plates 2x45 $90\nBench: make offer', false],
    ["Olympic plates 2x45 $45 but I'd take 40", true],
    ['Asking $450 for the rack, would take $400 without the bench', false],
  ])('%s: %s', (text, is) => expect(open(text)).toBe(is));
});

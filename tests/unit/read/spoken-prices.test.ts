/** Money as it is spoken, by the piece under several lines, and a number that is only assumed to be the price. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { asked, doubts, offer } from './goods.ts';

describe('money as it is spoken', () => {
  it.each([
    ['Half rack three fifty obo', 'lot 350 USD | price-spoken | three fifty'],
    ['4 x 45 lb olympic plates and a bar. Two-fifty cash', 'lot 250 USD | price-spoken | Two-fifty'],
    ['old barbell and 4 x 25 lb plates, one sixty for all of it', 'lot 160 USD | price-spoken | one sixty'],
    ['Rack + barbell + bumpers. 1.2k obo', 'lot 1200 USD | price-before-terms | 1.2k'],
    ['Rack, bar and 300 lb of bumpers. 2 grand', 'lot 2000 USD | price-spoken | 2 grand'],
    ['six 5 kg plates, 1 inch hole, fiver each', 'each 30 GBP | price-spoken | fiver'],
  ])('%s', (text, said) => expect(asked(text)[0]).toBe(said));

  it('is hundredths before a unit of weight', () =>
    expect(asked('45 lb olympic plates, one fifty a pound')).toEqual(['per-pound', 'unit 1.5 USD | price-spoken | one fifty']));

  it.each([
    'Olympic plates. There is two forty five and one thirty five',
    'two fifty lb dumbbells',
    'I bench one eighty on this weight bench',
    'dumbbells: two fifty, two forty',
  ])('and no price: %s', (text) => expect(asked(text)[0]).toBe('none'));
});

describe('a price of each', () => {
  it.each([
    ['1x hex bar\n1x olympic bar\n$150 each, happy to separate', '300 each of 150 | 1 hex-bar, 1 bar'],
    ['6 x 45 lb plates olympic\n60 ea.', '360 each of 60 | 6 plate 45 lb'],
    ['six plates 25 lb olympic @ $20', '120 each of 20 | 6 plate 25 lb'],
    ['300 lbs of iron plates, 95 cents per', '285 per-pound of 0.95 | ? plate (300 lb)'],
    ['Rack $300. The gym charges $65 a month', '300 lot | 1 rack'],
    ['45 lb plates x 8 $55 each, spend over $400 and I throw in clips', '440 each of 55 | 8 plate 45 lb, 2 collars'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

it('assumes the only number left to be the price, with a doubt', () => {
  for (const text of ['Power rack with pull up bar 300', 'Olympic barbell set 175 come get it']) {
    expect(asked(text)[0]).toMatch(/^lot \d+ USD \| number-perhaps/);
    expect(doubts(text)).toContain('perhaps_price:asking.amount');
  }
  expect(asked('Olympic barbell set bought in 2015')[0]).toBe('none');
});

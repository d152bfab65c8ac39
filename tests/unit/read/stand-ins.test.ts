/** Sums that only fill the field of the price, those of other trades, and goods that are wished for. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { asked, offer, readText } from './goods.ts';

describe('a sum that is told to be none', () => {
  it.each([
    'Bench press and weights $1\nThe dollar is just so it posts. Bench, bar, 200 lb of plates.',
    'Iron plates $12\nNot the actual price. Call for prices, 45s and 25s, all Olympic',
    'Home gym equipment $10\nNumber in the price box means nothing. rack, 2 benches, plates',
    'Bumper plates $11\n$11 isn’t the price, every size is different. PM',
    'Hantelbank mit Gewichten\n1 €\nDer Preis ist nur ein Platzhalter, verschenken möchte ich es nicht. Dazu eine Langhantel.',
  ])('%s', (text) => expect(asked(text)[0]).toBe('none placeholder'));

  it.each([
    ['Weight bench $1\nSorry the price above is wrong, it’s $80.', 'lot 80 USD | price-sign-first | $80'],
    ['Half rack\n$1\nPrice is a placeholder, asking $300 for the half rack', 'lot 300 USD | price-sign-first | $300'],
    ['Flat bench $60\nThis is the actual price. Not asking much because of the rust', 'lot 60 USD | price-sign-first | $60'],
  ])('but the one that is: %s', (text, said) => expect(asked(text)[0]).toBe(said));
});

describe('prices of other trades', () => {
  it.each([
    [
      'Yard sale. Books 50 cents each, kids clothes 3 for $5. Weight bench and dumbbells in the garage',
      '? none | 1 bench, ? dumbbell',
    ],
    ['Garage: push mower $60, olympic bar $75, patio set $100', '235 lot | 1 bar =75'],
    ['Olympic bar $75. no trades $60 is too low', '75 lot | 1 bar'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('goods that are wished for', () => {
  it.each([
    ['Trade only. I have 4 x 45 lb olympic plates. I want 2 x 45 bumpers.', '? none | 4 plate 45 lb'],
    ['Curl bar. $90. What I’d really like is a 45 lb straight bar if anyone wants to swap', '90 lot | 1 curl-bar'],
    ['45 lb bar $120, also looking for a pair of 25 lb bumpers', '120 lot | 1 bar 45 lb'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
  it('and who pays for them wants them', () => {
    expect(readText('Paying up to $1/lb for olympic plates').wanted).toBe(true);
    expect(readText('Olympic plates $1/lb, I pay half the postage').wanted).toBe(false);
  });
});

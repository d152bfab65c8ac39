/** What sellers correct, add by the way or only speak of. Forms that they write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { asked, offer, readText } from './goods.ts';

const terms = (text: string): string =>
  asked(text)
    .flatMap((line) => /^(?:firm|open to offers)/.exec(line)?.[0] ?? [])
    .join(', ');

describe('a size that is corrected', () => {
  it.each([
    ['2 olympic 35s for $50. EDIT sorry, they are 25s not 35s, just checked. still 50', '50 lot | 2 plate 25 lb'],
    ["4 olympic 45 lb plates $150. Edit: they're 35s, not 45s.", '150 lot | 4 plate 35 lb'],
    ['Two 35 lb plates, olympic. $50. Correction - 25s not 35s', '50 lot | 2 plate 25 lb'],
    ['Two 35 lb plates, olympic. $50. I was wrong these are 25 lb not 35', '50 lot | 2 plate 25 lb'],
    ['2 olympic 35s and 2 olympic 25s, $90. I have no 45s.', '90 lot | 2 plate 35 lb, 2 plate 25 lb'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('a count that is corrected and explained, or told by the price', () => {
  it.each([
    [
      'six forty fives no wait four forty fives I sold two of them to my brother in law. Olympic. $200',
      '200 lot | 4 plate 45 lb',
    ],
    ['Had 8 45s olympic, sold 2. $200', '200 lot | 6 plate 45 lb'],
    ['45lb olympic plates $40 each or $150 for all four. Good shape', '150 lot of 40 | 4 plate 45 lb'],
    ['35 lb olympic plates, $60 for both', '60 lot | 2 plate 35 lb'],
    ['10 lb olympic plates $8 each, all six for $40', '40 lot of 8 | 6 plate 10 lb'],
    ['45lb olympic plates $40 each, $70 for two, $130 for all four.', '130 lot of 40 | 4 plate 45 lb'],
    ['20kg Hantelscheiben, Stück 40 €, alle vier 150 €', '150 lot of 40 | 4 plate 20 kg'],
    ['4x45, 2x25 olympic plates, $200 for all six', '200 lot | 4 plate 45 lb, 2 plate 25 lb'],
    [
      'The plates are 45s, four of them, 10s, two, 5s, four, and 2.5s, two. Olympic. $99',
      '99 lot | 4 plate 45 lb, 2 plate 10 lb, 4 plate 5 lb, 2 plate 2.5 lb',
    ],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('lists headed by their metal', () => {
  it.each([
    [
      'Bumpers (all rubber, 50 mm hole)\nTwo pairs of 25 kg, $200 a pair\n\nSmall iron\n1 pair 2.5 kg, $15\n1 pair 1.25 kg, $10',
      '425 lot | 4 bumper 25 kg =400, 2 plate 2.5 kg =15, 2 plate 1.25 kg =10',
    ],
    ['For sale\nIRON, all 2 inch\n45 lb - 10 pcs\nBUMPERS\n45 lb - 6 pcs', '? none | 10 plate 45 lb, 6 bumper 45 lb'],
    ['Bumpers:\n2x25kg\n\nSteel:\n2x5kg\n2x2.5kg', '? none | 2 bumper 25 kg, 2 plate 5 kg, 2 plate 2.5 kg'],
    ['Iron and rubber bumpers here.\nBumpers\n2x45\n2x25', '? none | 2 bumper 45 lb, 2 bumper 25 lb'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it('have rates of their own', () =>
    expect(
      offer(
        'Olympic plates, sold by the pound\nIron $1.20 a pound, bumpers $1.60 a pound.\nIRON\n45 lb - 10 pcs\nBUMPERS\n45 lb - 5 pcs',
      ),
    ).toBe('900 lot | 10 plate 45 lb =540, 5 bumper 45 lb =360'));
});

describe('goods that are only spoken of', () => {
  it.each([
    ['Hex bar, olympic sleeves, 50 lb. Handy when you change the weights. $95', '95 lot | 1 hex-bar 50 lb'],
    ["Hex bar 50 lb. Some of the coat's worn where the plates slide on. $95", '95 lot | 1 hex-bar 50 lb'],
    ["Bumper plates 2 x 15kg £65. Read this before asking if we have any 25s (we haven't).", '65 lot | 2 bumper 15 kg'],
    ['Have: pair of 50 lb dumbbells\nWant: bumper plates, any weight\n\n$170 for the dumbbells.', '170 lot | 2 dumbbell 50 lb'],
    ['Have: 2 45 lb olympic plates\nWant: 25s', '? none | 2 plate 45 lb'],
    ["Olympic bar 20 kg $100. The rack isn't mine. Decided to keep the kettlebells.", '100 lot | 1 bar 20 kg'],
    ['Bumpers, pair of 45 lb, $150 if someone already owns a bar', '150 lot | 2 bumper 45 lb'],
    ['Barbell, zinc finish gone a bit dull, 20 kg, £60', '60 lot | 1 bar 20 kg'],
    ['4 olympic plates, around 45 lb each give or take 2 lb. $80', '80 lot | 4 plate 45 lb'],
    [
      'Two specialty bars. Curl bar, 15 lb. And a trap bar, 55 lb. $150 takes both.',
      '150 lot | 1 curl-bar 15 lb, 1 hex-bar 55 lb',
    ],
    ['4x45 lb olympic plates $160. I upgraded to bumpers.', '160 lot | 4 plate 45 lb'],
    ["Pair of 50 lb hex dumbbells $70. No, I don't have any 35s.", '70 lot | 2 dumbbell 50 lb'],
    ['4x45 lb olympic plates $160. People keep asking if I have a bar.', '160 lot | 4 plate 45 lb'],
    ['Squat rack, olympic bar, plates 45s x4. The bar is another 45. $200', '200 lot | 1 rack, 1 bar 45 lb, 4 plate 45 lb'],
    [
      '3 olympic bars. 45 lb chrome $80, 45 lb black oxide $100, 35 lb $90. Buy all 3 for $240',
      '240 lot | 1 bar 45 lb =80, 1 bar 45 lb =100, 1 bar 35 lb =90',
    ],
    ['I change the weights I sell: 4x45 olympic plates $100', '100 lot | 4 plate 45 lb'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('of this trade, and sought', () => {
  const about = (text: string): string => {
    const { aboutThisTrade, wanted } = readText(text);
    return aboutThisTrade ? (wanted ? 'wanted' : 'offered') : wanted ? 'wanted' : 'another';
  };
  it.each([
    ['Ceramic cookie jar shaped like a dumbbell, says PUMP IRON on the side. $12', 'another'],
    ['Barbell necklace, silver plated. $15', 'another'],
    ['Dumbbell shaped water bottle. $5', 'another'],
    ['Trade my 300 lb olympic set for a rowing machine. No cash offers pls', 'offered'],
    ['Hex dumbbells, pair of 50 lb, octagon shaped heads. $60', 'offered'],
    ['After ONE 10kg bumper plate, black, 50mm. Will pay fair price.', 'wanted'],
    ['After a squat rack, anything considered. Will collect.', 'wanted'],
    ['After one year I am done with it: olympic bar and 4x45 plates. $200', 'offered'],
    ["Selling my set as I'm after a lighter one. 4x20kg olympic £100", 'offered'],
  ])('%s', (text, said) => expect(about(text)).toBe(said));
});

describe('terms that are not said of the price', () => {
  it.each([
    ['Bench $70. The pad is wide and fairly firm.', ''],
    ['Bench $70 firm. The pad is wide.', 'firm'],
    ['Olympic bar $80. If you offer me a console I will block you.', ''],
    ['Trade my olympic bar for a bench. No cash offers.', ''],
    ['Pair of 50 lb dumbbells $70. The trade should be pound for pound but we can talk about it.', ''],
    ['Pair of 50 lb dumbbells $70. Price can be discussed.', 'open to offers'],
    ['Bumpers and a bar $480. I could be talked into $300 for just the bumpers.', ''],
    ['Bumpers 2x20kg €380, might do a small bit off for a quick sale', 'open to offers'],
    ['On offer is my olympic bar. $100', ''],
  ])('%s', (text, said) => expect(terms(text)).toBe(said));
});

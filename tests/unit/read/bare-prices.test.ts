/** Prices without a sign of money, told by the words around them; rates that fall with the weight; what a seller pays himself. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer } from './goods.ts';

describe('what one piece or a pair costs', () => {
  it.each([
    ['Olympic\n45 lb - 14 available, 55 each\n2.5 lb - 9 available, 3 each', '797 lot | 14 plate 45 lb =770, 9 plate 2.5 lb =27'],
    ['Bumper plates\n45 lb x 6 ....... 65 each\n25 lb x 8 ....... 38 each', '694 lot | 6 bumper 45 lb =390, 8 bumper 25 lb =304'],
    ['Olympic weights\n4 45 lb plates, 60 each\n2 25 lb plates, 30 each', '300 lot | 4 plate 45 lb =240, 2 plate 25 lb =60'],
    ['Olympic plates\n4x45 60 ea\n2x25 30 ea', '300 lot | 4 plate 45 lb =240, 2 plate 25 lb =60'],
    ['Hex dumbbells\n25s 40 a pair\n50s 90 a pair', '130 lot | 2 dumbbell 25 lb =40, 2 dumbbell 50 lb =90'],
    ['Olympic bar 45 lb, 3 of them, 80 each', '240 each of 80 | 3 bar 45 lb'],
    ['Four 45s at 50 apiece. Olympic', '200 each of 50 | 4 plate 45 lb'],
    ['Two power racks, 150 each', '300 each of 150 | 2 rack'],
    [
      '50 mm Scheiben\n20 kg, 4 Stück, 45 pro Stück\n10 kg, 2 Stück, 20 pro Stück',
      '220 lot | 4 plate 20 kg =180, 2 plate 10 kg =40',
    ],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it.each([
    ['Two dumbbells, 50 each', '2 dumbbell 50 lb'],
    ['45s, 35s and 25s, 2 each. Olympic plates', '2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb'],
    ['Olympic plates: 45 lb - 2 each, 25 lb - 4 each', '2 plate 45 lb, 4 plate 25 lb'],
    ['10s, 5s and 2.5s, 6 each. Olympic', '6 plate 10 lb, 6 plate 5 lb, 6 plate 2.5 lb'],
  ])('but no price: %s', (text, said) => expect(offer(text)).toBe(`? none | ${said}`));
});

describe('a number behind goods', () => {
  it.each([
    ['Squat rack $300 and flat bench 60', '360 lot | 1 rack =300, 1 bench =60'],
    ['PRICE DROP squat rack 325', '325 lot | 1 rack'],
    ['Squat rack, reduced from 400 to 325', '325 lot | 1 rack'],
    ['Price lowered: squat rack 325 (was 400)', '325 lot | 1 rack'],
    ["Hex dumbbells 50's, 2 of em, 75", '75 lot | 2 dumbbell 50 lb'],
    ['Olympic bar 45 lb 100', '100 lot | 1 bar 45 lb'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it.each([
    'Olympic plates 45 lb 4',
    'Olympic plates: 10 lb, 25 lb, 35',
    'Olympic plates. Used from 10 to 45 lb',
    'Squat rack, pins move from 40 to 70 in',
  ])('but no price: %s', (text) => expect(offer(text)).toMatch(/^\? none/));
});

describe('a price among other sums', () => {
  it.each([
    ['Price is $200 delivered within 10 miles, $180 if you pick up', '180 lot'],
    ['$180 pick up / $200 delivered', '180 lot'],
    ['New price 180!!', '180 lot'],
    ['Need 180 for it', '180 lot'],
    ['New over $400. Asking half. $180', '180 lot'],
    ['ISO trade for bumpers, or $180', '180 lot'],
    ['.75 cents a pound', '135 per-pound of 0.75'],
  ])('%s', (text, said) => expect(offer(`Olympic 4x45. ${text}`)).toBe(`${said} | 4 plate 45 lb`));

  it.each([
    ['$180, delivery $20', '180 lot'],
    ['$180 + delivery within 10 miles, $20', '180 lot'],
    ['New rack needs 4 more 45s', '? none'],
  ])('but %s', (text, said) => expect(offer(`Olympic 4x45. ${text}`)).toMatch(`${said} |`));
});

describe('rates', () => {
  const goods = '8 plate 45 lb, 4 plate 25 lb';
  it.each([
    ['1.10 a lb if u take 200 lb or more otherwise 1.35', `506 per-pound of 1.1 | ${goods}`],
    ['$1.25/lb, over 200 lb $1.10', `506 per-pound of 1.1 | ${goods}`],
    ['$1.25/lb, over 500 lb $1.10', `575 per-pound of 1.25 | ${goods}`],
    ['$1.25/lb, $1.10/lb if you take more than 200 lb', `506 per-pound of 1.1 | ${goods}`],
    ['$1.25/lb or $1/lb if you take it all', `460 per-pound of 1 | ${goods}`],
    ['A buck twenty five a pound', `575 per-pound of 1.25 | ${goods}`],
    ["$1/lb. If you've got old weights I pay 40 cents a pound for olympic, 25 for standard", `460 per-pound of 1 | ${goods}`],
    ['$500. I also buy, paying 50 cents a pound', `500 lot | ${goods}`],
    ['$1.25/lb. I buy at $.50/lb', `575 per-pound of 1.25 | ${goods}`],
  ])('%s', (text, said) => expect(offer(`Olympic plates\n45x8\n25x4\n${text}`)).toBe(said));

  it('holds what was paid apart from what is paid', () =>
    expect(offer('Olympic plates 4x45. I paid $300, asking $1/lb')).toBe('180 per-pound of 1 | 4 plate 45 lb'));

  it('in German', () =>
    expect(offer('Hantelscheiben 50 mm 4x20 kg, 2 €/kg, ab 200 kg 1,50 €/kg')).toBe('160 per-kilogram of 2 | 4 plate 20 kg'));
});

describe('a price of goods with what comes along', () => {
  it('is that of the goods', () =>
    expect(offer('Power rack with a pair of spotter arms $350\nFlat bench $75')).toBe(
      '425 lot | 1 rack =350, 2 other, 1 bench =75',
    ));
});

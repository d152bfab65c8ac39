/** Prices without a sign of money that no word asks for: told by what stands on both sides, and by place. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer, readText } from './goods.ts';

const asked = (text: string): number | null => {
  const { amount } = readText(text).asking;
  return amount === null ? null : amount.value.minor / 100;
};
const perhaps = (text: string): readonly unknown[] =>
  (readText(text).doubts.find(({ id }) => id === 'perhaps_price:asking.amount')?.choices ?? []).flatMap(({ corrections }) =>
    corrections.map(({ value }) => value),
  );

describe('a bare number is the price by the words beside it', () => {
  it.each(
    [
      'cash 300',
      'wife says get rid of it so 300',
      "i'd like 300",
      'thinking 300',
      'hoping for 300',
      'will do 300',
      'have it for 300',
      'letting it go at 300',
      'only 300',
      'together 300',
      'happy with 300',
      'first 300 gets it',
      '300 takes it home',
      '300 pickup only',
      '300 you pick up',
      '300 or trade',
      '300 or swap for a rower',
      '300 transfer or cash',
      '300 app or cash',
      '300 seems fair',
      '300 the lot',
      '300 all in',
      '300 together',
      "300 and it's yours",
      '300 must go',
      '300 bones',
      'around 300',
      'paid 500, 300 now',
      'cost 500 new, let go 300',
      'retail 500 so 300 is fair',
      '300 cad, retail is 389',
    ].map((words) => [words]),
  )('%s', (words) => expect(asked(`Olympic bar, 4x45, 4x25 plates. ${words}`)).toBe(300));

  it.each(
    [
      '120 zusammen',
      'für 120 gehört es dir',
      '120 an Abholer',
      'nur 120',
      '120 fürs Ganze',
      'NP 300, für 120 abzugeben',
      '120 App oder bar',
      '120 Euronen',
      'VB 120',
    ].map((words) => [words]),
  )('%s', (words) => expect(asked(`Hantelstange 20 kg und 4x10 kg Scheiben. ${words}`)).toBe(120));
});

it('is the price where it is no sum of the weights', () => {
  expect(asked('Olympic bar, 4x45, 4x25 plates. 160 total')).toBe(160);
  expect(perhaps('Olympic bar, 4x45, 4x25 plates. 265 total')).toEqual([265]);
});

describe('a bare number is the price by its place', () => {
  it.each([
    'Power rack with pull up bar, 300',
    'Power rack with pull up bar - 300',
    'Power rack. Needs to go, 300.',
    'Power rack\n300',
  ])('%s', (text) => expect(asked(text)).toBe(300));
});

describe('a number of another sort is no price and no doubt', () => {
  it.each([
    'Power rack, model 300, 84 inches',
    'Power rack, the R-300',
    'Olympic bar, 190k tensile, 7 ft',
    'Power rack holds 700, pick up at 412 Main St',
    'Power rack, bought in 2019, hwy 60 exit 12',
    'Squat rack. Room 210',
    'I benched 225 on it. Weight bench',
    'Olympic plates 4x45 4x25, 280 total',
    'Olympic plates 4x45 4x25, 280',
    'Weight bench, dimensions 48 by 20',
    'Barbell rated 1500. Message me',
    'Rack with 60 holes, 2 inch spacing',
    '100 percent steel barbell',
    'Squat rack, come by 10 to 4 saturday',
    'Zip 55512. Weight bench',
    'Langhantel, Baujahr 1987, Größe 52',
    'Hantelbank, Hausnummer 30, ab 18 Uhr',
  ])('%s', (text) => {
    expect(asked(text)).toBeNull();
    expect(perhaps(text)).toEqual([]);
  });
});

describe('a number that may be the price raises a doubt', () => {
  it.each([['Olympic weight set, 300 total', [300]]])('%s', (text, amounts) => {
    expect(asked(text)).toBeNull();
    expect(perhaps(text)).toEqual(amounts);
  });
  it('and none where a price is told', () => expect(perhaps('Power rack with pull up bar 300. $250')).toEqual([]));
  it('and none in an ad that seeks', () => expect(perhaps('Looking for a power rack 300')).toEqual([]));
});

describe('goods in a row, each with its number', () => {
  it.each([
    [
      'EZ curl bar 25, pair of 40 lb hex dumbbells 70, pair of 25s 40. Rubber heads',
      '135 lot | 1 curl-bar =25, 2 dumbbell 40 lb =70, 2 dumbbell 25 lb =40',
    ],
    ['Adjustable bench 40, 2x45 olympic plates 70', '110 lot | 1 bench =40, 2 plate 45 lb =70'],
    ['pair of 35 lb dumbbells 60, pair of 50 lb dumbbells 90', '150 lot | 2 dumbbell 35 lb =60, 2 dumbbell 50 lb =90'],
    ['Olympic. 2 45s 100, 2 25s 60, 2 10s 30', '190 lot | 2 plate 45 lb =100, 2 plate 25 lb =60, 2 plate 10 lb =30'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));

  it.each([
    'Olympic plates. 45 lb plates 4, 25 lb plates 2, 10 lb plates 6',
    'Olympic plates. 45 lb 4, 25 lb 2, 10 lb 6',
    'Olympic plates. pair of 45s, pair of 35s, pair of 25',
    'Olympic plates, 45 lb, 35 lb, 25',
  ])('but no price: %s', (text) => expect(asked(text)).toBeNull());
});

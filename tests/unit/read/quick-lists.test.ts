/** How sellers in a hurry put goods and prices in one line, each with what is near to it and means something else. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { offer, readText } from './goods.ts';

describe('pairs and sets', () => {
  it.each([
    [
      'Plates: pair 45 pair 35 pair 25 2 pair 10 pair 5. $300',
      '300 lot | 2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb, 4 plate 10 lb, 2 plate 5 lb',
    ],
    ['Bumper plates 10-15-25-35 pairs. $390', '390 lot | 2 bumper 10 lb, 2 bumper 15 lb, 2 bumper 25 lb, 2 bumper 35 lb'],
    ['Plates, 45 & 35 pairs, $100', '100 lot | 2 plate 45 lb, 2 plate 35 lb'],
    ['Plates 25 lb, 10 pairs, $400', '400 lot | 20 plate 25 lb'],
    ['Plates, pair 25 50, pair 10 15. $60 for all', '60 lot | 2 plate 25 lb, 2 plate 10 lb'],
    [
      'Bumper set: 2/45, 2/35, 2/25. $420, store wanted $640 for these',
      '420 lot | 2 bumper 45 lb, 2 bumper 35 lb, 2 bumper 25 lb',
    ],
    ['Plates, four at 12 and a half pounds and four at 5 pounds, $30', '30 lot | 4 plate 12.5 lb, 4 plate 5 lb'],
    ['Plates 45 pair 35 pair 25 pair, $100', '100 lot | 2 plate 45 lb, 2 plate 35 lb, 2 plate 25 lb'],
    ['A set of 4, 45lb plates and a set of 2, 25lb plates, $250', '250 lot | 4 plate 45 lb, 2 plate 25 lb'],
    [
      'Plates 4-45# 2-10# 2-2.5# Bar 45# $300 for all of it',
      '300 lot | 4 plate 45 lb, 2 plate 10 lb, 2 plate 2.5 lb, 1 bar 45 lb',
    ],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('the weight of all', () => {
  it.each([
    ['160lb of iron and a bar, $200', '200 lot | ? plate (160 lb), 1 bar'],
    ['200 lb of iron plates, $150', '150 lot | ? plate (200 lb)'],
    ['Bar, 230 lb bumper, bench, $700', '700 lot | 1 bar, ? bumper (230 lb), 1 bench'],
    ['Bar\nWeights (60kg)\n$100', '100 lot | 1 bar, ? plate (60 kg)'],
    ['Bench press bar & 210 pounds, needs a new home. $100', '100 lot | 1 bar, ? plate (210 lb)'],
    ['Bench press w/ 100lbs weights, $80', '80 lot | 1 bench, ? plate (100 lb)'],
    ['Bench press, 100 lb plates, $80', '80 lot | 1 bench, ? plate 100 lb'],
    ['4x20 kg plates (80 kg), $100', '100 lot | 4 plate 20 kg'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

describe('what a bar costs, and what it weighs', () => {
  it.each([
    ["45 lb 7' bar. 4 x 45. $100", '100 lot | 1 bar 45 lb, 4 plate 45 lb'],
    ['Four 45 lb, bar 7 ft. $100', '100 lot | 4 plate 45 lb, 1 bar'],
    ['Plates are 90 cents a pound. Bar is 60. 2 45s, 4 25s', '231 per-pound of 0.9 | 2 plate 45 lb, 1 bar =60, 4 plate 25 lb'],
    ['Plates are 90 cents a pound. Bar is 45. 2 45s, 4 25s', '171 per-pound of 0.9 | 2 plate 45 lb, 1 bar 45 lb, 4 plate 25 lb'],
    ['Trap bar $90. Also have EZ curl bar 40. Take both for 110', '110 lot | 1 hex-bar =90, 1 curl-bar =40'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

it('a decade is no weight', () => {
  expect(offer('Weight plates from the 70s: 2x45, 2x25, $80')).toBe('80 lot | 2 plate 45 lb, 2 plate 25 lb');
  expect(offer('From the pair of 70s dumbbells $80')).toContain('70 lb');
});

it('a size that is said of all', () => {
  const fits = (text: string) => readText(text).items.map(({ fits }) => fits?.value ?? null);
  expect(fits('100lb plates, two of them, $150, they are 2 inch')).toEqual(['50mm']);
  expect(fits('100lb plates, two of them, $150, the straps are 2 inch')).toEqual([null]);
});

describe('prices', () => {
  it.each([
    ['Iron plates 2x45 4x25 2x10 - 80 bucks takes em', '80 lot | 2 plate 45 lb, 4 plate 25 lb, 2 plate 10 lb'],
    ['Bar £70, bench £60. Job lot £100', '100 lot | 1 bar =70, 1 bench =60'],
    ['Rack 200. Bench 60. Both 230', '230 lot | 1 rack =200, 1 bench =60'],
    ['Rack $200. Bench $60. $230 both', '230 lot | 1 rack =200, 1 bench =60'],
    ['Iron plates 2x45, 70-80 bucks', '70 range | 2 plate 45 lb'],
    ['Steel plates. 2x45 2x35. 2.00 lb.', '320 per-pound of 2 | 2 plate 45 lb, 2 plate 35 lb'],
    ['Steel plates. 2x45 2x1.25 lb. $90', '90 lot | 2 plate 45 lb, 2 micro 1.25 lb'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

it('what is denied', () => {
  const conditions = (text: string) => readText(text).items.flatMap((item) => item.conditions.map(({ value }) => value));
  expect(conditions('Pair of 25 kg bumpers. They dont have any cracks. $80')).toEqual([]);
  expect(conditions('Pair of 25 kg bumpers. They do have some cracks. $80')).toEqual(['cracked']);
  expect(conditions('Pair of 45 lb plates, never used outside, $80')).toEqual(['stored-indoors']);
  expect(conditions('Pair of 45 lb plates, never used, $80')).toEqual(['new']);
});

it('said of the whole, or said again', () => {
  expect(offer('Rack: $250. Bench: $75. Bar: $75. Plates: $1/lb - 2x45, 4x25')).toBe(
    '590 per-pound of 1 | 1 rack =250, 1 bench =75, 1 bar =75, 2 plate 45 lb, 4 plate 25 lb',
  );
  expect(offer('Pair of squat stands. $50. 2 stands, wide base')).toBe('50 lot | 2 stands');
  expect(offer('Two olympic bars, $50. 2 bars, $40')).toBe('90 lot | 2 bar =50, 2 bar =40');
  expect(readText('Weight set, 110 lb, vinyl, $40').statedTotal?.value.value).toBe(110);
  expect(readText('Pick up in Elmwick. No holds. 2 45 lb plates $50').place?.value).toBe('Elmwick');
  expect(readText('Pick up in St. Elmwick. 2 45 lb plates $50').place?.value).toBe('St. Elmwick');
});

describe('what is said of a list, and of some of it', () => {
  const made = (text: string) => readText(text).items.map(({ material, grade }) => material?.value ?? grade?.value ?? null);
  it.each([
    ['Plates cast iron 2x45, 2x25, $100', ['iron', 'iron']],
    ['Hantelscheiben Gusseisen 150 kg (4x20, 4x10), 100 €', ['iron', 'iron']],
    ['Scheiben kalibriert 2 x 25 kg, 2 x 20 kg, 300 €', ['calibrated', 'calibrated']],
    ['2x45 cast iron plates, 2x25 bumpers, $100', ['iron', null]],
  ])('%s', (text, said) => expect(made(text)).toEqual(said));

  it.each([
    ['Bumpers 2x45 2x25, one pair of 45s has a tear. $100', '100 lot | 2 bumper 45 lb, 2 bumper 25 lb'],
    ['Gewichte 2x25 kg 2x20 kg, 1 Paar 25er mit Riss. 220 €', '220 lot | 2 plate 25 kg, 2 plate 20 kg'],
    ['Bumpers 2x45 2x25, one pair of 45s more. $100', '100 lot | 4 bumper 45 lb, 2 bumper 25 lb'],
  ])('%s', (text, said) => expect(offer(text)).toBe(said));
});

it('under iron at the head of a line, and people who are gone', () => {
  expect(offer('Iron, all olympic: six 45s, two 35s.\n\nBumpers: two 45s and two 25s.\n\n$500')).toBe(
    '500 lot | 6 plate 45 lb, 2 plate 35 lb, 2 bumper 45 lb, 2 bumper 25 lb',
  );
  expect(offer("Son's weights, he is grown and gone. There are 2 of the 45's. $60")).toContain('2 plate 45 lb');
  expect(readText('Two 45 lb plates and a bench, the bench is gone. $60').sold).toHaveLength(1);
});

it('counts no parts of a piece', () => {
  const counts = (text: string) => readText(text).items.map(({ count }) => count?.value ?? 1);
  expect(counts('Plates: 0.25 pair 25 50, pair 10 15. $60').every(Number.isInteger)).toBe(true);
});

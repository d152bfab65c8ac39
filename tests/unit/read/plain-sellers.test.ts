/** Ways of plain sellers that once were read wrong: words run together, nouns before their weights, what stands beside. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import { goods, readText } from './goods.ts';

/** "4 plate 45 lb" for each item; "?" for what it lacks. */
const items = (text: string): string[] => goods(text).map((line) => (line.split(' | ')[0] ?? '').replace(/ \?$/, ''));

describe('counts and weights', () => {
  it.each([
    // Dashes with nothing between the goods; the bar is not what the tens are.
    ['OLYMPIC WEIGHTS 4-45S 4-25S 2-10S BARBELL IS 7 FOOT $250', ['4 plate 45 lb', '4 plate 25 lb', '2 plate 10 lb', '1 bar']],
    ['olympic plates 2-45lb 4-10lb $90', ['2 plate 45 lb', '4 plate 10 lb']],
    // A colour between weight and count.
    ['Bumper set: 25 kg red x2, 10 kg green x4. £300', ['2 bumper 25 kg', '4 bumper 10 kg']],
    // Bars by weight, and how many.
    ['Olympic bars 20kg (5) £70 each', ['5 bar 20 kg']],
    ['Langhanteln 20 kg (6 Stk.) je 60 €', ['6 bar 20 kg']],
    ["15 kg women's olympic bar, 25 mm shaft, $180", ['1 bar 15 kg']],
    ['Three olympic plates of 45 lb plus the bar (45), $330', ['3 plate 45 lb', '1 bar 45 lb']],
    // One count for a list without commas.
    [
      'dumbbells 20s 30s 40s and 50s two of each 225 for all',
      ['2 dumbbell 20 lb', '2 dumbbell 30 lb', '2 dumbbell 40 lb', '2 dumbbell 50 lb'],
    ],
    ['Bumpers 10s 15s 25s, a pair of each, $200', ['2 bumper 10 lb', '2 bumper 15 lb', '2 bumper 25 lb']],
    [
      'Hex dumbbells 5 to 15 lb in 5 lb jumps, pairs. Also one lonely 30',
      ['2 dumbbell 5 lb', '2 dumbbell 10 lb', '2 dumbbell 15 lb', '1 dumbbell 30 lb'],
    ],
    // The unit that the sum says.
    [
      'selling 100kg of bumpers, 2 x 20, 2 x 15, 2 x 10, 2 x 5. 450 dollars',
      ['2 bumper 20 kg', '2 bumper 15 kg', '2 bumper 10 kg', '2 bumper 5 kg'],
    ],
    // Two single stands are two.
    ['Zwei einzelne Kniebeugenständer, 40 € zusammen', ['2 stands']],
    // Plates for the handles of dumbbells.
    ['Two dumbbell handles, 4 x 5 lb, 4 x 2.5 lb, $30', ['4 plate 5 lb', '4 plate 2.5 lb', '2 other']],
    // Two bars of two sleeves.
    ['Olympic bar, 45 lb. Standard bar, 5 foot, slightly bent. $60', ['1 bar 45 lb', '1 bar']],
    // What is taken in trade.
    ['Tausche 2x20 kg Olympiascheiben gegen Kettlebell 24 kg', ['2 plate 20 kg']],
    // The noun holds for the next weight too; the price of both is no total of theirs.
    ['Kettlebell 16 kg und 24 kg, zusammen 60 Euro', ['1 kettlebell 16 kg', '1 kettlebell 24 kg']],
    // Nobody casts plates of six pounds.
    ['Tenant left a weight set. Bar, 6 plates. No clue on weights. $50', ['1 bar', '6 plate']],
    ['gym stuff. weights bar etc. make offer', ['1 bar', '? plate']],
    // A set that nobody counts is plates all the same; with a size, or with plates told, it is those.
    ['Weight set. There is a bench and a long bar too. Asking 100 dollars', ['1 bar', '1 bench', '? plate']],
    ['Weight set: 2 x 45 lb olympic plates and a bench, $100', ['1 bench', '2 plate 45 lb']],
    [
      'Dumbbells 5 to 25 lb in pairs by fives. $175',
      ['2 dumbbell 5 lb', '2 dumbbell 10 lb', '2 dumbbell 15 lb', '2 dumbbell 20 lb', '2 dumbbell 25 lb'],
    ],
    ['Half rack $275. Bar and plates in the pictures are NOT for sale', ['1 rack']],
    ['Mixed olympic iron, 80 cents a pound, weigh it on my scale', ['? plate']],
    // A machine beside our goods takes nothing from them.
    ['Treadmill, belt squeaks, and a pair of 15 lb dumbbells, $160', ['1 other', '2 dumbbell 15 lb']],
    // A weight beside a bench is not the bench's.
    ['Hantelbank mit Ablage und 60 kg Scheiben, 120 €', ['1 bench', '? plate', '1 other']],
  ])('%s', (text, goods) => expect(items(text).sort()).toEqual([...goods].sort()));

  it.each([
    // A list of plates in front of a plural of bars, and tables, stay what they are.
    ['2 - 45 lb bars, $100', ['2 bar 45 lb']],
    ['45 lb x 4 plates, $100', ['4 plate 45 lb']],
    ['pair of 50 lb dumbbells, 4 handles for the cable machine, $40', ['2 dumbbell 50 lb']],
  ])('not: %s', (text, goods) =>
    expect(
      items(text)
        .filter((one) => !one.includes('other'))
        .sort(),
    ).toEqual([...goods].sort()),
  );
});

it('a size of timber is one wherever it stands again', () => {
  expect(readText('LUMBER - 2x10 x 12 ft, 14 boards. $8 each for 2x10. Bench not included.').aboutThisTrade).toBe(false);
  expect(items('Olympic plates 2x10 and 2x45, $80. Rack is 4 x 4 x 7 ft.')).toEqual(
    expect.arrayContaining(['2 plate 10 lb', '2 plate 45 lb']),
  );
});

it('ends where the site begins, also when the heading is followed on its line', () => {
  const ad =
    '4 x 20 kg Hantelscheiben, 140 €, nur Abholung am Abend\nDas könnte dich auch interessieren: Hantelscheiben 2x10 kg 60 €';
  expect(items(ad)).toEqual(['4 plate 20 kg']);
});

it('a heart that breaks is no crack', () => {
  const [plates] = readText('It breaks my heart to sell. Olympic plates 2 x 45 lb, $80').items;
  expect(plates?.conditions).toEqual([]);
  const [cracked] = readText('Olympic plates 2 x 45 lb, cracked, $80').items;
  expect(cracked?.conditions.map(({ value }) => value)).toEqual(['cracked']);
});

it.each([
  ['Free 1 inch weights on the curb, maybe 70 lbs worth', 70],
  ['Iron barbell plates, standard one inch hole, approx 160 lbs total, with 5 ft bar', 160],
  ['Bench press with bar holder and 140 lbs in weights. Asking 90', 140],
])('the total is that of the only plates: %s', (text, pounds) => {
  const plates = readText(text).items.find(({ kind }) => kind.value === 'plate');
  expect(plates?.totalWeight?.value).toEqual({ value: pounds, unit: 'lb' });
});

it('a bare price before what comes along is one', () => {
  expect(readText('roomates rack, he said i can sell it. 180, comes with bar').asking.amount?.value).toMatchObject({
    minor: 18_000,
  });
});

/** Whose a condition, a material or a length is, where other goods, other things and single pieces stand beside. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { facts } from './goods.ts';

const said = (text: string, ...names: string[]): string[] =>
  facts(text)
    .filter((line) => names.some((name) => line.includes(` ${name} `)))
    .map((line) => line.split(' | ')[0] ?? '');

describe("conditions of other things are nobody else's", () => {
  it.each([
    ['4 x 45 lb plates. Also selling a rusty old wheelbarrow. $200'],
    ['4 x 45 lb plates. The truck is rusty so bring your own.'],
    ['4 x 45 lb plates, barbell. Shed has a cracked window.'],
    ['Power rack\nFlat bench\nPlatform: homemade 8x8, plywood\n4 x 45 lb plates\nBarbell'],
    ['Two weight benches, $20 each\n4 x 45 lb plates $80\nBarbell $40\nFoosball, one man is missing his head, $25'],
    ['4 x 45 lb plates, 2 x 25 lb plates, some plates repainted'],
    ['Barbell 45 lb, 28.5 mm, black oxide'],
    ['Hantelscheiben 4 x 20 kg, Langhantel. Der Wagen ist rostig'],
    ['Hantelscheiben 4 x 20 kg, einige Scheiben neu lackiert'],
    ['Deadlift bar 44 lb. 200 firm, this is half of new'],
  ])('%s', (text) => expect(said(text, 'condition')).toEqual([]));
  it.each([
    ['4 x 45 lb plates. They sat outside against the shed', ['plate-1 condition stored-outdoors']],
    [
      'Power rack $300\n4 x 45 lb plates $80\nBarbell $40\nAll a bit rusty, $400',
      ['rack-1 condition rust-light', 'plate-1 condition rust-light', 'bar-1 condition rust-light'],
    ],
    ['4 x 45 lb plates stacked on the platform, rusty', ['plate-1 condition rust']],
  ])('%s', (text, lines) => expect(said(text, 'condition')).toEqual(lines));
});

describe('of one among several', () => {
  it.each([
    ['1 - 45, 1 - 35, 1 - 25 (has a crack in the rim), 1 - 10 olympic plates', ['plate-3 condition cracked']],
    ['4 x 45 lb plates, 2 x 25 lb plates. One 25 is cracked.', ['plate-2 condition cracked']],
    ['Kettlebells (8 kg, 12 kg, 16 kg), Gusseisen, die 16er hat Macken im Lack', ['kettlebell-3 condition chipped']],
  ])('%s', (text, lines) => expect(said(text, 'condition')).toEqual(lines));
});

describe('ways of saying it', () => {
  it.each([
    ['4 x 45 lb plates. Stored in the barn.', 'plate-1 condition stored-indoors'],
    ['4 x 45 lb plates, straight from the spare bedroom', 'plate-1 condition stored-indoors'],
    ['4 x 45 lb plates. The boys left them out on the dock', 'plate-1 condition stored-outdoors'],
    ['4 x 45 lb plates, outside under the lean-to', 'plate-1 condition stored-outdoors'],
    ['4 x 45 lb plates, wire wheeled and sprayed black', 'plate-1 condition repainted'],
    ['4 x 45 lb plates, pretty rusty', 'plate-1 condition rust'],
    ['Flat bench, the vinyl is toast', 'bench-1 condition torn'],
    ['Flat bench, pad got eat by mice', 'bench-1 condition torn'],
    ['Power rack, put together with metric bolts', 'rack-1 condition bolted'],
    ['Power rack, heavy duty welds', 'rack-1 condition welded'],
    ['Squat stands, heavy bases I poured myself', 'stands-1 condition home-made'],
    ['Spring collars, condition is as new', 'collars-1 condition like-new'],
    ['4 x 45 lb plates. Collecting dust in the basement', 'plate-1 condition stored-indoors'],
    ['4 x 45 lb plates. Paint is coming off', 'plate-1 condition chipped'],
    ['Odd olympic plates: 1 x 45 lb, 2 x 25 lb', 'plate-1 condition odd'],
    ['Single 45 lb plate, lost the other', 'plate-1 condition odd'],
    ['A pair of 5 lb plates and one lonely 2.5 lb', 'plate-2 condition odd'],
    ['Hantelscheiben 4 x 20 kg. In der Scheune gelagert', 'plate-1 condition stored-indoors'],
  ])('%s', (text, line) => expect(said(text, 'condition')).toEqual([line]));
});

describe('materials', () => {
  it.each<[string, string[]]>([
    ['Now the old iron can go. 4 x 25 lb plates', []],
    ['We buy out gyms and move the iron. 4 x 25 lb plates', []],
    ["Here's the iron. 4 x 25 lb plates", ['plate-1 material iron']],
    ['The iron plates: 4 x 25 lb', ['plate-1 material iron']],
    ['4 x 10 kg plates, 2 x 5 kg plates, some metal some plastic coated', []],
    ['Barbell\n~ iron 45# pair, 5# pair, 2.5# pair', ['plate-1 material iron', 'plate-2 material iron', 'plate-3 material iron']],
    ['Squat stands, adjustable, and a steel vertical bar holder. Barbell', []],
    ['Squat rack, home made out of 4x4 and 2x8. Barbell', ['rack-1 material wood']],
    ['Squat rack of 3x3 tube, 4x4 ft base. Barbell', []],
    ['Squat rack made of 4x4 steel tube. Barbell', ['rack-1 material steel']],
  ])('%s', (text, lines) => expect(said(text, 'material').filter((line) => !line.startsWith('bumper'))).toEqual(lines));
});

describe('bars', () => {
  it.each<[string, string[]]>([
    [
      'Straight bar and curl bar\nstraight one is 60 inches and the curl is 47 inches',
      ['bar-1 lengthMm 1524', 'curl-bar-1 lengthMm 1193.8'],
    ],
    ['Bar is 6 foot, curl bar is 4 foot', ['bar-1 lengthMm 1828.8', 'curl-bar-1 lengthMm 1219.2']],
    ['Barbell, sixty inches', ['bar-1 lengthMm 1524']],
    ['Barbell, 84 in', ['bar-1 lengthMm 2133.6']],
    ['5 footer barbell', ['bar-1 lengthMm 1524']],
    ['Barbell. Tape measured it at about an inch and an eighth', ['bar-1 shaftMm 28.575']],
    ['Barbell, 1 1/4 thick', ['bar-1 shaftMm 31.75']],
    ['15 kg 25mm barbell', ['bar-1 shaftMm 25']],
    ['Barbell 28 mil', ['bar-1 shaftMm 28']],
    ['1 inch barbell', ['bar-1 fits 25mm']],
    ['Technique bar 5 kg, 25 mm grip, fits olympic bumpers', ['bar-1 fits 50mm', 'bar-1 shaftMm 25']],
    ['Axle barbell 31 lb, takes olympic plates', ['bar-1 fits 50mm']],
    ['Barbell, mixed 28 and 29 mm', []],
    ['Barbell, pads 2 thick', []],
    ['2 x 25 lb plates, will not fit olympic bar', []],
  ])('%s', (text, lines) => expect(said(text, 'lengthMm', 'shaftMm', 'fits')).toEqual(lines));
  it('a size that ends the line of plates', () =>
    expect(said('10KG PLATES X2 CAST IRON 1IN', 'fits')).toEqual(['plate-1 fits 25mm']));
});

describe('of what the seller goes on with', () => {
  it.each([
    ['Standard 1" weights\nMoved to oly years ago.\n4 x 25 lb iron, $80', ['plate-1 fits 25mm']],
    ['Selling standard plates because we bought an olympic set. 2x25 lb $40', ['plate-1 fits 25mm']],
    ['Got a full olympic set for Christmas, so here are my standard plates, 2x25 lb, $40', ['plate-1 fits 25mm']],
    ['Got olympic plates 4x45 lb and standard plates 4x10 lb, $100', ['plate-1 fits 50mm', 'plate-2 fits 25mm']],
    ['I have an olympic bar and 4x45 lb plates, $100', ['bar-1 fits 50mm']],
  ])('%s', (text, lines) => expect(said(text, 'fits')).toEqual(lines));
});

/** Holes: which are stated, which only named, and of which plates. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { facts } from './goods.ts';

const PLATES = '4 x 45 lb plates\n2 x 25 lb plates\n';
const holes = (text: string): string[] =>
  facts(text)
    .filter((line) => line.includes(' boreMm '))
    .map((line) => line.split(' | ').slice(0, 2).join(' | '));
const both = (mm: number, rule: string): string[] => ['plate-1', 'plate-2'].map((id) => `${id} boreMm ${mm} | ${rule}`);

describe('one word for the lot', () => {
  it.each([
    ['All have the 2 inch hole.'],
    ['Holes are 2 in'],
    ['Hammertone gray, 2" center. Text me'],
    ['2in centers'],
    ['Plates have the 2" opening.'],
    ['2 in. holes, no rust'],
    ['two inch holes'],
    ['The hole is two inches across'],
    ['2-inch bore'],
    ['Used about a year, 2 inch hole. About 200 lb'],
  ])('%s', (said) => expect(holes(PLATES + said)).toEqual(both(50.8, 'bore-nominal')));
  it.each([
    ['hole measures 50.4 mm', 50.4, 'bore'],
    ['opening measures 50.4', 50.4, 'bore-bare'],
    ['I put calipers in the holes, they came out at 51.2mm', 51.2, 'bore'],
    ['no cracks, the holes are tight, about 50.5 mm', 50.5, 'bore'],
    ['The hole is 50.', 50, 'bore-bare'],
    ['Iron, 51 mm.', 51, 'bare-size'],
  ])('%s', (said, mm, rule) => expect(holes(PLATES + said)).toEqual(both(mm, rule)));
  it('a heading over them', () =>
    expect(holes('Weights with the one-inch hole: 25 lb, two; 10 lb, six\nBench')).toEqual(both(25.4, 'bore-nominal')));
});

describe('of some plates', () => {
  it.each([
    [
      '45 lb rubber grip plates x4\n2.5 lb iron plates x 4\nGrip plates have the 2" opening',
      ['plate-1 boreMm 50.8 | bore-nominal'],
    ],
    [
      '4 x 45 lb plates, 2" hole\n4 x 10 lb plates, 1" hole',
      ['plate-1 boreMm 50.8 | bore-nominal', 'plate-2 boreMm 25.4 | bore-nominal'],
    ],
  ])('%s', (text, said) => expect(holes(text)).toEqual(said));
});

describe('of none', () => {
  it.each([
    ['Everything is Olympic 2".'],
    ['all 2 inch'],
    ['fits 2 inch sleeves'],
    ['The hole is about an inch across'],
    ['hole a hair over an inch'],
    ['holes measure just about 2 inches'],
    ['Some have the 2" hole'],
    ['holes are about 5 cm'],
    ['not the 1 inch hole kind'],
    ['Half rack, upright 2x3 tube, 1" holes'],
    ['power rack with 1 inch holes'],
    ['Hole sizes vary from 50.5 to 53 mm'],
    ['three handle holes, 45 lb each'],
    ['hole in the upholstery, 2 inch'],
  ])('%s', (said) => expect(holes(PLATES + said)).toEqual([]));
});

/** Conditions that several words tell together, whom they speak of, and what only looks like them. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { readText } from './goods.ts';

/** "bar-1 bent" for each condition of each item, with the rule that read it. */
const said = (text: string): string[] =>
  readText(text)
    .items.flatMap(({ id, conditions }) => conditions.map(({ value, rule }) => `${id} ${value} ${rule}`))
    .sort();

describe('worded-conditions.ts', () => {
  it.each([
    ['Squat rack a buddy fabricated, $80', ['rack-1 home-made condition']],
    ['Squat rack welded up by my neighbor, $80', ['rack-1 home-made condition', 'rack-1 welded condition']],
    ['Squat rack made out of pallets $20', ['rack-1 home-made condition']],
    ['Squat rack welded by a certified welder $80', []],
    ['Set of 10 lb plates, made by a big company. $10', []],
    ['Plates 2x45 lb I took a wire wheel to and painted. $60', ['plate-1 repainted condition']],
    ['Plates 2x45 lb. I had them powder coated. $60', ['plate-1 repainted condition']],
    ['Plates 2x45 lb, could use a coat of paint. $60', []],
    ['Plates 2x45 lb. The house is being painted, park on the street. $60', []],
    ['Power rack comes with everything except one spotter arm. $150', ['rack-1 missing-parts condition']],
    ['Barbell without the snap ring on one end. $70', ['bar-1 missing-parts condition']],
    ['Power rack, needs one bolt. $150', ['rack-1 missing-parts condition']],
    ['Power rack, all bolts and pins included. $150', []],
    ['Power rack, no bolts are missing. $150', []],
    [
      'Hantelbank. Den Ständer hat mein Schwager geschweißt. Dazu Kniebeugenständer. 40 €',
      ['stands-1 home-made condition', 'stands-1 welded condition'],
    ],
    ['1 x 10 kg Hantelscheibe, die zweite hat mein Bruder. 10 €', ['plate-1 odd condition']],
  ])('%s', (text, words) => expect(said(text)).toEqual(words));
});

describe('kept, taken off, and hardly there', () => {
  it.each([
    ['Plates 2x45 lb, rust has been removed. $60', []],
    ['Plates 2x45 lb, rust can be removed. $60', ['plate-1 rust condition']],
    ['Plates 2x45 lb, very light rust. $60', ['plate-1 rust-light condition']],
    ['Plates 4x25 lb, they live in my carport. $30', ['plate-1 stored-outdoors kept-at']],
    ['Plates 4x25 lb $30. I live in the house with the carport.', []],
    ['Hantelscheiben 4 x 10 kg. Lagen jahrelang trocken in der Garage. 40 €', ['plate-1 stored-indoors kept-at']],
    ['Hantelscheiben 4 x 10 kg. Abholung in der Garage. 40 €', []],
    ['Moving sale rain or shine. Plates 2x45 lb $50', []],
    ['Flat bench, a slit in the seat. $20', ['bench-1 torn condition']],
    ['Barbell BNIB $130', ['bar-1 new condition']],
    ['Bumpers 2x25 lb, split at the insert. $20', ['bumper-1 split-hub condition']],
  ])('%s', (text, words) => expect(said(text)).toEqual(words));
});

describe('whom it speaks of', () => {
  const LOT = '4x45 lb plates, 2x25 lb plates, olympic bar, flat bench. $400. ';
  it.each([
    ['Surface rust on the bar and the 25s.', ['bar-1 rust-light condition', 'plate-2 rust-light condition']],
    ['Surface rust on the bar and the 25s are fine.', ['bar-1 rust-light condition', 'plate-2 no-rust condition-denied']],
    ["There's a crack in one 25.", ['plate-2 cracked condition-of-one']],
    ['Neither bar nor bench have any rust.', ['bar-1 no-rust condition-denied', 'bench-1 no-rust condition-denied']],
    ['Chips in the paint on the 45s, rest are mint.', ['plate-1 chipped condition', 'plate-2 like-new condition']],
    ['My garage door is broken, come round the side.', []],
    ['Frame of the bench is not bent.', ['bench-1 straight condition-denied']],
  ])('%s', (text, words) => expect(said(LOT + text)).toEqual(words));
  it('the rack, whose own lines come before other goods', () =>
    expect(said('Power rack, steel. Four bolts missing.\n\nAlso a flat bench and a 45 lb bar. $500')).toEqual([
      'rack-1 missing-parts condition',
    ]));
  it('bars called by their make alone', () =>
    expect(said('1x hex bar 25kg\n1x olympic bar 20kg\nOlympic one spins beautifully, hex is dead straight. $150 each')).toEqual([
      'bar-1 spins condition',
      'hex-bar-1 straight condition',
    ]));
  it('one heading of two of a kind', () =>
    expect(said('Flat benches x5 (two have torn pads) - $60 each\nAdjustable bench, wobbly back pad - $80')).toEqual([
      'bench-1 torn condition',
      'bench-2 wobbly condition',
    ]));
});

/** Whom a condition speaks of where an ad has several goods, and conditions told by parts. Forms that sellers write: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/evaluate.ts';
import { listingFromText } from '../../../src/listing/page-listing.ts';
import { OF_ONE_PIECE } from '../../../src/listing/reading.ts';
import { DEFAULT_SETTINGS } from '../../../src/listing/settings.ts';
import { readText } from './goods.ts';

/** "plate 45: rust, bar: bent": each item that anything is said of; a "1" behind a fault of one piece of several. */
const said = (text: string): string =>
  readText(text)
    .items.filter(({ conditions }) => conditions.length > 0)
    .map(({ kind, unitWeight, conditions }) => {
      const words = conditions.map(({ value, rule }) => (rule === OF_ONE_PIECE ? `${value} 1` : value)).sort();
      return `${kind.value}${unitWeight ? ` ${unitWeight.value.value}` : ''}: ${words.join(' ')}`;
    })
    .join(', ');

describe('likened to what was said of other goods', () => {
  it.each([
    ['Slight surface rust on plates, nothing on the bar. Olympic bar, 4x45 $100', 'plate 45: rust-light, bar: no-rust'],
    ['Plates have surface rust, as does the bar. Olympic bar, 4x45. $300', 'plate 45: rust-light, bar: rust-light'],
    ['Rust on the plates but not the bar. 4x45 and olympic bar. $100', 'plate 45: rust, bar: no-rust'],
    ['The bar has no rust and neither do the plates. Olympic bar 4x45. $100', 'bar: no-rust, plate 45: no-rust'],
    [
      "Plates a bit rusty but nothing a brush won't fix: 4x45, 2x25. Bar in the same shape. $150",
      'plate 45: rust-light, plate 25: rust-light, bar: rust-light',
    ],
    [
      'Verkaufe 4x20 kg Scheiben und Langhantel. Die Scheiben haben etwas Rost, aber nicht die Stange. 200 €',
      'plate 20: rust-light, bar: no-rust',
    ],
    ['Rust on the plates. Not the best bar. 4x45 and olympic bar. $100', 'plate 45: rust'],
  ])('%s', (text, words) => expect(said(text)).toBe(words));
});

describe('of goods that are not on offer, and of those before', () => {
  it.each([
    ['Pair of 50 lb dumbbells $70. The rust in picture 2 is on my old bar which is not for sale.', ''],
    ['Squat rack, welded by my mate, $60', 'rack: home-made welded'],
    ['Squat rack, welded by a certified welder, $60', ''],
    [
      "Olympic bar and bench. Both in a spare room, so nothing's been wet or left outside. $130",
      'bar: stored-indoors, bench: stored-indoors',
    ],
    ['Bench with leg extension and preacher pad, missing the pin for the incline. $25', 'bench: missing-parts'],
    ['Power rack $200. I paid four hundred for it when it was new.', ''],
    ['Plates are painted grey, a couple of them are chipped at the edge. 4x45 olympic $100', ''],
    [
      'Two olympic bars. The first has heavy rust and one sleeve is frozen solid. The second is better, both sleeves turn. $90',
      'bar: rust-heavy seized-sleeves, bar: spins',
    ],
  ])('%s', (text, words) => expect(said(text)).toBe(words));
});

describe('joined by "and", left out, or all', () => {
  it.each([
    ['Bar and plates have surface rust. Bench is good. Olympic bar, 2x45 $100', 'bar: rust-light, plate 45: rust-light'],
    ['Olympic bar and 4x45 have been sitting in my garage for years. $150', 'bar: stored-indoors, plate 45: stored-indoors'],
    ['Bar is straight and plates are rusty. Olympic bar, 2x45 $100', 'bar: straight, plate 45: rust'],
    ['Everything is new except for the bar. Rack, bench, bar. $500', 'rack: new, bench: new'],
    [
      'Everything is in like new condition except the bench, which has a torn pad. Rack, bench, bar. $500',
      'rack: like-new, bench: torn, bar: like-new',
    ],
    ['All plates have light surface rust, except the 2.5s. 2x45 2x25 2x2.5. $80', 'plate 45: rust-light, plate 25: rust-light'],
    ['All plates have light surface rust except the 25s. 2x45 2x25. $80', 'plate 45: rust-light'],
  ])('%s', (text, words) => expect(said(text)).toBe(words));
});

describe('told by a part and what it does', () => {
  it.each([
    ['Olympic bar and 4x45 plates. Paint on the plates is flaking off. $200', 'plate 45: chipped'],
    ['Olympic plates 4x45 4x25. Paint has come off of both. $200', 'plate 45: chipped, plate 25: chipped'],
    ['Olympic plates 4x45. The paint is mostly gone and there is light rust. $200', 'plate 45: rust-light'],
    ['Bumper plates, 2x45, 2x25. One 25 has a chunk missing from the rim. $200', 'bumper 25: cracked 1'],
    ['2 50 lb plates 2 45 lb plates 2 20 lb plates and one of the fifties has a chip. $200', 'plate 50: chipped'],
    ['Hantelbank mit Beincurler, Polster hat einen kleinen Riss. 40 €', 'bench: torn'],
    ['Adjustable bench. The seat pad has a couple of rips. Back pad is fine. $50', 'bench: torn'],
    ['Bench with bar. The padding is starting to come apart on the bench. $100', 'bench: torn'],
    ['Bench, peeling vinyl on the seat. $30', 'bench: torn'],
    ["Olympic barbell. Sleeves don't really spin anymore. $60", 'bar: seized-sleeves'],
    ['Olympic barbell. One sleeve spins, the other is stuck. $60', 'bar: seized-sleeves'],
    ['Olympic barbell, both sleeves turn without any issue. $90', 'bar: spins'],
    ['Bumper plates 2x45 2x25. Steel insert on one of the 45s is loose. $200', 'bumper 45: split-hub 1'],
    ['Bumper plates, pair of 45s. One has a hub that came loose. $90', 'bumper 45: split-hub 1'],
    ['Bumper plates, pair of 15 kg. One of the 15s has a hub which turns a little in the rubber. $90', 'bumper 15: split-hub 1'],
    ['Bumper 2 x 15 kg. Bei einer Scheibe dreht sich die Nabe nicht. 90 €', ''],
    ['Bumper plates 2x45, hubs are tight and none wobbles. $90', ''],
    ['Bumper plates 2x45 2x25. Hubs split on the 45s. $150', 'bumper 45: split-hub'],
    ['Bumper plates 4x45. One has a loose steel hub. $150', 'bumper 45: split-hub 1'],
    ['Pair of 50 lb dumbbells, one head is loose. $40', 'dumbbell 50: wobbly'],
    ['Dumbbells 2x30, 2x40. The 30s have loose heads. $60', 'dumbbell 30: wobbly'],
    ['Hantelbank, Polster ist an der Ecke eingerissen. 30 €', 'bench: torn'],
    ['Langhantel, Hülsen drehen sich nicht mehr richtig. 40 €', 'bar: seized-sleeves'],
    ['Hantelscheiben 4x20 kg, der Lack ist stellenweise abgeplatzt. 80 €', 'plate 20: chipped'],
    ['Rack, paint is good, no chips. $200', ''],
    ['Bench, pad is in good shape, cover included. $50', ''],
    ['Bumper plates 2x45, no loose inserts. $100', ''],
    ['Plates fit 2 inch sleeves, rolled out of the garage. 4x45 $100', ''],
  ])('%s', (text, words) => expect(said(text)).toBe(words));
});

describe('of the seller and of no goods', () => {
  it.each([
    ['Power rack for sale $200. My back is broken so no more lifting.', ''],
    ['Squat rack. Selling because I broke my back. $150', ''],
    ['Olympic bar and 4x45. I tore my shoulder and my knee is bent out of shape. $150', ''],
    ['Verkaufe Power Rack, mein Rücken ist kaputt. 150 €', ''],
    ['Bench for sale, my back pad is torn. $20', 'bench: torn'],
    ['Power rack for sale, stored in my back yard. $100', 'rack: stored-outdoors'],
    ['Power rack for sale $200. One upright is broken.', 'rack: cracked'],
  ])('%s', (text, words) => expect(said(text)).toBe(words));
});

describe('one of several', () => {
  it.each([
    ['Two olympic bars. One bar has a crack in the sleeve, the other is fine. $150', 'bar: cracked 1'],
    ['Pair of olympic bars, one bent one good. Plates 4x45. $250', 'bar: bent 1'],
    ['3 curl bars, one of them is bent. $60', 'curl-bar: bent 1'],
    ['Zwei Langhanteln, eine ist verbogen. 80 €', 'bar: bent 1'],
    ['Two olympic bars, both bent. $50', 'bar: bent'],
    ['Two olympic bars with cracked sleeves. $50', 'bar: cracked'],
  ])('%s', (text, words) => expect(said(text)).toBe(words));

  it('does not condemn the others', () => {
    const flags = (text: string) =>
      evaluate(listingFromText(text), DEFAULT_SETTINGS).flags.filter(({ id }) => id === 'cracked-bar' || id === 'bent');
    const weights = (text: string) => flags(text).map(({ weight }) => weight);
    expect(weights('Two olympic bars. One bar has a crack in the sleeve, the other is fine. $150')).toEqual(['caution']);
    expect(weights('Pair of olympic bars, one bent one good. $150')).toEqual(['caution']);
    expect(weights('Olympic bar with a crack in the sleeve. $50')).toEqual(['deal-breaker']);
    expect(weights('Two olympic bars, both bent. $50')).toEqual(['deal-breaker']);
  });

  it('leaves the worth of the other', () => {
    const worth = (text: string) => evaluate(listingFromText(text), DEFAULT_SETTINGS).worth.goingWorth?.likely ?? 0;
    const two = worth('Two olympic bars, 7 ft. $150');
    expect(two).toBeGreaterThan(0);
    expect(worth('Two olympic bars, 7 ft. One of the bars is slightly bent. $150')).toBeCloseTo(two / 2, 6);
  });
});
